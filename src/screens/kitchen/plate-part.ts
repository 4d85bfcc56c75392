// Where one is while filling the plate, and what every part of it is handed.
import type { Counting, Food, Locale } from "#rules/food/foods.ts";
import type { ChoicesScreenProps } from "./choices-screen.tsx";

export type FindStep =
  | { at: "groups" }
  /** range: the few letters that are shown; null for the ranges themselves. */
  | { at: "letters"; range: readonly string[] | null }
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

/** What stands around every screen of the plate. */
export type PlateFrame = Pick<ChoicesScreenProps, "chrome" | "speaking" | "focusHeading" | "banner"> & {
  /** What the walk says here; in place of it what was refused, for as long as it stands. */
  says: readonly string[];
  refused: boolean;
};

/** What every part of the plate is handed. */
export interface Part {
  locale: Locale;
  counting: Counting;
  frame: PlateFrame;
  go: (step: Step) => void;
}
