"""Scores checkpoints on the held-out check: python3 figures.py FOLDER a.pt [b.pt] [--write]: --write puts the counts into ear.json.

Every phrase that could be meant is scored by its best path through the frames (forced CTC); the best one is the answer. Weights are
rounded to int8 first, as in the file. Noises here are not those of noises.py: pink noise, a hum with its overtones, four talkers of flite rms.
"""
import json
import pathlib
import sys

import numpy as np
import torch

from export import rounded
from heldout import COMMANDS, PAIRS, VOICES, YES_NO
from net import PHONES, Ear, features
from phrases import forms, small

INDEX = {p: i for i, p in enumerate(PHONES)}


class Choices:
    """Phrases as one padded table, scored all at once."""

    def __init__(self, phrases: list[str], spelled: dict[str, list[int]]):
        self.phrases = phrases
        rows = [sum((spelled[w] for w in p.split()), []) for p in phrases]
        self.width = 2 * max(map(len, rows)) + 1
        self.ext = np.zeros((len(rows), self.width), np.int64)
        for i, r in enumerate(rows):
            self.ext[i, 1 : 2 * len(r) : 2] = r
        self.end = np.array([2 * len(r) for r in rows])
        skip = np.zeros_like(self.ext, bool)
        skip[:, 3::2] = self.ext[:, 3::2] != self.ext[:, 1:-2:2]
        self.skip = skip

    def score(self, log_probs: np.ndarray) -> np.ndarray:
        n = len(self.ext)
        v = np.full((n, self.width), -1e9, np.float32)
        v[:, 0], v[:, 1] = log_probs[0, 0], log_probs[0][self.ext[:, 1]]
        for row in log_probs[1:]:
            best = v.copy()
            best[:, 1:] = np.maximum(best[:, 1:], v[:, :-1])
            best[:, 2:] = np.maximum(best[:, 2:], np.where(self.skip[:, 2:], v[:, :-2], -1e9))
            v = best + row[self.ext]
        at = np.arange(n)
        return np.maximum(v[at, self.end], v[at, self.end - 1])


def meaning(phrase: str, values: dict[str, str]) -> str:
    return values.get(phrase, phrase)


def noises(rng, n: int, talkers: list[np.ndarray]) -> dict[str, np.ndarray]:
    white = np.fft.rfft(rng.normal(size=n))
    pink = np.fft.irfft(white / np.sqrt(np.arange(len(white)) + 5), n)
    t = np.arange(n) / 16000
    hum = sum(np.sin(2 * np.pi * 100.3 * k * t + rng.uniform(0, 6)) * rng.uniform(0.3, 1) / k**0.6 for k in range(1, 30))
    hiss = np.fft.irfft(np.fft.rfft(rng.normal(size=n)) * np.exp(-(((np.fft.rfftfreq(n, 1 / 16000) - 3000) / 1500) ** 2)), n)
    kettle = hum / hum.std() + 1.2 * hiss / hiss.std() * (1 + 0.4 * np.sin(2 * np.pi * 7 * t))
    talk = np.zeros(n)
    for _ in range(4):
        talk += np.resize(talkers[rng.integers(len(talkers))], n)
    return {"pink 10 dB": pink, "kettle 10 dB": kettle, "four talkers 10 dB": talk}


