// The kinds of a meal's rule, as they were typed. A field is called by its place in the card.
import type { CorrectionRule, CorrectionTable, DoseCard, MealName, MealRule } from "#events/card.ts";
import { type GlucoseUnit, type Units, units } from "#events/quantity.ts";
import { gridOf } from "./card-grid.ts";
import { rowsOf } from "./card-rows.ts";
import { glucoseSpan, UNITS } from "./card-spans.ts";
import type { Reader } from "./reader.ts";

export const MEALS: readonly MealName[] = ["breakfast", "lunch", "dinner", "snack"];
const EDGES = ["as printed", "up to the next"] as const;
const PARTS = ["none", "tenths", "whole"] as const;

const unitsIn = (r: Reader, field: string): Units => units(r.number(field, UNITS));

interface Added {
  correction: CorrectionRule | null;
  table?: CorrectionTable;
}

function ruleOf(r: Reader, field: string, unit: GlucoseUnit): CorrectionRule {
  return {
    target: { low: r.number(`${field}.target.low`, glucoseSpan(unit)), high: r.number(`${field}.target.high`, glucoseSpan(unit)) },
    perUnit: r.number(`${field}.perUnit`, { least: 0.1, most: 500, decimals: 2 }),
    mode: r.choice(`${field}.mode`, ["linear", "nearest", "down", "each started step"]),
    mayReduce: r.choice(`${field}.mayReduce`, ["no", "yes"]) === "yes",
  };
}

/** "yes": by a rule; "table": by a table of its own. */
function addedOf(r: Reader, at: string, unit: GlucoseUnit, options: readonly ["no" | "yes", ...("yes" | "table")[]]): Added {
  switch (r.choice(`${at}.correction`, options)) {
    case "no":
      return { correction: null };
    case "yes":
      return { correction: ruleOf(r, `${at}.correction`, unit) };
    case "table":
      return {
        correction: null,
        table: { bands: rowsOf(r, `${at}.table`, unit), edges: r.choice(`${at}.table.edges`, EDGES) },
      };
  }
}

/** A correction beside fixed units is left out of the card where there is none: such cards are as they always were. */
function fixedOf(r: Reader, at: string, unit: GlucoseUnit): MealRule {
  const { correction, table } = addedOf(r, at, unit, ["no", "yes", "table"]);
  return {
    kind: "fixed units",
    units: unitsIn(r, `${at}.units`),
    ...(correction ? { correction, roundParts: r.choice(`${at}.roundParts`, PARTS) } : {}),
    ...(table ? { table } : {}),
  };
}

/** null: no dose for this meal on the card. */
function mealOf(r: Reader, meal: MealName, unit: GlucoseUnit): MealRule | null {
  const at = `meals.${meal}`;
  switch (r.choice(`${at}.kind`, ["none", "fixed units", "bands", "grid", "servings", "ratio", "correction only"])) {
    case "none":
      return null;
    case "fixed units":
      return fixedOf(r, at, unit);
    case "bands": {
      const foodOnly = r.blankOrNumber(`${at}.foodOnly`, UNITS);
      return {
        kind: "bands",
        bands: rowsOf(r, at, unit),
        edges: r.choice(`${at}.edges`, EDGES),
        foodOnly: foodOnly === null ? null : units(foodOnly),
      };
    }
    case "grid":
      return gridOf(r, at, unit);
    case "servings":
      return {
        kind: "servings",
        unitsPerServing: r.number(`${at}.unitsPerServing`, { least: 0.1, most: 30, decimals: 2 }),
        gramsPerServing: r.number(`${at}.gramsPerServing`, { least: 1, most: 60, decimals: 1 }),
        count: r.choice(`${at}.count`, ["exactly", "nearest half", "nearest whole"]),
        ...addedOf(r, at, unit, ["no", "yes", "table"]),
        roundParts: r.choice(`${at}.roundParts`, PARTS),
      };
    case "ratio":
      return {
        kind: "ratio",
        gramsPerUnit: r.number(`${at}.gramsPerUnit`, { least: 0.1, most: 200, decimals: 2 }),
        ...addedOf(r, at, unit, ["no", "yes", "table"]),
        roundParts: r.choice(`${at}.roundParts`, PARTS),
      };
    case "correction only":
      return { kind: "correction only", ...addedOf(r, at, unit, ["yes", "table"]), roundParts: r.choice(`${at}.roundParts`, PARTS) };
  }
}

export const mealsOf = (r: Reader, unit: GlucoseUnit): DoseCard["meals"] => ({
  breakfast: mealOf(r, "breakfast", unit),
  lunch: mealOf(r, "lunch", unit),
  dinner: mealOf(r, "dinner", unit),
  snack: mealOf(r, "snack", unit),
});
