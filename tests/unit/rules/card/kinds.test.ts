// Every further kind of card: a grid, servings, fixed units with a correction, a correction only, premixed.
import { describe, expect, it } from "vitest";
import type { Band, CorrectionRule, CorrectionTable, DoseCard, MealRule } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { lookUp } from "#rules/card/lookup.ts";
import type { RecentDose } from "#rules/card/told.ts";
import { at, band, CARD, cardFor, parts, said } from "./sample-card.ts";

type Grid = Extract<MealRule, { kind: "grid" }>;
const CORRECTION: CorrectionRule = { target: { low: 120, high: 120 }, perUnit: 50, mode: "linear", mayReduce: false };
const NOW: { recent: RecentDose[] } = { recent: [{ minutesAgo: 30, units: units(6) }] };
const some = (...n: number[]) => n.map(units);
const table = (...bands: Band[]): CorrectionTable => ({ bands, edges: "as printed" });

const GRID: Grid = {
  kind: "grid",
  columns: [
    { from: 0, to: 30 },
    { from: 31, to: 60 },
    { from: 61, to: 100 },
  ],
  columnEdges: "as printed",
  rows: [
    { from: 71, to: 150, units: some(2, 4, 6), call: false },
    { from: 151, to: 250, units: some(3, 5, 7), call: false },
    { from: 251, to: null, units: some(4, 6, 9), call: true },
  ],
  edges: "as printed",
  foodOnly: some(2, 4, 6),
};
const gridCard = (change: Partial<Grid> = {}, card: Partial<DoseCard> = {}): DoseCard => cardFor({ ...GRID, ...change }, card);

