// Promises 1 to 4 and 14 for any card and any situation. The checks do their own arithmetic, in whole thousandths.
import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import type { DoseCard } from "#events/card.ts";
import { grams, units } from "#events/quantity.ts";
import { lookUp } from "#rules/card/lookup.ts";
import type { Situation, Told } from "#rules/card/told.ts";
import { anyCase } from "./any-card.ts";
import { at, parts, ratioCard, target } from "./sample-card.ts";

// Thousands of cards take a second, and ten on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const RUNS = { numRuns: 4000 };

/** Runs the check on every case in which a dose is told, and fails if there were hardly any. */
function whenTold(check: (told: Told, card: DoseCard, s: Situation) => void): void {
  let count = 0;
  fc.assert(
    fc.property(anyCase, ({ card, s }) => {
      const answer = lookUp(card, s);
      if (!answer.told) return;
      count++;
      check(answer, card, s);
    }),
    RUNS,
  );
  expect(count).toBeGreaterThan(RUNS.numRuns / 20);
}

const thousandths = (n: number): number => Math.round(n * 1000);

describe("a told dose", () => {
  it("is never above the largest dose, never negative, always on the pen's step", () => {
    whenTold(({ units: dose }, card) => {
      expect(dose).toBeLessThanOrEqual(card.largestDose ?? -1);
      expect(dose).toBeGreaterThanOrEqual(0);
      expect(thousandths(dose) % thousandths(Number(card.rounding.step))).toBe(0);
      expect(dose * 2).toBe(Math.round(dose * 2));
    });
  });

  it("never comes from a low, a missing reading, a word or another unit", () => {
    whenTold((_told, card, s) => {
      expect(s.readingWord).toBeNull();
      expect(s.reading?.unit).toBe(card.glucoseUnit);
      const value = s.reading?.value ?? 0;
      expect(card.low.counts === "below" ? value >= card.low.value : value > card.low.value).toBe(true);
    });
  });

  it("never comes from a card out of force, a meal that is not on it, or a blank that matters", () => {
    whenTold((_told, card, s) => {
      expect(card.meals[s.meal]).not.toBeNull();
      expect(s.today === "2026-03-01" && card.validUntil !== "2026-02-28").toBe(true);
      expect([card.largestDose, card.windowMinutes]).not.toContain(null);
      expect(s.afterLow && (card.afterLow === null || card.afterLow === "ask")).toBe(false);
      expect(s.hardExercise && (card.afterExercise === null || card.afterExercise === "ask")).toBe(false);
    });
  });

  it("never holds a correction in a doubtful clock, inside the spacing, at bedtime, or where the card says food part only", () => {
    let off = 0;
    whenTold((told, card, s) => {
      const rule = card.meals.dinner;
      const minute = s.minuteOfDay ?? 0;
      const asDefault =
        card.bedtime === null ? minute >= 1260 || minute < 300 : !card.bedtime.correction && (minute >= 1260 || minute < 300);
      const spaced = s.recent.some((d) => d.minutesAgo === null || d.minutesAgo < (card.spacingMinutes ?? -1000));
      const mixed = card.insulin.kind === "premixed";
      const foodOnly =
        mixed || (s.afterLow && card.afterLow === "food part only") || (s.hardExercise && card.afterExercise === "food part only");
      if (s.minuteOfDay !== null && !asDefault && !spaced && !foodOnly) return;
      off++;
      expect(told.correction).toBeLessThanOrEqual(0);
      // A band table that does not say what its food part is never gets here.
      expect(rule?.kind === "bands" && rule.foodOnly === null).toBe(false);
      expect(rule?.kind === "grid" && rule.foodOnly === null).toBe(false);
      if (rule?.kind === "bands") expect(told.units).toBeLessThanOrEqual(rule.foodOnly ?? -1);
      if (rule?.kind === "grid") expect(told.units).toBeLessThanOrEqual(Math.max(...(rule.foodOnly ?? [-1])));
    });
    expect(off).toBeGreaterThan(50);
  });

  it("is the food part and the correction together, rounded the card's way and by less than a step", () => {
    whenTold((told, card) => {
      const exactSum = Math.max(0, told.food + told.correction);
      const step = Number(card.rounding.step);
      const away = told.units - exactSum;
      if (card.rounding.direction === "down") expect(away > -step && away <= 1e-9).toBe(true);
      else expect(away > -step / 2 - 1e-9 && away <= step / 2 + 1e-9).toBe(true);
    });
  });

  it("is never larger for an earlier dose, a low, a clock in doubt, and its food part is the same", () => {
    let compared = 0;
    whenTold((told, card, s) => {
      const calm = lookUp({ ...card, bedtime: null }, { ...s, recent: [], afterLow: false, hardExercise: false, minuteOfDay: 720 });
      if (!calm.told) return;
      compared++;
      expect(told.units).toBeLessThanOrEqual(calm.units);
      if (card.meals.dinner?.kind !== "bands" && card.meals.dinner?.kind !== "grid") expect(told.food).toBe(calm.food);
    });
    expect(compared).toBeGreaterThan(RUNS.numRuns / 20);
  });
});

