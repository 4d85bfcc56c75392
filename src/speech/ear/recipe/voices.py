"""Debian's free synthesisers as callable voices, and the phones of a word as the ear writes them.

Packages (Debian 12, section main): flite, espeak-ng; scowl for filler words.
Held out, for tests alone: flite rms and every festival voice (festvox-kallpc16k, festvox-kdlpc16k, festvox-us-slt-hts).
SPEECH_ROOT, if set, is a folder into which the packages were unpacked (dpkg -x).
"""
import atexit
import ctypes
import functools
import io
import os
import pathlib
import random
import shutil
import tempfile
import wave

import numpy as np

from phrases import BROAD_A

SYS = os.environ.get("SPEECH_ROOT", "")
LIB = f"{SYS}/usr/lib/x86_64-linux-gnu"
SCOWL = f"{SYS}/usr/share/dict/scowl"

ACCENTS = {"en-us": 34, "en-gb": 20, "en-gb-x-rp": 12, "en-gb-scotland": 11, "en-gb-x-gbclan": 6, "en-gb-x-gbcwmd": 5, "en-029": 5, "en-us-nyc": 7}
VARIANTS = """m1 m2 m3 m4 m5 m6 m7 m8 f1 f2 f3 f4 f5 Alex Alicia Andrea Andy Annie Denis Diogo Gene Gene2 Henrique Hugo Jacky Lee Marco Mario
Michael Mike Nguyen adam anika antonio aunty belinda benjamin boris caleb croak david ed edward edward2 grandma grandpa gustave iven iven2
iven3 john kaukovalta klatt klatt2 klatt3 klatt4 klatt5 klatt6 linda marcelo max michel miguel norbert pablo paul pedro quincy rob robert
sandro shelby steph steph2 steph3 travis victor zac""".split()
# Made-up speakers a process, of which the library holds no more than some two hundred; each process draws its own from here on.
MADE_UP, LOT = 200, [0]
TRAINED = ["flite kal16", "flite kal", "flite slt", "flite awb"] + [f"espeak-ng {a} ({len(VARIANTS)} variants and {MADE_UP} made up a process)" for a in ACCENTS]

ALWAYS = {
    "a": "AH", "the": "DH AH", "of": "AH V", "to": "T UW", "and": "AE N D", "o": "OW", "i": "AY", "for": "F AO R", "or": "AO R", "um": "AH M",
    "an": "AE N", "at": "AE T", "per": "P ER", "deciliter": "D EH S IH L IY T ER",
}


def resample(x: np.ndarray, rate: int) -> np.ndarray:
    if rate == 16000:
        return x
    n = int(len(x) * 16000 / rate)
    spectrum = np.fft.rfft(x)
    want = n // 2 + 1
    spectrum = spectrum[:want] if len(spectrum) >= want else np.pad(spectrum, (0, want - len(spectrum)))
    return np.fft.irfft(spectrum, n) * (n / len(x))


