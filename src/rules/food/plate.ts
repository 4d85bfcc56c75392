// The carbohydrate of a plate of foods.
import type { PlateLine } from "#events/plate.ts";
import { type Grams, grams } from "#events/quantity.ts";
import { type Counting, type Food, type Locale, nameOf } from "./foods.ts";

/** Portions and servings go in halves, from a half to twenty (the shape of a plate line holds no more). */
const MOST_PORTIONS = 20;
export const inHalves = (n: number): boolean => n > 0 && n <= MOST_PORTIONS && Number.isInteger(n * 2);

interface Refused {
  refused: "available carbohydrate not known" | "portions not in halves";
  food: Food;
}

/**
 * Portions (half steps, 0.5 to 20) of a food in the card's way of counting.
 * The portion's own tenths are multiplied, so a line can be checked by hand; half a tenth rounds up (0.5 x 22.5 = 11.25 is 11.3).
 * A food whose source does not report fibre has no available carbohydrate: that is refused, never guessed.
 */
export const lineFor = (food: Food, portions: number, counting: Counting, locale: Locale): PlateLine | Refused => {
  if (!inHalves(portions)) return { refused: "portions not in halves", food };
  const onePortion = counting === "total" ? food.total : food.available;
  if (onePortion === null) return { refused: "available carbohydrate not known", food };
  const halfTenths = Math.round(onePortion * 10) * (portions * 2);
  return { food: food.id, name: nameOf(food, locale), portion: food.portion, portions, grams: grams(Math.round(halfTenths / 2) / 10) };
};

/**
 * The sum of the lines, to one decimal. Each line is first taken to its tenth (half a tenth up; lines made by lineFor already are),
 * then whole tenths are added, so the total is exactly the sum of what is shown and no binary fraction creeps in. Nothing else is rounded.
 */
export const plateTotal = (lines: readonly PlateLine[]): Grams =>
  grams(lines.reduce((tenths, line) => tenths + Math.round(line.grams * 10), 0) / 10);
