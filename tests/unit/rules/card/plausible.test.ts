import { describe, expect, it } from "vitest";
import type { DoseCard, MealRule } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { alarmsOf } from "#rules/card/plausible.ts";
import { thumbGlucosePerUnit, thumbGramsPerUnit } from "#rules/card/rule-of-thumb.ts";
import { toNumber } from "#rules/glucose/exact.ts";
import { band, bandCard, CARD, ratioCard, target } from "./sample-card.ts";

const names = (card: DoseCard, ...day: number[]): string[] =>
  alarmsOf(card, day[0] === undefined ? null : { unitsADay: day[0], kind: "rapid analogue" }).map((a) => a.alarm);
const HOSPITAL = [2, 4, 6, 8, 10, 12].map((dose, i) => band(141 + 40 * i, 180 + 40 * i, dose));
const MMOL: Partial<DoseCard> = { glucoseUnit: "mmol/L", low: { value: 4, counts: "below" } };

describe("rules of thumb", () => {
  it("give 10 g, 36 and 30 mg/dL for 50 units a day, 2.5 mmol/L for 40 (sources: Melbourne hospital; Canadian educator manual)", () => {
    expect(toNumber(thumbGramsPerUnit(50))).toBe(10);
    expect(toNumber(thumbGlucosePerUnit(50, "mg/dL", "rapid analogue"))).toBe(36);
    expect(toNumber(thumbGlucosePerUnit(50, "mg/dL", "regular"))).toBe(30);
    expect(toNumber(thumbGlucosePerUnit(40, "mmol/L", "rapid analogue"))).toBe(2.5);
  });
});

