// The rows of a table by glucose, as they were typed.
import type { Band } from "#events/card.ts";
import { type GlucoseUnit, units } from "#events/quantity.ts";
import { glucoseSpan, UNITS } from "./card-spans.ts";
import type { Reader } from "./reader.ts";

/** The longest printed table we know has 9 rows (from memory). */
export const MOST_ROWS = 14;

/** A row in which nothing was typed is no row; a row without units is a problem. */
export function rowsOf(r: Reader, at: string, unit: GlucoseUnit): Band[] {
  const rows: Band[] = [];
  for (let i = 0; i < MOST_ROWS; i++) {
    const row = `${at}.bands.${i}`;
    if (["from", "to", "units"].every((name) => r.raw(`${row}.${name}`) === "")) continue;
    rows.push({
      from: r.blankOrNumber(`${row}.from`, glucoseSpan(unit)),
      to: r.blankOrNumber(`${row}.to`, glucoseSpan(unit)),
      units: units(r.number(`${row}.units`, UNITS)),
      call: r.raw(`${row}.call`) === "yes",
    });
  }
  if (rows.length === 0) r.note(`${at}.bands.0.units`, { why: "empty" });
  return rows;
}
