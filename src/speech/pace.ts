// How long speech takes, and the pauses in it. Rates and pauses: starting values of our own, after a study where slowing the words made
// synthetic speech harder to identify for all ages and longer pauses did not (so pauses are lengthened, words are not stretched).
import { inWords } from "#words/numbers.ts";

/** Words per minute unless the person chose otherwise; both ages found 150 to 200 comfortable (AAC 11(3), 1995), older listeners asked for slower. */
export const DEFAULT_WPM = 145;
export const SLOWEST_WPM = 110;
export const FASTEST_WPM = 190;

const CLAUSE_MS = 300;
const SENTENCE_MS = 700;
const QUESTION_MS = 1000;
const DIGIT_MS = 250;

const ONE_DIGIT = /^(zero|one|two|three|four|five|six|seven|eight|nine|point)[.,]?$/i;

const wordsIn = (text: string): string[] =>
  text
    .replace(/\d+(?:\.\d+)?/g, (figure) => ` ${safeWords(figure)} `)
    .split(/[^\p{L}']+/u)
    .filter((word) => word !== "");

function safeWords(figure: string): string {
  return /^(0|[1-9]\d{0,5})(\.\d+)?$/.test(figure) ? inWords(figure, "en-US") : [...figure].fill("digit").join(" ");
}

/** Milliseconds of quiet between two sentences: longer before a question, shorter between digits read one by one. */
export function pauseBetween(before: string, after: string): number {
  if (ONE_DIGIT.test(before.trim()) && ONE_DIGIT.test(after.trim())) return DIGIT_MS;
  return after.trim().endsWith("?") ? QUESTION_MS : SENTENCE_MS;
}

/** Seconds to say these sentences one after the other at so many words a minute, pauses between and within them included. */
export function spokenSeconds(sentences: readonly string[], wpm: number = DEFAULT_WPM): number {
  const breaths = sentences.flatMap((text) => text.split(/(?<=[.?!])\s+/)).filter((text) => wordsIn(text).length > 0);
  let ms = 0;
  breaths.forEach((text, i) => {
    const before = breaths[i - 1];
    if (before !== undefined) ms += pauseBetween(before, text);
    ms += (wordsIn(text).length / wpm) * 60_000 + (text.match(/[,;:](?=\s)/g)?.length ?? 0) * CLAUSE_MS;
  });
  return ms / 1000;
}