describe("a typed card", () => {
  it("raises nothing when nothing is odd", () => {
    expect(names(CARD)).toEqual([]);
    expect(names(bandCard(HOSPITAL, 0, { edges: "up to the next" }))).toEqual([]);
    expect(names(ratioCard(10, { perUnit: 36 }), 50)).toEqual([]);
    expect(names(ratioCard(10, { perUnit: 2.5, target: { low: 5.5, high: 7 } }, MMOL), 40)).toEqual([]);
  });

  it("asks about hours that no clinic prints: 3 hours typed as 0.3, and at each edge", () => {
    const of = (spacingMinutes: number | null, windowMinutes: number | null) => names({ ...CARD, spacingMinutes, windowMinutes });
    expect(alarmsOf({ ...CARD, spacingMinutes: 18, windowMinutes: 18 }, null)).toEqual([
      { alarm: "time unusual", of: "spacing", minutes: 18 },
      { alarm: "time unusual", of: "window", minutes: 18 },
    ]);
    expect([of(120, 60), of(360, 720), of(null, null)]).toEqual([[], [], []]);
    expect([of(119, 180), of(361, 180), of(240, 59), of(240, 721)].map((all) => all.length)).toEqual([1, 1, 1, 1]);
  });

  it("asks about every hole as printed, and only about real ones when rows reach up to the next", () => {
    expect(names(bandCard(HOSPITAL, 0)).filter((a) => a === "gap between rows")).toHaveLength(5);
    const torn = [band(71, 140, 4), band(150, 200, 5)];
    expect(alarmsOf(bandCard(torn, 4, { edges: "up to the next" }), null)).toEqual([
      { alarm: "gap between rows", meal: "dinner", after: 140, before: 150 },
    ]);
    const fine = [band(4, 7.8, 4), band(7.9, 10, 5)];
    expect(names(bandCard(fine, 4, { ...MMOL, edges: "up to the next" }))).toEqual([]);
    expect(names(bandCard([band(4, 7.8, 4), band(8, 10, 5)], 4, { ...MMOL, edges: "up to the next" }))).toEqual(["gap between rows"]);
  });

  it("asks about rows that overlap; a shared edge only as printed", () => {
    expect(names(bandCard([band(71, 190, 4), band(180, 220, 5)], 4, { edges: "up to the next" }))).toEqual(["rows overlap"]);
    const shared = [band(71, 140, 4), band(140, 180, 5)];
    expect([names(bandCard(shared, 4)), names(bandCard(shared, 4, { edges: "up to the next" }))]).toEqual([["rows overlap"], []]);
    const open = [band(null, 250, 0), band(251, null, 2), band(351, null, 4)];
    expect(names(bandCard(open, 0, { edges: "up to the next" }))).toEqual([]);
    expect(names(bandCard(open, 0))).toContain("rows overlap");
    expect(names(bandCard([band(181, null, 2), band(181, null, 4)], 0, { edges: "up to the next" }))).toContain("rows overlap");
  });

  it("asks about a row that is upside down", () => {
    expect(names(bandCard([band(140, 71, 4)], 4))).toContain("row is upside down");
  });

  it("asks when a dose falls as glucose rises", () => {
    const falling = [band(71, 140, 6), band(141, 180, 5)];
    expect(alarmsOf(bandCard(falling, 4, { edges: "up to the next" }), null)).toEqual([
      { alarm: "dose falls as glucose rises", meal: "dinner", before: 6, units: 5 },
    ]);
  });

  it("asks about a slipped digit, ten times the neighbour, and about a step of more than twice the usual", () => {
    const scale = (...doses: number[]) =>
      bandCard(
        doses.map((d, i) => band(71 + 40 * i, 110 + 40 * i, d)),
        0,
        { edges: "up to the next" },
      );
    expect(names({ ...scale(2, 4, 60, 80), largestDose: units(99) })).toContain("tenfold step");
    expect(names({ ...scale(2, 20), largestDose: units(99) })).toEqual(["tenfold step"]);
    expect(names(scale(2, 4, 6, 11))).toEqual(["large step"]);
    expect(names(scale(2, 4, 6, 10))).toEqual([]);
    expect(names(scale(0, 2, 4, 6))).toEqual([]);
  });

  it("asks about a food-only row above every row", () => {
    expect(names(bandCard([band(71, 140, 4), band(141, null, 5)], 6, { edges: "up to the next" }))).toEqual(["food-only above every row"]);
  });

  it("asks about grams per unit outside 3 to 50 g, and glucose per unit outside 10 to 200 mg/dL or 0.6 to 11 mmol/L (derived, wide)", () => {
    expect([2.9, 3, 50, 51].map((r) => names(ratioCard(r, null)).length)).toEqual([1, 0, 0, 1]);
    expect([9, 10, 200, 201].map((p) => names(ratioCard(10, { perUnit: p })).length)).toEqual([1, 0, 0, 1]);
    expect([0.5, 0.6, 11, 11.1].map((p) => names(ratioCard(10, { perUnit: p, target: target(6) }, MMOL)).length)).toEqual([1, 0, 0, 1]);
  });

  it("asks about what is outside half to double the rule of thumb, only when the units of a day are known", () => {
    const ratio = "grams per unit far from the rule of thumb";
    expect([4.9, 5, 20, 20.1].map((r) => names(ratioCard(r, null), 50))).toEqual([[ratio], [], [], [ratio]]);
    expect(names(ratioCard(4.9, null))).toEqual([]);
    const perUnit = "glucose per unit far from the rule of thumb";
    expect([17, 18, 72, 73].map((p) => names(ratioCard(10, { perUnit: p }), 50))).toEqual([[perUnit], [], [], [perUnit]]);
    expect([1.2, 1.25, 5, 5.1].map((p) => names(ratioCard(12, { perUnit: p, target: target(6) }, MMOL), 40))).toEqual([
      [perUnit],
      [],
      [],
      [perUnit],
    ]);
    expect(alarmsOf(ratioCard(40, null), { unitsADay: 90, kind: "regular" })).toEqual([
      { alarm: ratio, meal: "dinner", gramsPerUnit: 40, usual: 5.6 },
    ]);
  });

  it("asks about a target that is a low, or upside down", () => {
    expect(names(ratioCard(10, { target: target(70) }))).toEqual(["target is low"]);
    expect(names(ratioCard(10, { target: { low: 140, high: 100 } }))).toEqual(["target is upside down"]);
  });

  it("asks about glucose numbers that a meter in the card's unit cannot show", () => {
    expect(alarmsOf(ratioCard(10, { target: target(5.5) }), null)).toContainEqual({
      alarm: "looks like the other unit",
      where: "target",
      value: 5.5,
    });
    expect(names({ ...CARD, low: { value: 3.9, counts: "below" } })).toEqual(["looks like the other unit"]);
    expect(names({ ...CARD, high: { value: 15, advice: "Call." } })).toEqual(["looks like the other unit"]);
    expect(names(bandCard([band(0, 140, 4), band(141, 999, 5)], 4, { edges: "up to the next" }))).toEqual([]);
    expect(names(bandCard([band(4, 7.8, 4)], 4))).toEqual(["looks like the other unit", "looks like the other unit"]);
  });

  it("asks about printed units that the pen cannot dial or that are above the largest dose: they would never be told", () => {
    expect(names(bandCard([band(71, 140, 4.5)], 4.5))).toEqual(["off the pen's step"]);
    expect(alarmsOf(bandCard([band(71, 140, 21)], 4), null)).toEqual([{ alarm: "above the largest dose", meal: "dinner", units: 21 }]);
  });

  it("asks about ten times as much at another meal, of the same kind", () => {
    const meals = (breakfast: MealRule, lunch: MealRule): DoseCard => ({
      ...CARD,
      largestDose: units(99),
      meals: { ...CARD.meals, breakfast, lunch, dinner: null },
    });
    const fixed = (n: number): MealRule => ({ kind: "fixed units", units: units(n) });
    const ratio = (n: number): MealRule => ({ kind: "ratio", gramsPerUnit: n, correction: null, roundParts: "none" });
    expect(alarmsOf(meals(fixed(6), fixed(60)), null)).toEqual([{ alarm: "tenfold between meals", meal: "breakfast", other: "lunch" }]);
    expect(names(meals(ratio(40), ratio(4)))).toEqual(["tenfold between meals"]);
    expect(names(meals(fixed(6), fixed(59)))).toEqual([]);
    expect(names(meals(fixed(4), ratio(40)))).toEqual([]);
    expect(names(meals(fixed(0), fixed(6)))).toEqual([]);
  });

  it("asks about a bell that ends before it begins, and about dates in the wrong order", () => {
    expect(names({ ...CARD, timing: { when: "before eating", earliestMinutes: 20, latestMinutes: 15 } })).toEqual([
      "bell ends before it begins",
    ]);
    expect(names({ ...CARD, reviewBy: "2025-12-01", validUntil: "2025-11-01" })).toEqual([
      "dates in the wrong order",
      "dates in the wrong order",
    ]);
    expect(names({ ...CARD, reviewBy: "2026-01-01", validUntil: "2026-06-01" })).toEqual([]);
  });
});
