/**
 * The dose that the card gives for a moment, worked out step by step as a nurse would with a pencil; or that the card is not to be asked
 * further, and why. A blank, a hole or a doubt is never filled in.
 */
import type Fraction from "fraction.js";
import { down, figure, inUnit, isStepOf, nearest, notBelowZero, ZERO } from "./exact.ts";
import { onBoard, sinceLast } from "./on-board.ts";
import { correctionSum, foodPart, roundPart } from "./parts.ts";
import { rowOf } from "./rows.ts";
import type { Answer, Card, Line, Moment, Why } from "./shapes.ts";

type Ask = Extract<Answer, { say: "ask" }>;
type Restraints = { foodOnly: boolean; afterEating: boolean };
type Sum = { food: Fraction; correction: Fraction; call: boolean; written: boolean };

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
  return {
    foodOnly: said.some(([, line]) => line === "food only"),
    afterEating: said.some(([, line]) => line === "inject after eating"),
  };
}

/** Whether the gap after the last rapid dose is still running: at exactly the gap it is over. */
function insideGap(card: Card, moment: Moment): boolean | Ask {
  const since = sinceLast(moment.earlier);
  if (since === null) return false;
  if (card.gap === null) return ask("blank on the card", "gap");
  return card.gap.inside === "no correction" && since.lt(figure(card.gap.minutes));
}

/** What on-board insulin leaves of a correction. It is taken off only where the card says so, and only off what would be added. */
function afterOnBoard(card: Card, moment: Moment, correction: Fraction): Fraction | Ask {
  if (moment.earlier.length === 0 || correction.lte(ZERO)) return correction;
  if (card.onBoard === null) return ask("blank on the card", "on board");
  if (card.onBoard.used === "no") return correction;
  return notBelowZero(correction.sub(onBoard(card.onBoard.curve, moment.earlier)));
}

/** A correction that only takes away is kept: what is held back is insulin added on top of insulin. */
function corrected(card: Card, moment: Moment, restraints: Restraints, wished: Fraction): Fraction | Ask {
  if (restraints.foodOnly) return wished.gt(ZERO) ? ZERO : wished;
  if (wished.lte(ZERO)) return wished;
  const inside = insideGap(card, moment);
  if (typeof inside !== "boolean") return inside;
  return inside ? ZERO : afterOnBoard(card, moment, wished);
}

function partsLine(
  card: Card,
  moment: Moment,
  restraints: Restraints,
  line: Extract<Line, { kind: "parts" }>,
  reading: Fraction,
): Sum | Ask {
  if (card.parts === null) return ask("blank on the card", "rounding of parts");
  const food = foodPart(line.food, moment.grams === null ? null : figure(moment.grams));
  if (food === null) return ask("grams are not known");
  let wished = ZERO;
  let call = false;
  if (line.correction.by !== "none" && !card.insulin.mayCorrect) return ask("the card has no such line", "this insulin does not correct");
  if (line.correction.by === "sum") wished = correctionSum(line.correction, reading);
  if (line.correction.by === "rows") {
    const index = rowOf(line.correction.rows, reading);
    if (typeof index === "string") return ask(index);
    const row = line.correction.rows[index];
    if (row === undefined || row.units === "ask") return ask("the card says ask", "row");
    wished = figure(row.units);
    call = row.call;
  }
  const correction = corrected(card, moment, restraints, roundPart(wished, card.parts));
  if (isAsk(correction)) return correction;
  if (line.food.by === "none" && wished.gt(ZERO) && insideGap(card, moment) === true) return ask("too soon to correct");
  const foodIsWritten = line.food.by === "none" || line.food.by === "fixed";
  const correctionIsWritten = correction.equals(ZERO) || (line.correction.by === "rows" && correction.equals(wished));
  const written = foodIsWritten && correctionIsWritten;
  return { food: roundPart(food, card.parts), correction, call, written };
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
    return { food: foodOnly, correction, call, written: correction.equals(ZERO) || correction.equals(wished) };
  }
  const inside = insideGap(card, moment);
  if (typeof inside !== "boolean") return inside;
  const lessOnBoard = moment.earlier.length > 0 && card.onBoard?.used !== "no";
  if (restraints.foodOnly || inside || lessOnBoard) return ask("blank on the card", "food-only row");
  return { food: full, correction: ZERO, call, written: true };
}

function sumOf(card: Card, moment: Moment, restraints: Restraints, line: Line, reading: Fraction): Sum | Ask {
  switch (line.kind) {
    case "parts":
      return partsLine(card, moment, restraints, line, reading);
    case "premixed":
      return { food: figure(line.units), correction: ZERO, call: false, written: true };
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
      if (cell === undefined) return ask("blank on the card", "cell");
      const foodOnly = line.foodOnly?.[column];
      return tableLine(card, moment, restraints, {
        full: figure(cell),
        foodOnly: foodOnly === undefined ? null : figure(foodOnly),
        call: line.rows[row]?.call ?? false,
      });
    }
  }
}

/** The sum, not below nothing, to the card's step; a figure that stands written on the card is never rounded. */
function finish(card: Card, restraints: Restraints, sum: Sum): Answer {
  const total = notBelowZero(sum.food.add(sum.correction));
  let units = total;
  if (!sum.written) {
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
  return finish(card, usual, { food: figure(units), correction: ZERO, call: false, written: true });
}

export function check(card: Card, moment: Moment): Answer {
  if ("background" in moment.for) return background(card, moment, moment.for.background);
  const reading = readingOf(card, moment);
  if (isAsk(reading)) return reading;
  const line = card.lines[moment.for.meal];
  if (line === undefined) return ask("the card has no such line");
  const takesFood = line.kind !== "parts" || line.food.by !== "none";
  if (moment.skipped && (takesFood || card.insulin.needsFood)) return ask("nothing is eaten");
  const restraints = restraintsOf(card, moment);
  if (isAsk(restraints)) return restraints;
  const sum = sumOf(card, moment, restraints, line, reading);
  return isAsk(sum) ? sum : finish(card, restraints, sum);
}
