// Is a reading low? Always in the unit in which it was read: 3.9 mmol/L is 70.26 mg/dL, so a converted reading slips past both "below 70" and "at or below 70".
import type { DoseCard } from "#events/card.ts";
import type { Glucose } from "#events/quantity.ts";

/** The reading must be in the card's unit: lookUp and the reading step refuse another one before. */
export function classify(g: Glucose, low: DoseCard["low"]): "low" | "not low" {
  return g.value < low.value || (low.counts === "at or below" && g.value === low.value) ? "low" : "not low";
}

/** Level 2 of the ADA Standards of Care (section 6, classification of hypoglycaemia): below 54 mg/dL, below 3.0 mmol/L. */
export const isVeryLow = (g: Glucose): boolean => g.value < (g.unit === "mg/dL" ? 54 : 3.0);

export type AdaLevel = "level 1" | "level 2" | "none";

/**
 * Levels of the ADA Standards of Care by the number alone; level 3 is how the person is, at any glucose.
 * limitCounts: 70 mg/dL (3.9 mmol/L) itself is level 1, the older wording of the ADA 2017 table.
 */
export function adaLevel(g: Glucose, { limitCounts }: { limitCounts: boolean }): AdaLevel {
  if (isVeryLow(g)) return "level 2";
  const limit = g.unit === "mg/dL" ? 70 : 3.9;
  return g.value < limit || (limitCounts && g.value === limit) ? "level 1" : "none";
}
