// The dose on the card for this meal, or that the card is silent and why. It is looked up and worked out as printed, never adjusted.
import type { DoseCard } from "#events/card.ts";
import { type Glucose, units } from "#events/quantity.ts";
import { compare, type Exact, exact, isMultipleOf, larger, minus, plus, roundTo, smaller, toNumber, ZERO } from "#rules/glucose/exact.ts";
import { compareDates } from "#rules/time/local.ts";
import { limitOf, timingOf } from "./correction-limit.ts";
import { type Parts, partsOf } from "./parts.ts";
import { usableReading, whyAsk, whyNotInForce } from "./silence.ts";
import type { Caution, Reason, Silence, Silent, Situation, Told } from "./told.ts";

// The question and the answer come with the function, for whoever calls it.
export type { Silent, Situation, Told } from "./told.ts";

interface Settled {
  readonly food: Exact;
  readonly correction: Exact;
  readonly rows: readonly string[];
  readonly why: readonly Reason[];
  readonly cautions: readonly Caution[];
}

const shown = (n: Exact) => units(toNumber(n));

/**
 * Leaves off what may not be told. Only insulin beyond the food part is ever left off: a row or a reading that takes units off the food
 * part stands, because dropping it would tell more insulin than the card does.
 */
function settle(card: DoseCard, s: Situation, parts: Parts): Settled | Silence {
  const { food, whole, rows, why } = parts;
  const wanted = food === null ? null : minus(whole, food);
  if (food !== null && wanted !== null && wanted.top <= 0n) return { food, correction: wanted, rows, why, cautions: [] };

  const limit = limitOf(card, s);
  if (limit.leaves === "ask") return { why: "blank field", field: limit.blank };
  if (limit.leaves === "all but" && limit.onBoard.top === 0n)
    return { food: food ?? whole, correction: wanted ?? ZERO, rows, why, cautions: [] };
  if (food === null || wanted === null) return { why: "no food-only row" };

  const { foodRows, foodWhy } = parts;
  if (limit.leaves === "none") {
    const left: Reason[] = limit.because.map((because) => ({ reason: "no correction", because }));
    const cautions: Caution[] = limit.byDefault ? [{ caution: "default used", field: "bedtime" }] : [];
    return { food, correction: ZERO, rows: foodRows, why: [...foodWhy, ...left], cautions };
  }
  // Taken off the correction as the card rounds it, so that no rounding gives back what insulin on board took.
  const taken = smaller(wanted, limit.onBoard);
  const correction = minus(wanted, taken);
  if (correction.top === 0n) {
    return { food, correction, rows: foodRows, why: [...foodWhy, { reason: "no correction", because: "insulin on board" }], cautions: [] };
  }
  const usedRows = parts.printed ? [...rows, ...foodRows] : rows;
  return { food, correction, rows: usedRows, why: [...why, { reason: "insulin on board", units: shown(taken) }], cautions: [] };
}

/** The printed numbers that this dose is made of. */
function printedIn({ printed, whole, fit }: Parts, { food, correction }: Settled): readonly Exact[] {
  if (!printed) return [fit.food, correction.top === 0n ? null : fit.added].filter((n) => n !== null);
  if (compare(plus(food, correction), whole) === 0) return [whole];
  return correction.top === 0n ? [food] : [whole, food];
}

/** A printed number that the pen cannot dial is a slip of the card or the wrong pen: asked, never rounded. */
function offStep(parts: Parts, settled: Settled, step: Exact): Silence | null {
  const wrong = printedIn(parts, settled).find((n) => !isMultipleOf(n, step));
  return wrong ? { why: "off the pen's step", units: shown(wrong), step: shown(step) } : null;
}

function ofCorrection(correction: Exact, printed: boolean): readonly Reason[] {
  // A band holds food and correction together: the band itself is the reason.
  if (printed || correction.top === 0n) return [];
  return correction.top > 0n
    ? [{ reason: "reading is high", units: shown(correction) }]
    : [{ reason: "reading is below target", units: shown(minus(ZERO, correction)) }];
}

function cautionsOf(card: DoseCard, s: Situation, reading: Glucose, parts: Parts, settled: Settled): Caution[] {
  const cautions: Caution[] = [...settled.cautions];
  if (parts.call) cautions.push({ caution: "card says call the clinic" });
  if (card.high && reading.value >= card.high.value) cautions.push({ caution: "card has advice for this reading" });
  if (!parts.printed && settled.correction.top < 0n) cautions.push({ caution: "below target, reduced" });
  if (card.reviewBy !== null && s.today !== null && compareDates(s.today, card.reviewBy) > 0)
    cautions.push({ caution: "review date has passed", reviewBy: card.reviewBy });
  return cautions;
}

function answer(card: DoseCard, s: Situation): Told | Silence {
  const reading = usableReading(card, s);
  if ("why" in reading) return reading;
  const outOfForce = whyNotInForce(card, s);
  if (outOfForce) return outOfForce;
  const rule = card.meals[s.meal];
  if (rule === null) return { why: "no dose for this meal", meal: s.meal };
  const limit = card.largestDose;
  if (limit === null) return { why: "blank field", field: "largestDose" };
  const ask = whyAsk(card, s);
  if (ask) return ask;

  const parts = partsOf(s.meal, rule, reading.value, s.grams);
  if (!("whole" in parts)) return parts;
  const settled = settle(card, s, parts);
  if (!("food" in settled)) return settled;

  const step = exact(Number(card.rounding.step));
  const wrong = offStep(parts, settled, step);
  if (wrong) return wrong;
  const dose = roundTo(larger(ZERO, plus(settled.food, settled.correction)), step, card.rounding.direction);
  if (compare(dose, exact(limit)) > 0) return { why: "above the largest dose", units: shown(dose), limit };
  return {
    told: true,
    units: shown(dose),
    food: shown(settled.food),
    correction: shown(settled.correction),
    rows: settled.rows,
    why: [...settled.why, ...ofCorrection(settled.correction, parts.printed)],
    cautions: cautionsOf(card, s, reading, parts, settled),
    timing: timingOf(card, s),
  };
}

/**
 * What the card says for a meal. Units of the pen, glucose in the card's unit. The reading's age and whether the card is signed are checked
 * by whoever asks. Throws only for numbers that are none (a defect).
 */
export function lookUp(card: DoseCard, situation: Situation): Told | Silent {
  const said = answer(card, situation);
  return "told" in said ? said : { told: false, ...said };
}
