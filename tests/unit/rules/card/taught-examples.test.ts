// Doses as they are taught, worked through the card. Each test names the teaching source; target, ratio and numbers are the source's own.
import { describe, expect, it } from "vitest";
import type { CorrectionRule, DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { lookUp } from "#rules/card/lookup.ts";
import { at, band, bandCard, parts, ratioCard, said, target } from "./sample-card.ts";

const HALF: Partial<DoseCard> = { rounding: { step: "0.5", direction: "nearest, half up" } };
const WIDE: Partial<DoseCard> = { largestDose: units(40) };

describe("a dose by ratio and correction", () => {
  it("is 6 + 2 = 8 units (source: dose guide of a research study, 3-injection arm)", () => {
    const card = ratioCard(10, { target: target(100), perUnit: 50 });
    expect(parts(card, 200, 60)).toEqual([6, 2]);
    expect(said(card, 200, 60)).toBe(8);
  });

  it("is 4.5 + 3.1 = 7.6, then 7.5 by half units and 8 by whole ones (source: children's-hospital worksheet)", () => {
    const rule = { target: target(120), perUnit: 30 };
    expect(parts(ratioCard(15, rule, { roundParts: "tenths" }), 214, 68)).toEqual([4.5, 3.1]);
    expect(said(ratioCard(15, rule, { roundParts: "tenths", ...HALF }), 214, 68)).toBe(7.5);
    expect(said(ratioCard(15, rule, { roundParts: "tenths" }), 214, 68)).toBe(8);
  });

  it("is 5 for the food and 2, 1, 1 or 1.33 for 40 above at 30 a unit, by mode (source: home-health nurse page)", () => {
    const of = (mode: CorrectionRule["mode"]) => ratioCard(10, { target: target(150), perUnit: 30, mode });
    expect(parts(of("each started step"), 190, 50)).toEqual([5, 2]);
    expect(said(of("each started step"), 190, 50)).toBe(7);
    expect(parts(of("nearest"), 190, 50)).toEqual([5, 1]);
    expect(parts(of("down"), 190, 50)).toEqual([5, 1]);
    expect(parts(of("linear"), 190, 50)).toEqual([5, 4 / 3]);
    expect(said(of("linear"), 190, 50)).toBe(6);
    // 55 above is 1.83 steps: only whole ones count, and the nearest is 2.
    expect([parts(of("down"), 205, 50), parts(of("nearest"), 205, 50)]).toEqual([
      [5, 1],
      [5, 2],
    ]);
  });

  it("is one unit for each started 50 above 120 (source: lay explanation of a sliding scale)", () => {
    const card = ratioCard(10, { target: target(120), perUnit: 50, mode: "each started step" });
    expect([120, 121, 170, 171, 220, 221, 270].map((g) => said(card, g, 0))).toEqual([0, 1, 1, 2, 2, 3, 3]);
  });

  it("is 14 + 5 = 19 at 1:5, and 17.6 at the unrounded 500 / 90 (source: class handout)", () => {
    expect(parts(ratioCard(5, { target: target(120), perUnit: 20 }), 220, 70)).toEqual([14, 5]);
    expect(said(ratioCard(5, { target: target(120), perUnit: 20 }), 220, 70)).toBe(19);
    const [food, correction] = parts(ratioCard(500 / 90, { target: target(120), perUnit: 20 }), 220, 70);
    expect([food, correction]).toEqual([expect.closeTo(12.6, 6), 5]);
  });

  it("is 2 for 220 with a target of 120 at 50 a unit (source: patient page)", () => {
    expect(said(ratioCard(10, { perUnit: 50 }), 220, 0)).toBe(2);
  });

  it("is 5.5 below the target where the card lets it take off, 6 where not (source: general algebra)", () => {
    const of = (mayReduce: boolean) => ratioCard(10, { mayReduce }, HALF);
    expect(parts(of(true), 95, 60)).toEqual([6, -0.5]);
    expect(said(of(true), 95, 60)).toBe(5.5);
    expect(said(of(false), 95, 60)).toBe(6);
  });

  it("is none at 66, whatever is eaten: the low comes first (source: general teaching)", () => {
    expect(said(ratioCard(10, {}), 66, 60)).toBe("reading is low");
    expect(said(ratioCard(10, { mayReduce: true }), 66, 200)).toBe("reading is low");
  });
});

describe("a dose by bands", () => {
  // The scale begins at 141; the row below it is typed in, because a reading that no row claims gets no answer.
  const hospital = [
    band(null, 140, 0),
    band(141, 180, 2),
    band(181, 220, 4),
    band(221, 260, 6),
    band(261, 300, 8),
    band(301, 350, 10),
    band(351, 400, 12),
    band(401, null, 14, true),
  ];

  it("follows the rows to their edges (source: hospital inpatient scale 2017, insulin-sensitive column)", () => {
    const card = bandCard(hospital, 0, WIDE);
    expect([140, 141, 180, 181, 260, 261, 350, 351, 400, 401].map((g) => said(card, g))).toEqual([0, 2, 2, 4, 6, 8, 10, 12, 12, 14]);
  });

  it("says to call the clinic above 400 and only there (source: the same scale)", () => {
    const card = bandCard(hospital, 0, WIDE);
    const cautions = (g: number) => {
      const answer = lookUp(card, at(card, g));
      return answer.told ? answer.cautions : answer.why;
    };
    expect(cautions(400)).toEqual([]);
    expect(cautions(401)).toEqual([{ caution: "card says call the clinic" }]);
  });

  it("gives 2 above 250 and 4 above 350 (source: ADA older-adult simplification)", () => {
    const typed = bandCard([band(null, 250, 0), band(251, 350, 2), band(351, null, 4)], 0);
    expect([250, 251, 350, 351].map((g) => said(typed, g))).toEqual([0, 2, 2, 4]);
    // The same figure typed as it is worded, "over 250, over 350".
    const worded = bandCard([band(null, 250, 0), band(251, null, 2), band(351, null, 4)], 0, { edges: "up to the next" });
    expect([250, 251, 350, 351].map((g) => said(worded, g))).toEqual([0, 2, 2, 4]);
  });

  it("tells nothing for 180.156 (10.0 mmol/L) and 180.5: a hole as printed (source: computed with 18.0156)", () => {
    const card = bandCard(hospital, 0, WIDE);
    expect([180.156, 180.5, 180, 181].map((g) => said(card, g))).toEqual(["hole between bands", "hole between bands", 2, 4]);
    const closed = bandCard(hospital, 0, { ...WIDE, edges: "up to the next" });
    expect([180.156, 180.5, 180.999, 181].map((g) => said(closed, g))).toEqual([2, 2, 2, 4]);
  });
});

describe("the last rounding", () => {
  it("takes 2.25 and 2.75 to 2.5 and 3.0, or down to 2.0 and 2.5, by half units (source: computed)", () => {
    const of = (direction: DoseCard["rounding"]["direction"]) => ratioCard(10, null, { rounding: { step: "0.5", direction } });
    expect([22.5, 27.5].map((g) => said(of("nearest, half up"), 110, g))).toEqual([2.5, 3]);
    expect([22.5, 27.5].map((g) => said(of("down"), 110, g))).toEqual([2, 2.5]);
  });

  it("comes after the parts were rounded, when the card rounds them: 4.4 + 2.4 is 6, not 7", () => {
    const rule = { target: target(120), perUnit: 50 };
    expect(said(ratioCard(10, rule), 240, 44)).toBe(7);
    expect(said(ratioCard(10, rule, { roundParts: "whole" }), 240, 44)).toBe(6);
  });

  it("is not fooled by binary numbers: 2.3 + 1.2 is 3.5 and goes up to 4", () => {
    expect(Math.round(23 / 10 + (8.2 - 5.8) / 2)).toBe(3);
    const card = ratioCard(10, { target: target(5.8), perUnit: 2 }, { glucoseUnit: "mmol/L", low: { value: 4, counts: "below" } });
    expect(said(card, 8.2, 23)).toBe(4);
  });

  it("adds the parts exactly too: 2.3 - 0.8 is 1.5 and goes up, 2.3 - 0.3 is 2 and stays 2 when rounded down", () => {
    expect([Math.round(2.3 - 0.8), Math.floor(2.3 - 0.3)]).toEqual([1, 1]);
    const of = (direction: DoseCard["rounding"]["direction"]) => ratioCard(10, { mayReduce: true }, { rounding: { step: "1", direction } });
    expect(said(of("nearest, half up"), 80, 23)).toBe(2);
    expect(said(of("down"), 105, 23)).toBe(2);
  });

  it("starts no step that binary numbers only imagine: 8.3 is one step of 2.5 above 5.8", () => {
    expect(Math.ceil((8.3 - 5.8) / 2.5)).toBe(2);
    const rule = { target: target(5.8), perUnit: 2.5, mode: "each started step" } as const;
    const card = ratioCard(10, rule, { glucoseUnit: "mmol/L", low: { value: 4, counts: "below" } });
    expect(said(card, 8.3, 0)).toBe(1);
    expect(said(card, 8.4, 0)).toBe(2);
  });

  it("reaches steps of 2 and of 5 units", () => {
    expect(said(ratioCard(10, null, { rounding: { step: "2", direction: "nearest, half up" } }), 110, 70)).toBe(8);
    expect(said(ratioCard(10, null, { rounding: { step: "5", direction: "nearest, half up" } }), 110, 74)).toBe(5);
    expect(said(ratioCard(10, null, { rounding: { step: "5", direction: "nearest, half up" } }), 110, 75)).toBe(10);
  });
});
