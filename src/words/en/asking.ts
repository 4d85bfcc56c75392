// A number that was not heard well: which of two, or one digit at a time.
import { digitsOf } from "#words/numbers.ts";

export const ASKING = {
  whichTitle: "Which number?",
  neither: "Neither",
  digitsTitle: "One digit at a time",
  first: "Say the first digit.",
  afterPoint: "Say the digit after the point.",
  point: "Point",
  done: "Done",
  keys: "Number keys",
  startOver: "Start over",
  numberAgain: "Say the number once more.",
  digitAgain: "Say that digit once more.",
  padTitle: "By touch",
  pad: "Press the number, then OK.",
} as const;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const spelled = (text: string): string => digitsOf(text).join(" ");

/** "One five, or five zero?" A teen and its ten are told apart by their digits (ISMP: 15 heard as 50). */
export const whichOf = (one: string, two: string): string => `${capital(spelled(one))}, or ${spelled(two)}?`;

const DIGIT = "zero one two three four five six seven eight nine".split(" ");

/** "One, seven." The digits so far, and the point. */
export const soFar = (said: string): string => `${capital([...said].map((d) => (d === "." ? "point" : DIGIT[Number(d)])).join(", "))}.`;

/** What to say next; the digits so far allow at least one of the three. */
export function sayNext(next: { digits: readonly string[]; point: boolean; done: boolean }): string {
  const may = [...(next.digits.length > 0 ? ["next digit"] : []), ...(next.point ? ["point"] : []), ...(next.done ? ["done"] : [])];
  const last = may.pop() ?? "";
  return `${capital(may.length > 0 ? `${may.join(", ")}, or ${last}` : last)}?`;
}
