// Where in the kitchen a food is looked for. Plain names of the groups: words/en/plate.ts.

import { fold } from "./fold.ts";
import { FOOD_GROUPS, FOODS, type Food, type FoodGroup, type Locale, nameOf } from "./foods.ts";

/** Foods that are also looked for in a second place: orange juice treats a low, and it is a drink. */
const ALSO: Partial<Record<FoodGroup, readonly string[]>> = {
  drink: [
    "juice-orange",
    "juice-apple",
    "juice-grape",
    "juice-pineapple",
    "juice-cranberry",
    "soda-cola",
    "soda-lemon-lime",
    "ginger-ale",
    "lemonade-fizzy-uk",
    "milk-whole",
    "milk-2pct",
    "milk-skim",
    "lassi-sweet",
  ],
  sweet: ["honey", "sugar-white", "sugar-packets", "candy-hard", "jelly-beans"],
  fruit: ["raisins"],
  legume: ["peas"],
};

/** Every group, in the order a plate is filled. */
export const groups = (): readonly FoodGroup[] => FOOD_GROUPS;

/** The groups a meal is built from: all but what is kept for a low. Juice, sugar and raisins are found under drinks, sweets and fruit as well. */
export const mealGroups = (): readonly FoodGroup[] => FOOD_GROUPS.filter((group) => group !== "fast sugar");

/** Tablets and gel: kept for a low, and no food of any meal. */
export const onlyForLows = (food: Food): boolean =>
  food.group === "fast sugar" && !Object.values(ALSO).some((ids) => ids.includes(food.id));

/** The foods of a group: its own in the table's order, then those that are also looked for there. */
export const byGroup = (group: FoodGroup): Food[] => {
  const also = ALSO[group] ?? [];
  return [...FOODS.filter((food) => food.group === group), ...FOODS.filter((food) => food.group !== group && also.includes(food.id))];
};

const SMALL_WORDS = new Set(["and", "or", "in", "on", "the", "of", "with", "no", "made", "each", "a"]);

/** Words of a name that a person may look under: "white rice" is found under W and R. */
const lettersOf = (food: Food, locale: Locale): string[] =>
  fold(nameOf(food, locale))
    .split(" ")
    .filter((word) => !SMALL_WORDS.has(word))
    .map((word) => word.charAt(0));

/** Foods with a name word on that letter; those whose name begins with it come first, each part in the order of the alphabet. */
export const byFirstLetter = (letter: string, locale: Locale): Food[] => {
  const wanted = fold(letter);
  const found = FOODS.filter((food) => lettersOf(food, locale).includes(wanted));
  const key = (food: Food) => `${fold(nameOf(food, locale)).startsWith(wanted) ? 0 : 1} ${fold(nameOf(food, locale))}`;
  return found.toSorted((a, b) => (key(a) < key(b) ? -1 : 1));
};

/** The letters that find something, in order. */
export const firstLetters = (locale: Locale): string[] =>
  [...new Set(FOODS.flatMap((food) => lettersOf(food, locale)))].filter((letter) => /[a-z]/.test(letter)).toSorted();
