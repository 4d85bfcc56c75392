import { describe, expect, it } from "vitest";
import { BLOCK, CLOSING_MS, Endpoint, LOOK_MS } from "#speech/ear/endpoint.ts";

const RATE = 16_000;
const BLOCK_MS = (BLOCK / RATE) * 1000;

/** A repeatable stand-in for chance, -1 to 1. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 31 - 1;
  };
}

interface Room {
  seconds: number;
  /** From and to, in seconds, of what is said. */
  said: readonly (readonly [number, number])[];
  /** Peak of the kettle's noise; speech peaks at 0.3. */
  noise: number;
}

/** Speech-like sound (a buzz with syllables four times a second) in the noise of a kettle: hiss, hum, slow swell. */
function sound({ seconds, said, noise }: Room): Float32Array {
  const next = chance(7);
  let slow = 0;
  return Float32Array.from({ length: seconds * RATE }, (_, i) => {
    const t = i / RATE;
    slow = 0.7 * slow + 0.3 * next();
    const kettle = noise * (slow * 1.5 + 0.15 * Math.sin(2 * Math.PI * 100 * t)) * (1 + 0.1 * Math.sin(2 * Math.PI * 0.7 * t));
    const speaks = said.some(([from, to]) => t >= from && t < to);
    const syllable = 0.7 + 0.3 * Math.cos(2 * Math.PI * 4 * t);
    const buzz = [1, 3, 6, 11, 17].reduce((sum, k) => sum + Math.sin(2 * Math.PI * 130 * k * t), 0) / 5;
    return kettle + (speaks ? 0.5 * syllable * buzz : 0);
  });
}

const power = (s: Float32Array): number => s.reduce((sum, v) => sum + v * v, 0) / s.length;

/** Peak of the noise at which speech is so many decibels above it. */
function noiseAt(decibels: number): number {
  const speech = power(sound({ seconds: 2, said: [[0, 2]], noise: 0 }));
  return Math.sqrt(speech / power(sound({ seconds: 2, said: [], noise: 1 })) / 10 ** (decibels / 10));
}

interface Found {
  begun: number[];
  said: { atMs: number; ms: number; cut: boolean }[];
  paused: { atMs: number; ms: number }[];
  goesOn: number;
  tooLoud: number;
}

/** `patience`: silence that ends an utterance; `known`: what it is once a pause was looked at, so many ms later. */
function listenTo(samples: Float32Array, patience?: number, known?: { ms: number; after: number }): Found {
  const endpoint = new Endpoint();
  if (patience !== undefined) endpoint.closeUsually(patience);
  const found: Found = { begun: [], said: [], paused: [], goesOn: 0, tooLoud: 0 };
  let knownAt = Number.POSITIVE_INFINITY;
  for (let at = 0; at + BLOCK <= samples.length; at += BLOCK) {
    const ended = endpoint.take(samples.slice(at, at + BLOCK));
    const atMs = ((at + BLOCK) / RATE) * 1000;
    if (ended?.kind === "paused") {
      found.paused.push({ atMs, ms: (ended.samples.length / RATE) * 1000 });
      knownAt = atMs + (known?.after ?? 0);
    }
    if (ended?.kind === "goes on") found.goesOn++;
    if (known !== undefined && atMs >= knownAt) {
      endpoint.closeAfter(known.ms);
      knownAt = Number.POSITIVE_INFINITY;
    }
    if (ended?.kind === "begun") found.begun.push(atMs);
    if (ended?.kind === "said") found.said.push({ atMs, ms: (ended.samples.length / RATE) * 1000, cut: ended.cut });
    if (ended?.kind === "too loud") found.tooLoud++;
  }
  return found;
}

const rooms: readonly (readonly [string, number])[] = [
  ["a quiet room", 0.0005],
  ["a kettle 20 dB below", noiseAt(20)],
  ["a kettle 10 dB below", noiseAt(10)],
];

