import { describe, expect, it } from "vitest";
import { ATTACK_SECONDS, gainOf, HIGHEST_HZ, lengthOf, partialsOf, TONES } from "#devices/tone-shapes.ts";

describe("every tone", () => {
  const beats = Object.entries(TONES).flatMap(([name, shape]) => shape.beats.map((beat) => ({ name, ...beat })));

  it("has its fundamentals between 500 and 900 Hz and nothing above 2000 Hz", () => {
    for (const { name, hz } of beats) {
      expect([name, hz >= 500 && hz <= 900]).toEqual([name, true]);
      for (const [partial] of partialsOf(hz)) expect(partial).toBeLessThanOrEqual(HIGHEST_HZ);
    }
  });

  it("carries harmonics, for loudspeakers that are weak low down", () => {
    for (const { hz } of beats) expect(partialsOf(hz).length).toBeGreaterThanOrEqual(2);
  });

  it("never adds up to more than full loudness, and starts softly within its length", () => {
    for (const { hz, seconds } of beats) {
      expect(partialsOf(hz).reduce((sum, [, share]) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
      expect(seconds).toBeGreaterThan(ATTACK_SECONDS);
    }
    expect(ATTACK_SECONDS).toBeGreaterThanOrEqual(0.01);
  });

  it("is told apart from every other by its tune", () => {
    const tunes = Object.values(TONES).map((shape) => shape.beats.map((b) => b.hz).join(" "));
    expect(new Set(tunes).size).toBe(tunes.length);
    expect(TONES.now.beats.map((b) => b.hz).slice(0, 4)).toEqual([880, 587, 880, 587]);
    expect(TONES.now.beats).toHaveLength(10);
  });

  it("plays its beats one after the other", () => {
    for (const shape of Object.values(TONES)) {
      shape.beats.forEach((beat, i) => {
        const before = shape.beats[i - 1];
        if (before !== undefined) expect(beat.start).toBeGreaterThan(before.start + before.seconds);
      });
    }
    expect(lengthOf(TONES.tick)).toBeLessThanOrEqual(0.1);
    expect(lengthOf(TONES.now)).toBeGreaterThan(3);
  });

  it("grows by 6 dB a step", () => {
    expect(gainOf(5)).toBe(1);
    for (const step of [1, 2, 3, 4] as const) expect(20 * Math.log10(gainOf((step + 1) as 2 | 3 | 4 | 5) / gainOf(step))).toBeCloseTo(6, 6);
  });
});