describe("a grid", () => {
  it("tells the cell where the row of the reading meets the column of the grams, to every edge", () => {
    const card = gridCard();
    expect([71, 150, 151, 250, 251, 400].map((g) => said(card, g, 45))).toEqual([4, 4, 5, 5, 6, 6]);
    expect([0, 30, 31, 60, 61, 100].map((g) => said(card, 200, g))).toEqual([3, 3, 5, 5, 7, 7]);
  });

  it("tells nothing between two rows or columns, above them or below, and names which", () => {
    const card = gridCard();
    expect(said(card, 150.5, 45)).toBe("hole between bands");
    expect(said(gridCard({ rows: GRID.rows.slice(1) }), 100, 45)).toBe("below the bands");
    expect(said(gridCard({ rows: GRID.rows.slice(0, 1) }), 200, 45)).toBe("above the bands");
    expect([30.5, 101].map((g) => said(card, 100, g))).toEqual(["no column for this meal", "no column for this meal"]);
    expect(said(gridCard({ columns: [{ from: 10, to: 30 }, ...GRID.columns.slice(1)] }), 100, 5)).toBe("no column for this meal");
  });

  it("tells nothing where two rows or two columns claim the meal", () => {
    const overlapping = gridCard({ columns: [{ from: 0, to: 40 }, ...GRID.columns.slice(1)] });
    expect(said(overlapping, 100, 35)).toBe("in two columns");
    expect(said(overlapping, 100, 30)).toBe(2);
    const rows = gridCard({ rows: [{ from: 71, to: 160, units: some(2, 4, 6), call: false }, ...GRID.rows.slice(1)] });
    expect(said(rows, 155, 45)).toBe("in two bands");
  });

  it("reads rows and columns up to the next, each where the card says so of it", () => {
    const columns = gridCard({ columnEdges: "up to the next" });
    expect([said(columns, 100, 30.5), said(columns, 150.5, 45)]).toEqual([2, "hole between bands"]);
    const rows = gridCard({ edges: "up to the next" });
    expect([said(rows, 100, 30.5), said(rows, 150.5, 45)]).toEqual(["no column for this meal", 4]);
  });

  it("may be typed with its columns and rows in any order", () => {
    const turned = gridCard({
      columns: [...GRID.columns].reverse(),
      rows: [...GRID.rows].reverse().map((row) => ({ ...row, units: [...row.units].reverse() })),
      foodOnly: some(6, 4, 2),
      edges: "up to the next",
      columnEdges: "up to the next",
    });
    expect([20, 45, 80].map((g) => said(turned, 200, g))).toEqual([3, 5, 7]);
    expect([20, 45, 80].map((g) => said(turned, 200, g, NOW))).toEqual([2, 4, 6]);
  });

  it("is silent while the carbohydrate is not known", () => {
    expect(said(gridCard(), 100)).toBe("carbohydrate not known");
  });

  it("names the cell it used, and that the row says to call", () => {
    expect(lookUp(gridCard(), at(gridCard(), 300, 80))).toMatchObject({
      units: 9,
      food: 6,
      correction: 3,
      rows: ["dinner row from 251, column 61-100"],
      why: [{ reason: "cell", from: 251, to: null, gramsFrom: 61, gramsTo: 100, units: 9 }],
      cautions: [{ caution: "card says call the clinic" }],
    });
    const any = gridCard({
      columns: [{ from: null, to: null }],
      rows: [{ from: null, to: 90, units: some(2), call: false }],
      foodOnly: null,
    });
    expect(lookUp(any, at(any, 80, 80))).toMatchObject({ rows: ["dinner row up to 90, column for any meal"], cautions: [] });
    const open = gridCard({
      columns: [{ from: null, to: 90 }],
      rows: [{ from: null, to: null, units: some(2), call: false }],
      foodOnly: null,
    });
    expect(lookUp(open, at(open, 80, 80))).toMatchObject({ rows: ["dinner row for any reading, column up to 90"] });
  });

  it("tells its food-only cell of the same column inside the spacing, and asks where that is blank", () => {
    expect([20, 45, 80].map((g) => said(gridCard(), 300, g, NOW))).toEqual([2, 4, 6]);
    expect(lookUp(gridCard(), at(gridCard(), 300, 80, NOW))).toMatchObject({
      rows: ["dinner food-only"],
      why: [
        { reason: "food-only row", units: 6 },
        { reason: "no correction", because: "spacing" },
      ],
    });
    expect(said(gridCard({ foodOnly: null }), 300, 45, NOW)).toBe("no food-only row");
    expect(said(gridCard({ foodOnly: null }), 300, 45)).toBe(6);
  });

  it("with a cell missing tells nothing", () => {
    expect(said(gridCard({ rows: [{ from: 71, to: 150, units: some(2, 4), call: false }] }), 100, 80)).toBe("no column for this meal");
    expect(said(gridCard({ foodOnly: some(2) }), 300, 45, NOW)).toBe("no food-only row");
  });

  it("never rounds a printed cell", () => {
    expect(said(gridCard({ rows: [{ from: 71, to: null, units: some(2, 4.5, 6), call: false }] }), 100, 45)).toBe("off the pen's step");
    expect(said(gridCard({ foodOnly: some(2, 3.5, 6) }), 300, 45)).toBe(6);
    expect(said(gridCard({ foodOnly: some(2, 3.5, 6) }), 300, 45, NOW)).toBe("off the pen's step");
  });
});

type Servings = Extract<MealRule, { kind: "servings" }>;
const servingsCard = (change: Partial<Servings> = {}, card: Partial<DoseCard> = {}): DoseCard =>
  cardFor(
    {
      kind: "servings",
      unitsPerServing: 1.5,
      gramsPerServing: 15,
      count: "exactly",
      correction: CORRECTION,
      roundParts: "none",
      ...change,
    },
    card,
  );

