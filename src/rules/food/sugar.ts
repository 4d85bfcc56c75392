// What treats a low: about 15 g of quick sugar.
import type { Grams } from "#events/quantity.ts";
import { FOODS, type Food } from "./foods.ts";

/** Clinics teach 15 g, then a wait of 15 minutes (ADA "15-15 rule"); UK teaching says 15 to 20 g. */
const TREATMENT_GRAMS = 15;

interface FastSugar {
  id: string;
  food: Food;
  /** The amount to say: "four tablets". */
  amount: string;
  /** What that amount gives. Portions of this group were chosen to give 13.5 to 17.5 g. */
  grams: Grams;
  /** Grams of the food that hold exactly 15 g. */
  weightFor15: number;
}

/** In the table's order: glucose first, raisins last. Whoever takes acarbose needs glucose itself, the first three. */
export const sugarFoods = (): FastSugar[] =>
  FOODS.filter((food) => food.group === "fast sugar").map((food) => ({
    id: food.id,
    food,
    amount: food.portion,
    grams: food.total,
    weightFor15: Math.round((TREATMENT_GRAMS / food.totalPer100) * 100),
  }));
