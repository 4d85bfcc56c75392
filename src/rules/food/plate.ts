// The carbohydrate of a plate: from foods, from servings, or from grams somebody typed.
import type { PlateLine } from "#events/plate.ts";
import { type Grams, grams } from "#events/quantity.ts";
import { type Counting, type Food, FOODS, type Locale, nameOf } from "./foods.ts";

/** Grams of carbohydrate in one serving of the published exchange lists (American Diabetes Association and Academy of Nutrition and Dietetics lists). */
export const GRAMS_PER_SERVING = 15;
/** Above this many grams a single meal is asked about. Own figure, no source: about ten slices of bread. */
export const MUCH_FOR_ONE_MEAL = 150;
/** Above this many grams nothing is taken. Own figure, no source: 45 with a digit too many is 450. */
export const MOST_GRAMS = 400;
/** A meal this many times the person's usual one is asked about. Own figure, no source. */
export const TIMES_USUAL = 3;
const MOST_PORTIONS = 20;

const inHalves = (n: number): boolean => n > 0 && n <= MOST_PORTIONS && Number.isInteger(n * 2);

export interface Refused {
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
export const plateTotal = (lines: readonly PlateLine[]): Grams => grams(lines.reduce((tenths, line) => tenths + Math.round(line.grams * 10), 0) / 10);

/** Servings of 15 g, in halves (0.5 to 20). */
export const fromServings = (servings: number): Grams | { refused: "servings not in halves" } =>
  inHalves(servings) ? grams(servings * GRAMS_PER_SERVING) : { refused: "servings not in halves" };

export type GramsCheck =
  | { ok: true; grams: Grams }
  | { ok: "ask"; grams: Grams; why: "much for one meal" }
  | { ok: false; why: "empty" | "not a number" | "zero" | "too many" | "too many decimals" };

/**
 * Grams as typed for one meal, "45" or "45.5"; "45,5" and a trailing "g" or "grams" are understood.
 * A figure typed ten times too large is what this catches: much is asked about, more than MOST_GRAMS is refused.
 * @param usual grams of the person's usual meal, or null when none is known
 */
export const checkGrams = (text: string, usual: Grams | null = null): GramsCheck => {
  const bare = text
    .trim()
    .replace(/\s*(g|grams?)$/i, "")
    .replace(",", ".");
  if (bare === "") return { ok: false, why: "empty" };
  if (!/^(\d+\.?\d*|\.\d+)$/.test(bare)) return { ok: false, why: "not a number" };
  if ((bare.split(".")[1] ?? "").length > 1) return { ok: false, why: "too many decimals" };
  const value = Number(bare);
  if (value === 0) return { ok: false, why: "zero" };
  if (value > MOST_GRAMS) return { ok: false, why: "too many" };
  const much = value > MUCH_FOR_ONE_MEAL || (usual !== null && usual > 0 && value >= TIMES_USUAL * usual);
  return much ? { ok: "ask", grams: grams(value), why: "much for one meal" } : { ok: true, grams: grams(value) };
};

export interface FastSugar {
  food: Food;
  /** The amount to say: "four tablets". */
  amount: string;
  /** What that amount gives, about 15 g. */
  gives: Grams;
  /** Grams of the food that hold exactly 15 g. */
  weightFor15: number;
}

/** What treats a low: 15 g of quick sugar, in the table's order (glucose first, raisins last). Portions were chosen to give 13.5 to 17.5 g. */
export const sugarFoods = (): FastSugar[] =>
  FOODS.filter((food) => food.group === "fast sugar").map((food) => ({
    food,
    amount: food.portion,
    gives: food.total,
    weightFor15: Math.round((GRAMS_PER_SERVING / food.totalPer100) * 100),
  }));
