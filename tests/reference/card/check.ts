/**
 * The dose that the card gives for a moment, worked out step by step as a nurse would with a pencil; or that the card is not to be asked
 * further, and why. A blank, a hole or a doubt is never filled in.
 */
import type Fraction from "fraction.js";
import { down, figure, inUnit, isStepOf, nearest, notBelowZero, ZERO } from "./exact.ts";
import { isInside, mayStillAct, onBoard } from "./on-board.ts";
import { correctionSum, foodPart, roundPart } from "./parts.ts";
import { rowOf } from "./rows.ts";
import type { Answer, Card, Correction, Line, Moment, Why } from "./shapes.ts";

type Ask = Extract<Answer, { say: "ask" }>;
type Restraints = { foodOnly: boolean; afterEating: boolean };
/** `printed`: the figures that stand on the card and are used; a pen must be able to give each, since none is ever rounded. */
type Sum = { food: Fraction; correction: Fraction; call: boolean; printed: readonly Fraction[]; worked: boolean };

function ask(why: Why, about = ""): Ask {
  return { say: "ask", why, about };
}

function isAsk(value: object): value is Ask {
  return "say" in value && value.say === "ask";
}

function isLow(card: Card, moment: Moment): boolean {
  if (moment.reading === "LO") return true;
  if (moment.reading === null || moment.reading === "HI") return false;
  const value = inUnit(figure(moment.reading.value), moment.reading.unit, card.unit);
  const below = figure(card.low.below);
  return card.low.itself ? value.lte(below) : value.lt(below);
}

/** A mealtime dose needs a number that is not low and not older than fifteen minutes. */
function readingOf(card: Card, moment: Moment): Fraction | Ask {
  if (isLow(card, moment)) return ask("low: treat first");
  if (moment.reading === null) return ask("no reading");
  if (moment.reading === "HI" || moment.reading === "LO") return ask("reading is a word");
  if (moment.reading.unit !== card.unit && card.otherUnit === "ask") return ask("reading is in the other unit");
  if (figure(moment.reading.minutesOld).gt(15)) return ask("reading is too old");
  return inUnit(figure(moment.reading.value), moment.reading.unit, card.unit);
}

/** Bedtime, hard exercise, a low just treated, illness: each has its line on the card, and a blank line is asked about. */
function restraintsOf(card: Card, moment: Moment): Restraints | Ask {
  const said: [string, string | null][] = [];
  if (moment.ill) said.push(["ill", card.ill]);
  if (moment.bedtime) said.push(["bedtime", card.bedtime ?? "food only"]);
  if (moment.afterExercise) said.push(["after exercise", card.afterExercise]);
  if (moment.afterLow) said.push(["after a low", card.afterLow]);
  const blank = said.find(([, line]) => line === null);
  if (blank) return ask("blank on the card", blank[0]);
  const asks = said.find(([, line]) => line === "ask");
  if (asks) return ask("the card says ask", asks[0]);
  const afterEating = card.timing === "after eating" || said.some(([, line]) => line === "inject after eating");
  return {
    /**
     * After eating, the reading from before the meal is old, and no correction is given by an old reading. A clock in doubt counts as bedtime
     * and as inside the gap. Insulin that does not correct brings no correction along.
     */
    foodOnly:
      said.some(([, line]) => line === "food only") || afterEating || moment.eatenFirst || !moment.clockIsSure || !card.insulin.mayCorrect,
    afterEating,
  };
}

/** Whether the gap after the last rapid dose is still running: at exactly the gap it is over. */
function insideGap(card: Card, moment: Moment): boolean | Ask {
  if (card.gap === null) return mayStillAct(moment.earlier) ? ask("blank on the card", "gap") : false;
  return card.gap.inside === "no correction" && isInside(card.gap.minutes, moment.earlier);
}

/** What on-board insulin takes: only where the card says so, and by the curve that it names. */
function takenByOnBoard(card: Card, moment: Moment): Fraction | "unknown" | Ask {
  if (card.onBoard === null) return mayStillAct(moment.earlier) ? ask("blank on the card", "on board") : ZERO;
  return card.onBoard.used === "no" ? ZERO : onBoard(card.onBoard.curve, moment.earlier);
}

