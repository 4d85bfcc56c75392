"""From clean clips to what a kitchen tablet hears, a whole batch at a time on the device.

Speed and pace within a word, throat length and the place of each formant, tremor of pitch and loudness, hoarseness, mumbling, tilt, cut edges,
rooms, other talkers, noises, weak and clipped sound.
"""
import math

import numpy as np
import torch

from net import MEL, mel_matrix, normal, power

FLOOR_DB = -58.0


def throat_of(rng, far: float):
    """Another throat: all formants up or down by up to a fifth, and each region of them a little for itself."""
    knots = np.array([0, 250, 500, 900, 1500, 2300, 3300, 4600, 8000.0])
    whole = rng.uniform(-0.18, 0.19)
    own = rng.normal(0, rng.choice([0.01, 0.05]), len(knots))
    moved = knots * np.exp(far * (whole + own))
    return lambda hz: float(np.interp(hz, knots, moved))


class Kitchen:
    def __init__(self, spoken, noise, dev, throat: float = 1.0, loud: bool = False):
        """loud: more of the noises within 10 dB of the speech."""
        self.spoken, self.noise, self.dev, self.loud = spoken, noise, dev, loud
        self.wander(throat)

    def wander(self, throat: float):
        """How far speed and throats wander: 1 is up to a fifth each way, for most of the training."""
        self.throat = throat
        rng = np.random.default_rng(5)
        self.warps = torch.stack([mel_matrix(throat_of(rng, throat)) for _ in range(400)]).to(self.dev)

    def u(self, n, lo, hi):
        return torch.rand(n, 1, device=self.dev) * (hi - lo) + lo

    def some(self, n, share):
        return (torch.rand(n, 1, device=self.dev) < share).float()

    def read(self, which, hard: bool, close: bool):
        """Clips placed into a common length with silence around, at a random speed (pitch and throat move with it).
        close: all brought to one length and cut near the speech, as the app's endpoint does it, with up to 0.7 s of room in all."""
        n, dev = len(which), self.dev
        rate = torch.exp(self.throat * self.u(n, -0.2, 0.2) * self.some(n, 0.75)) if hard else torch.ones(n, 1, device=dev)
        lengths = self.spoken.lengths[which][:, None]
        if close:
            pace = math.exp(self.throat * float(torch.empty(1).uniform_(-0.15, 0.15))) if hard else 1.0
            rate = (pace * lengths / lengths.median()).clamp(0.75, 1.33)
        spoken = lengths / rate
        if close:
            total = int(spoken.max().item() + torch.empty(1).uniform_(320, 11200).item()) // 160 * 160 + 240
            lead = self.u(n, 0.15, 0.75) * (total - spoken)
        else:
            lead, tail = self.u(n, 160, 9600), self.u(n, 160, 9600)
            total = int((spoken + lead + tail).max().item()) // 160 * 160 + 240
            lead = lead + torch.rand(n, 1, device=dev) * (total - spoken - lead - tail).clamp(min=0)
        t = torch.arange(total, device=dev)[None].float()
        at = (t - lead) * rate
        if hard:  # tremor of pitch
            f, depth = self.u(n, 4, 8), self.u(n, 0.0, 0.03) * self.some(n, 0.2)
            at = at + depth * 16000 / (2 * math.pi * f) * torch.sin(2 * math.pi * f * t / 16000)
        cut = self.some(n, 0.25) if hard else torch.zeros(n, 1, device=dev)  # the microphone opened late or closed early
        inside = ((at >= 1 + cut * self.u(n, 0, 1500)) & (at < lengths - 3 - cut * self.u(n, 0, 1800))).float()
        at = torch.minimum(at.clamp(min=1), (lengths - 3).clamp(min=1))
        i = at.floor()
        w = at - i
        base = self.spoken.starts[which][:, None] + i.long()
        p0, p1, p2, p3 = (self.spoken.audio[base + k].float() for k in (-1, 0, 1, 2))
        x = p1 + 0.5 * w * (p2 - p0 + w * (2 * p0 - 5 * p1 + 4 * p2 - p3 + w * (3 * (p1 - p2) + p3 - p0)))
        x = x * inside
        level = ((x * x).sum(1, keepdim=True) / inside.sum(1, keepdim=True).clamp(min=1)).sqrt()
        return x / level.clamp(min=1e-6), lead, spoken

    def hoarse(self, x):
        """Breathy share: the same spectrum with random phases."""
        n = len(x)
        window = torch.hann_window(256, device=self.dev)
        s = torch.stft(x, 256, 64, window=window, return_complex=True)
        r = s.abs() * torch.exp(1j * 2 * math.pi * torch.rand(s.shape, device=self.dev))
        y = torch.istft(r, 256, 64, window=window, length=x.shape[1])
        share = self.u(n, 0.2, 0.9)
        return (1 - share) * x + share * y * 1.6

    def rooms(self, n, total):
        """Filter of a room and a microphone, in the frequency domain of twice the length."""
        size = 1 << (total + 12000 - 1).bit_length()
        t = torch.arange(12000, device=self.dev)[None] / 16000
        decay = self.u(n, 0.08, 0.7)
        tail = torch.randn(n, 12000, device=self.dev) * torch.exp(-6.9 * t / decay) * (t > self.u(n, 0.002, 0.02))
        tail = tail / tail.square().sum(1, keepdim=True).sqrt().clamp(min=1e-6)
        ir = tail * self.u(n, 0.1, 1.2) * self.some(n, 0.5)
        ir[:, 0] += 1.0
        hz = torch.linspace(0, 8000, size // 2 + 1, device=self.dev)[None]
        tilt = self.u(n, -5, 5) * self.some(n, 0.7)  # dB an octave around 1 kHz, held within the band of speech
        gain = tilt * torch.log2(hz.clamp(120, 7000) / 1000)
        for _ in range(2):
            gain = gain + self.u(n, -9, 9) * self.some(n, 0.4) * torch.exp(-((torch.log2(hz.clamp(min=50) / self.u(n, 150, 6000)) / self.u(n, 0.3, 1.0)) ** 2))
        low = self.some(n, 0.3) * self.u(n, 80, 350)
        gain = gain - 24 * torch.sigmoid((low - hz) / 30) * (low > 0)
        high = 8000 - self.some(n, 0.2) * self.u(n, 0, 4600)
        gain = gain - 40 * torch.sigmoid((hz - high) / 100) * (high < 8000)
        return torch.fft.rfft(ir, size) * 10 ** (gain / 20), size

    def paced(self, mel):
        """Sounds drawn out and hurried within an utterance, the pitch unchanged: frames are read at an uneven pace."""
        n, frames, bands = mel.shape
        count = int(frames * float(torch.empty(1).uniform_(0.85, 1.3)))
        t = torch.arange(count, device=self.dev)[None] / 100
        pace = torch.zeros(n, count, device=self.dev)
        for lo, hi in ((0.3, 1.5), (1.5, 4)):
            pace = pace + self.u(n, 0, 0.35) * torch.sin(2 * math.pi * (self.u(n, lo, hi) * t + self.u(n, 0, 1)))
        at = torch.exp(pace * self.some(n, 0.6)).cumsum(1)
        at = at / at[:, -1:] * (frames - 1.001)
        i = at.floor()
        w = (at - i)[:, :, None]
        i = i.long()[:, :, None].expand(-1, -1, bands)
        return (1 - w) * mel.gather(1, i) + w * mel.gather(1, i + 1)

    def mumbled(self, mel):
        """Formants sharper or flatter than they were, and movements smeared, as synthesisers and old mouths do it."""
        n = len(mel)
        f = torch.log(mel + MEL["floor"])
        smooth = torch.nn.functional.avg_pool1d(torch.nn.functional.pad(f, (4, 4), mode="replicate"), 9, 1)
        contrast = torch.exp(self.u(n, -0.4, 0.3) * self.some(n, 0.4))[:, :, None]
        f = smooth + contrast * (f - smooth)
        slow = torch.nn.functional.avg_pool1d(torch.nn.functional.pad(f.transpose(1, 2), (2, 2), mode="replicate"), 5, 1).transpose(1, 2)
        share = (self.u(n, 0.2, 0.9) * self.some(n, 0.15))[:, :, None]
        return torch.exp((1 - share) * f + share * slow)

    def batch(self, which, hard: float, close: bool = False):
        """which: clip numbers. hard 0..1: share of the noises in use. Gives features [n][frames][40]."""
        n = len(which)
        x, lead, spoken = self.read(which, hard > 0, close)
        total = x.shape[1]
        t = torch.arange(total, device=self.dev)[None].float()
        if hard > 0:
            k = max(1, n // 8)
            x[:k] = self.hoarse(x[:k])
            f, depth = self.u(n, 3, 8), self.u(n, 0, 0.6) * self.some(n, 0.2)
            x = x * (1 + depth * torch.sin(2 * math.pi * f * t / 16000 + self.u(n, 0, 6.28)))
            drift = self.u(n, -8, 8) * self.some(n, 0.3)  # a voice that fades or rises
            x = x * 10 ** (drift * ((t - lead) / spoken).clamp(0, 1) / 20)
            h, size = self.rooms(n, total)
            dry = x
            x = torch.fft.irfft(torch.fft.rfft(x, size) * h, size)[:, :total]
            x = x / ((x * x).sum(1, keepdim=True) / spoken).sqrt().clamp(min=1e-6)
            noise = torch.zeros_like(x)
            # other talkers: one to four, quieter when they are few
            talk = torch.zeros_like(x)
            many = torch.randint(1, 5, (n, 1), device=self.dev)
            for j in range(4):
                other = dry[torch.randperm(n, device=self.dev)]
                shift = int(torch.randint(0, total, (1,)).item())
                talk = talk + other.roll(shift, 1) * (many > j) * self.u(n, 0.5, 1.2)
            g, gsize = self.rooms(n, total)
            talk = torch.fft.irfft(torch.fft.rfft(talk, gsize) * g, gsize)[:, :total]
            talk = talk / talk.square().mean(1, keepdim=True).sqrt().clamp(min=1e-6)
            snr = torch.where(many == 1, self.u(n, 7, 25), self.u(n, 4, 22)) + (1 - hard) * 15
            noise = noise + talk * 10 ** (-snr / 20) * self.some(n, 0.25 * hard)
            for share in (0.75, 0.25):
                pick = self.noise[torch.randint(0, len(self.noise), (n,), device=self.dev)].float()
                start = torch.randint(0, pick.shape[1], (n, 1), device=self.dev)
                piece = pick.gather(1, (start + torch.arange(total, device=self.dev)[None]) % pick.shape[1])
                piece = piece / piece.square().mean(1, keepdim=True).sqrt().clamp(min=1e-3)
                near = self.u(n, 0, 11) if self.loud else self.u(n, 2, 18)
                snr = torch.where(torch.rand(n, 1, device=self.dev) < 0.6, near, self.u(n, 0, 30)) + (1 - hard) * 15
                noise = noise + piece * 10 ** (-snr / 20) * self.some(n, share)
            x = x + noise
            clip = 1.0 + self.some(n, 0.06) * self.u(n, 1, 5)  # too near the microphone
            top = x.abs().amax(1, keepdim=True)
            x = torch.where(clip > 1, (x * clip).clamp(-top, top), x)
        db = torch.where(torch.rand(n, 1, device=self.dev) < 0.8, self.u(n, -30, -14), self.u(n, -42, -28))
        x = (x * 10 ** (db / 20)).clamp(-1, 1)
        x = x + torch.randn_like(x) * 10 ** ((FLOOR_DB + self.u(n, -4, 4)) / 20)
        p = power(x)
        if hard <= 0:
            return normal(p @ mel_matrix().to(self.dev))
        w = torch.randint(0, len(self.warps), (n,), device=self.dev)
        mel = self.mumbled(self.paced(torch.bmm(p, self.warps[w])))
        feats = normal(mel)
        if hard > 0:  # now and then a few bands are missing
            band = torch.arange(MEL["bands"], device=self.dev)[None]
            start = torch.randint(0, 40, (n, 1), device=self.dev)
            hole = (band >= start) & (band < start + torch.randint(1, 7, (n, 1), device=self.dev)) & (self.some(n, 0.2) > 0)
            feats = feats.masked_fill(hole[:, None, :], 0.0)
        return feats
