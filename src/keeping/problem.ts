// What is the matter with one typed field. The entry itself stays where it was typed. Sentences are made in words/.
import type { PinRefused } from "./pin.ts";

/** Typed answers of one form, by the name of the field: "meals.lunch.bands.0.units". A missing name is an empty field. */
export type Draft = Readonly<Record<string, string>>;

export type ProblemWhy =
  | { why: "empty" }
  | { why: "not chosen" }
  | { why: "not a number" }
  | { why: "too many decimals"; most: number }
  | { why: "too small"; least: number }
  | { why: "too large"; most: number }
  | { why: "not a date" }
  /** 3/6/2026: the third of June or the sixth of March? */
  | { why: "two dates" }
  | { why: "date has passed" }
  | { why: "date is to come" }
  | { why: "not a time" }
  | { why: "too long"; most: number }
  | { why: "taken"; by: string }
  | { why: "upside down" }
  | { why: "open too long" }
  | { why: "not a telephone number" }
  | { why: "pin"; pin: PinRefused };

export type Problem = { field: string; got: string } & ProblemWhy;

/** What the tool is not for. It is said in one sentence, and nothing is set up. */
export type NotFor = "children" | "pumps" | "syringes";