/** A correction that only takes away is kept: what is held back is insulin added on top of insulin. */
function corrected(card: Card, moment: Moment, restraints: Restraints, wished: Fraction): Fraction | Ask {
  if (wished.lte(ZERO)) return wished;
  if (restraints.foodOnly) return ZERO;
  const inside = insideGap(card, moment);
  if (typeof inside !== "boolean") return inside;
  if (inside) return ZERO;
  const taken = takenByOnBoard(card, moment);
  if (taken === "unknown") return ZERO;
  return isAsk(taken) ? taken : notBelowZero(wished.sub(taken));
}

/** What the card wishes to add or take away for the reading, before anything is held back. */
function wishOf(card: Card, correction: Correction, reading: Fraction): { wished: Fraction; call: boolean } | Ask {
  if (correction.by === "none") return { wished: ZERO, call: false };
  if (correction.by === "sum") {
    if (card.parts === null) return ask("blank on the card", "rounding of parts");
    return { wished: roundPart(correctionSum(correction, reading), card.parts), call: false };
  }
  const index = rowOf(correction.rows, reading);
  if (typeof index === "string") return ask(index);
  const row = correction.rows[index];
  if (row === undefined || row.units === "ask") return ask("the card says ask", "row");
  return { wished: figure(row.units), call: row.call };
}

function partsLine(
  card: Card,
  moment: Moment,
  restraints: Restraints,
  line: Extract<Line, { kind: "parts" }>,
  reading: Fraction,
): Sum | Ask {
  if (card.parts === null) return ask("blank on the card", "rounding of parts");
  const exactly = foodPart(line.food, moment.grams === null ? null : figure(moment.grams));
  if (exactly === null) return ask("grams are not known");
  const foodIsPrinted = line.food.by === "none" || line.food.by === "fixed";
  const food = foodIsPrinted ? exactly : roundPart(exactly, card.parts);
  const wish = wishOf(card, line.correction, reading);
  if (isAsk(wish)) return wish;
  const correction = corrected(card, moment, restraints, wish.wished);
  if (isAsk(correction)) return correction;
  const rowIsUsed = line.correction.by === "rows" && correction.gt(ZERO);
  const printed = foodIsPrinted ? [food, ...(rowIsUsed ? [wish.wished] : [])] : [];
  const correctionIsPrinted = correction.equals(ZERO) || (line.correction.by === "rows" && correction.equals(wish.wished));
  return { food, correction, call: wish.call, printed, worked: !(foodIsPrinted && correctionIsPrinted) };
}

/**
 * The row of a table gives the whole dose. Where nothing may be corrected only the food-only row counts, and a blank one is asked about;
 * what the full row gives above it is the correction.
 */
function tableLine(
  card: Card,
  moment: Moment,
  restraints: Restraints,
  row: { full: Fraction; foodOnly: Fraction | null; call: boolean },
): Sum | Ask {
  const { full, foodOnly, call } = row;
  if (foodOnly !== null) {
    const wished = full.sub(foodOnly);
    const correction = corrected(card, moment, restraints, wished);
    if (isAsk(correction)) return correction;
    if (correction.equals(wished)) return { food: foodOnly, correction, call, printed: [full], worked: false };
    const rest = !correction.equals(ZERO);
    return { food: foodOnly, correction, call, printed: rest ? [full, foodOnly] : [foodOnly], worked: rest };
  }
  const inside = insideGap(card, moment);
  if (!restraints.foodOnly && typeof inside !== "boolean") return inside;
  if (restraints.foodOnly || inside === true) return ask("blank on the card", "food-only row");
  const taken = takenByOnBoard(card, moment);
  if (taken !== "unknown" && isAsk(taken)) return taken;
  if (taken === "unknown" || taken.gt(ZERO)) return ask("blank on the card", "food-only row");
  return { food: full, correction: ZERO, call, printed: [full], worked: false };
}

