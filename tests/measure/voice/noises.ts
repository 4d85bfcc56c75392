import { Dice } from "./dice.ts";
import { RATE, resample, speechPower } from "./wav.ts";

/** Written for this measure alone; none is taken from the recipe that trained the ear. */
export const NOISES = ["kettle", "fan", "tap", "dishes", "radio"] as const;
export type Noise = (typeof NOISES)[number];
/** Everything but the radio goes on without words in it. */
export const STEADY: readonly Noise[] = ["kettle", "fan", "tap", "dishes"];

const TAU = 2 * Math.PI;
/** Long enough that two utterances seldom meet the same second of it. */
const SECONDS = 24;
const LENGTH = SECONDS * RATE;

/** A resonance of two poles, driven sample by sample, its frequency free to move. */
function resonance(width: number): (input: number, hz: number) => number {
  let a = 0;
  let b = 0;
  const r = Math.exp((-Math.PI * width) / RATE);
  return (input, hz) => {
    const y = (1 - r) * input + 2 * r * Math.cos((TAU * hz) / RATE) * a - r * r * b;
    b = a;
    a = y;
    return y;
  };
}

/** Water from the first singing to the full boil: the roar climbs and sinks in pitch again, bubbles beat against the bottom, the lid trembles. */
function kettle(dice: Dice): Float32Array {
  const x = new Float32Array(LENGTH);
  const roar = resonance(500);
  const hiss = resonance(1800);
  const low = resonance(120);
  let bubble = 0;
  for (let i = 0; i < LENGTH; i++) {
    const heat = i / LENGTH;
    const hz = heat < 0.7 ? 350 + 1500 * heat : 1400 - 2200 * (heat - 0.7);
    if (dice.roll() < (8 + 70 * heat) / RATE) bubble = dice.between(0.5, 1.5);
    bubble *= 0.9985;
    const n = dice.between(-1, 1);
    const lid = heat > 0.6 && (i * 11) % RATE < 160 ? dice.between(-0.12, 0.12) : 0;
    x[i] = roar(n, hz) * (0.6 + heat) + hiss(n, 3600) * (0.6 + 2.4 * heat) + low(dice.between(-1, 1), 140) * bubble * 2.5 + lid;
  }
  return x;
}

/** Five blades, a motor that hums, air that breathes with each turn and a head that swings slowly to and fro. */
function fan(dice: Dice): Float32Array {
  const x = new Float32Array(LENGTH);
  const air = resonance(900);
  const rush = resonance(3000);
  let turn = 0;
  let wander = 0;
  for (let i = 0; i < LENGTH; i++) {
    wander = 0.9999 * wander + dice.between(-0.00004, 0.00004) * RATE * 0.05;
    turn += (18.3 + wander) / RATE;
    const blades = 1 + 0.35 * Math.sin(TAU * 5 * turn);
    const swing = 1 + 0.5 * Math.sin((TAU * i) / (9 * RATE));
    const hum =
      0.05 * Math.sin(TAU * 120 * (i / RATE)) +
      0.02 * Math.sin(TAU * 240 * (i / RATE)) +
      0.04 * Math.sin(TAU * 5 * turn) +
      0.03 * Math.sin(TAU * 10 * turn);
    x[i] = swing * blades * (air(dice.between(-1, 1), 300) * 2 + rush(dice.between(-1, 1), 1500)) * 0.5 + hum;
  }
  return x;
}

/** A jet on steel: bright spray, a drumming sink, and drops that each ring upwards as their hole closes. */
function tap(dice: Dice): Float32Array {
  const x = new Float32Array(LENGTH);
  const spray = resonance(3500);
  const steel = [resonance(60), resonance(80), resonance(110)];
  let before = 0;
  for (let i = 0; i < LENGTH; i++) {
    const n = dice.between(-1, 1);
    const gust = 1 + 0.25 * Math.sin(TAU * 0.7 * (i / RATE)) + 0.15 * Math.sin(TAU * 2.3 * (i / RATE));
    x[i] = gust * (spray(n - before, 5200) + 0.12 * steel.reduce((sum, plate, k) => sum + plate(n, 420 + 610 * k), 0));
    before = 0.7 * n;
  }
  for (let drop = 0; drop < 45 * SECONDS; drop++) {
    const at = dice.whole(0, LENGTH - 1);
    const hz = dice.between(500, 2600);
    const length = Math.round(dice.between(0.006, 0.03) * RATE);
    const size = dice.between(0.05, 0.3);
    for (let i = 0; i < length && at + i < LENGTH; i++) {
      const t = i / RATE;
      x[at + i] = (x[at + i] ?? 0) + size * Math.exp((-4 * i) / length) * Math.sin(TAU * hz * t * (1 + 6 * t));
    }
  }
  return x;
}

