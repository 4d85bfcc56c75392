/** Which row of a table a number stands in: exactly one, or the card is not asked further. */
import type Fraction from "fraction.js";
import { figure } from "./exact.ts";
import type { Range } from "./shapes.ts";

export function standsIn(range: Range, value: Fraction): boolean {
  const { from, to } = range;
  if (from !== null && (from.counts ? value.lt(figure(from.at)) : value.lte(figure(from.at)))) return false;
  if (to !== null && (to.counts ? value.gt(figure(to.at)) : value.gte(figure(to.at)))) return false;
  return true;
}

/** The index of the only row that fits. A reading of 180.156 between "up to 180" and "from 181" stands in a hole: it is never guessed. */
export function rowOf(rows: readonly Range[], value: Fraction): number | "hole between rows" | "two rows fit" {
  const fits = rows.flatMap((row, index) => (standsIn(row, value) ? [index] : []));
  const [only, second] = fits;
  if (only === undefined) return "hole between rows";
  return second === undefined ? only : "two rows fit";
}
