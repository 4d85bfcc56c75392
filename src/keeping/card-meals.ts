// The three kinds of a meal's rule, as they were typed.
import type { Band, DoseCard, MealName, MealRule } from "#events/card.ts";
import { type GlucoseUnit, type Units, units } from "#events/quantity.ts";
import type { Reader } from "./reader.ts";

export const MEALS: readonly MealName[] = ["breakfast", "lunch", "dinner", "snack"];
/** The longest printed table we know has 9 rows (from memory). */
export const MOST_ROWS = 14;
/** Pens for home use dial up to 80 units, a few up to 160 (from memory). Larger is a slip of the finger. */
export const UNITS = { least: 0, most: 160, decimals: 1 };

const glucose = (unit: GlucoseUnit) => ({ least: 0, most: 999, decimals: unit === "mg/dL" ? 1 : 2 });

const unitsIn = (r: Reader, field: string): Units => units(r.number(field, UNITS));

/** A row in which nothing was typed is no row; a row without units is a problem. */
function rowsOf(r: Reader, at: string, unit: GlucoseUnit): Band[] {
  const rows: Band[] = [];
  for (let i = 0; i < MOST_ROWS; i++) {
    const row = `${at}.bands.${i}`;
    if (["from", "to", "units"].every((name) => r.raw(`${row}.${name}`) === "")) continue;
    rows.push({
      from: r.blankOrNumber(`${row}.from`, glucose(unit)),
      to: r.blankOrNumber(`${row}.to`, glucose(unit)),
      units: unitsIn(r, `${row}.units`),
      call: r.raw(`${row}.call`) === "yes",
    });
  }
  if (rows.length === 0) r.note(`${at}.bands.0.units`, { why: "empty" });
  return rows;
}

function correctionOf(r: Reader, at: string, unit: GlucoseUnit): Extract<MealRule, { kind: "ratio" }>["correction"] {
  if (r.choice(`${at}.correction`, ["no", "yes"]) === "no") return null;
  const field = `${at}.correction`;
  return {
    target: { low: r.number(`${field}.target.low`, glucose(unit)), high: r.number(`${field}.target.high`, glucose(unit)) },
    perUnit: r.number(`${field}.perUnit`, { least: 0.1, most: 500, decimals: 2 }),
    mode: r.choice(`${field}.mode`, ["linear", "nearest", "down", "each started step"]),
    mayReduce: r.choice(`${field}.mayReduce`, ["no", "yes"]) === "yes",
  };
}

/** null: no dose for this meal on the card. */
function mealOf(r: Reader, meal: MealName, unit: GlucoseUnit): MealRule | null {
  const at = `meals.${meal}`;
  switch (r.choice(`${at}.kind`, ["none", "fixed units", "bands", "ratio"])) {
    case "none":
      return null;
    case "fixed units":
      return { kind: "fixed units", units: unitsIn(r, `${at}.units`) };
    case "bands": {
      const foodOnly = r.blankOrNumber(`${at}.foodOnly`, UNITS);
      return {
        kind: "bands",
        bands: rowsOf(r, at, unit),
        edges: r.choice(`${at}.edges`, ["as printed", "up to the next"]),
        foodOnly: foodOnly === null ? null : units(foodOnly),
      };
    }
    case "ratio":
      return {
        kind: "ratio",
        gramsPerUnit: r.number(`${at}.gramsPerUnit`, { least: 0.1, most: 200, decimals: 2 }),
        correction: correctionOf(r, at, unit),
        roundParts: r.choice(`${at}.roundParts`, ["none", "tenths", "whole"]),
      };
  }
}

export const mealsOf = (r: Reader, unit: GlucoseUnit): DoseCard["meals"] => ({
  breakfast: mealOf(r, "breakfast", unit),
  lunch: mealOf(r, "lunch", unit),
  dinner: mealOf(r, "dinner", unit),
  snack: mealOf(r, "snack", unit),
});
