// The card's row for a meal, worked out into the part for the food and the part for the glucose.
// Arithmetic as taught: food = grams / grams per unit; correction = (reading - target) / glucose per unit.
import type { CorrectionRule, MealName, MealRule } from "#events/card.ts";
import { type Grams, units } from "#events/quantity.ts";
import { compare, type Exact, exact, minus, negative, ONE, over, roundTo, toNumber, ZERO } from "#rules/glucose/exact.ts";
import { type BandRule, findRow, rowName } from "./band-row.ts";
import type { Reason, Silence } from "./told.ts";

export interface Parts {
  /** null: the table does not say how much of a row is for the food. */
  readonly food: Exact | null;
  /** food and correction together, before anything is left off. */
  readonly whole: Exact;
  /** Units that must stand on the pen's step as they are, because they are printed and not worked out. */
  readonly printed: boolean;
  readonly rows: readonly string[];
  readonly why: readonly Reason[];
  /** The row says to telephone the clinic. */
  readonly call: boolean;
}

const STEP = { tenths: exact(0.1), whole: ONE } as const;

/**
 * Rounds the size, then puts the sign back, so that half a unit below the target takes a whole one off: the careful way. For a part above 0
 * this is the usual half up.
 */
const bySize = (n: Exact, round: (size: Exact) => Exact): Exact => (n.top < 0n ? negative(round(negative(n))) : round(n));

function roundPart(part: Exact, how: Extract<MealRule, { kind: "ratio" }>["roundParts"]): Exact {
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

function correctionFor(rule: CorrectionRule, value: number): Exact {
  const { low, high } = rule.target;
  if (value > high) return countSteps(over(minus(exact(value), exact(high)), exact(rule.perUnit)), rule.mode);
  if (value < low && rule.mayReduce) return countSteps(over(minus(exact(value), exact(low)), exact(rule.perUnit)), rule.mode);
  return ZERO;
}

function byBands(meal: MealName, rule: BandRule, value: number): Parts | Silence {
  const row = findRow(rule, value);
  if (typeof row === "string") return { why: row };
  return {
    food: rule.foodOnly === null ? null : exact(rule.foodOnly),
    whole: exact(row.units),
    printed: true,
    rows: [rowName(meal, row)],
    why: [{ reason: "band", from: row.from, to: row.to, units: row.units }],
    call: row.call,
  };
}

/** value is the reading in the card's unit, not low. */
export function partsOf(meal: MealName, rule: MealRule, value: number, grams: Grams | null): Parts | Silence {
  if (rule.kind === "bands") return byBands(meal, rule, value);
  if (rule.kind === "fixed units") {
    const fixed = exact(rule.units);
    const why: Reason[] = [{ reason: "fixed for the meal", units: rule.units }];
    return { food: fixed, whole: fixed, printed: true, rows: [`${meal} fixed units`], why, call: false };
  }
  if (grams === null) return { why: "carbohydrate not known" };
  const food = roundPart(over(exact(grams), exact(rule.gramsPerUnit)), rule.roundParts);
  const correction = rule.correction ? roundPart(correctionFor(rule.correction, value), rule.roundParts) : ZERO;
  const rows = [`${meal} ${rule.gramsPerUnit} g per unit`];
  if (compare(correction, ZERO) !== 0) rows.push(`${meal} correction`);
  const why: Reason[] = [{ reason: "food", units: units(toNumber(food)), grams }];
  return { food, whole: minus(food, negative(correction)), printed: false, rows, why, call: false };
}