describe("a told correction", () => {
  it("is never more than insulin on board leaves of it", () => {
    const doses = fc.array(fc.record({ minutesAgo: fc.integer({ min: 1, max: 300 }), units: fc.integer({ min: 1, max: 16 }).map(units) }), {
      minLength: 1,
      maxLength: 3,
    });
    const mode = fc.constantFrom("linear" as const, "nearest" as const, "down" as const, "each started step" as const);
    const roundParts = fc.constantFrom("none" as const, "tenths" as const, "whole" as const);
    fc.assert(
      fc.property(doses, mode, roundParts, fc.integer({ min: 121, max: 500 }), (recent, counted, rounded, value) => {
        const card = ratioCard(
          10,
          { mode: counted },
          { roundParts: rounded, onBoard: { model: "linear", hours: 4 }, spacingMinutes: 0, largestDose: units(99) },
        );
        const acting = recent.reduce((sum, d) => sum + d.units * Math.max(0, 1 - d.minutesAgo / 240), 0);
        const [food, correction] = parts(card, value, 60, { recent });
        const [, alone] = parts(card, value, 60);
        expect(food).toBe(6);
        expect(correction).toBeCloseTo(Math.max(0, alone - acting), 9);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("the food part", () => {
  it("is never blocked by an earlier dose: a ratio or fixed card that tells without one tells with one", () => {
    let compared = 0;
    fc.assert(
      fc.property(anyCase, ({ card, s }) => {
        const kind = card.meals.dinner?.kind;
        if (kind === "bands" || kind === "grid" || card.spacingMinutes === null || card.onBoard === null) return;
        const without = lookUp(card, { ...s, recent: [] });
        if (!without.told) return;
        compared++;
        const withDose = lookUp(card, { ...s, recent: [{ minutesAgo: 0, units: units(5) }, ...s.recent] });
        expect(withDose).toMatchObject({ told: true, food: without.food });
      }),
      RUNS,
    );
    expect(compared).toBeGreaterThan(RUNS.numRuns / 20);
  });
});

describe("the card's silence", () => {
  it("is kept on every low, whatever else holds", () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 10, max: 1000 }), ({ card, s }, part) => {
        const value = (card.low.value * part) / 1000;
        const low = value < card.low.value || card.low.counts === "at or below";
        const answer = lookUp(card, { ...s, readingWord: null, reading: { value, unit: card.glucoseUnit } });
        return !low || (!answer.told && answer.why === "reading is low");
      }),
      RUNS,
    );
  });

  it("is reached for every reason that there is", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(anyCase, ({ card, s }) => {
        const answer = lookUp(card, s);
        if (!answer.told) seen.add(answer.why === "blank field" ? `blank ${answer.field}` : answer.why);
      }),
      { numRuns: 20_000, seed: 7 },
    );
    expect([...seen].sort()).toEqual(
      [
        "above the bands",
        "above the largest dose",
        "after a low: ask",
        "after exercise: ask",
        "below the bands",
        "blank afterExercise",
        "blank afterLow",
        "blank largestDose",
        "blank onBoard",
        "blank spacingMinutes",
        "blank windowMinutes",
        "carbohydrate not known",
        "day not known",
        "hole between bands",
        "in two bands",
        "in two columns",
        "no column for this meal",
        "no dose for this meal",
        "no food-only row",
        "no longer valid",
        "no reading",
        "not valid yet",
        "off the pen's step",
        "other unit",
        "reading is HI",
        "reading is LO",
        "reading is low",
      ].sort(),
    );
  });
});

describe("the arithmetic of a ratio", () => {
  it("agrees with a second way of working it out, in whole numbers only", () => {
    const whole = (min: number, max: number) => fc.integer({ min, max });
    const steps = fc.constantFrom(["0.5", 1] as const, ["1", 2] as const, ["2", 4] as const, ["5", 10] as const);
    fc.assert(
      fc.property(
        whole(0, 1500),
        whole(30, 400),
        whole(41, 300),
        whole(45, 80),
        whole(5, 60),
        steps,
        (g10, ratio10, v10, t10, p10, step) => {
          // Tenths everywhere; food + correction = (g p + max(0, v - t) r) / (r p), counted in half units.
          const over = Math.max(0, v10 - t10);
          const [top, bottom] = [g10 * p10 + over * ratio10, ratio10 * p10];
          const [spelled, halves] = step;
          const expected = (Math.floor((2 * (2 * top) + bottom * halves) / (2 * bottom * halves)) * halves) / 2;
          const card = ratioCard(
            ratio10 / 10,
            { target: target(t10 / 10), perUnit: p10 / 10 },
            {
              glucoseUnit: "mmol/L",
              low: { value: 4, counts: "below" },
              largestDose: units(10_000),
              rounding: { step: spelled, direction: "nearest, half up" },
            },
          );
          const answer = lookUp(card, at(card, v10 / 10, null, { grams: grams(g10 / 10) }));
          expect(answer.told ? answer.units : answer.why).toBe(expected);
        },
      ),
      { numRuns: 5000 },
    );
  });
});
