/** The two halves of a mealtime dose: for the food, and because the reading is high. */
import Fraction from "fraction.js";
import { down, figure, nearest, notBelowZero, ZERO } from "./exact.ts";
import type { Card, Correction, Food } from "./shapes.ts";

const ONE = new Fraction(1);
const HALF = new Fraction(1, 2);
const TENTH = new Fraction(1, 10);

/** null: the grams are needed and nobody knows them. */
export function foodPart(food: Food, grams: Fraction | null): Fraction | null {
  switch (food.by) {
    case "none":
      return ZERO;
    case "fixed":
      return figure(food.units);
    case "servings": {
      if (grams === null) return null;
      const exactly = grams.div(figure(food.grams));
      const counted = { exactly, "nearest half": nearest(exactly, HALF), "nearest whole": nearest(exactly, ONE) }[food.count];
      return counted.mul(figure(food.units));
    }
    case "ratio":
      return grams === null ? null : grams.div(figure(food.gramsPerUnit));
  }
}

/** How far the reading is off the target: above the range positive, below it negative, in it nothing. */
function off(target: { low: string; high: string }, reading: Fraction): Fraction {
  const high = figure(target.high);
  const low = figure(target.low);
  if (reading.gt(high)) return reading.sub(high);
  return reading.lt(low) ? reading.sub(low) : ZERO;
}

/** Above the target half up. Below it the half goes to the larger size, which is less insulin: rounded to the more careful dose (E8). */
function bySize(value: Fraction, round: (size: Fraction) => Fraction): Fraction {
  return value.lt(ZERO) ? round(value.neg()).neg() : round(value);
}

/**
 * (reading - target) / drop per unit, by the card's way of counting. "1 for every 30 above 150" at 190 is 1.33 linear, 1 nearest, 1 down,
 * and 2 where each started 30 counts.
 */
export function correctionSum(correction: Extract<Correction, { by: "sum" }>, reading: Fraction): Fraction {
  const exact = off(correction.target, reading).div(figure(correction.perUnit));
  const counted = {
    linear: () => exact,
    nearest: () => bySize(exact, (size) => nearest(size, ONE)),
    down: () => down(exact, ONE),
    "each started step": () => bySize(exact, (size) => size.ceil()),
  }[correction.mode]();
  return correction.mayTakeAway ? counted : notBelowZero(counted);
}

/** Each part rounded before adding: 4.53 and 3.13 to tenths are 4.5 and 3.1. */
export function roundPart(part: Fraction, how: NonNullable<Card["parts"]>): Fraction {
  if (how === "as they are") return part;
  return bySize(part, (size) => nearest(size, how === "tenths" ? TENTH : ONE));
}
