"""python3 train.py SPEECH_FOLDER OUT.pt SECONDS SEED [BATCH [FROM.pt]]: trains one member for a given time, or settles a trained one.

CTC over phones; the learning rate falls to nothing at the end of the time; what is kept is a running mean of the weights.
"""
import copy
import pathlib
import sys
import time

import numpy as np
import torch
from torch.nn import functional as F

from augment import Kitchen
from net import Ear
from noises import bank
from voices import TRAINED


def load(folder: str, dev):
    audio, lengths, phones, counts = [], [], [], []
    for file in sorted(pathlib.Path(folder).glob("part-*.npz")):
        with np.load(file) as z:
            audio.append(torch.from_numpy(z["audio"]))
            lengths.append(z["lengths"])
            phones.append(z["phones"])
            counts.append(z["counts"])
    lengths, counts = np.concatenate(lengths), np.concatenate(counts)
    starts = np.concatenate([[0], np.cumsum(lengths)[:-1]])
    at = np.concatenate([[0], np.cumsum(counts)[:-1]])
    return (torch.cat(audio).to(dev), torch.tensor(starts, device=dev), torch.tensor(lengths, device=dev).float(),
            torch.tensor(np.concatenate(phones).astype(np.int64)), at, counts)


def batches(lengths, size, rng):
    """Clips of like length together; the order of batches is random."""
    while True:
        order = np.argsort(lengths * np.exp(rng.normal(0, 0.08, len(lengths))))
        groups = [order[i : i + size] for i in range(0, len(order) - size + 1, size)]
        rng.shuffle(groups)
        yield from groups


def collapse(path):
    out, last = [], 0
    for p in path:
        if p != last and p != 0:
            out.append(p)
        last = p
    return out


def distance(a, b):
    row = list(range(len(b) + 1))
    for i, x in enumerate(a):
        last, row[0] = row[0], i + 1
        for j, y in enumerate(b):
            last, row[j + 1] = row[j + 1], min(row[j + 1] + 1, row[j] + 1, last + (x != y))
    return row[-1]


def main(folder, out, seconds, seed, size=192, before=None):
    began = time.time()
    torch.manual_seed(seed)
    rng = np.random.default_rng(seed)
    dev = "cuda" if torch.cuda.is_available() else "cpu"
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    audio, starts, lengths, phones, at, counts = load(folder, dev)
    hours = float(lengths.sum()) / 16000 / 3600
    print(f"{len(lengths)} clips, {hours:.1f} h, loaded after {time.time() - began:.0f} s", flush=True)
    noise = bank(1500 if dev == "cuda" else 250, dev)
    kitchen = Kitchen(audio, starts, lengths, noise, dev, 0.45 if before else 1.0)
    print(f"{len(noise)} noises after {time.time() - began:.0f} s", flush=True)
    held = rng.permutation(len(lengths))[: min(384 if dev == "cuda" else 96, len(lengths) // 8)]  # clips of trained voices kept aside, to watch progress
    free = np.setdiff1d(np.arange(len(lengths)), held)
    stream = batches(lengths.cpu().numpy()[free], size, rng)
    ear = Ear(dropout=0.0 if before else 0.1).to(dev)
    earlier = {"steps": 0, "clips": 0, "hoursOfSpeech": 0.0}
    if before:
        kept = torch.load(before, map_location=dev)
        ear.load_state_dict(kept["model"])
        earlier = kept["recipe"]
    mean = copy.deepcopy(ear).eval()
    for m in mean.children():
        if isinstance(m, torch.nn.GRU):
            m.flatten_parameters()
    opt = torch.optim.AdamW(ear.parameters(), lr=1e-3, betas=(0.9, 0.98), weight_decay=1e-3)

    def target(which):
        return torch.cat([phones[at[i] : at[i] + counts[i]] for i in which]).to(dev), torch.tensor(counts[which])

    def save(step):
        recipe = {"seed": seed, "steps": earlier["steps"] + step, "batch": size, "hoursOfSpeech": round(earlier["hoursOfSpeech"] + hours, 1),
                  "clips": earlier["clips"] + len(lengths), "voices": TRAINED}
        torch.save({"model": {k: v.cpu() for k, v in mean.state_dict().items()}, "recipe": recipe}, out)

    step, losses, told, start = 0, [], time.time(), time.time()
    seconds = seconds - (start - began)
    while True:
        part = (time.time() - start) / seconds
        if part >= 1:
            break
        warm = min(1.0, (step + 1) / (30 if before else 300))
        lr = (5e-4 if before else 2e-3) * warm * (0.5 * (1 + np.cos(np.pi * part)) + 0.005)
        for g in opt.param_groups:
            g["lr"] = lr
        hard = 0.8 if before else 0.0 if part < 0.03 else min(1.0, (part - 0.03) / 0.12 + 0.2)
        which = free[next(stream)]
        with torch.no_grad():
            feats = kitchen.batch(torch.tensor(which, device=dev), hard)
        scores = ear(feats)
        y, y_len = target(which)
        x_len = torch.full((len(which),), scores.shape[1], dtype=torch.long)
        loss = F.ctc_loss(scores.transpose(0, 1), y, x_len, y_len, zero_infinity=True)
        opt.zero_grad(set_to_none=True)
        loss.backward()
        norm = torch.nn.utils.clip_grad_norm_(ear.parameters(), 2.0)
        if torch.isfinite(norm):
            opt.step()
        step += 1
        with torch.no_grad():
            keep = min(0.99 if before else 0.999, step / (step + 20))
            for a, b in zip(mean.parameters(), ear.parameters()):
                a.lerp_(b, 1 - keep)
        losses.append(loss.detach())
        if time.time() - told > (120 if before else 30):
            told = time.time()
            rates = []
            for h in (0.0, 1.0):
                wrong = all_ = 0
                with torch.no_grad():
                    for i in range(0, len(held), 96):
                        w = held[i : i + 96]
                        best = mean(kitchen.batch(torch.tensor(w, device=dev), h)).argmax(-1).cpu().tolist()
                        for k, path in zip(w, best):
                            truth = phones[at[k] : at[k] + counts[k]].tolist()
                            wrong += distance(collapse(path), truth)
                            all_ += len(truth)
                rates.append(100 * wrong / all_)
            print(f"{out} step {step} at {time.time() - start:.0f}/{seconds:.0f} s, loss {torch.stack(losses[-200:]).mean():.3f}, lr {lr:.1e}, "
                  f"phone errors kept aside clean {rates[0]:.1f} % kitchen {rates[1]:.1f} %", flush=True)
            save(step)
    save(step)
    print(f"{out} done: {step} steps", flush=True)


if __name__ == "__main__":
    a = sys.argv
    main(a[1], a[2], float(a[3]), int(a[4]), int(a[5]) if len(a) > 5 else 192, a[6] if len(a) > 6 else None)