def read_wav(data: bytes) -> np.ndarray:
    """16 kHz floats; tolerant of a length field that a pipe left open."""
    with wave.open(io.BytesIO(data)) as w:
        rate = w.getframerate()
    at = data.index(b"data") + 8
    raw = data[at : at + (len(data) - at) // 2 * 2]
    return resample(np.frombuffer(raw, "<i2").astype(np.float64), rate)


def trim(x: np.ndarray, margin: int = 640) -> np.ndarray:
    """Cuts silence at both ends, leaving 40 ms."""
    n = len(x) // 160
    if n < 5:
        return x
    level = np.sqrt((x[: n * 160].reshape(n, 160) ** 2).mean(1))
    loud = np.nonzero(level > max(0.01 * level.max(), 8))[0]
    if len(loud) == 0:
        return x[:0]
    return x[max(0, loud[0] * 160 - margin) : loud[-1] * 160 + 160 + margin]


class Wave(ctypes.Structure):
    _fields_ = [("type", ctypes.c_char_p), ("rate", ctypes.c_int), ("count", ctypes.c_int), ("channels", ctypes.c_int), ("samples", ctypes.POINTER(ctypes.c_short))]


class Voice(ctypes.Structure):
    _fields_ = [("name", ctypes.c_char_p), ("features", ctypes.c_void_p)]


@functools.cache
def flite_library():
    """Loaded into this process: starting a program for every word is ten times slower."""
    for part in ("flite", "flite_cmulex", "flite_usenglish"):
        lib = ctypes.CDLL(f"{LIB}/libflite{part[5:]}.so.1", ctypes.RTLD_GLOBAL)
        if part == "flite":
            core = lib
    core.flite_init()
    core.flite_text_to_wave.restype = ctypes.POINTER(Wave)
    core.flite_text_to_wave.argtypes = [ctypes.c_char_p, ctypes.c_void_p]
    core.flite_synth_text.restype = ctypes.c_void_p
    core.flite_synth_text.argtypes = [ctypes.c_char_p, ctypes.c_void_p]
    core.flite_feat_set_float.argtypes = [ctypes.c_void_p, ctypes.c_char_p, ctypes.c_float]
    for name, more in (("utt_relation", [ctypes.c_char_p]), ("relation_head", []), ("item_next", [])):
        f = getattr(core, name)
        f.restype, f.argtypes = ctypes.c_void_p, [ctypes.c_void_p, *more]
    core.item_feat_string.restype = ctypes.c_char_p
    core.item_feat_string.argtypes = [ctypes.c_void_p, ctypes.c_char_p]
    core.delete_wave.argtypes = core.delete_utterance.argtypes = [ctypes.c_void_p]
    return core


@functools.cache
def flite_voice(name: str):
    flite_library()
    register = getattr(ctypes.CDLL(f"{LIB}/libflite_cmu_us_{name}.so.1", ctypes.RTLD_GLOBAL), f"register_cmu_us_{name}")
    register.restype, register.argtypes = ctypes.POINTER(Voice), [ctypes.c_void_p]
    return register(None)


def flite(voice: str, text: str, stretch: float, f0: float, swing: float = 15) -> np.ndarray:
    core, v = flite_library(), flite_voice(voice)
    core.flite_feat_set_float(v.contents.features, b"duration_stretch", stretch)
    core.flite_feat_set_float(v.contents.features, b"int_f0_target_mean", f0)
    core.flite_feat_set_float(v.contents.features, b"int_f0_target_stddev", swing)
    wave = core.flite_text_to_wave(text.encode(), v)
    w = wave.contents
    x = resample(np.ctypeslib.as_array(w.samples, (w.count,)).astype(np.float64), w.rate)
    core.delete_wave(wave)
    return x


HEARD = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.c_void_p)


def made_up_voice(n: int) -> str:
    """A speaker nobody recorded, as a variant file of espeak-ng: throat, each formant, voice, breath and tremor drawn by lot."""
    r = random.Random(9000 + LOT[0] * MADE_UP + n)
    low = round(r.uniform(60, 190) * r.uniform(0.85, 1.15))
    throat = r.uniform(0.84, 1.24) * (1.05 if low > 140 else 0.98)
    lines = ["language variant", f"name made{n}", f"pitch {low} {round(low * r.uniform(1.1, 1.75))}"]
    for f in range(9):
        width = round(r.uniform(70, 170) if f < 4 else r.uniform(50, 170))
        lines.append(f"formant {f} {round(100 * throat * r.uniform(0.92, 1.08))} {round(r.uniform(70, 130) if f < 4 else r.uniform(30, 130))} {width}")
    if r.random() < 0.35:
        lines.append(f"flutter {r.randrange(2, 25)}")
    if r.random() < 0.35:
        lines.append(f"roughness {r.randrange(1, 8)}")
    if r.random() < 0.35:
        lines.append("breath " + " ".join(str(r.randrange(0, 9)) for _ in range(8)))
    if r.random() < 0.3:
        lines.append(f"echo {r.randrange(40, 180)} {r.randrange(5, 25)}")
    if r.random() < 0.5:
        lines.append(f"consonants {r.randrange(60, 150)} {r.randrange(60, 150)}")
    if r.random() < 0.5:
        lines.append(f"voicing {r.randrange(60, 130)}")
    if r.random() < 0.5:
        lines.append(f"tone 100 {r.randrange(150, 256)} 600 {r.randrange(120, 256)} 1200 {r.randrange(80, 256)} 2000 {r.randrange(60, 256)} 3000 {r.randrange(30, 256)}")
    if r.random() < 0.5:
        lines.append("stressAmp " + " ".join(str(r.randrange(12, 26)) for _ in range(8)))
    if r.random() < 0.5:
        lines.append("stressAdd " + " ".join(str(r.randrange(-40, 60)) for _ in range(8)))
    if r.random() < 0.25:
        lines.append(f"klatt {r.randrange(1, 5)}")
    return "\n".join(lines) + "\n"


