// Amounts in words. A number and its unit stay separate words; no trailing zero, always a leading one (ISMP list).
import type { GlucoseUnit } from "#events/quantity.ts";
import { digitsOf } from "#words/numbers.ts";

export const number = (n: number): string => String(Math.round(n * 10) / 10);
export const unitsOf = (n: number): string => (n === 1 ? "1 unit" : `${number(n)} units`);
export const gramsOf = (n: number): string => (n === 1 ? "1 gram" : `${number(n)} grams`);
export const minutesOf = (n: number): string => (n === 1 ? "1 minute" : `${n} minutes`);

/** "One, eight, zero." */
export function digits(text: string): string {
  const said = digitsOf(text).join(", ");
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

/** The unit as it is said beside a reading. */
export const unitSaid: Readonly<Record<GlucoseUnit, string>> = { "mg/dL": "milligrams per deciliter", "mmol/L": "millimoles per litre" };

/** "3 hours and 10 minutes", "40 minutes", "2 days". */
export function ago(minutes: number): string {
  if (minutes < 60) return minutesOf(minutes);
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours >= 48) return `${Math.floor(hours / 24)} days`;
  const h = hours === 1 ? "1 hour" : `${hours} hours`;
  return rest === 0 ? h : `${h} and ${minutesOf(rest)}`;
}
