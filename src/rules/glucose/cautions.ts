// What makes the coming hours riskier than others. Cautions only: no dose follows from them, and the card's own fields stay in charge.
import type { Glucose, GlucoseUnit } from "#events/quantity.ts";

/** Hard exercise lowers glucose for up to 24 hours, some pages say 48 (patient pages on lows at night). The shorter one, so that the words keep their weight. */
export const EXERCISE_HOURS = 24;

/**
 * The bedtime goal of older people with several illnesses begins at 100 mg/dL (ADA Standards of Care 2024, table 13.1: 80 to 180, 100 to 180 and
 * 110 to 200 by health). Somebody who injects and sees badly is taken for the middle row: our choice. 5.6 mmol/L as the ADA prints it.
 */
const BEDTIME_LEAST: Readonly<Record<GlucoseUnit, number>> = { "mg/dL": 100, "mmol/L": 5.6 };

/** Not low, and nearer to it than one sleeps with. What is low is the card's to say. */
export const nearLowForNight = (g: Glucose): boolean => g.value < BEDTIME_LEAST[g.unit];
