import { describe, expect, it } from "vitest";
import { understand } from "#speech/understand.ts";
import { upper95 } from "../../measure/voice/bounds.ts";
import { isFinal } from "../../measure/voice/corpus.ts";
import { isSwap } from "../../measure/voice/dialogue.ts";
import { Dice } from "../../measure/voice/dice.ts";
import { Kitchen } from "../../measure/voice/kitchen.ts";
import { HEARINGS } from "../../measure/voice/questions.ts";
import { moreTextsOf, textsOf } from "../../measure/voice/texts.ts";
import { RATE, resample } from "../../measure/voice/wav.ts";

describe("the measure of the ear", () => {
  it("gives the bound of Clopper and Pearson", () => {
    expect(upper95(0, 100)).toBeCloseTo(0.0295, 4);
    expect(upper95(1, 100)).toBeCloseTo(0.0466, 4);
    expect(upper95(3, 3)).toBe(1);
  });

  it("says nothing that the app would understand as something else than is meant", () => {
    const wrong = [...textsOf("somebody", 600), ...moreTextsOf("somebody", 60)].filter(({ words, asked, sort, means }) => {
      const u = understand({ text: words, alternatives: [] }, HEARINGS[asked].offers);
      return sort === "numbers" ? u.kind !== "number" || u.text !== means : u.kind !== "offer" || (sort === "yes/no" && u.id !== means);
    });
    expect(wrong).toEqual([]);
  });

  it("says no number that its question does not allow", () => {
    const out = textsOf("somebody", 2000).filter(({ sort, asked, means }) => {
      const { range } = HEARINGS[asked];
      return sort === "numbers" && range !== undefined && (Number(means) < range.low || Number(means) > range.high);
    });
    expect(out).toEqual([]);
  });

  it("keeps about a third for the final figure", () => {
    const names = textsOf("somebody", 900).map((t, i) => `somebody ${i}: ${t.words}`);
    const kept = names.filter(isFinal);
    expect(kept.length / names.length).toBeGreaterThan(0.28);
    expect(kept.length / names.length).toBeLessThan(0.38);
  });

  it("knows a teen from its ten and from every other pair", () => {
    expect(isSwap("13", "30")).toBe(true);
    expect(isSwap("150", "115")).toBe(true);
    expect(isSwap("14.5", "40.5")).toBe(true);
    expect(isSwap("13", "40")).toBe(false);
    expect(isSwap("12", "20")).toBe(false);
    expect(isSwap("115", "250")).toBe(false);
  });

  it("adds a noise as many dB under the speech as it says", () => {
    const dice = new Dice("speech");
    const speech = Float32Array.from({ length: RATE }, () => dice.normal() * 0.1);
    const kitchen = new Kitchen([speech]);
    for (const dB of [20, 10] as const) {
      const loud = kitchen.heard(speech, { noise: "fan", dB }, "someone");
      const middle = (x: Float32Array): Float32Array => x.slice(0.3 * RATE, 1.3 * RATE);
      const spoken = middle(loud).reduce((sum, v) => sum + v * v, 0);
      const before = loud.slice(0, 0.3 * RATE).reduce((sum, v) => sum + v * v, 0) / 0.3;
      expect(Math.abs(10 * Math.log10(spoken / before) - 10 * Math.log10(10 ** (dB / 10) + 1))).toBeLessThan(4);
    }
  });

  it("plays a tone at another rate without changing it", () => {
    const tone = Float32Array.from({ length: 32_000 }, (_, i) => Math.sin((2 * Math.PI * 440 * i) / 32_000));
    const there = resample(tone, 32_000, RATE);
    const error = there.slice(200, -200).map((v, i) => Math.abs(v - Math.sin((2 * Math.PI * 440 * (i + 200)) / RATE)));
    expect(Math.max(...error)).toBeLessThan(0.01);
  });
});
