"""Speaks the small check with voices that were never trained on: python3 heldout.py FOLDER.

Festival's kal and ked diphone voices and slt HMM voice, and flite rms. The ear's acceptance test elsewhere uses its own corpus and noises;
this one only tells the trainer how far a run came.
"""
import multiprocessing as mp
import pathlib
import random
import subprocess
import sys

import numpy as np

from phrases import forms, small
from voices import flite, phones_of, read_wav, trim

FESTIVAL = {"festival kal": "voice_kal_diphone", "festival ked": "voice_ked_diphone", "festival slt hts": "voice_cmu_us_slt_arctic_hts"}
VOICES = [*FESTIVAL, "flite rms"]
YES_NO = ["yes", "no", "yes it is", "no it is not", "that is right", "that is wrong", "correct"]
COMMANDS = ["help", "again", "say it again", "repeat", "quiet", "be quiet", "back", "go back", "go on", "ready", "done", "not yet", "i understand",
            "i am not sure", "something is wrong", "i feel low", "that is all", "use it", "it went in", "already washed", "all of it", "half",
            "hardly any", "breakfast", "lunch", "dinner"]
PAIRS = [f"{t}" for n in range(3, 10) for t in (small(10 + n), small(10 * n))]


def corpus(rng) -> list[tuple[str, str]]:
    out = [("yes/no", p) for p in YES_NO] + [("commands", p) for p in COMMANDS] + [("teen/ty", p) for p in PAIRS]
    for n in rng.sample(range(20, 601), 40):
        out.append(("numbers", rng.choice([f for f in forms(n) if len(f.split()) > 1 or n < 100])))
    return out


def speak(job) -> list[np.ndarray]:
    """All the texts of one voice; festival is started once a voice."""
    voice, texts, folder = job
    if voice == "flite rms":
        return [trim(flite("rms", text, 1.0, 110)) for text in texts]
    files = [f"{folder}/{voice.replace(' ', '-')}-{i}.wav" for i in range(len(texts))]
    program = f"({FESTIVAL[voice]})\n" + "".join(f'(utt.save.wave (utt.synth (Utterance Text "{t}")) "{f}" (quote riff))\n' for t, f in zip(texts, files))
    script = pathlib.Path(f"{folder}/{voice.replace(' ', '-')}.scm")
    script.write_text(program)
    subprocess.run(["festival", "--batch", str(script)], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=True)
    return [trim(read_wav(pathlib.Path(f).read_bytes())) for f in files]


def main(folder: str) -> None:
    pathlib.Path(folder).mkdir(parents=True, exist_ok=True)
    items = [(v, kind, text) for i, v in enumerate(VOICES) for kind, text in corpus(random.Random(50 + i))]
    with mp.Pool(2) as pool:
        sounds = sum(pool.map(speak, [(v, [t for w, _, t in items if w == v], folder) for v in VOICES], chunksize=1), [])
        words = sorted({w for _, _, t in items for w in t.split()} | set(" ".join(f for n in range(601) for f in forms(n)).split()))
        spelled = dict(zip(words, pool.map(phones_of, words)))
    np.savez(f"{folder}/heldout.npz", audio=np.concatenate(sounds).astype(np.float32) / 32768, lengths=[len(s) for s in sounds],
             voices=[v for v, _, _ in items], kinds=[k for _, k, _ in items], texts=[t for _, _, t in items],
             words=words, phones=[" ".join(spelled[w]) for w in words])
    print(len(items), "utterances", {v: sum(1 for x in items if x[0] == v) for v in VOICES})


if __name__ == "__main__":
    main(sys.argv[1])
