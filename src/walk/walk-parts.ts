// Parts of a walk: a wait, a number on its way, a reading, a low, the pen in hand.
import type { WaitFor } from "#events/happened-walk.ts";
import type { Glucose, Grams } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot, Via } from "#events/told.ts";

export interface Wait {
  for: WaitFor;
  began: Stamp;
  ms: number;
}

/** A number on its way: given, not yet agreed. */
export interface Draft {
  slot: NumberSlot;
  text: string;
  via: Via;
  helper: string | null;
  /** The text agreed to once, when its digits are asked for a second time; text is "" until they come. */
  first: string | null;
  /** When it was first given. */
  at: Stamp;
}

export interface ReadingAnswer {
  glucose: Glucose | null;
  word: "HI" | "LO" | null;
  source: "finger" | "sensor";
  at: Stamp;
  via: Via;
}

export interface Low {
  because: "reading" | "meter word" | "feels strange" | "cannot eat";
  rounds: { food: string; grams: Grams; at: Stamp }[];
  readings: { glucose: Glucose | null; word: "HI" | "LO" | null }[];
  /** What comes next: sugar, or a new reading after the wait. */
  due: "treat" | "recheck";
  callRaised: boolean;
  /** Nothing by mouth any more. */
  cannotSwallow: boolean;
  /** No meter, or no strip: there is no number until one is read. */
  noMeter: boolean;
  /** Steps done of those for whoever is in the house. */
  helpSteps: number;
}

export interface PenCheck {
  pen: string | null;
  looked: boolean;
  mixed: boolean;
  needle: boolean;
  /** Made ready once before, too long ago. */
  again: boolean;
  /** When the needle was fitted. */
  fitted: Stamp | null;
  /** How often a test brought no stream. */
  dry: number;
  primed: boolean;
}
