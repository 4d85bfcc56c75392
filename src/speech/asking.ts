// How a number is asked for by voice: whole; then which of two; then one digit at a time; then by touch. Each doubt and each "no" goes one step
// on, never round and round, and the walk's own read-back stands at the end of every way (promise 8). Pure.
import { type NumberRange, within } from "./range.ts";

export type Asking =
  | { how: "whole"; doubts: number }
  /** "One five, or five zero?" */
  | { how: "which"; texts: readonly [string, string] }
  /** `said`: the digits so far, as "17" or "5." */
  | { how: "digits"; said: string; doubts: number }
  | { how: "by touch" };

export const asWhole: Asking = { how: "whole", doubts: 0 };
const inDigits: Asking = { how: "digits", said: "", doubts: 0 };
const byTouch: Asking = { how: "by touch" };

/** Conversation guidance allows two or three tries before changing the method. */
const DOUBTS = 2;

/** The ear is not sure; `guesses` are the numbers it would not swear to, the likeliest first. */
export function doubted(a: Asking, guesses: readonly string[]): Asking {
  const [one, two] = [...new Set(guesses)];
  switch (a.how) {
    case "whole":
      if (one !== undefined && two !== undefined) return { how: "which", texts: [one, two] };
      return a.doubts + 1 < DOUBTS ? { how: "whole", doubts: a.doubts + 1 } : inDigits;
    case "which":
      return inDigits;
    case "digits":
      return a.doubts + 1 < DOUBTS ? { ...a, doubts: a.doubts + 1 } : byTouch;
    case "by touch":
      return a;
    default:
      return a satisfies never;
  }
}

/** A number that came by voice was read back, and it was not that one. */
export const turnedDown = (a: Asking): Asking => (a.how === "whole" || a.how === "which" ? inDigits : byTouch);

/** The number is on its way to be read back: what was said of it is not said again. */
export const onItsWay = (a: Asking): Asking => (a.how === "digits" ? inDigits : a);

/** What may follow the digits so far. */
export interface Follows {
  digits: readonly string[];
  point: boolean;
  /** The digits so far are a whole answer. */
  done: boolean;
}

const TEN = [..."0123456789"];

export function follows(said: string, range: NumberRange): Follows {
  const { low, high, step, fractionsTo = high } = range;
  const [, decimals] = said.split(".");
  if (decimals !== undefined) {
    if (decimals !== "") return { digits: [], point: false, done: true };
    return { digits: step === 0.5 ? ["0", "5"] : TEN, point: false, done: false };
  }
  const value = Number(said);
  const fraction = step < 1;
  if (said === "") return { digits: low <= 0 || fraction ? TEN : TEN.slice(1), point: false, done: false };
  return {
    digits: said === "0" ? [] : TEN.filter((digit) => Number(said + digit) <= high),
    point: fraction && value <= fractionsTo,
    done: within(value, range),
  };
}

/** The digits with one more, or with the point; null where that cannot follow. */
export function withDigit(a: Asking, digit: string, range: NumberRange): Asking | null {
  if (a.how !== "digits") return null;
  const next = follows(a.said, range);
  const fits = digit === "." ? next.point : next.digits.includes(digit);
  return fits ? { how: "digits", said: a.said + digit, doubts: 0 } : null;
}
