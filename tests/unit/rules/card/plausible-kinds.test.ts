// Alarms on the further kinds of card: grids, servings, tables of corrections, the kind of the insulin, background doses.
import { describe, expect, it } from "vitest";
import type { BackgroundDose, Band, CorrectionRule, DoseCard, InsulinKind, MealRule } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import type { Alarm } from "#rules/card/alarm.ts";
import { alarmsOf, dayOf } from "#rules/card/plausible.ts";
import { band, bandCard, CARD, cardFor } from "./sample-card.ts";

type Grid = Extract<MealRule, { kind: "grid" }>;
const some = (...n: number[]) => n.map(units);
const row = (from: number | null, to: number | null, ...n: number[]): Grid["rows"][number] => ({
  from,
  to,
  units: some(...n),
  call: false,
});
const columns = (...edges: [number | null, number | null][]) => edges.map(([from, to]) => ({ from, to }));
const GRID: Grid = {
  kind: "grid",
  columns: columns([0, 30], [31, 60], [61, null]),
  columnEdges: "up to the next",
  rows: [row(71, 150, 2, 4, 6), row(151, 250, 3, 5, 7), row(251, null, 4, 6, 8)],
  edges: "up to the next",
  foodOnly: some(2, 4, 6),
};
const grid = (change: Partial<Grid>): Alarm[] => alarmsOf(cardFor({ ...GRID, ...change }), null);
const names = (alarms: readonly Alarm[]) => alarms.map((a) => a.alarm);
const CORRECTION: CorrectionRule = { target: { low: 120, high: 120 }, perUnit: 50, mode: "linear", mayReduce: false };

describe("a typed grid", () => {
  it("raises nothing when nothing is odd", () => {
    expect(grid({})).toEqual([]);
    expect(grid({ foodOnly: null })).toEqual([]);
  });

  it("is asked about its rows as a table of bands is, hole and overlap once for all columns", () => {
    expect(grid({ edges: "as printed" })).toEqual([
      { alarm: "gap between rows", meal: "dinner", after: 150, before: 151 },
      { alarm: "gap between rows", meal: "dinner", after: 250, before: 251 },
    ]);
    expect(grid({ rows: [row(71, 160, 2, 4, 6), row(151, null, 3, 5, 7)] })).toEqual([
      { alarm: "rows overlap", meal: "dinner", from: 151, to: 160 },
    ]);
    expect(names(grid({ rows: [row(150, 71, 2, 4, 6)] }))).toEqual(["row is upside down"]);
  });

  it("is asked about its columns: holes wider than a gram, overlaps, upside down", () => {
    expect(grid({ columns: columns([0, 30], [32, 60], [61, null]) })).toEqual([
      { alarm: "gap between columns", meal: "dinner", after: 30, before: 32 },
    ]);
    expect(names(grid({ columnEdges: "as printed" }))).toEqual(["gap between columns", "gap between columns"]);
    expect(grid({ columns: columns([0, 35], [31, 60], [61, null]) })).toEqual([
      { alarm: "columns overlap", meal: "dinner", from: 31, to: 35 },
    ]);
    expect(grid({ columns: columns([30, 0], [31, 60], [61, null]) })).toContainEqual({
      alarm: "column is upside down",
      meal: "dinner",
      from: 30,
      to: 0,
    });
  });

  it("is asked about a dose that falls, or is ten times its neighbour, down a column, by its number", () => {
    expect(grid({ rows: [row(71, 150, 2, 4, 6), row(151, 250, 3, 3, 7)], foodOnly: null })).toEqual([
      { alarm: "dose falls as glucose rises", meal: "dinner", column: 2, before: 4, units: 3 },
    ]);
    expect(grid({ rows: [row(71, 150, 1, 4, 6), row(151, 250, 3, 5, 60)], foodOnly: null })).toEqual(
      expect.arrayContaining([
        { alarm: "tenfold step", meal: "dinner", column: 3, before: 6, units: 60 },
        { alarm: "tenfold step between columns", meal: "dinner", before: 5, units: 60 },
      ]),
    );
  });

  it("is asked about a larger meal with fewer units, in a row or in the food-only cells, in the order of the grams", () => {
    expect(grid({ rows: [row(71, null, 4, 3, 6)], foodOnly: null })).toEqual([
      { alarm: "dose falls as the meal grows", meal: "dinner", before: 4, units: 3 },
    ]);
    expect(grid({ foodOnly: some(2, 4, 3) })).toEqual([{ alarm: "dose falls as the meal grows", meal: "dinner", before: 4, units: 3 }]);
    const turned = { columns: [...GRID.columns].reverse(), rows: GRID.rows.map((r) => ({ ...r, units: [...r.units].reverse() })) };
    expect(grid({ ...turned, foodOnly: some(6, 4, 2) })).toEqual([]);
  });

  it("is asked about a food-only cell above its whole column", () => {
    expect(grid({ foodOnly: some(2, 7, 8) })).toEqual([{ alarm: "food-only above every row", meal: "dinner", column: 2, units: 7 }]);
    expect(grid({ foodOnly: some(2, 6, 8) })).toEqual([]);
  });

  it("is asked about cells that the pen cannot dial or that are above the largest dose, and glucose of the other unit", () => {
    expect(grid({ rows: [row(71, null, 2, 4.5, 6)], foodOnly: null })).toEqual([
      { alarm: "off the pen's step", meal: "dinner", units: 4.5 },
    ]);
    expect(grid({ rows: [row(71, null, 2, 4, 21)], foodOnly: null })).toEqual([
      { alarm: "above the largest dose", meal: "dinner", units: 21 },
    ]);
    expect(names(grid({ foodOnly: some(2, 3.5, 6) }))).toEqual(["off the pen's step"]);
    expect(grid({ rows: [row(4, null, 2, 4, 6)], foodOnly: null })).toEqual([
      { alarm: "looks like the other unit", where: "row", value: 4 },
    ]);
  });
});

