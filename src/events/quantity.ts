// Numbers that carry their unit, so that grams can never stand where insulin units belong.
import * as z from "zod/mini";

declare const unit: unique symbol;
type Quantity<U extends string> = number & { readonly [unit]: U };

/** Insulin units as a pen shows them: 6 or 6.5. Always "units" in words, never "U" (ISMP list of error-prone abbreviations). */
export type Units = Quantity<"insulin units">;
/** Grams of carbohydrate. */
export type Grams = Quantity<"grams of carbohydrate">;

export const units = (n: number): Units => n as Units;
export const grams = (n: number): Grams => n as Grams;

const finite = z.number().check(z.gte(0), z.lte(100000));
export const unitsSchema = z.pipe(
  finite,
  z.transform((n) => units(n)),
);
export const gramsSchema = z.pipe(
  finite,
  z.transform((n) => grams(n)),
);

/** The unit a person's meter shows. UCUM spelling. */
export const glucoseUnit = z.enum(["mg/dL", "mmol/L"]);
export type GlucoseUnit = z.infer<typeof glucoseUnit>;

/** A glucose value with the unit it was read in. The entered value is the truth; conversions are for display only. */
export const glucose = z.object({ value: z.number().check(z.gt(0)), unit: glucoseUnit });
export type Glucose = z.infer<typeof glucose>;

/** A wall-clock instant: milliseconds since 1970 in UTC. */
export type Instant = number;
/** A calendar day of the place, "2026-03-01". */
export const localDate = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/));
export type LocalDate = z.infer<typeof localDate>;
/** A time of day of the place, "21:30". */
export const clockTime = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));
export type ClockTime = z.infer<typeof clockTime>;

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;
