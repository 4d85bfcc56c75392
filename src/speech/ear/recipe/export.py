"""Writes public/ear/ear.json, ear-a.bin, ear-b.bin and tests/unit/speech/ear/golden.json from checkpoints.

python3 export.py [a.pt [b.pt]]      no checkpoint: random weights, for testing the forward pass alone.
Weights are int8 with one scale a row; biases stay float32. The golden vector is made from the rounded weights.
"""
import hashlib
import json
import pathlib
import struct
import sys

import torch

from net import LAYERS, MEL, PHONES, RATE, Ear, features

ROOT = pathlib.Path(__file__).resolve().parents[4]
OUT = ROOT / "public" / "ear"
GOLDEN = ROOT / "tests" / "unit" / "speech" / "ear" / "golden.json"


def named(layer: dict, ear: Ear):
    """The tensors of a layer under the names of the file."""
    m = getattr(ear, layer["name"])
    if layer["kind"] == "bigru":
        for back in ("", "_reverse"):
            for short in ("weight_ih", "weight_hh", "bias_ih", "bias_hh"):
                yield f"{layer['name']}.{short.replace('weight', 'w').replace('bias', 'b')}{back}", getattr(m, f"{short}_l0{back}")
    else:
        yield f"{layer['name']}.weight", m.weight
        yield f"{layer['name']}.bias", m.bias


def rounded(ear: Ear):
    """Rounds the weights in place to int8 steps; gives (name, tensor, int8 or None, scale or None)."""
    for layer in LAYERS:
        for name, p in named(layer, ear):
            if p.dim() == 1:
                yield name, p.data, None, None
                continue
            flat = p.data.reshape(p.shape[0], -1)
            scale = (flat.abs().amax(1) / 127).clamp(min=1e-12)
            q = torch.round(flat / scale[:, None]).clamp(-127, 127).to(torch.int8)
            p.data.copy_((q.float() * scale[:, None]).reshape(p.shape))
            yield name, p.data, q, scale


def write_member(ear: Ear, letter: str) -> dict:
    data, tensors = bytearray(), []

    def put(name, shape, kind, raw, **more):
        tensors.append({"name": name, "shape": list(shape), "type": kind, "offset": len(data), **more})
        data.extend(raw)
        data.extend(b"\0" * (-len(data) % 4))

    for name, p, q, scale in rounded(ear):
        if q is None:
            put(name, p.shape, "float32", p.numpy().astype("<f4").tobytes())
        else:
            put(name, p.shape, "int8", q.numpy().tobytes(), scale=f"{name}.scale")
            put(f"{name}.scale", scale.shape, "float32", scale.numpy().astype("<f4").tobytes())
    file = f"ear-{letter}.bin"
    (OUT / file).write_bytes(data)
    return {"file": file, "sha256": hashlib.sha256(data).hexdigest(), "bytes": len(data), "layers": LAYERS, "tensors": tensors}


def golden_samples() -> list[int]:
    """0.6 s that has a bit of everything: gliding tone, clicks, a soft hiss. No random library, so it never changes."""
    state, out = 12345, []
    for n in range(9600):
        state = (1103515245 * state + 12345) % 2**31
        hiss = (state / 2**31 - 0.5) * 900
        t = n / RATE
        glide = 6000 * torch.sin(torch.tensor(2 * 3.14159265 * (150 * t + 900 * t * t))).item() * (1 if (n // 1600) % 2 else 0.2)
        out.append(int(round(hiss + glide + (9000 if n % 2400 == 0 else 0))))
    return out


def main(paths: list[str]) -> None:
    OUT.mkdir(parents=True, exist_ok=True)
    GOLDEN.parent.mkdir(parents=True, exist_ok=True)
    members, golden, recipe = [], None, {"seed": 0, "steps": 0, "hoursOfSpeech": 0, "voices": []}
    for letter, path in zip("ab", paths or [None]):
        torch.manual_seed(1)
        ear = Ear().eval()
        if path:
            kept = torch.load(path, map_location="cpu")
            ear.load_state_dict(kept["model"])
            recipe = kept["recipe"] if letter == "a" else {**recipe, "seedB": kept["recipe"]["seed"], "stepsB": kept["recipe"]["steps"]}
        members.append(write_member(ear, letter))
        if golden is None:
            samples = golden_samples()
            with torch.no_grad():
                f = features(torch.tensor(samples).float()[None] / 32768)
                log_probs = ear(f)[0]
            golden = {
                "member": 0, "samples": samples,
                "features": [[round(v, 5) for v in row] for row in f[0, :3].tolist()],
                "logProbs": [[round(v, 5) for v in row] for row in log_probs.tolist()],
            }
    before = json.loads((OUT / "ear.json").read_text()) if (OUT / "ear.json").exists() else {}
    manifest = {
        "format": 1, "sampleRate": RATE, "mel": MEL, "phones": PHONES, "members": members,
        "recipe": recipe, "figures": before.get("figures", {}) if "--keep-figures" in sys.argv else {},
    }
    (OUT / "ear.json").write_text(json.dumps(manifest, indent=1) + "\n")
    GOLDEN.write_text(json.dumps(golden, separators=(",", ":")) + "\n")
    print({m["file"]: m["bytes"] for m in members}, "parameters", sum(p.numel() for p in Ear().parameters()))


if __name__ == "__main__":
    main([a for a in sys.argv[1:] if not a.startswith("--")])