describe("servings", () => {
  const servings = (unitsPerServing: number, gramsPerServing = 15, change: Partial<DoseCard> = {}) =>
    cardFor({ kind: "servings", unitsPerServing, gramsPerServing, count: "exactly", correction: null, roundParts: "none" }, change);

  it("are asked about by the grams that one unit covers: 3 to 50 (derived, wide)", () => {
    expect([5.1, 5, 0.3, 0.29].map((u) => names(alarmsOf(servings(u), null)))).toEqual([
      ["grams per unit unusual"],
      [],
      [],
      ["grams per unit unusual"],
    ]);
    expect(alarmsOf(servings(7), null)).toEqual([{ alarm: "grams per unit unusual", meal: "dinner", gramsPerUnit: 2.1 }]);
  });

  it("are asked about where a serving is not the 15 g that the tablet asks for", () => {
    expect(alarmsOf(servings(1, 10), null)).toEqual([{ alarm: "grams per serving unusual", meal: "dinner", grams: 10 }]);
  });

  it("are held against the rule of thumb by the units of a day that the card names", () => {
    const card = servings(1.5, 15, { unitsADay: 20 });
    expect(dayOf(card)).toEqual({ unitsADay: 20, kind: "rapid analogue" });
    expect(alarmsOf(card, dayOf(card))).toEqual([
      { alarm: "grams per unit far from the rule of thumb", meal: "dinner", gramsPerUnit: 10, usual: 25 },
    ]);
    expect(dayOf({ ...card, insulin: { ...card.insulin, kind: "regular" } })).toEqual({ unitsADay: 20, kind: "regular" });
    expect(dayOf(CARD)).toBeNull();
  });

  it("are compared between meals, and never with another kind", () => {
    const both = (lunch: MealRule): DoseCard => ({ ...servings(0.3), meals: { ...servings(0.3).meals, lunch } });
    const other = (unitsPerServing: number): MealRule => ({
      kind: "servings",
      unitsPerServing,
      gramsPerServing: 15,
      count: "exactly",
      correction: null,
      roundParts: "none",
    });
    expect(names(alarmsOf(both(other(3)), null))).toEqual(["tenfold between meals"]);
    expect(names(alarmsOf(both(other(2.9)), null))).toEqual([]);
    const table: MealRule = { kind: "correction only", correction: CORRECTION, roundParts: "none" };
    expect(names(alarmsOf({ ...CARD, meals: { ...CARD.meals, lunch: table, dinner: table } }, null))).toEqual([]);
  });
});

describe("a correction beside the food", () => {
  const fixed = (change: Partial<Extract<MealRule, { kind: "fixed units" }>>) =>
    cardFor({ kind: "fixed units", units: units(6), ...change });
  const table = (...bands: Band[]) => ({ bands, edges: "up to the next" as const });

  it("is asked about by its target and its step, beside whatever food", () => {
    expect(names(alarmsOf(fixed({ correction: { ...CORRECTION, perUnit: 5 } }), null))).toEqual(["glucose per unit unusual"]);
    const only = cardFor({ kind: "correction only", correction: { ...CORRECTION, target: { low: 70, high: 120 } }, roundParts: "none" });
    expect(names(alarmsOf(only, null))).toEqual(["target is low"]);
    expect(names(alarmsOf(fixed({ correction: { ...CORRECTION, target: { low: 5, high: 6 } } }), null))).toEqual(
      expect.arrayContaining(["looks like the other unit"]),
    );
  });

  it("by a table is asked about as a table of bands is", () => {
    expect(alarmsOf(fixed({ table: table(band(null, 250, 2), band(251, null, 1)) }), null)).toEqual([
      { alarm: "dose falls as glucose rises", meal: "dinner", before: 2, units: 1 },
    ]);
    expect(names(alarmsOf(fixed({ table: table(band(null, 250, 0), band(260, null, 1)) }), null))).toEqual(["gap between rows"]);
    expect(names(alarmsOf(fixed({ table: table(band(null, 14, 0), band(14.1, null, 1)) }), null))).toContain("looks like the other unit");
  });

  it("by a table must fit the pen where it is added to printed units, and only there", () => {
    const halves = table(band(null, 250, 0), band(251, null, 1.5));
    expect(names(alarmsOf(fixed({ table: halves }), null))).toEqual(["off the pen's step"]);
    const only: MealRule = { kind: "correction only", correction: null, table: halves, roundParts: "none" };
    expect(names(alarmsOf(cardFor(only), null))).toEqual(["off the pen's step"]);
    const ratio: MealRule = { kind: "ratio", gramsPerUnit: 10, correction: null, table: halves, roundParts: "none" };
    expect(names(alarmsOf(cardFor(ratio), null))).toEqual([]);
  });
});

