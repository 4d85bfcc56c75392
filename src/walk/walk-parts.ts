// Parts of a walk: a wait, a number on its way, a reading, a low, the pen in hand.
import type { IllBecause } from "#events/happened-ill.ts";
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
  because: "reading" | "meter word" | "feels strange" | "cannot eat" | "half eaten";
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

/** An ill day, or a reading that is high enough for the card to ask about ketones. No dose is told in it. */
export interface Ill {
  because: IllBecause;
  /** The danger signs and the sick-day rules are for who feels ill. */
  feelsIll: boolean;
  /** null: not asked yet. */
  danger: boolean | null;
  /** null: none was taken in it, and none that led to it. */
  reading: { glucose: Glucose | null; word: "HI" | "LO" | null } | null;
  noMeter: boolean;
  /** mmol/L of blood, or the place on the strip. */
  ketones: number | null;
  noStrips: boolean;
  highHeard: boolean;
  ketonesHeard: boolean;
  /** So many sick-day rules were heard. */
  rulesHeard: number;
  callRaised: boolean;
}

export interface PenCheck {
  pen: string | null;
  /** Its printed name was read: asked for background insulin alone. */
  named: boolean;
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