@functools.cache
def espeak_data() -> str:
    """A folder with espeak-ng's own data and the made-up speakers beside its variants; each process has its own."""
    folder = tempfile.mkdtemp(prefix="made-up-")
    other = {"mb", *(n for n in os.listdir(f"{LIB}/espeak-ng-data/lang") if n != "gmw")}  # other languages take up places in its list of voices
    shutil.copytree(f"{LIB}/espeak-ng-data", f"{folder}/espeak-ng-data",
                    ignore=lambda d, names: [n for n in names if n in other or (n.endswith("_dict") and n != "en_dict")])
    for n in range(MADE_UP):
        pathlib.Path(f"{folder}/espeak-ng-data/voices/!v/made{n}").write_text(made_up_voice(n))
    atexit.register(shutil.rmtree, folder, True)
    return folder


@functools.cache
def espeak_library():
    for needed in ("libsonic.so.0",):
        ctypes.CDLL(f"{LIB}/{needed}", ctypes.RTLD_GLOBAL)
    core = ctypes.CDLL(f"{LIB}/libespeak-ng.so.1", ctypes.RTLD_GLOBAL)
    rate = core.espeak_Initialize(2, 0, espeak_data().encode(), 0)
    pieces: list[np.ndarray] = []

    @HEARD
    def take(samples, count, _):
        if samples and count > 0:
            pieces.append(np.ctypeslib.as_array(samples, (count,)).copy())
        return 0

    core.espeak_SetSynthCallback(take)
    core.espeak_Synth.argtypes = [ctypes.c_char_p, ctypes.c_size_t, ctypes.c_uint, ctypes.c_int, ctypes.c_uint, ctypes.c_uint, ctypes.c_void_p, ctypes.c_void_p]
    return core, rate, pieces, take


def espeak(voice: str, text: str, speed: int, pitch: int, gap: int, lift: int) -> np.ndarray:
    core, rate, pieces, _ = espeak_library()
    pieces.clear()
    if core.espeak_SetVoiceByName(voice.encode()) != 0:
        raise ValueError(voice)
    for parameter, value in ((1, speed), (3, pitch), (4, lift), (7, gap)):
        core.espeak_SetParameter(parameter, value, 0)
    data = text.encode() + b"\0"
    core.espeak_Synth(data, len(data), 0, 1, 0, 1, None, None)
    core.espeak_Synchronize()
    return resample(np.concatenate(pieces).astype(np.float64), rate)


def phones_of(word: str) -> list[str]:
    """US phones of one word from flite's dictionary and letter rules, without stress."""
    if word in ALWAYS:
        return ALWAYS[word].split()
    core, out = flite_library(), []
    utterance = core.flite_synth_text(word.encode(), flite_voice("kal16"))
    item = core.relation_head(core.utt_relation(utterance, b"Segment"))
    while item:
        out.append(core.item_feat_string(item, b"name").decode())
        item = core.item_next(item)
    core.delete_utterance(utterance)
    return [{"AX": "AH", "AXR": "ER"}.get(p.upper(), p.upper()) for p in out if p != "pau"]


def broad(word: str, phones: list[str]) -> list[str]:
    """The southern English form of the few words that have one."""
    if word not in BROAD_A:
        return phones
    old = "EY" if word.startswith("tomato") else "AE"
    at = phones.index(old) if old in phones else -1
    return phones if at < 0 else phones[:at] + ["AA"] + phones[at + 1 :]


def random_voice(rng):
    """(name, accent, how to say a text). Speeds from a slow old speaker to a brisk one."""
    kind = rng.random()
    if kind < 0.45:
        accent = rng.choices(list(ACCENTS), list(ACCENTS.values()))[0]
        variant = rng.choice(VARIANTS) if rng.random() < 0.45 else f"made{rng.randrange(MADE_UP)}"
        speed, pitch, lift = rng.randrange(90, 230), rng.randrange(10, 91), rng.randrange(10, 91)
        gap = rng.choice([0, 0, 0, 1, 3, 8])
        return f"espeak-ng {accent}", accent, lambda text: espeak(f"{'en' if accent == 'en-gb' else accent}+{variant}", text, speed, pitch, gap, lift)
    voice = "slt" if kind < 0.64 else "awb" if kind < 0.81 else "kal16" if kind < 0.95 else "kal"
    f0 = rng.uniform(140, 260) if voice == "slt" else rng.uniform(80, 190) if voice == "awb" else rng.uniform(70, 220)
    stretch = rng.choice([1.0, rng.uniform(0.75, 1.25), rng.uniform(0.85, 1.6)])
    swing = rng.choice([15, rng.uniform(2, 40)])
    return f"flite {voice}", "en-us", lambda text: flite(voice, text, stretch, f0, swing)
