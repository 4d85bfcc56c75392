"""Kitchen-like noises for training, made from random numbers alone. The tests use other generators than these."""
import math

import torch

LENGTH = 16000 * 6


def rand(n, lo, hi, dev):
    return torch.rand(n, 1, device=dev) * (hi - lo) + lo


def shaped(n, dev, curve):
    """White noise through a power curve given over the bins of the whole length."""
    bins = LENGTH // 2 + 1
    hz = torch.linspace(0, 8000, bins, device=dev)[None]
    spectrum = torch.fft.rfft(torch.randn(n, LENGTH, device=dev)) * curve(hz).sqrt()
    x = torch.fft.irfft(spectrum, LENGTH)
    return x / x.std(1, keepdim=True).clamp(min=1e-9)


def coloured(n, dev):
    a = rand(n, -0.4, 2.4, dev)
    return shaped(n, dev, lambda hz: (hz + 40.0) ** -a)


def peaked(n, dev):
    a, m = rand(n, 0.0, 2.0, dev), [(rand(n, 80, 6500, dev), rand(n, 0.03, 0.4, dev), rand(n, 2, 80, dev)) for _ in range(3)]
    return shaped(n, dev, lambda hz: (hz + 40.0) ** -a * (1 + sum(g * torch.exp(-(((hz / c).clamp(min=1e-3).log() / w) ** 2)) for c, w, g in m)))


