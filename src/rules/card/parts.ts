// The card's row for a meal, worked out into the part for the food and the part for the glucose.
// Arithmetic as taught: food = grams / grams per unit, or servings x units per serving.
import type { Band, MealName, MealRule } from "#events/card.ts";
import { type Grams, units } from "#events/quantity.ts";
import { type Exact, exact, ONE, over, plus, roundTo, times, toNumber, ZERO } from "#rules/glucose/exact.ts";
import { addedFor, roundPart } from "./added.ts";
import { type BandRule, cellName, findRow, rowName } from "./band-row.ts";
import type { Reason, Silence } from "./told.ts";

export interface Parts {
  /** null: the table does not say how much of a row is for the food. */
  readonly food: Exact | null;
  /** food and correction together, before anything is left off. */
  readonly whole: Exact;
  /** One printed number holds food and correction, and nothing is worked out. */
  readonly printed: boolean;
  /** Other printed numbers that the pen must be able to dial as they are: for the food, and for the correction. */
  readonly fit: { readonly food: Exact | null; readonly added: Exact | null };
  readonly rows: readonly string[];
  readonly why: readonly Reason[];
  /** The same for the food alone. */
  readonly foodRows: readonly string[];
  readonly foodWhy: readonly Reason[];
  /** The row says to telephone the clinic. */
  readonly call: boolean;
}

const NOTHING = { food: null, added: null };

/** One printed number for food and correction together. foodOnly: null where the clinic left it blank. */
function printedParts(meal: MealName, found: { units: number; foodOnly: number | null; row: string; why: Reason; call: boolean }): Parts {
  const food = found.foodOnly === null ? null : exact(found.foodOnly);
  return {
    food,
    whole: exact(found.units),
    printed: true,
    fit: NOTHING,
    rows: [found.row],
    why: [found.why],
    foodRows: [`${meal} food-only`],
    foodWhy: food === null ? [] : [{ reason: "food-only row", units: units(toNumber(food)) }],
    call: found.call,
  };
}

function byBands(meal: MealName, rule: BandRule, value: number): Parts | Silence {
  const row = findRow(rule, value);
  if (typeof row === "string") return { why: row };
  const why: Reason = { reason: "band", from: row.from, to: row.to, units: row.units };
  return printedParts(meal, { units: row.units, foodOnly: rule.foodOnly, row: rowName(meal, row), why, call: row.call });
}

function byGrid(meal: MealName, rule: Extract<MealRule, { kind: "grid" }>, value: number, grams: Grams): Parts | Silence {
  const row = findRow({ bands: rule.rows, edges: rule.edges }, value);
  if (typeof row === "string") return { why: row };
  const column = findRow({ bands: rule.columns, edges: rule.columnEdges }, grams);
  if (typeof column === "string") return { why: column === "in two bands" ? "in two columns" : "no column for this meal" };
  const at = rule.columns.indexOf(column);
  const cell = row.units[at];
  if (cell === undefined) return { why: "no column for this meal" };
  const foodOnly = rule.foodOnly?.[at] ?? null;
  const why: Reason = { reason: "cell", from: row.from, to: row.to, gramsFrom: column.from, gramsTo: column.to, units: cell };
  return printedParts(meal, { units: cell, foodOnly, row: cellName(meal, row, column), why, call: row.call });
}

const SERVINGS = { "nearest half": exact(0.5), "nearest whole": ONE } as const;

function byServings(rule: Extract<MealRule, { kind: "servings" }>, grams: Grams): Exact {
  const exactly = over(exact(grams), exact(rule.gramsPerServing));
  const servings = rule.count === "exactly" ? exactly : roundTo(exactly, SERVINGS[rule.count], "nearest, half up");
  return times(servings, exact(rule.unitsPerServing));
}

interface Food {
  readonly food: Exact;
  /** A printed number, not worked out. */
  readonly isPrinted: boolean;
  readonly rows: readonly string[];
  readonly why: readonly Reason[];
}

type Counted = Exclude<MealRule, { kind: "bands" | "grid" }>;

function foodOf(meal: MealName, rule: Counted, grams: Grams | null): Food | Silence {
  switch (rule.kind) {
    case "fixed units":
      return {
        food: exact(rule.units),
        isPrinted: true,
        rows: [`${meal} fixed units`],
        why: [{ reason: "fixed for the meal", units: rule.units }],
      };
    case "correction only":
      return { food: ZERO, isPrinted: true, rows: [], why: [] };
    case "servings":
    case "ratio": {
      if (grams === null) return { why: "carbohydrate not known" };
      const exactly = rule.kind === "ratio" ? over(exact(grams), exact(rule.gramsPerUnit)) : byServings(rule, grams);
      const food = roundPart(exactly, rule.roundParts);
      const row = rule.kind === "ratio" ? `${rule.gramsPerUnit} g per unit` : `${rule.unitsPerServing} units per ${rule.gramsPerServing} g`;
      return { food, isPrinted: false, rows: [`${meal} ${row}`], why: [{ reason: "food", units: units(toNumber(food)), grams }] };
    }
  }
}

/** value is the reading in the card's unit, not low. */
export function partsOf(meal: MealName, rule: MealRule, value: number, grams: Grams | null): Parts | Silence {
  if (rule.kind === "bands") return byBands(meal, rule, value);
  if (rule.kind === "grid") return grams === null ? { why: "carbohydrate not known" } : byGrid(meal, rule, value, grams);
  const food = foodOf(meal, rule, grams);
  if (!("food" in food)) return food;
  const added = addedFor(meal, rule, value, rule.roundParts ?? "none");
  if ("why" in added) return added;
  return {
    food: food.food,
    whole: plus(food.food, added.units),
    printed: false,
    fit: fitOf(food, added.row),
    rows: [...food.rows, ...added.rows],
    why: food.why,
    foodRows: food.rows,
    foodWhy: food.why,
    call: added.row?.call ?? false,
  };
}

/** Where the food is worked out, the sum is rounded as the card says; two printed numbers must fit the pen both. */
const fitOf = (food: Food, row: Band | null): Parts["fit"] =>
  food.isPrinted ? { food: food.food, added: row === null ? null : exact(row.units) } : NOTHING;