describe("a card by servings", () => {
  it("is 1.5 units for each 15 g, which is 1 unit for 10 g (source: Melbourne hospital, 500 rule also written so)", () => {
    expect(parts(servingsCard(), 110, 60)).toEqual([6, 0]);
    expect(parts(servingsCard(), 220, 40)).toEqual([4, 2]);
  });

  it("counts servings exactly, or to the nearest half or whole one, a half going up", () => {
    const of = (count: Servings["count"], grams: number) => parts(servingsCard({ count, unitsPerServing: 2 }), 110, grams)[0];
    expect([40, 41.2, 41.3].map((g) => of("nearest half", g))).toEqual([5, 5, 6]);
    expect([22.4, 22.5].map((g) => of("nearest whole", g))).toEqual([2, 4]);
    expect(of("exactly", 22.5)).toBe(3);
  });

  it("counts servings of the clinic's own size", () => {
    expect(parts(servingsCard({ gramsPerServing: 10, unitsPerServing: 1 }), 110, 60)).toEqual([6, 0]);
  });

  it("rounds its parts where the card says so", () => {
    expect(parts(servingsCard({ roundParts: "whole" }), 240, 44)).toEqual([4, 2]);
    expect(parts(servingsCard({ roundParts: "tenths" }), 214, 68)).toEqual([6.8, 1.9]);
  });

  it("leaves its correction off inside the spacing, keeps its food, and names its rows", () => {
    const card = servingsCard();
    expect(parts(card, 220, 40, NOW)).toEqual([4, 0]);
    expect(lookUp(card, at(card, 220, 40))).toMatchObject({
      rows: ["dinner 1.5 units per 15 g", "dinner correction"],
      why: [
        { reason: "food", units: 4, grams: 40 },
        { reason: "reading is high", units: 2 },
      ],
    });
    expect(lookUp(card, at(card, 220, 40, NOW))).toMatchObject({ rows: ["dinner 1.5 units per 15 g"] });
  });

  it("is silent while the carbohydrate is not known", () => {
    expect(said(servingsCard(), 110)).toBe("carbohydrate not known");
  });
});

type Fixed = Extract<MealRule, { kind: "fixed units" }>;
const fixed = (change: Partial<Fixed>, card: Partial<DoseCard> = {}): DoseCard =>
  cardFor({ kind: "fixed units", units: units(6), ...change }, card);

describe("fixed units with a correction", () => {
  it("adds the correction to the meal's own units", () => {
    const card = fixed({ correction: CORRECTION });
    expect([110, 170, 220].map((g) => parts(card, g))).toEqual([
      [6, 0],
      [6, 1],
      [6, 2],
    ]);
    expect(lookUp(card, at(card, 220))).toMatchObject({
      rows: ["dinner fixed units", "dinner correction"],
      why: [
        { reason: "fixed for the meal", units: 6 },
        { reason: "reading is high", units: 2 },
      ],
    });
    expect(parts(card, 220, null, NOW)).toEqual([6, 0]);
  });

  it("may round the correction by itself", () => {
    expect(parts(fixed({ correction: CORRECTION, roundParts: "whole" }), 195)).toEqual([6, 2]);
    expect(parts(fixed({ correction: CORRECTION }), 195)).toEqual([6, 1.5]);
  });

  it("never rounds the fixed part, not even where the sum would fit", () => {
    expect(lookUp(fixed({ units: units(4.5), correction: CORRECTION }), at(CARD, 145))).toMatchObject({
      why: "off the pen's step",
      units: 4.5,
    });
  });
});

describe("a table of corrections", () => {
  const ROWS = table(band(null, 250, 0), band(251, 350, 2), band(351, null, 4, true));

  it("adds 2 above 250 and 4 above 350 to the food (source: ADA older-adult simplification)", () => {
    const card = fixed({ table: ROWS });
    expect([250, 251, 350, 351].map((g) => parts(card, g))).toEqual([
      [6, 0],
      [6, 2],
      [6, 2],
      [6, 4],
    ]);
    const ratio = cardFor({ kind: "ratio", gramsPerUnit: 10, correction: null, table: ROWS, roundParts: "none" });
    expect(parts(ratio, 300, 60)).toEqual([6, 2]);
    expect(parts(servingsCard({ correction: null, table: ROWS }), 300, 60)).toEqual([6, 2]);
  });

  it("names its row, and that the row says to call", () => {
    const card = fixed({ table: ROWS });
    expect(lookUp(card, at(card, 300))).toMatchObject({ rows: ["dinner fixed units", "dinner table 251-350"], cautions: [] });
    expect(lookUp(card, at(card, 400))).toMatchObject({ cautions: [{ caution: "card says call the clinic" }] });
    expect(lookUp(card, at(card, 400, null, NOW))).toMatchObject({ units: 6, rows: ["dinner fixed units"] });
  });

  it("tells nothing from its holes, though the food is known", () => {
    expect([250.5, 250].map((g) => said(fixed({ table: ROWS }), g))).toEqual(["hole between bands", 6]);
    expect(said(fixed({ table: table(band(150, 200, 1)) }), 110)).toBe("below the bands");
  });

  it("goes before a rule, where a card has both", () => {
    expect(parts(fixed({ table: ROWS, correction: CORRECTION }), 300)).toEqual([6, 2]);
  });

  it("must fit the pen where it is added to printed units, and only where it is used", () => {
    const halves = table(band(null, 250, 0), band(251, null, 1.5));
    expect(said(fixed({ table: halves }), 300)).toBe("off the pen's step");
    expect(said(fixed({ table: halves }), 200)).toBe(6);
    expect(said(fixed({ table: halves }), 300, null, NOW)).toBe(6);
    const ratio = cardFor({ kind: "ratio", gramsPerUnit: 10, correction: null, table: halves, roundParts: "none" });
    expect(said(ratio, 300, 65)).toBe(8);
  });
});

