// The other unit, for display only. Never store or compare a converted value: there and back again changes 258 of the 581 whole numbers from 20 to 600 mg/dL.
import type { Glucose } from "#events/quantity.ts";
import { exact, ONE, over, roundTo, times, toNumber } from "./exact.ts";

/** mg/dL in one mmol/L: the molar mass of glucose, 180.156 g/mol from the standard atomic weights. 18, 18.016 and 18.0182 are in use too. */
export const MG_PER_MMOL = 18.0156;

const TENTH = exact(0.1);

/** Half up: whole mg/dL, mmol/L to one decimal, as meters show them. */
export function toOtherUnit(g: Glucose, factor = MG_PER_MMOL): Glucose {
  return g.unit === "mg/dL"
    ? { value: toNumber(roundTo(over(exact(g.value), exact(factor)), TENTH, "nearest, half up")), unit: "mmol/L" }
    : { value: toNumber(roundTo(times(exact(g.value), exact(factor)), ONE, "nearest, half up")), unit: "mg/dL" };
}
