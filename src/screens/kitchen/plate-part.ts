// Where one is while filling the plate, and what every part of it is handed.
import type { Counting, Food, Locale } from "#rules/food/foods.ts";

export type FindStep =
  | { at: "groups" }
  | { at: "letters" }
  /** More foods on a letter than two pages hold: their kinds first. */
  | { at: "kinds"; letter: string; foods: readonly Food[] }
  /** sentence: why it is asked, where a word is ambiguous. */
  | { at: "foods"; heading: string; sentence: string | null; foods: readonly Food[] };

export type Step =
  | FindStep
  | { at: "plate" }
  | { at: "how" }
  | { at: "take off" }
  | { at: "portions"; food: Food }
  | { at: "fibre not known"; food: Food }
  | { at: "not found"; text: string };

/** What every part of the plate is handed. */
export interface Part {
  pageSize: number;
  locale: Locale;
  counting: Counting;
  go: (step: Step) => void;
  turned: { onTurn?: (labels: readonly string[]) => void };
}
