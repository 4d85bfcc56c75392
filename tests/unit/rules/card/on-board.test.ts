import { describe, expect, it } from "vitest";
import type { OnBoardRule } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { fractionLeft, onBoard } from "#rules/card/on-board.ts";
import { toNumber } from "#rules/glucose/exact.ts";

const LINEAR_4: OnBoardRule = { model: "linear", hours: 4 };
const LINEAR_5: OnBoardRule = { model: "linear", hours: 5 };
const DEPOT: OnBoardRule = { model: "two compartments", minutes: 55 };
const TRIANGLE: OnBoardRule = { model: "triangle", peakMinutes: 75, endMinutes: 300 };

const left = (rule: OnBoardRule, minutes: number | null): number => Number(toNumber(fractionLeft(rule, minutes)).toFixed(4));
const sum = (rule: OnBoardRule, ...doses: { minutesAgo: number | null; units: ReturnType<typeof units> | null }[]): number | string => {
  const known = onBoard(rule, doses);
  return known === "not known" ? known : toNumber(known);
};

describe("insulin on board", () => {
  it.each([
    [0, 1, 1, 1, 1],
    [30, 0.875, 0.9, 0.8957, 0.96],
    [60, 0.75, 0.8, 0.7024, 0.84],
    [90, 0.625, 0.7, 0.5133, 0.6533],
    [120, 0.5, 0.6, 0.359, 0.48],
    [180, 0.25, 0.4, 0.1619, 0.2133],
    [240, 0, 0.2, 0.0683, 0.0533],
    [300, 0, 0, 0.0276, 0],
  ])("after %i min is %f, %f, %f, %f of a dose (sources: 1999 teaching; Physiol Meas 2004;25:905; algebra)", (minutes, ...expected) => {
    expect([LINEAR_4, LINEAR_5, DEPOT, TRIANGLE].map((rule) => left(rule, minutes))).toEqual(expected);
  });

  it("of 6 units after 90 min is 3.75 (linear 4 h) and 3.08 (two compartments of 55 min)", () => {
    expect(sum(LINEAR_4, { minutesAgo: 90, units: units(6) })).toBe(3.75);
    expect(sum(DEPOT, { minutesAgo: 90, units: units(6) })).toBeCloseTo(3.08, 2);
  });

  it("is one third less each hour for three hours (source: hospital teaching quoted in 1999)", () => {
    expect([0, 60, 120, 180].map((m) => sum({ model: "linear", hours: 3 }, { minutesAgo: m, units: units(3) }))).toEqual([3, 2, 1, 0]);
  });

  it("never grows with time, and stays between none and all", () => {
    for (const rule of [LINEAR_4, DEPOT, TRIANGLE, { model: "triangle", peakMinutes: 0, endMinutes: 240 } as const]) {
      const curve = Array.from({ length: 800 }, (_, i) => toNumber(fractionLeft(rule, i)));
      expect(curve.every((f, i) => f >= 0 && f <= (curve[i - 1] ?? 1))).toBe(true);
    }
  });

  it("has no step where the triangle turns, and ends at its end even if that comes before the peak", () => {
    expect(left(TRIANGLE, 75)).toBe(0.75);
    expect(left({ model: "triangle", peakMinutes: 300, endMinutes: 240 }, 240)).toBe(0);
  });

  it("counts an unknown time, or a time ahead, as given just now", () => {
    expect(left(LINEAR_4, null)).toBe(1);
    expect(left(LINEAR_4, -30)).toBe(1);
  });

  it("adds doses, and is not known while one of unknown size still counts", () => {
    expect(sum(LINEAR_4, { minutesAgo: 120, units: units(4) }, { minutesAgo: 180, units: units(4) })).toBe(3);
    expect(sum(LINEAR_4, { minutesAgo: 120, units: null }, { minutesAgo: 180, units: units(4) })).toBe("not known");
    expect(sum(LINEAR_4, { minutesAgo: 240, units: null })).toBe(0);
  });

  it("is nothing where the card does not use it, unknown doses included", () => {
    expect(sum({ model: "not used" }, { minutesAgo: null, units: null })).toBe(0);
  });
});
