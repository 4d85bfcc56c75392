// Edges that mutants of the card's rules crossed unseen: each stands here by itself.
import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { lookUp } from "#rules/card/lookup.ts";
import { fractionLeft } from "#rules/card/on-board.ts";
import { alarmsOf } from "#rules/card/plausible.ts";
import type { Situation } from "#rules/card/told.ts";
import { toNumber } from "#rules/glucose/exact.ts";
import { at, band, bandCard, CARD, cardFor, ratioCard, said, target } from "./sample-card.ts";

const RATIO = ratioCard(10, {});
const why = (card: DoseCard, change: Partial<Situation> = {}) => {
  const answer = lookUp(card, at(card, 220, 60, change));
  return answer.told ? answer.why : answer;
};
const FOOD = { reason: "food", units: 6, grams: 60 };
const HIGH = { reason: "reading is high", units: 2 };
const scale = (...doses: number[]): DoseCard => ({
  ...bandCard(
    doses.map((d, i) => band(71 + 40 * i, 110 + 40 * i, d)),
    0,
    { edges: "up to the next" },
  ),
  largestDose: units(99),
});

describe("a correction that is left off", () => {
  it("in a doubtful clock is for the clock alone, not for a bedtime that nobody knows", () => {
    expect(why(RATIO, { minuteOfDay: null })).toEqual([FOOD, { reason: "no correction", because: "clock doubtful" }]);
  });
  it("after eating is for that", () => {
    expect(why(RATIO, { eatenFirst: true })).toEqual([FOOD, { reason: "no correction", because: "eaten first" }]);
  });
  it("after a dose of unknown time is for the spacing, be it of no minutes", () => {
    expect(said({ ...RATIO, spacingMinutes: 0 }, 220, 60, { recent: [{ minutesAgo: null, units: units(4) }] })).toBe(6);
  });
  it("after a dose of unknown size is for insulin on board, and is no default", () => {
    const card: DoseCard = { ...RATIO, onBoard: { model: "linear", hours: 4 }, spacingMinutes: 60 };
    const answer = lookUp(card, at(card, 220, 60, { recent: [{ minutesAgo: 120, units: null }] }));
    expect(answer).toMatchObject({ why: [FOOD, { reason: "no correction", because: "insulin on board" }], cautions: [] });
  });
  it("is none where insulin on board is blank and no dose acts", () => {
    expect(why({ ...RATIO, onBoard: null })).toEqual([FOOD, HIGH]);
  });
});

describe("a blank", () => {
  it("after a low and after exercise is named as a blank field", () => {
    expect(why({ ...RATIO, afterLow: null }, { afterLow: true })).toEqual({ told: false, why: "blank field", field: "afterLow" });
    expect(why({ ...RATIO, afterExercise: null }, { hardExercise: true })).toEqual({
      told: false,
      why: "blank field",
      field: "afterExercise",
    });
  });
});

describe("insulin on board in two compartments", () => {
  it("knows parts of a minute too", () => {
    const x = 30.5 / 55;
    expect(toNumber(fractionLeft({ model: "two compartments", minutes: 55 }, 30.5))).toBeCloseTo((1 + x) * Math.exp(-x), 6);
  });
});

describe("an alarm", () => {
  it("about steps goes by the middle of the rises, in whatever order they come, and not by rows that stay the same", () => {
    expect(alarmsOf(scale(2, 8, 10, 12, 26), null)).toEqual([{ alarm: "large step", meal: "dinner", before: 12, units: 26 }]);
    expect(alarmsOf(scale(2, 4, 4, 4, 4, 6, 9), null)).toEqual([]);
  });
  it("about a row is none where it is one number wide", () => {
    expect(alarmsOf(bandCard([band(100, 100, 4)], 4), null)).toEqual([]);
  });
  it("about the food-only row is raised above every row only", () => {
    const rows = [band(71, 140, 4), band(141, null, 8)];
    expect(alarmsOf(bandCard(rows, 6, { edges: "up to the next" }), null)).toEqual([]);
    expect(alarmsOf(bandCard(rows, 9, { edges: "up to the next" }), null)).toEqual([
      { alarm: "food-only above every row", meal: "dinner", units: 9 },
    ]);
  });
  it("names its number and its place", () => {
    expect(alarmsOf(ratioCard(2.9, null), null)).toEqual([{ alarm: "grams per unit unusual", meal: "dinner", gramsPerUnit: 2.9 }]);
    expect(alarmsOf(ratioCard(10, { perUnit: 9 }), null)).toEqual([{ alarm: "glucose per unit unusual", meal: "dinner", perUnit: 9 }]);
    const other = (where: string, value: number) => [{ alarm: "looks like the other unit", where, value }];
    expect(alarmsOf({ ...CARD, low: { value: 3.9, counts: "below" } }, null)).toEqual(other("low", 3.9));
    expect(alarmsOf({ ...CARD, high: { value: 15, advice: "Call." } }, null)).toEqual(other("high", 15));
    expect(alarmsOf(ratioCard(10, { target: { low: 120, high: 700 } }), null)).toEqual(other("target", 700));
    expect(alarmsOf(ratioCard(10, { target: target(700) }), null)).toEqual(other("target", 700));
    expect(alarmsOf(bandCard([band(71, 700, 4)], 4), null)).toEqual(other("row", 700));
    expect(alarmsOf(bandCard([band(19, 600, 4)], 4), null)).toEqual(other("row", 19));
    expect(alarmsOf(bandCard([band(20, 600, 4)], 4), null)).toEqual([]);
  });
  it("about the pen's step sees the food-only row, and about the largest dose a snack", () => {
    expect(alarmsOf(bandCard([band(71, 140, 4)], 3.5), null)).toEqual([{ alarm: "off the pen's step", meal: "dinner", units: 3.5 }]);
    const snack = { ...CARD, meals: { ...CARD.meals, snack: { kind: "fixed units" as const, units: units(21) } } };
    expect(alarmsOf(snack, null)).toEqual([{ alarm: "above the largest dose", meal: "snack", units: 21 }]);
    expect(alarmsOf(cardFor({ kind: "fixed units", units: units(20) }), null)).toEqual([]);
    expect(alarmsOf({ ...cardFor({ kind: "fixed units", units: units(30) }), largestDose: null }, null)).toEqual([]);
    expect(alarmsOf(cardFor({ kind: "fixed units", units: units(4.5) }), null)).toEqual([
      { alarm: "off the pen's step", meal: "dinner", units: 4.5 },
    ]);
  });
  it("is raised once, where two rows are odd in the same words", () => {
    const cells = [4, 3].map(units);
    const card = cardFor({
      kind: "grid",
      columns: [
        { from: 0, to: 30 },
        { from: 31, to: null },
      ],
      columnEdges: "up to the next",
      rows: [
        { from: 71, to: 150, units: cells, call: false },
        { from: 151, to: null, units: cells, call: false },
      ],
      edges: "up to the next",
      foodOnly: null,
    });
    expect(alarmsOf(card, null)).toEqual([{ alarm: "dose falls as the meal grows", meal: "dinner", before: 4, units: 3 }]);
  });
  it("about the bell is none where it ends as it begins", () => {
    expect(alarmsOf({ ...CARD, timing: { when: "with the first bite", earliestMinutes: 10, latestMinutes: 10 } }, null)).toEqual([]);
  });
});