/** Plates, cups and cutlery put down and knocked together, each with the crooked overtones of its own piece; water and a cloth between. */
function dishes(dice: Dice): Float32Array {
  const x = new Float32Array(LENGTH);
  const cloth = resonance(1500);
  let rub = 0;
  for (let i = 0; i < LENGTH; i++) {
    if (dice.roll() < 1.2 / RATE) rub = 1;
    rub *= 0.9998;
    x[i] = cloth(dice.between(-1, 1), 2300) * (0.05 + 0.25 * rub);
  }
  const pieces = Array.from({ length: 14 }, () => {
    const base = dice.between(700, 3200);
    return Array.from({ length: 7 }, (_, k) => ({
      hz: base * (1 + k * dice.between(0.45, 0.95)),
      ring: dice.between(0.01, 0.14),
      loud: dice.between(0.2, 1) / (1 + k),
    }));
  });
  let at = 0;
  while (at < LENGTH) {
    const piece = dice.pick(pieces);
    const size = Math.exp(dice.normal() * 0.7) * 0.4;
    for (const { hz, ring, loud } of piece) {
      if (hz > RATE / 2 - 200) continue;
      for (let i = 0; i < ring * 5 * RATE && at + i < LENGTH; i++) {
        const t = i / RATE;
        x[at + i] = (x[at + i] ?? 0) + size * loud * Math.exp(-t / ring) * Math.sin(TAU * hz * t);
      }
    }
    at += Math.round(dice.roll() < 0.35 ? dice.between(0.03, 0.12) * RATE : dice.between(0.15, 0.6) * RATE);
  }
  return x;
}

/** A set in the next room: two people who talk into each other, music under them, all through a small loudspeaker. */
function radio(dice: Dice, sentences: readonly Float32Array[]): Float32Array {
  const x = new Float32Array(LENGTH);
  for (let talker = 0; talker < 2; talker++) {
    let at = Math.round(dice.between(0, 0.5) * RATE);
    while (at < LENGTH) {
      const said = dice.pick(sentences);
      const loud = 0.1 / Math.sqrt(speechPower(said) + 1e-9) / (1 + 0.6 * talker);
      for (let i = 0; i < said.length && at + i < LENGTH; i++) x[at + i] = (x[at + i] ?? 0) + loud * (said[i] ?? 0);
      at += said.length + Math.round(dice.between(0.05, 0.5 + talker) * RATE);
    }
  }
  let chord = [220, 277, 330];
  const low = resonance(1600);
  for (let i = 0; i < LENGTH; i++) {
    if (i % Math.round(1.6 * RATE) === 0) chord = chord.map(() => 110 * 2 ** (dice.whole(0, 24) / 12));
    const beat = Math.exp(-((i % (0.4 * RATE)) / RATE) * 5);
    const music = chord.reduce((sum, hz) => sum + Math.sin(TAU * hz * (i / RATE)) + 0.4 * Math.sin(TAU * 2 * hz * (i / RATE)), 0);
    const all = (x[i] ?? 0) + 0.012 * music * (0.4 + beat) + 0.02 * beat * dice.between(-1, 1);
    x[i] = 2 * low(all, 1100) + 0.5 * all;
  }
  return x;
}

/** Two beds: each noise as it is, and as the same kitchen sounds from a smaller, brighter room (played a tenth faster). */
export function bed(noise: Noise, sentences: readonly Float32Array[]): Float32Array {
  const dice = new Dice(`bed of ${noise}`);
  const once = { kettle, fan, tap, dishes }[noise as "kettle"]?.(dice) ?? radio(dice, sentences);
  const faster = resample(once, RATE * 1.1, RATE);
  const both = new Float32Array(once.length + faster.length);
  both.set(once);
  both.set(faster, once.length);
  return both;
}
