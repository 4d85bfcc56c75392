// What treats a low: quick sugar, in the measures of a kitchen, for the grams that the card asks for.
import { type Grams, grams } from "#events/quantity.ts";
import { countWord } from "./count-words.ts";
import { FOODS, type Food } from "./foods.ts";

/** Clinics teach 15 g, then a wait of 15 minutes (ADA "15-15 rule"); UK teaching says 15 to 20 g. */
const TREATMENT_GRAMS = 15;
/** Our choice, no source: of an amount that is worked out at least so much has to be there. 19 g stand for 20, as 4 ounces of juice (14.4 g) do for 15. */
const ENOUGH = 0.95;

interface FastSugar {
  id: string;
  food: Food;
  /** The amount to say: "four tablets". */
  amount: string;
  /** What that amount gives. For 15 g it is the portion of the table: portions of this group were chosen to give 13.5 to 17.5 g. */
  grams: Grams;
  /** Grams of the food that hold exactly 15 g. */
  weightFor15: number;
}

/** How a food is measured out: so many of these are the portion of the table, and steps of this size can be poured, counted or cut. */
interface Measure {
  readonly count: number;
  readonly step: 0.5 | 1;
  readonly one: string;
  readonly many: string;
}
const measure = (count: number, step: 0.5 | 1, one: string, many = `${one}s`): Measure => ({ count, step, one, many });

/** The counts are those of the portions in the table: "half a cup, four fluid ounces" is 4. A tablespoon of honey is three teaspoons (US kitchen measures). */
const MEASURES: Readonly<Record<string, Measure>> = {
  "glucose-tablets": measure(4, 1, "tablet"),
  "glucose-tablets-small": measure(5, 1, "tablet"),
  "glucose-gel": measure(1, 0.5, "tube"),
  "juice-orange": measure(4, 0.5, "fluid ounce"),
  "juice-apple": measure(4, 0.5, "fluid ounce"),
  "juice-grape": measure(3.5, 0.5, "fluid ounce"),
  "juice-pineapple": measure(4, 0.5, "fluid ounce"),
  "juice-cranberry": measure(4, 0.5, "fluid ounce"),
  "soda-cola": measure(5, 0.5, "fluid ounce"),
  "soda-lemon-lime": measure(5, 0.5, "fluid ounce"),
  "ginger-ale": measure(6, 0.5, "fluid ounce"),
  "lemonade-fizzy-uk": measure(9, 0.5, "fluid ounce"),
  "sugar-white": measure(4, 0.5, "level teaspoon"),
  "sugar-packets": measure(5, 1, "packet"),
  honey: measure(3, 0.5, "teaspoon"),
  "candy-hard": measure(5, 1, "small piece"),
  "jelly-beans": measure(15, 1, "small", "small"),
  raisins: measure(2, 0.5, "tablespoon"),
};

/** 5.5 of "fluid ounces" to "five and a half fluid ounces". */
function countOf(n: number, { one, many }: Measure): string {
  const whole = Math.floor(n);
  if (n === whole) return `${countWord(whole)} ${whole === 1 ? one : many}`;
  return whole === 0 ? `half a ${one}` : `${countWord(whole)} and a half ${many}`;
}

/** The least that can be measured out and is enough. */
function amountFor(food: Food, target: number): { amount: string; grams: Grams } | null {
  const of = MEASURES[food.id];
  if (!of) return null;
  const each = food.total / of.count;
  const n = Math.ceil((target * ENOUGH) / each / of.step - 1e-9) * of.step;
  return { amount: countOf(n, of), grams: grams(Math.round(n * each * 10) / 10) };
}

/**
 * In the table's order: glucose first, raisins last. Whoever takes acarbose needs glucose itself, the first three.
 * target: grams of one treatment, as the card says.
 */
export const sugarFoods = (target: number = TREATMENT_GRAMS): FastSugar[] =>
  FOODS.filter((food) => food.group === "fast sugar").map((food) => ({
    id: food.id,
    food,
    ...((target === TREATMENT_GRAMS ? null : amountFor(food, target)) ?? { amount: food.portion, grams: food.total }),
    weightFor15: Math.round((TREATMENT_GRAMS / food.totalPer100) * 100),
  }));
