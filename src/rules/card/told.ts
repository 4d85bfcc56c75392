// What the card is asked, and what it answers. Plain tagged values: the sentences are made in words/.
import type { DoseCard, MealName } from "#events/card.ts";
import type { Glucose, Grams, LocalDate, Units } from "#events/quantity.ts";

/** An earlier dose of rapid-acting insulin. */
export interface RecentDose {
  /** null: not known, and counted at its worst, as if given just now. */
  readonly minutesAgo: number | null;
  /** null: the amount is not known. */
  readonly units: Units | null;
}

/** Everything that the card's answer may depend on. The age of the reading is checked before (promise 1). */
export interface Situation {
  readonly meal: MealName;
  /** null: not taken. */
  readonly reading: Glucose | null;
  /** The meter showed a word in place of a number. */
  readonly readingWord: "HI" | "LO" | null;
  readonly grams: Grams | null;
  /** null: the clock is doubtful, which counts as bedtime and as inside the spacing (promise 14). */
  readonly minuteOfDay: number | null;
  /** null: the day is not known; then no card is in force. */
  readonly today: LocalDate | null;
  /** Rapid-acting doses, newest first. */
  readonly recent: readonly RecentDose[];
  /** A low was treated on the way to this meal. */
  readonly afterLow: boolean;
  readonly hardExercise: boolean;
  /** The meal is in already, and the reading is from before it. Left out: not yet. */
  readonly eatenFirst?: boolean;
}

export type NoCorrectionBecause =
  | "clock doubtful"
  | "eaten first"
  | "after a low"
  | "after exercise"
  | "spacing"
  | "bedtime"
  | "this insulin"
  | "insulin on board";

export type Reason =
  | { readonly reason: "fixed for the meal"; readonly units: Units }
  /** Edges as printed on the card, in its unit; null is open. */
  | { readonly reason: "band"; readonly from: number | null; readonly to: number | null; readonly units: Units }
  /** A cell of a grid: its row of glucose and its column of grams. */
  | {
      readonly reason: "cell";
      readonly from: number | null;
      readonly to: number | null;
      readonly gramsFrom: number | null;
      readonly gramsTo: number | null;
      readonly units: Units;
    }
  | { readonly reason: "food-only row"; readonly units: Units }
  | { readonly reason: "food"; readonly units: Units; readonly grams: Grams }
  /** The correction after insulin on board was taken off. */
  | { readonly reason: "reading is high"; readonly units: Units }
  /** Units taken off the food part, as a positive number. */
  | { readonly reason: "reading is below target"; readonly units: Units }
  /** Units by which the correction is smaller, as a positive number. */
  | { readonly reason: "insulin on board"; readonly units: Units }
  | { readonly reason: "no correction"; readonly because: NoCorrectionBecause };

export type Caution =
  | { readonly caution: "review date has passed"; readonly reviewBy: LocalDate }
  | { readonly caution: "card says call the clinic" }
  | { readonly caution: "below target, reduced" }
  /** The card has advice of its own (card.high) for this reading. */
  | { readonly caution: "card has advice for this reading" }
  | { readonly caution: "default used"; readonly field: "bedtime" };

/** The dose on the card. units is what the pen shows; food and correction are the parts before the last rounding. */
export interface Told {
  readonly told: true;
  /** Never negative, never above the card's largest dose, always a multiple of the pen's step. */
  readonly units: Units;
  readonly food: Units;
  /** Negative only where the card lets a reading below target take units off. */
  readonly correction: Units;
  /** The card's rows that were used: "dinner band 181-220". */
  readonly rows: readonly string[];
  readonly why: readonly Reason[];
  readonly cautions: readonly Caution[];
  /** The card's own timing, or "after eating" where the card says so after a low. */
  readonly timing: DoseCard["timing"]["when"];
}

/** Dosing fields whose blank means "stop and ask the clinic". */
export type BlankField = "largestDose" | "spacingMinutes" | "windowMinutes" | "onBoard" | "afterExercise" | "afterLow";

export type Silence =
  | { readonly why: "reading is LO" }
  | { readonly why: "reading is HI" }
  | { readonly why: "no reading" }
  | { readonly why: "other unit" }
  | { readonly why: "reading is low" }
  | { readonly why: "day not known" }
  | { readonly why: "not valid yet"; readonly from: LocalDate }
  | { readonly why: "no longer valid"; readonly until: LocalDate }
  | { readonly why: "no dose for this meal"; readonly meal: MealName }
  | { readonly why: "blank field"; readonly field: BlankField }
  | { readonly why: "after a low: ask" }
  | { readonly why: "after exercise: ask" }
  | { readonly why: "carbohydrate not known" }
  | { readonly why: "below the bands" }
  | { readonly why: "above the bands" }
  | { readonly why: "hole between bands" }
  /** Two printed rows claim the reading. */
  | { readonly why: "in two bands" }
  | { readonly why: "no column for this meal" }
  | { readonly why: "in two columns" }
  | { readonly why: "no food-only row" }
  | { readonly why: "off the pen's step"; readonly units: Units; readonly step: Units }
  | { readonly why: "above the largest dose"; readonly units: Units; readonly limit: Units };

/** The card has no answer: nothing is injected, the clinic is asked. */
export type Silent = { readonly told: false } & Silence;
