"""The net: log-mel features, a few convolutions, two two-way GRUs, one phone score a 40 ms frame (CTC, blank first).

Every shape and constant here is repeated in public/ear/ear.json by export.py; the app reads it from there.
"""
import math

import torch
from torch import nn
from torch.nn import functional as F

PHONES = ["-"] + (
    "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split()
)
MEL = {
    "frame": 400, "hop": 160, "fft": 512, "bands": 40, "lowHz": 60, "highHz": 7600,
    "preEmphasis": 0.97, "floor": 1e-6, "window": "hann", "scale": "htk",
    # Hann is periodic (divides by 400); triangles are straight in Hz; frames begin at 0 and are never padded;
    # the deviation divides by the number of frames.
    "windowPeriodic": True, "slopes": "hz", "deviation": "population",
}
RATE = 16000


def mel_points(low: float, high: float, n: int) -> list[float]:
    to = lambda f: 2595.0 * math.log10(1.0 + f / 700.0)
    a, b = to(low), to(high)
    return [700.0 * (10 ** ((a + (b - a) * i / (n + 1)) / 2595.0) - 1.0) for i in range(n + 2)]


def mel_matrix(warp=lambda hz: hz) -> torch.Tensor:
    """[257 bins][40 bands]. A warp reads each band elsewhere, as if throat and mouth had another length and shape (training only)."""
    points = [min(warp(p), 7990.0) for p in mel_points(MEL["lowHz"], MEL["highHz"], MEL["bands"])]
    hz = torch.arange(MEL["fft"] // 2 + 1, dtype=torch.float64) * RATE / MEL["fft"]
    columns = []
    for i in range(MEL["bands"]):
        lo, mid, hi = points[i : i + 3]
        up = (hz - lo) / max(mid - lo, 1e-3)
        down = (hi - hz) / max(hi - mid, 1e-3)
        columns.append(torch.clamp(torch.minimum(up, down), min=0.0))
    return torch.stack(columns, 1).float()


def power(x: torch.Tensor) -> torch.Tensor:
    """x [batch][samples] in -1..1 -> power spectrum [batch][frames][257]."""
    y = torch.cat([x[:, :1], x[:, 1:] - MEL["preEmphasis"] * x[:, :-1]], 1)
    frames = y.unfold(1, MEL["frame"], MEL["hop"])
    window = torch.hann_window(MEL["frame"], periodic=True, device=x.device)
    return torch.fft.rfft(frames * window, n=MEL["fft"]).abs().square()


def normal(mel: torch.Tensor) -> torch.Tensor:
    f = torch.log(mel + MEL["floor"])
    return (f - f.mean(1, keepdim=True)) / (f.std(1, keepdim=True, unbiased=False) + 1e-3)


def features(x: torch.Tensor) -> torch.Tensor:
    return normal(power(x) @ mel_matrix().to(x.device))


CHANNELS, HIDDEN, STRIDE = 128, 144, 4
LAYERS = [
    {"kind": "conv", "name": "c1", "in": 40, "out": CHANNELS, "width": 7, "stride": STRIDE, "activation": "relu"},
    {"kind": "residual", "name": "r1", "channels": CHANNELS, "width": 5, "dilation": 1},
    {"kind": "residual", "name": "r2", "channels": CHANNELS, "width": 5, "dilation": 1},
    {"kind": "residual", "name": "r3", "channels": CHANNELS, "width": 5, "dilation": 2},
    {"kind": "bigru", "name": "g1", "in": CHANNELS, "hidden": HIDDEN},
    {"kind": "bigru", "name": "g2", "in": 2 * HIDDEN, "hidden": HIDDEN},
    {"kind": "linear", "name": "out", "in": 2 * HIDDEN, "out": len(PHONES)},
]


class Ear(nn.Module):
    def __init__(self, dropout: float = 0.0):
        super().__init__()
        self.dropout = dropout
        for l in LAYERS:
            if l["kind"] == "conv":
                m = nn.Conv1d(l["in"], l["out"], l["width"], stride=l["stride"], padding=l["width"] // 2)
            elif l["kind"] == "residual":
                d = l["dilation"]
                m = nn.Conv1d(l["channels"], l["channels"], l["width"], dilation=d, padding=d * (l["width"] // 2))
            elif l["kind"] == "bigru":
                m = nn.GRU(l["in"], l["hidden"], batch_first=True, bidirectional=True)
            else:
                m = nn.Linear(l["in"], l["out"])
            self.add_module(l["name"], m)

    def forward(self, feats: torch.Tensor) -> torch.Tensor:
        """feats [batch][frames][40] -> log probabilities [batch][ceil(frames/4)][40]."""
        x = feats.transpose(1, 2)
        for l in LAYERS:
            m = getattr(self, l["name"])
            if l["kind"] == "conv":
                x = F.relu(m(x))
            elif l["kind"] == "residual":
                x = x + F.relu(m(F.dropout(x, self.dropout, self.training)))
            elif l["kind"] == "bigru":
                x = x.transpose(1, 2) if l["name"] == "g1" else x
                x = F.dropout(m(x)[0], self.dropout, self.training)
            else:
                x = m(x)
        return F.log_softmax(x.float(), -1)
