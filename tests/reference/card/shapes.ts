/**
 * A dose card and a moment, as a nurse would lay them side by side on paper.
 *
 * These are the reference's own plain shapes. Nothing here comes from the app: the meaning is that of mealtime arithmetic as it is taught
 * (food = grams / grams per unit; correction = (reading - target) / drop per unit; add; round), with each of the eleven things that
 * teaching sources do differently as a field of its own.
 */
import type Fraction from "fraction.js";

/** A number as written on paper: "4", "0.5", "500/90". Never a binary fraction. */
export type Figure = string;

export type GlucoseUnit = "mg/dL" | "mmol/L";

/** One end of a row; `counts` says whether the figure itself still belongs to the row. */
export type Edge = { at: Figure; counts: boolean };
/** No edge: the row is open on that side. */
export type Range = { from: Edge | null; to: Edge | null };
/** `call`: the row says to ring the clinic as well. `ask`: the row gives no dose, only "stop and ask". */
export type Row = Range & { units: Figure | "ask"; call: boolean };

export type Food =
  | { by: "none" }
  | { by: "fixed"; units: Figure }
  /** Units a serving; a serving is 15 g on most lists. `count`: the servings of a meal exactly, or to the nearest half or whole one. */
  | { by: "servings"; units: Figure; grams: Figure; count: "exactly" | "nearest half" | "nearest whole" }
  | { by: "ratio"; gramsPerUnit: Figure };

export type Mode = "linear" | "nearest" | "down" | "each started step";

export type Correction =
  | { by: "none" }
  | {
      by: "sum";
      /** A single target has both ends alike. Inside the range nothing is corrected; outside, from the nearer end. */
      target: { low: Figure; high: Figure };
      perUnit: Figure;
      mode: Mode;
      mayTakeAway: boolean;
    }
  | { by: "rows"; rows: readonly Row[] };

export type Line =
  | { kind: "parts"; food: Food; correction: Correction }
  /** Rows of glucose whose figure is the whole dose. `foodOnly`: what to take when nothing may be corrected; null is a blank. */
  | { kind: "bands"; rows: readonly Row[]; foodOnly: Figure | null }
  /** Rows of glucose by columns of grams. `foodOnly` has one figure a column. */
  | {
      kind: "grid";
      rows: readonly (Range & { call: boolean })[];
      columns: readonly Range[];
      /** null: that cell is blank. */
      cells: readonly (readonly (Figure | null)[])[];
      foodOnly: readonly (Figure | null)[] | null;
    }
  | { kind: "premixed"; units: Figure };

export type Curve =
  | { by: "linear"; lasts: Figure }
  | { by: "one compartment"; half: Figure }
  | { by: "two compartments"; tau: Figure }
  | { by: "triangle"; peak: Figure; lasts: Figure };

export type Restraint = "as usual" | "food only" | "ask";

/**
 * A null is a blank on the card, and a blank that the moment needs means: stop and ask.
 */
export type Card = {
  unit: GlucoseUnit;
  /** A reading in the other unit: converted unrounded, or asked about, since the entered figure is the truth. */
  otherUnit: "convert" | "ask";
  /** Days as "2026-03-01"; both belong to it. */
  valid: { from: string; until: string | null };
  timing: "before eating" | "with the first bite" | "after eating";
  /** Minutes in which another mealtime dose would be a second one; only its blank matters here. */
  window: Figure | null;
  /** Below this: treat, do not inject. `itself`: the figure itself is low too. */
  low: { below: Figure; itself: boolean };
  lines: Readonly<Record<string, Line>>;
  background: Readonly<Record<string, Figure>>;
  insulin: { mayCorrect: boolean; needsFood: boolean };
  parts: "as they are" | "tenths" | "whole" | null;
  step: Figure | null;
  direction: "nearest, half up" | "down" | null;
  penStep: Figure;
  largest: Figure | null;
  gap: { minutes: Figure; inside: "no correction" | "correct all the same" } | null;
  onBoard: { used: "no" } | { used: "taken off the correction"; curve: Curve } | null;
  /** Blank here means no correction. */
  bedtime: Restraint | null;
  afterExercise: Restraint | null;
  afterLow: Restraint | "inject after eating" | null;
  ill: "as usual" | "ask" | null;
};

/** A dose of rapid insulin taken before. What is not sure is given by its ends; the worst of them is reckoned with. */
export type Earlier = { units: { least: Figure; most: Figure | "unknown" }; minutesAgo: { least: Figure; most: Figure } | "unknown" };

export type Moment = {
  /** null: not known. */
  today: string | null;
  /** False: the clock is in doubt, which frees no correction. */
  clockIsSure: boolean;
  /** The meal is in, and the reading is from before it. */
  eatenFirst: boolean;
  for: { meal: string } | { background: string };
  reading: { value: Figure; unit: GlucoseUnit; minutesOld: Figure } | "HI" | "LO" | null;
  grams: Figure | null;
  skipped: boolean;
  bedtime: boolean;
  afterExercise: boolean;
  afterLow: boolean;
  ill: boolean;
  earlier: readonly Earlier[];
};

export type Why =
  | "low: treat first"
  | "the card is not in force"
  | "no reading"
  | "reading is in the other unit"
  | "reading is a word"
  | "reading is too old"
  | "the card has no such line"
  | "the card says ask"
  | "blank on the card"
  | "hole between rows"
  | "two rows fit"
  | "grams are not known"
  | "nothing is eaten"
  | "more than the largest dose"
  | "the pen cannot give it";

export type Told = {
  say: "units";
  units: Fraction;
  food: Fraction;
  /** What is left of the correction after on-board insulin and the gap. */
  correction: Fraction;
  call: boolean;
  afterEating: boolean;
};
export type Answer = Told | { say: "ask"; why: Why; about: string };
