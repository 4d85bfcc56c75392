// The part of a dose that is for the glucose, where the food is counted by itself: by a rule, or by a table of its own.
// Arithmetic as taught: correction = (reading - target) / glucose per unit.
import type { Band, CorrectionRule, CorrectionTable, MealName, MealRule } from "#events/card.ts";
import { type Exact, exact, minus, negative, ONE, over, roundTo, ZERO } from "#rules/glucose/exact.ts";
import { findRow, tableRowName } from "./band-row.ts";
import type { Silence } from "./told.ts";

export type RoundParts = Extract<MealRule, { kind: "ratio" }>["roundParts"];

export interface Added {
  readonly units: Exact;
  readonly rows: readonly string[];
  /** The row of the table that was used; null for a rule, or none. */
  readonly row: Band | null;
}

const STEP = { tenths: exact(0.1), whole: ONE } as const;

/**
 * Rounds the size, then puts the sign back, so that half a unit below the target takes a whole one off: the careful way. For a part above 0
 * this is the usual half up.
 */
const bySize = (n: Exact, round: (size: Exact) => Exact): Exact => (n.top < 0n ? negative(round(negative(n))) : round(n));

export function roundPart(part: Exact, how: RoundParts): Exact {
  return how === "none" ? part : bySize(part, (size) => roundTo(size, STEP[how], "nearest, half up"));
}

/** Steps above the target as the card counts them. "down" is always towards less insulin. 40 above at 30 a unit is taught as 1 (nearest) and as 2 (each started step). */
function countSteps(steps: Exact, mode: CorrectionRule["mode"]): Exact {
  switch (mode) {
    case "linear":
      return steps;
    case "down":
      return roundTo(steps, ONE, "down");
    case "nearest":
      return bySize(steps, (size) => roundTo(size, ONE, "nearest, half up"));
    case "each started step":
      return bySize(steps, (size) => roundTo(size, ONE, "up"));
  }
}

function byRule(rule: CorrectionRule, value: number): Exact {
  const { low, high } = rule.target;
  if (value > high) return countSteps(over(minus(exact(value), exact(high)), exact(rule.perUnit)), rule.mode);
  if (value < low && rule.mayReduce) return countSteps(over(minus(exact(value), exact(low)), exact(rule.perUnit)), rule.mode);
  return ZERO;
}

function byTable(meal: MealName, table: CorrectionTable, value: number): Added | Silence {
  const row = findRow(table, value);
  if (typeof row === "string") return { why: row };
  return { units: exact(row.units), rows: [tableRowName(meal, row)], row };
}

interface AddedRule {
  readonly correction?: CorrectionRule | null | undefined;
  readonly table?: CorrectionTable | undefined;
}

/** value is the reading in the card's unit, not low. A table wins; signing lets no rule through that has both. */
export function addedFor(meal: MealName, rule: AddedRule, value: number, round: RoundParts): Added | Silence {
  if (rule.table) return byTable(meal, rule.table, value);
  const units = rule.correction ? roundPart(byRule(rule.correction, value), round) : ZERO;
  return { units, rows: units.top === 0n ? [] : [`${meal} correction`], row: null };
}
