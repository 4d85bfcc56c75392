// What a card would tell in cases that its clinician can look over: every edge of its tables, a few meals, and the days that are not as usual.
import type { DoseCard, MealName, MealRule } from "#events/card.ts";
import { type Grams, grams, units } from "#events/quantity.ts";
import { lookUp, type Silent, type Situation, type Told } from "#rules/card/lookup.ts";
import { MEALS } from "./card-meals.ts";

export type TrialDay = "as usual" | "just after a dose" | "at bedtime" | "after a low" | "after hard exercise";

export interface Trial {
  meal: MealName;
  /** In the card's unit. */
  reading: number;
  grams: Grams | null;
  day: TrialDay;
  answer: Told | Silent;
}

/** Own choice: readings that every person meets, in each unit. */
const READINGS = { "mg/dL": [90, 120, 180, 250, 350], "mmol/L": [5, 7, 10, 14, 20] } as const;
const GRAMS = [30, 45, 60] as const;
/** Minutes of the day at which these meals are usually eaten, and one in the night. Own choice. */
const EATEN_AT: Readonly<Record<MealName, number>> = { breakfast: 8 * 60, lunch: 12 * 60 + 30, dinner: 18 * 60 + 30, snack: 15 * 60 + 30 };
const NIGHT = 22 * 60 + 30;
const JUST_NOW = [{ minutesAgo: 30, units: units(4) }];
const NOT_AS_USUAL: readonly TrialDay[] = ["just after a dose", "at bedtime", "after a low", "after hard exercise"];

const finite = (edges: readonly (number | null)[]): number[] => edges.filter((edge) => edge !== null && edge > 0 && edge < 999).map(Number);
const edgesOf = (spans: readonly { from: number | null; to: number | null }[]): number[] =>
  finite(spans.flatMap(({ from, to }) => [from, to]));

function readingsFor(rule: MealRule, card: DoseCard): number[] {
  const own = (): number[] => {
    if (rule.kind === "bands") return edgesOf(rule.bands);
    if (rule.kind === "grid") return edgesOf(rule.rows);
    if (rule.table) return edgesOf(rule.table.bands);
    const target = rule.correction?.target;
    return target ? [target.low, target.high, ...READINGS[card.glucoseUnit]] : [...READINGS[card.glucoseUnit]];
  };
  return [...new Set([card.low.value, ...own()])].sort((a, b) => a - b);
}

function mealsFor(rule: MealRule): readonly (number | null)[] {
  if (rule.kind === "ratio" || rule.kind === "servings") return GRAMS;
  return rule.kind === "grid" ? [...new Set(edgesOf(rule.columns))].sort((a, b) => a - b) : [null];
}

function ask(card: DoseCard, meal: MealName, reading: number, of: number | null, day: TrialDay): Trial {
  const situation: Situation = {
    meal,
    reading: { value: reading, unit: card.glucoseUnit },
    readingWord: null,
    grams: of === null ? null : grams(of),
    minuteOfDay: day === "at bedtime" ? NIGHT : EATEN_AT[meal],
    today: card.validFrom,
    recent: day === "just after a dose" ? JUST_NOW : [],
    afterLow: day === "after a low",
    hardExercise: day === "after hard exercise",
  };
  return { meal, reading, grams: situation.grams, day, answer: lookUp(card, situation) };
}

/** The middle one of a few numbers. */
const middle = <T>(some: readonly T[]): T | undefined => some[Math.floor(some.length / 2)];

/** Every reading with the middle meal, the middle reading with every meal, the highest on days that are not as usual. */
function ofMeal(card: DoseCard, meal: MealName, rule: MealRule): Trial[] {
  const readings = readingsFor(rule, card);
  const meals = mealsFor(rule);
  const usual = middle(meals) ?? null;
  const some = middle(readings) ?? card.low.value;
  const highest = readings.at(-1) ?? some;
  return [
    ...readings.map((reading) => ask(card, meal, reading, usual, "as usual")),
    ...meals.filter((of) => of !== usual).map((of) => ask(card, meal, some, of, "as usual")),
    ...NOT_AS_USUAL.map((day) => ask(card, meal, highest, usual, day)),
  ];
}

export const trialOf = (card: DoseCard): Trial[] =>
  MEALS.flatMap((meal) => {
    const rule = card.meals[meal];
    return rule ? ofMeal(card, meal, rule) : [];
  });
