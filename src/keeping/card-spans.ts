// How large the numbers of a card may be. Larger is a slip of the finger.
import type { GlucoseUnit } from "#events/quantity.ts";

/** Pens for home use dial up to 80 units, a few up to 160 (from memory). */
export const UNITS = { least: 0, most: 160, decimals: 1 };

export const glucoseSpan = (unit: GlucoseUnit) => ({ least: 0, most: 999, decimals: unit === "mg/dL" ? 1 : 2 });