def slow(n, dev, lo, hi, depth):
    """A random level curve that moves about lo..hi times a second."""
    rate = rand(n, lo, hi, dev)
    hz = torch.linspace(0, 8000, LENGTH // 2 + 1, device=dev)[None]
    x = torch.fft.irfft(torch.fft.rfft(torch.randn(n, LENGTH, device=dev)) * torch.exp(-((hz / rate) ** 2)), LENGTH)
    return torch.exp(depth * x / x.std(1, keepdim=True).clamp(min=1e-9))


def tones(n, dev, lo, hi, count, tilt, wobble=0.0):
    t = torch.arange(LENGTH, device=dev)[None] / 16000
    f = rand(n, lo, hi, dev)
    phase = 2 * math.pi * f * t
    if wobble:
        phase = phase + rand(n, 0, wobble, dev) * f * torch.sin(2 * math.pi * rand(n, 0.2, 3, dev) * t)
    x = torch.zeros(n, LENGTH, device=dev)
    for k in range(1, count + 1):
        keep = (f * k < 7800).float()
        x += keep * torch.rand(n, 1, device=dev) * k**-tilt * torch.sin(k * phase + rand(n, 0, 6.28, dev))
    return x / x.std(1, keepdim=True).clamp(min=1e-9)


def hum(n, dev):
    return rand(n, 0.2, 1, dev) * tones(n, dev, 48, 125, 30, 0.8) + coloured(n, dev) * rand(n, 0.1, 1, dev)


def fan(n, dev):
    t = torch.arange(LENGTH, device=dev)[None] / 16000
    beat = 1 + rand(n, 0, 0.6, dev) * torch.sin(2 * math.pi * rand(n, 2, 40, dev) * t)
    return peaked(n, dev) * beat + rand(n, 0, 0.8, dev) * tones(n, dev, 60, 400, 12, 0.7, 0.02)


def boiling(n, dev):
    rise = torch.linspace(-1, 1, LENGTH, device=dev)[None] * rand(n, -1.2, 1.2, dev)
    low = peaked(n, dev) * slow(n, dev, 4, 18, 0.5)
    hiss = shaped(n, dev, lambda hz: torch.exp(-(((hz - 4500) / 2500) ** 2)))
    whistle = tones(n, dev, 1200, 3200, 3, 1.0, 0.01) * (torch.rand(n, 1, device=dev) < 0.25)
    return (low + hiss * rand(n, 0.05, 1, dev) + whistle * rand(n, 0.05, 0.6, dev)) * torch.exp(rise)


def knocks(n, dev, per_second, rings, lo, hi, decay_lo, decay_hi):
    """Struck things: impulses at random moments through a few ringing modes."""
    hit = (torch.rand(n, LENGTH, device=dev) < per_second / 16000).float() * torch.exp(torch.randn(n, LENGTH, device=dev) * 0.8)
    hit[:, :50] = 1.0
    t = torch.arange(16000, device=dev)[None] / 16000
    body = torch.zeros(n, 16000, device=dev)
    for _ in range(rings):
        body += rand(n, 0.1, 1, dev) * torch.exp(-t / rand(n, decay_lo, decay_hi, dev)) * torch.sin(2 * math.pi * rand(n, lo, hi, dev) * t)
    body += 0.6 * torch.randn(n, 16000, device=dev) * torch.exp(-t / 0.004)
    size = LENGTH * 2
    x = torch.fft.irfft(torch.fft.rfft(hit, size) * torch.fft.rfft(body, size), size)[:, :LENGTH]
    return x / x.std(1, keepdim=True).clamp(min=1e-9)


def dishes(n, dev):
    return knocks(n, dev, rand(n, 0.5, 7, dev), 6, 700, 7000, 0.008, 0.18) + rand(n, 0, 0.3, dev) * coloured(n, dev)


def clatter(n, dev):
    """Many things at once, now near, now far: what a sink full of crockery does."""
    many = knocks(n, dev, rand(n, 4, 25, dev), 5, 500, 6500, 0.004, 0.09) * slow(n, dev, 0.5, 4, 0.7)
    return many + rand(n, 0, 0.6, dev) * dishes(n, dev) + rand(n, 0.02, 0.4, dev) * coloured(n, dev)


def thumps(n, dev):
    return knocks(n, dev, rand(n, 0.5, 6, dev), 4, 60, 900, 0.01, 0.12) + rand(n, 0, 0.3, dev) * coloured(n, dev)


def water(n, dev):
    jet = shaped(n, dev, lambda hz: 1 / (1 + ((hz - 2500) / 2500) ** 2)) * slow(n, dev, 10, 60, 0.4)
    return jet + rand(n, 0, 1, dev) * peaked(n, dev) * slow(n, dev, 2, 15, 0.4) + rand(n, 0, 0.8, dev) * knocks(n, dev, 30, 2, 400, 3500, 0.004, 0.02)


def tune(n, dev):
    """Radio-like music: three parts of notes that change a few times a second."""
    x = torch.zeros(n, LENGTH, device=dev)
    for part in range(3):
        step = int(torch.randint(1600, 10000, (1,)).item())
        notes = LENGTH // step + 1
        f = 110 * 2 ** ((torch.randint(0, 30, (n, notes), device=dev) + 12 * part) / 12)
        f = f.repeat_interleave(step, 1)[:, :LENGTH]
        phase = torch.cumsum(2 * math.pi * f / 16000, 1)
        decay = torch.exp(-(torch.arange(LENGTH, device=dev) % step)[None] / 16000 / rand(n, 0.1, 1.0, dev))
        for k in range(1, 7):
            x += (f * k < 7800) * torch.rand(n, 1, device=dev) / k * torch.sin(k * phase) * decay
    return x / x.std(1, keepdim=True).clamp(min=1e-9) + rand(n, 0, 0.3, dev) * knocks(n, dev, 3, 3, 60, 3000, 0.01, 0.06)


def beeps(n, dev):
    t = torch.arange(LENGTH, device=dev)[None] / 16000
    on = (torch.sin(2 * math.pi * rand(n, 0.5, 3, dev) * t) > 0).float()
    return tones(n, dev, 500, 3500, 3, 1.0) * on + rand(n, 0.05, 0.5, dev) * coloured(n, dev)


def murmur(n, dev):
    """Noise with the spectrum and the syllable beat of speech."""
    return shaped(n, dev, lambda hz: 1 / (1 + (hz / 500) ** 2.4) * (hz > 80)) * slow(n, dev, 3, 7, 0.8)


KINDS = [(coloured, 4), (peaked, 4), (hum, 3), (fan, 4), (boiling, 5), (dishes, 4), (clatter, 3), (thumps, 2), (water, 5), (tune, 3), (beeps, 1), (murmur, 2)]


def bank(size: int, dev) -> torch.Tensor:
    """[size][6 s], half precision, each of standard deviation 1."""
    total, made = sum(w for _, w in KINDS), []
    for kind, weight in KINDS:
        left = max(1, size * weight // total)
        while left > 0:
            n = min(32, left)
            x = kind(n, dev)
            made.append((x / x.std(1, keepdim=True).clamp(min=1e-9)).clamp(-30, 30).half())
            left -= n
    return torch.cat(made)