describe("a correction only", () => {
  const card = cardFor({ kind: "correction only", correction: CORRECTION, roundParts: "none" });

  it("tells the correction, and nothing for the food", () => {
    expect([110, 120, 170, 220].map((g) => said(card, g))).toEqual([0, 0, 1, 2]);
    expect(lookUp(card, at(card, 220, 90))).toMatchObject({
      food: 0,
      correction: 2,
      rows: ["dinner correction"],
      why: [{ reason: "reading is high", units: 2 }],
    });
  });

  it("tells 0 units inside the spacing and says why, with no row", () => {
    expect(lookUp(card, at(card, 220, null, NOW))).toMatchObject({
      units: 0,
      rows: [],
      why: [{ reason: "no correction", because: "spacing" }],
    });
  });

  it("takes nothing off below the target, even where the card lets it: there is no food to take it off", () => {
    const reduces = cardFor({ kind: "correction only", correction: { ...CORRECTION, mayReduce: true }, roundParts: "none" });
    expect(said(reduces, 80)).toBe(0);
  });

  it("goes by a table too, whose rows must fit the pen", () => {
    const by = (...bands: Band[]) => cardFor({ kind: "correction only", correction: null, table: table(...bands), roundParts: "none" });
    expect([200, 300].map((g) => said(by(band(null, 250, 0), band(251, null, 2)), g))).toEqual([0, 2]);
    expect(said(by(band(null, null, 1.5)), 200)).toBe("off the pen's step");
  });

  it("without a rule tells 0", () => {
    expect(said(cardFor({ kind: "correction only", correction: null, roundParts: "none" }), 220)).toBe(0);
  });
});

describe("insulin that never corrects", () => {
  const mixed = (kind: NonNullable<DoseCard["insulin"]["kind"]>): Partial<DoseCard> => ({ insulin: { ...CARD.insulin, kind } });

  it("is premixed, intermediate and long-acting: the food part alone is told, and why", () => {
    for (const kind of ["premixed", "intermediate", "long-acting"] as const) {
      const card = fixed({ correction: CORRECTION }, mixed(kind));
      expect(lookUp(card, at(card, 220))).toMatchObject({
        units: 6,
        why: [{ reason: "fixed for the meal" }, { reason: "no correction", because: "this insulin" }],
      });
    }
    for (const kind of ["rapid analogue", "regular"] as const) expect(said(fixed({ correction: CORRECTION }, mixed(kind)), 220)).toBe(8);
  });

  it("still takes off what the card takes off below the target", () => {
    const card = fixed({ correction: { ...CORRECTION, mayReduce: true } }, mixed("premixed"));
    expect(parts(card, 70.5)).toEqual([6, -0.99]);
  });

  it("asks where a table does not name its food part", () => {
    const card = cardFor(
      { kind: "bands", bands: [band(71, 180, 6), band(181, null, 8)], edges: "as printed", foodOnly: null },
      mixed("premixed"),
    );
    expect(said(card, 200)).toBe("no food-only row");
  });
});