describe("where an utterance begins and ends", () => {
  it.each(rooms)("is found within a tenth of a second in %s", (_, noise) => {
    const { begun, said } = listenTo(sound({ seconds: 8, said: [[4, 5.2]], noise }));
    expect(said).toHaveLength(1);
    expect(Math.abs((begun[0] ?? 0) - 4000)).toBeLessThanOrEqual(100);
    const ended = (said[0]?.atMs ?? 0) - CLOSING_MS;
    expect(Math.abs(ended - 5200)).toBeLessThanOrEqual(100);
    expect(said[0]?.cut).toBe(false);
  });

  it.each(rooms)("leaves a little of the room before the first sound in %s", (_, noise) => {
    const { said } = listenTo(sound({ seconds: 8, said: [[4, 5.2]], noise }));
    const from = (said[0]?.atMs ?? 0) - (said[0]?.ms ?? 0);
    expect(from).toBeGreaterThanOrEqual(4000 - 350);
    expect(from).toBeLessThanOrEqual(4000 - 150);
  });

  it.each(rooms)("tells what was said so far well before it closes, in %s", (_, noise) => {
    const { paused, said } = listenTo(sound({ seconds: 8, said: [[4, 5.2]], noise }));
    expect(paused).toHaveLength(1);
    expect(Math.abs((paused[0]?.atMs ?? 0) - LOOK_MS - 5200)).toBeLessThanOrEqual(100);
    expect((said[0]?.atMs ?? 0) - (paused[0]?.atMs ?? 0)).toBeGreaterThanOrEqual(CLOSING_MS - LOOK_MS);
    expect(said[0]?.ms ?? 0).toBeGreaterThan(paused[0]?.ms ?? 0);
  });

  it.each(rooms)("keeps a number with a breath in it whole where a number may go on, in %s", (_, noise) => {
    const inTwo = sound({ seconds: 9, said: [[4, 4.7], [5.2, 5.8]], noise }); // biome-ignore format: pairs
    expect(listenTo(inTwo).said).toHaveLength(2);
    const { paused, said, goesOn } = listenTo(inTwo, 700);
    expect([paused.length, goesOn, said.length]).toEqual([2, 1, 1]);
    expect(said[0]?.ms ?? 0).toBeGreaterThan(5800 - 4000);
  });

  it("closes soon once the answer is known to be whole, and at once where that is known late", () => {
    const answer = sound({ seconds: 8, said: [[4, 5.2]], noise: 0.0005 });
    const closed = (after: number) => (listenTo(answer, 700, { ms: CLOSING_MS, after }).said[0]?.atMs ?? 0) - 5200;
    expect(closed(0)).toBeLessThanOrEqual(CLOSING_MS + 100);
    expect(closed(300)).toBeLessThanOrEqual(LOOK_MS + 300 + 100);
    expect(closed(2000)).toBeGreaterThanOrEqual(600);
  });

  it("waits again as long as usual after the speaker went on", () => {
    const inThree = sound({ seconds: 9, said: [[4, 4.5], [4.78, 5.2], [5.7, 6.2]], noise: 0.0005 }); // biome-ignore format: pairs
    const endpoint = new Endpoint();
    endpoint.closeUsually(700);
    let pauses = 0;
    let said = 0;
    for (let at = 0; at + BLOCK <= inThree.length; at += BLOCK) {
      const ended = endpoint.take(inThree.slice(at, at + BLOCK));
      // Only the first pause was known to be the end, and it was not.
      if (ended?.kind === "paused" && pauses++ === 0) endpoint.closeAfter(CLOSING_MS);
      if (ended?.kind === "said") said++;
    }
    expect([pauses, said]).toEqual([3, 1]);
  });

  it("hears two answers as two", () => {
    expect(listenTo(sound({ seconds: 8, said: [[3, 3.6], [5, 5.6]], noise: 0.0005 })).said).toHaveLength(2); // biome-ignore format: pairs
  });

  it.each(rooms)("hears nothing where nobody speaks for a minute, in %s", (_, noise) => {
    const { begun, said } = listenTo(sound({ seconds: 60, said: [], noise }));
    expect({ begun, said }).toEqual({ begun: [], said: [] });
  });

  it("closes again when a kettle begins to boil, and is deaf to it from then on", () => {
    const quiet = sound({ seconds: 3, said: [], noise: 0.0005 });
    const boiling = sound({ seconds: 30, said: [], noise: noiseAt(10) });
    const both = new Float32Array(quiet.length + boiling.length);
    both.set(quiet);
    both.set(boiling, quiet.length);
    const { said } = listenTo(both);
    expect(said.length).toBeLessThanOrEqual(2);
    expect(said.every((s) => s.atMs < 10_000 && s.ms <= 4500 + BLOCK_MS)).toBe(true);
  });

  it("never gives a longer utterance than the longest, however long somebody talks", () => {
    const { said } = listenTo(sound({ seconds: 20, said: [[3, 18]], noise: 0.0005 }));
    expect(said.length).toBeGreaterThan(0);
    expect(said.every((s) => s.ms <= 4500 + BLOCK_MS)).toBe(true);
    expect(said[0]?.cut).toBe(true);
  });

  it("does not take the click of a cup for a word", () => {
    expect(listenTo(sound({ seconds: 6, said: [[4, 4.05]], noise: 0.0005 })).said).toEqual([]);
  });

  it("says once that it is too loud", () => {
    expect(listenTo(sound({ seconds: 10, said: [], noise: 0.6 })).tooLoud).toBe(1);
  });

  it("says so again in another turn, once a second of that was loud, and not where it has grown quiet", () => {
    const endpoint = new Endpoint();
    const loudBlocks = (seconds: number, noise: number): number[] => {
      const samples = sound({ seconds, said: [], noise });
      const at: number[] = [];
      for (let i = 0; i + BLOCK <= samples.length; i += BLOCK)
        if (endpoint.take(samples.slice(i, i + BLOCK))?.kind === "too loud") at.push(i / 16);
      return at;
    };
    expect(loudBlocks(6, 0.6)).toHaveLength(1);
    endpoint.reset();
    const [again, ...more] = loudBlocks(6, 0.6);
    expect(more).toEqual([]);
    expect(again).toBeGreaterThanOrEqual(900);
    expect(again).toBeLessThanOrEqual(1500);
    endpoint.reset();
    expect(loudBlocks(6, 0.0005)).toEqual([]);
  });
});
