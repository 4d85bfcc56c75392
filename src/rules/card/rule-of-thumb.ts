// Rules of thumb that clinics start from. Only to ask "is this what the card says?" of a card that was typed in, never to set a dose.
import type { GlucoseUnit } from "#events/quantity.ts";
import { type Exact, exact, over } from "#rules/glucose/exact.ts";

export type ThumbKind = "rapid analogue" | "regular";

/** The 500 rule: grams one unit covers = 500 / units a day (Melbourne hospital teaching; some books 450 for regular insulin). */
export const thumbGramsPerUnit = (unitsADay: number): Exact => over(exact(500), exact(unitsADay));

/**
 * Glucose that one unit lowers: 1800 / units a day in mg/dL (1500 for regular insulin), 100 / units a day in mmol/L (Canadian educator
 * manual 12-55; 1800 / 18). Published constants go from 1600 to 2200.
 */
export function thumbGlucosePerUnit(unitsADay: number, unit: GlucoseUnit, kind: ThumbKind): Exact {
  const inMgPerDl = exact(kind === "regular" ? 1500 : 1800);
  return over(unit === "mg/dL" ? inMgPerDl : over(inMgPerDl, exact(18)), exact(unitsADay));
}