def main(folder: str, paths: list[str], write: bool) -> None:
    torch.set_num_threads(1)
    z = np.load(f"{folder}/heldout.npz")
    spelled = {w: [INDEX[p] for p in s.split()] for w, s in zip(z["words"].tolist(), z["phones"].tolist())}
    lengths = z["lengths"]
    cuts = np.split(z["audio"], np.cumsum(lengths)[:-1])
    values = {f: str(n) for n in range(0, 601) for f in forms(n)}
    numbers = Choices(sorted({f for n in range(20, 601) for f in forms(n)} | {small(n) for n in range(13, 20)}), spelled)
    two = Choices([small(n) for n in range(1, 100)], spelled)
    answers = Choices(sorted(set(YES_NO + COMMANDS + PAIRS)), spelled)
    means = {**values, "yes it is": "yes", "that is right": "yes", "correct": "yes", "no it is not": "no", "that is wrong": "no",
             "say it again": "again", "repeat": "again", "be quiet": "quiet", "go back": "back"}
    ears = []
    for path in paths:
        ear = Ear().eval()
        ear.load_state_dict(torch.load(path, map_location="cpu")["model"])
        if "--float" not in sys.argv:
            list(rounded(ear))
        ears.append(ear)
    talkers = [c for c, v in zip(cuts, z["voices"]) if v == "flite rms"]
    kept = []
    every = next((int(a[8:]) for a in sys.argv if a.startswith("--every=")), 1)  # a quick look at some of them
    for i, clip in list(enumerate(cuts))[::every]:
        rng = np.random.default_rng(i)
        voice, kind, text = str(z["voices"][i]), str(z["kinds"][i]), str(z["texts"][i])
        clip = clip * (0.08 / np.sqrt((clip**2).mean()))
        x = np.concatenate([np.zeros(10400), clip, np.zeros(10400)])  # as much room as the app adds
        for condition, noise in {"clean": None, **noises(rng, len(x), talkers)}.items():
            y = x + 10 ** (-58 / 20) * rng.normal(size=len(x))
            if noise is not None:
                y = y + noise / noise.std() * 0.08 * 10 ** (-10 / 20)
            with torch.no_grad():
                f = features(torch.tensor(y, dtype=torch.float32)[None])
                probs = [e(f)[0].numpy() for e in ears]
            choices = numbers if kind == "numbers" else two if kind == "teen/ty" else answers
            scores = [choices.score(p) for p in probs]
            truth = meaning(text, means)
            row = {"voice": voice, "kind": kind, "condition": condition, "text": text}
            for name, s, p in [*zip("ab", scores, probs), *([("both", sum(scores), sum(probs))] if len(ears) > 1 else [])]:
                order = np.argsort(-s)
                best = meaning(choices.phrases[order[0]], means)
                rival = next(j for j in order if meaning(choices.phrases[j], means) != best)
                free = p.max(1).sum() if name != "both" else sum(q.max(1).sum() for q in probs)
                row[name] = {"right": best == truth, "heard": choices.phrases[order[0]], "margin": float(s[order[0]] - s[rival]), "gap": float((free - s[order[0]]) / len(p))}
            kept.append(row)
    heads = ["a"] + (["b", "both"] if len(ears) > 1 else [])
    table: dict = {}
    for name in heads:
        for kind in ("yes/no", "commands", "numbers", "teen/ty"):
            for condition in dict.fromkeys(r["condition"] for r in kept):
                rows = [r[name]["right"] for r in kept if r["kind"] == kind and r["condition"] == condition]
                table.setdefault(name, {}).setdefault(kind, {})[condition] = [sum(rows), len(rows)]
        table[name]["voices"] = {v: {c: [sum(r[name]["right"] for r in kept if r["voice"] == v and r["condition"] == c), sum(r["voice"] == v and r["condition"] == c for r in kept)]
                                     for c in dict.fromkeys(r["condition"] for r in kept)} for v in VOICES}
    for name in heads:
        print(name)
        for k, v in table[name].items():
            for c, n in v.items():
                print("  ", k, c, n)
    pathlib.Path(f"{folder}/rows.json").write_text(json.dumps(kept))
    if write:
        file = pathlib.Path(__file__).resolve().parents[4] / "public" / "ear" / "ear.json"
        manifest = json.loads(file.read_text())
        manifest["figures"] = {"what": "right answers of all, best forced path, no refusals; voices never trained on; numbers among 20 to 600, teens and tens among 1 to 99, the rest among each other", **table}
        file.write_text(json.dumps(manifest, indent=1) + "\n")


if __name__ == "__main__":
    main(sys.argv[1], [p for p in sys.argv[2:] if p.endswith(".pt")], "--write" in sys.argv)
