"""python3 train.py SPEECH_FOLDER OUT.pt SECONDS|FILE SEED [BATCH [FROM.pt]]: trains one member for a given time, or settles a trained one.

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


class Spoken:
    """The clips of a folder that is still being filled: samples one after another on the device, phones beside them."""

    def __init__(self, folder: str, dev, room: int):
        self.folder, self.dev, self.read, self.filled = pathlib.Path(folder), dev, set(), 0
        self.audio = torch.empty(room, dtype=torch.int16, device=dev)
        self.starts = self.lengths = torch.empty(0, device=dev)
        self.phones, self.at, self.counts = torch.empty(0, dtype=torch.int64), np.empty(0, np.int64), np.empty(0, np.int64)

    def more(self) -> int:
        """Takes in what was spoken since; says how many clips came."""
        lengths, phones, counts = [self.lengths.cpu().numpy()], [self.phones.numpy()], [self.counts]
        before = len(self.lengths)
        for file in sorted(self.folder.glob("part-*.npz")):
            if file.name in self.read:
                continue
            with np.load(file) as z:
                if self.filled + len(z["audio"]) > len(self.audio):
                    break
                audio = z["audio"]
                self.audio[self.filled : self.filled + len(audio)] = torch.from_numpy(audio).to(self.dev)
                self.filled += len(audio)
                lengths.append(z["lengths"])
                phones.append(z["phones"].astype(np.int64))
                counts.append(z["counts"].astype(np.int64))
            self.read.add(file.name)
        whole, self.counts = np.concatenate(lengths).astype(np.int64), np.concatenate(counts)
        self.starts = torch.tensor(np.concatenate([[0], np.cumsum(whole)[:-1]]), device=self.dev)
        self.lengths = torch.tensor(whole, device=self.dev).float()
        self.phones = torch.from_numpy(np.concatenate(phones))
        self.at = np.concatenate([[0], np.cumsum(self.counts)[:-1]]).astype(np.int64)
        return len(whole) - before

    @property
    def hours(self) -> float:
        return self.filled / 16000 / 3600


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
    """seconds: how long, or a file in which the moment of the end is written (seconds since 1970), read again now and then."""
    began = time.time()
    torch.manual_seed(seed)
    rng = np.random.default_rng(seed)
    dev = "cuda" if torch.cuda.is_available() else "cpu"
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True

    def end() -> float:
        return float(pathlib.Path(seconds).read_text()) if pathlib.Path(seconds).exists() else began + float(seconds)

    spoken = Spoken(folder, dev, 14_000_000_000 if dev == "cuda" else 400_000_000)
    spoken.more()
    print(f"{len(spoken.counts)} clips, {spoken.hours:.1f} h, loaded after {time.time() - began:.0f} s", flush=True)
    noise = bank(3000 if dev == "cuda" else 60, dev)
    kitchen = Kitchen(spoken, noise, dev, 1.0, loud=before is not None)
    print(f"{len(noise)} noises after {time.time() - began:.0f} s", flush=True)
    held = rng.permutation(len(spoken.counts))[: min(384 if dev == "cuda" else 96, len(spoken.counts) // 8)]  # clips of trained voices kept aside, to watch progress

    def fresh():
        free = np.setdiff1d(np.arange(len(spoken.counts)), held)
        return free, batches(spoken.lengths.cpu().numpy()[free], size, rng)

    free, stream = fresh()
    ear = Ear(dropout=0.0 if before else 0.06).to(dev)
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
        return torch.cat([spoken.phones[spoken.at[i] : spoken.at[i] + spoken.counts[i]] for i in which]).to(dev), torch.tensor(spoken.counts[which])

    def save(step):
        recipe = {"seed": seed, "steps": earlier["steps"] + step, "batch": size, "hoursOfSpeech": round(earlier["hoursOfSpeech"] + spoken.hours, 1),
                  "clips": earlier["clips"] + len(spoken.counts), "voices": TRAINED}
        torch.save({"model": {k: v.cpu() for k, v in mean.state_dict().items()}, "recipe": recipe}, out)

    step, losses, told, start, stop = 0, [], time.time() - 25, time.time(), end()
    while True:
        part = (time.time() - start) / (stop - start)
        if part >= 1:
            break
        if part > 0.8 and kitchen.throat > 0.7:
            kitchen.wander(0.7)
        warm = min(1.0, (step + 1) / 300)
        lr = (1e-3 if before else 2e-3) * warm * (0.5 * (1 + np.cos(np.pi * part)) + 0.005)
        for g in opt.param_groups:
            g["lr"] = lr
        hard = 1.0 if before else 0.0 if part < 0.03 else min(1.0, (part - 0.03) / 0.12 + 0.2)
        which = free[next(stream)]
        with torch.no_grad():
            feats = kitchen.batch(torch.tensor(which, device=dev), hard, close=rng.random() < 0.34)
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
            keep = min(0.9995 if before else 0.999, step / (step + 20))
            torch._foreach_mul_(list(mean.parameters()), keep)
            torch._foreach_add_(list(mean.parameters()), list(ear.parameters()), alpha=1 - keep)
        losses.append(loss.detach())
        if time.time() - told > 45:
            told, stop = time.time(), end()
            if spoken.more():
                free, stream = fresh()
            rates = []
            for h, close in ((0.0, False), (0.0, True), (1.0, False), (1.0, True)):
                wrong = all_ = 0
                with torch.no_grad():
                    for i in range(0, len(held), 96):
                        w = held[i : i + 96]
                        best = mean(kitchen.batch(torch.tensor(w, device=dev), h, close)).argmax(-1).cpu().tolist()
                        for k, path in zip(w, best):
                            truth = spoken.phones[spoken.at[k] : spoken.at[k] + spoken.counts[k]].tolist()
                            wrong += distance(collapse(path), truth)
                            all_ += len(truth)
                rates.append(100 * wrong / all_)
            print(f"{out} step {step} at {time.time() - start:.0f}/{stop - start:.0f} s, {spoken.hours:.0f} h, loss {torch.stack(losses[-200:]).mean():.3f}, lr {lr:.1e}, "
                  f"phone errors kept aside clean {rates[0]:.1f} %, cut close {rates[1]:.1f} %, kitchen {rates[2]:.1f} %, cut close {rates[3]:.1f} %", flush=True)
            save(step)
    save(step)
    print(f"{out} done: {step} steps", flush=True)


if __name__ == "__main__":
    a = sys.argv
    main(a[1], a[2], a[3], int(a[4]), int(a[5]) if len(a) > 5 else 192, a[6] if len(a) > 6 else None)
