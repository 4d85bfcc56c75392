// Insulin that went in, or may have: mealtime and background kept apart, so that neither ever counts as the other.
import type { MealName } from "#events/card.ts";
import type { ClockTime, Units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";

export interface RapidDose {
  /** Id of nothing: doses are told apart by walk, null for one told later. */
  walk: string | null;
  at: Stamp;
  /** Extra minutes before `at`, for a dose told later; null: time not known, but not after `at`. */
  agoMinutes: number | null;
  /** null: amount not known. */
  units: Units | null;
  certain: boolean;
  meal: MealName | null;
}

export interface BackgroundTaken extends Omit<RapidDose, "meal"> {
  insulinId: string;
  insulinName: string;
  /** The card's time of day that it was taken for; null: told later, for none that is known. */
  dose: ClockTime | null;
}

export interface Bell {
  walk: string;
  /** When the insulin went in, or the step was opened when nobody knows. */
  from: Stamp;
  earliestMs: number;
  latestMs: number;
  /** Minutes-since-latest at which silence was last written down; -1 before. */
  unansweredMinutes: number;
}