describe("the kind of the insulin", () => {
  const of = (kind: InsulinKind, change: Partial<DoseCard> = {}): DoseCard => ({ ...CARD, insulin: { ...CARD.insulin, kind }, ...change });

  it("is asked about where it is not for meals", () => {
    expect(alarmsOf(of("long-acting"), null)).toEqual([{ alarm: "this insulin is not for meals", kind: "long-acting" }]);
    expect(alarmsOf(of("intermediate"), null)).toEqual([{ alarm: "this insulin is not for meals", kind: "intermediate" }]);
    const none = { meals: { breakfast: null, lunch: null, dinner: null, snack: null } };
    expect(alarmsOf(of("long-acting", none), null)).toEqual([]);
  });

  it("is asked about where premixed insulin would correct: by a rule, a table, bands or a grid that differ", () => {
    const premixed = (dinner: MealRule) => names(alarmsOf(of("premixed", { meals: { ...CARD.meals, dinner } }), null));
    const same = bandCard([band(null, 180, 6), band(181, null, 6)], 6, { edges: "up to the next" }).meals.dinner;
    const differ = bandCard([band(null, 180, 6), band(181, null, 8)], 6, { edges: "up to the next" }).meals.dinner;
    if (!same || !differ) throw new Error("no bands");
    const corrects = ["this insulin does not correct"];
    expect([premixed(same), premixed(differ)]).toEqual([[], corrects]);
    expect(premixed({ kind: "fixed units", units: units(6) })).toEqual([]);
    expect(premixed({ kind: "fixed units", units: units(6), correction: CORRECTION })).toEqual(corrects);
    expect(premixed({ kind: "fixed units", units: units(6), table: { bands: [band(null, null, 0)], edges: "as printed" } })).toEqual(
      corrects,
    );
    expect(premixed(GRID)).toEqual(corrects);
    expect(premixed({ ...GRID, rows: [row(71, 150, 2, 4, 6), row(151, null, 2, 4, 6)] })).toEqual([]);
    expect(names(alarmsOf(of("regular", { meals: { ...CARD.meals, dinner: GRID } }), null))).toEqual([]);
    expect(names(alarmsOf({ ...CARD, meals: { ...CARD.meals, dinner: GRID } }, null))).toEqual([]);
  });

  it("is asked about where the first bite may come later than is usual for it (reviews: 20 min rapid, 30 to 45 regular)", () => {
    const late = (kind: InsulinKind, latestMinutes: number) =>
      alarmsOf(of(kind, { timing: { when: "before eating", earliestMinutes: 0, latestMinutes } }), null);
    expect(late("rapid analogue", 20)).toEqual([]);
    expect(late("rapid analogue", 21)).toEqual([{ alarm: "eating late for this insulin", minutes: 21, usual: 20 }]);
    expect([late("regular", 45), late("regular", 46).length]).toEqual([[], 1]);
  });
});

describe("background doses", () => {
  const dose = (kind: InsulinKind, at: string): BackgroundDose => ({
    insulin: { id: "x", name: "an insulin", unitsPerMl: 100, kind },
    units: units(14),
    at,
    windowMinutes: null,
  });
  const alarms = (...background: BackgroundDose[]) => alarmsOf({ ...CARD, background }, null);

  it("are asked about where mealtime insulin stands by the clock, or two stand at one time", () => {
    expect(alarms(dose("long-acting", "21:30"), dose("intermediate", "08:00"))).toEqual([]);
    expect(alarms(dose("regular", "08:00"))).toEqual([{ alarm: "mealtime insulin by the clock", name: "an insulin", at: "08:00" }]);
    expect(alarms(dose("long-acting", "21:30"), dose("intermediate", "21:30"))).toEqual([
      { alarm: "two background doses at one time", at: "21:30" },
    ]);
  });
});
