"""Speaks for a given time with all processors: python3 synth.py FOLDER SECONDS PROCESSES [SEED].

Writes part-N.npz files: samples (int16, one after another), lengths, phone numbers one after another, phone counts, voice names.
"""
import multiprocessing as mp
import os
import pathlib
import random
import re
import sys
import time

import numpy as np

from net import PHONES
from phrases import NAMES, ONES, TENS, Speaker, app_sentences, foods, said_phrases
from voices import LOT, SCOWL, broad, phones_of, random_voice, trim

INDEX = {p: i for i, p in enumerate(PHONES)}
# Written short forms that a synthesiser reads out in full.
SHORT = set("mr mrs ms dr st jr sr jan feb mar apr jun jul aug sep sept oct nov dec mon tue tues wed thu thur thurs fri sat sun etc vs ie eg cf pp vol no_ fig ft lb oz kg km cm mm hz am pm ave rd".split())


def filler_words() -> list[str]:
    words = []
    for size in (10, 20):
        text = pathlib.Path(f"{SCOWL}/english-words.{size}").read_text(encoding="latin-1")
        words += [w for w in text.split() if w.isascii() and w.isalpha() and w.islower() and 3 <= len(w) <= 11 and w not in SHORT]
    return words


def vocabulary() -> list[str]:
    own = " ".join(said_phrases() + foods() + app_sentences() + NAMES + ONES + TENS).split()
    more = "hundred thousand and a half point milligrams millimoles o clock past quarter to in the morning evening afternoon at night units unit grams gram minutes clicks it is says about i have please that um yes no think my number took carry on am this one"
    return sorted(set(own + more.split()))


def dictionary(words: list[str], pool) -> dict[str, list[str]]:
    return dict(zip(words, pool.map(phones_of, words, chunksize=64)))


def work(args):
    n, folder, until, seed, words, filler = args
    rng = random.Random(seed * 1000 + n)
    LOT[0] = seed * 100 + n
    speaker = Speaker(rng, filler)
    audio, lengths, phones, counts, voices, part = [], [], [], [], [], 0

    def flush():
        nonlocal part
        if audio:
            np.savez(f"{folder}/unfinished-{n}.npz", audio=np.concatenate(audio), lengths=lengths, phones=np.array(phones, np.int16), counts=counts, voices=np.array(voices))
            os.rename(f"{folder}/unfinished-{n}.npz", f"{folder}/part-{n}-{part}.npz")  # a trainer may already be reading the folder
            part += 1
        for kept in (audio, lengths, phones, counts, voices):
            kept.clear()

    while time.time() < until:
        text = speaker.text()
        name, accent, say = random_voice(rng)
        spelled = []
        for word in re.sub("[,.?!]", "", text).split():
            p = words.get(word)
            if not p:
                break
            spelled += broad(word, p) if accent in ("en-gb", "en-gb-x-rp") else p
        else:
            try:
                x = trim(say(text))
            except Exception:
                continue
            if not 1600 < len(x) < 16000 * 6.5 or np.abs(x).max() < 200 or len(x) < 16000 * 0.035 * len(spelled):
                continue
            audio.append(np.clip(x * (20000 / np.abs(x).max()), -32768, 32767).astype(np.int16))
            lengths.append(len(audio[-1]))
            phones += [INDEX[p] for p in spelled]
            counts.append(len(spelled))
            voices.append(name)
            if len(audio) >= 500:
                flush()
    flush()


def main(folder: str, seconds: float, processes: int, seed: int = 1) -> None:
    began = time.time()
    pathlib.Path(folder).mkdir(parents=True, exist_ok=True)
    with mp.Pool(processes) as pool:
        filler = filler_words()
        words = dictionary(sorted(set(filler + vocabulary())), pool)
        filler = [w for w in filler if words.get(w)]
        print(f"{len(words)} words spelled in {time.time() - began:.0f} s", flush=True)
        pool.map(work, [(n, folder, began + seconds, seed, words, filler) for n in range(processes)], chunksize=1)
    total = count = 0
    by_voice: dict[str, int] = {}
    for file in pathlib.Path(folder).glob("part-*.npz"):
        with np.load(file) as z:
            total += int(z["lengths"].sum())
            count += len(z["lengths"])
            for v in z["voices"]:
                by_voice[str(v)] = by_voice.get(str(v), 0) + 1
    print(f"{count} utterances, {total / 16000 / 3600:.1f} hours, {by_voice}", flush=True)


if __name__ == "__main__":
    if sys.argv[1] == "--words":  # the phones of our own words, for the lexicon's author
        with mp.Pool(2) as pool:
            spelled = dictionary(vocabulary(), pool)
        for word, p in spelled.items():
            print(word, " ".join(p), " ".join(broad(word, p)) if broad(word, p) != p else "", sep="\t")
    else:
        main(sys.argv[1], float(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4]) if len(sys.argv) > 4 else 1)
