// How long a silence must last before what was heard counts as all of it. Short where nothing can follow, longer inside a number:
// "one hundred", a breath, "twelve" is one answer of a slow speaker. The waits are starting values of our own. Pure.
import { readNumber } from "#speech/numbers.ts";
import { type NumberRange, within } from "#speech/range.ts";
import type { Hearing } from "./answers.ts";
import type { Decision } from "./decide.ts";
import { CLOSING_MS, LOOK_MS } from "./endpoint.ts";

/** A number that can go on with another number word. */
export const NUMBER_GOES_ON_MS = 700;
/** Only a half or a tenth can follow. */
export const FRACTION_GOES_ON_MS = 500;

const NEXT_WORDS =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred".split(
    " ",
  );
/** One of each step is enough: a tenth, and the half in both ways of saying it. */
const FRACTIONS = ["point one", "point five", "and a half"];

function readsOn(text: string, next: readonly string[], range: NumberRange): boolean {
  return next.some((word) => {
    const read = readNumber(`${text} ${word}`);
    if (read.kind !== "number") return false;
    return within(Number(read.text), range);
  });
}

function closingOf(text: string, hearing: Hearing): number {
  const { range } = hearing;
  const read = readNumber(text);
  // With its unit said, a number is finished.
  if (range === undefined || read.kind !== "number" || read.unit !== undefined) return CLOSING_MS;
  if (readsOn(text, NEXT_WORDS, range)) return NUMBER_GOES_ON_MS;
  return readsOn(text, FRACTIONS, range) ? FRACTION_GOES_ON_MS : CLOSING_MS;
}

const asksForNumber = (hearing: Hearing): boolean => hearing.offers.some((o) => "number" in o);

/** When what was said so far is looked at, ms of silence: of a number not before the usual closing, and once more so that its end is known in time. */
const NUMBER_LOOKS = [CLOSING_MS, NUMBER_GOES_ON_MS - 130];

/** Before anything was looked at: ms of silence that end an utterance at this question, and those after which it is looked at. */
export const usualClosing = (hearing: Hearing): { ms: number; looks: readonly number[] } =>
  asksForNumber(hearing) ? { ms: NUMBER_GOES_ON_MS, looks: NUMBER_LOOKS } : { ms: CLOSING_MS, looks: [LOOK_MS] };

/** After a look at what was said before the present silence: ms of it that are enough. */
export function closingAfter(decision: Decision, hearing: Hearing): number {
  if (!asksForNumber(hearing)) return CLOSING_MS;
  switch (decision.kind) {
    case "understood":
      return closingOf(decision.text, hearing);
    case "ask again":
      return Math.max(CLOSING_MS, ...decision.texts.map((text) => closingOf(text, hearing)));
    case "turned away":
      // Half a number is often heard as no answer at all.
      return NUMBER_GOES_ON_MS;
    default:
      return decision satisfies never;
  }
}
