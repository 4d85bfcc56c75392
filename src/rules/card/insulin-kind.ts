// What follows from the kind of an insulin. Facts of the trade; the times to eat are those of the reviews named beside them.
import type { DoseCard, InsulinKind } from "#events/card.ts";

export interface InsulinFlags {
  /** A meal must follow, so the bell is rung. */
  readonly needsFood: boolean;
  /** It is mixed before each injection. */
  readonly isCloudy: boolean;
  readonly mayCorrect: boolean;
  /** Given at its hour in spite of a low, once the low is treated; mealtime insulin never is. */
  readonly mayBeTakenInLow: boolean;
  /** The usual latest minute for the first bite after injecting; null: food does not belong to it. */
  readonly usualLatestMinutes: number | null;
}

export const INSULIN: Readonly<Record<InsulinKind, InsulinFlags>> = {
  /** 15 to 20 min before eating (Diabet Med 2018;35:306, review). */
  "rapid analogue": { needsFood: true, isCloudy: false, mayCorrect: true, mayBeTakenInLow: false, usualLatestMinutes: 20 },
  /** 30 min before the meal (AAFP 2009); 45 is the widest taught, from memory. */
  regular: { needsFood: true, isCloudy: false, mayCorrect: true, mayBeTakenInLow: false, usualLatestMinutes: 45 },
  /** Mixes hold a long-acting part that no correction may bring along; with human mixes 30 to 45 min, from memory. */
  premixed: { needsFood: true, isCloudy: true, mayCorrect: false, mayBeTakenInLow: false, usualLatestMinutes: 45 },
  /** Peaks after 4 to 12 h (four reviews): not tied to a meal, and no correction. */
  intermediate: { needsFood: false, isCloudy: true, mayCorrect: false, mayBeTakenInLow: true, usualLatestMinutes: null },
  "long-acting": { needsFood: false, isCloudy: false, mayCorrect: false, mayBeTakenInLow: true, usualLatestMinutes: null },
};

/** A card that does not say the kind is read as it is printed: its rows say whether there is a correction. */
export const mayCorrect = (card: DoseCard): boolean => card.insulin.kind === undefined || INSULIN[card.insulin.kind].mayCorrect;