function sumOf(card: Card, moment: Moment, restraints: Restraints, line: Line, reading: Fraction): Sum | Ask {
  switch (line.kind) {
    case "parts":
      return partsLine(card, moment, restraints, line, reading);
    case "premixed":
      return { food: figure(line.units), correction: ZERO, call: false, printed: [figure(line.units)], worked: false };
    case "bands": {
      const index = rowOf(line.rows, reading);
      if (typeof index === "string") return ask(index);
      const row = line.rows[index];
      if (row === undefined || row.units === "ask") return ask("the card says ask", "row");
      return tableLine(card, moment, restraints, {
        full: figure(row.units),
        foodOnly: line.foodOnly === null ? null : figure(line.foodOnly),
        call: row.call,
      });
    }
    case "grid": {
      if (moment.grams === null) return ask("grams are not known");
      const row = rowOf(line.rows, reading);
      if (typeof row === "string") return ask(row, "rows");
      const column = rowOf(line.columns, figure(moment.grams));
      if (typeof column === "string") return ask(column, "columns");
      const cell = line.cells[row]?.[column];
      if (cell === undefined || cell === null) return ask("blank on the card", "cell");
      const foodOnly = line.foodOnly?.[column] ?? null;
      return tableLine(card, moment, restraints, {
        full: figure(cell),
        foodOnly: foodOnly === null ? null : figure(foodOnly),
        call: line.rows[row]?.call ?? false,
      });
    }
  }
}

/** The sum, not below nothing, to the card's step; a figure that stands printed on the card is never rounded. */
function finish(card: Card, restraints: Restraints, sum: Sum): Answer {
  if (!sum.printed.every((printed) => isStepOf(printed, figure(card.penStep)))) return ask("the pen cannot give it");
  const total = notBelowZero(sum.food.add(sum.correction));
  let units = total;
  if (sum.worked) {
    if (card.step === null || card.direction === null) return ask("blank on the card", "final rounding");
    units = card.direction === "down" ? down(total, figure(card.step)) : nearest(total, figure(card.step));
  }
  if (card.largest === null) return ask("blank on the card", "largest dose");
  if (units.gt(figure(card.largest))) return ask("more than the largest dose");
  if (!isStepOf(units, figure(card.penStep))) return ask("the pen cannot give it");
  return { say: "units", units, food: sum.food, correction: sum.correction, call: sum.call, afterEating: restraints.afterEating };
}

/** Background insulin is never held up by a missing reading; a low is treated first. */
function background(card: Card, moment: Moment, name: string): Answer {
  if (isLow(card, moment)) return ask("low: treat first");
  const units = card.background[name];
  if (units === undefined) return ask("the card has no such line");
  const usual: Restraints = { foodOnly: false, afterEating: false };
  return finish(card, usual, { food: figure(units), correction: ZERO, call: false, printed: [figure(units)], worked: false });
}

/** Both days of "valid from" and "valid until" belong to it. Days written year first stand in the order of their letters. */
function isInForce(card: Card, moment: Moment): boolean {
  if (moment.today === null || moment.today < card.valid.from) return false;
  return card.valid.until === null || moment.today <= card.valid.until;
}

export function check(card: Card, moment: Moment): Answer {
  if (!isInForce(card, moment)) return ask("the card is not in force");
  if ("background" in moment.for) return background(card, moment, moment.for.background);
  const reading = readingOf(card, moment);
  if (isAsk(reading)) return reading;
  if (card.window === null) return ask("blank on the card", "window");
  const line = card.lines[moment.for.meal];
  if (line === undefined) return ask("the card has no such line");
  const takesFood = line.kind !== "parts" || line.food.by !== "none";
  if (moment.skipped && (takesFood || card.insulin.needsFood)) return ask("nothing is eaten");
  const restraints = restraintsOf(card, moment);
  if (isAsk(restraints)) return restraints;
  const sum = sumOf(card, moment, restraints, line, reading);
  return isAsk(sum) ? sum : finish(card, restraints, sum);
}
