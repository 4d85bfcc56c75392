// Reading spoken English numbers: a small closed grammar. Whatever is outside it is not understood; no number is ever bent to a near one.
//
//   whole     0 to 1000: "fifteen", "forty two", "one hundred (and) eighty", "one thousand"
//   short     hundreds and tens without "hundred": "one eighty", "two fifteen"
//   digits    two or three, one by one, and to two a tenth: "one five", "one eight zero", "one three point six"
//   decimal   whole "point" one digit: "five point five", "zero point five"
//   half      whole (above zero) "and a half": "seven and a half"
//   numeral   "180", "5.5" as a recogniser may write them
//
// Left out on purpose: "oh" for zero ("oh" and "four" are confused, measured), "a hundred" (heard for "eight hundred"), a bare "point five"
// (a dose read without its leading zero is ten times too large), and a breath inside any form but the digits ("five, fifty" is not 550).
import { BREATH, fold } from "./fold.ts";

/** The unit said after a number; the caller decides whether it is the one that was asked for. */
export type SaidUnit = "units" | "grams" | "minutes" | "clicks";

export type NumberHeard =
  | { kind: "number"; text: string; unit?: SaidUnit }
  /** A correction in mid-sentence, or two answers: nobody can tell which one is meant. The texts are one way to cut it, never to be used as an answer. */
  | { kind: "two numbers"; texts: string[] }
  | { kind: "none" };

type Found = { text: string; next: number };
type Words = readonly string[];

const DIGITS = "zero one two three four five six seven eight nine".split(" ");
const UNDER_TWENTY = new Map(
  [...DIGITS, ..."ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ")].map((w, n) => [w, n]),
);
const TENS = new Map("twenty thirty forty fifty sixty seventy eighty ninety".split(" ").map((w, i) => [w, 20 + 10 * i]));
const DIGIT = new Map(DIGITS.map((w, n) => [w, n]));
/** How each unit is said. */
export const UNITS: ReadonlyMap<string, SaidUnit> = new Map([
  ["unit", "units"],
  ["units", "units"],
  ["gram", "grams"],
  ["grams", "grams"],
  ["minute", "minutes"],
  ["minutes", "minutes"],
  ["click", "clicks"],
  ["clicks", "clicks"],
]);
/** Words that join a number to the one that corrects it. */
const CORRECTIONS = [["or"], ["no"], ["not"], ["sorry"], ["wait"], ["i", "mean"]];

/** Every word of the grammar, for an ear that can be told what to expect. */
export const NUMBER_WORDS: readonly string[] = [
  ...UNDER_TWENTY.keys(),
  ...TENS.keys(),
  "hundred",
  "thousand",
  "and",
  "point",
  "a",
  "half",
  ...UNITS.keys(),
];

function digit(words: Words, at: number): number | undefined {
  return DIGIT.get(words[at] ?? "");
}

/** Said as "one five", which sounds like no other number: a teen and its ten are told apart so. */
export function saidByDigit(text: string): boolean {
  const words = fold(text).filter((word) => word !== BREATH && !UNITS.has(word));
  return words.length > 1 && words.every((word) => word === "point" || DIGIT.has(word)) && words.some((word) => word !== "point");
}

function under100(words: Words, at: number): { value: number; next: number } | null {
  const small = UNDER_TWENTY.get(words[at] ?? "");
  if (small !== undefined) return { value: small, next: at + 1 };
  const tens = TENS.get(words[at] ?? "");
  if (tens === undefined) return null;
  const ones = digit(words, at + 1);
  return ones === undefined || ones === 0 ? { value: tens, next: at + 1 } : { value: tens + ones, next: at + 2 };
}

function whole(words: Words, at: number): { value: number; next: number } | null {
  const first = digit(words, at);
  if (first === 1 && words[at + 1] === "thousand") return { value: 1000, next: at + 2 };
  if (first === undefined || first === 0 || words[at + 1] !== "hundred") return under100(words, at);
  const rest = under100(words, words[at + 2] === "and" ? at + 3 : at + 2);
  return rest === null || rest.value === 0 ? { value: first * 100, next: at + 2 } : { value: first * 100 + rest.value, next: rest.next };
}

function fraction(words: Words, at: number): Found | null {
  const base = whole(words, at);
  if (base === null || base.value >= 1000) return null;
  const { value, next } = base;
  const tenth = digit(words, next + 1);
  if (words[next] === "point" && tenth !== undefined) return { text: tenth === 0 ? `${value}` : `${value}.${tenth}`, next: next + 2 };
  if (value > 0 && words.slice(next, next + 3).join(" ") === "and a half") return { text: `${value}.5`, next: next + 3 };
  return null;
}

function short(words: Words, at: number): Found | null {
  const hundreds = digit(words, at);
  const rest = under100(words, at + 1);
  if (hundreds === undefined || hundreds === 0 || rest === null || rest.value < 10) return null;
  return { text: `${hundreds * 100 + rest.value}`, next: rest.next };
}

/** Two or three digits, with or without a breath between them, and to two in one breath a tenth; a zero in front is no number. */
function digits(words: Words, at: number): Found | null {
  let text = "";
  let next = at;
  for (let i = at; text.length < 3; i = next + (words[next] === BREATH ? 1 : 0)) {
    const d = digit(words, i);
    if (d === undefined) break;
    text += d;
    next = i + 1;
  }
  if (text.length < 2 || text.startsWith("0")) return null;
  // In one breath: "five, five point five" may be a second thought, and is no 55.5.
  const inOneBreath = text.length === 2 && next === at + 2;
  const tenth = inOneBreath && words[next] === "point" ? digit(words, next + 1) : undefined;
  return tenth === undefined ? { text, next } : { text: tenth === 0 ? text : `${text}.${tenth}`, next: next + 2 };
}

function numeral(words: Words, at: number): Found | null {
  const word = words[at] ?? "";
  if (!/^(0|[1-9]\d{0,3})(\.\d)?$/.test(word) || Number(word) > 1000) return null;
  return { text: word.replace(/\.0$/, ""), next: at + 1 };
}

/** The longest number that begins at this word of a folded utterance, or null. */
export function numberAt(words: Words, at: number): Found | null {
  const plain = whole(words, at);
  const forms = [
    numeral(words, at),
    plain && { text: `${plain.value}`, next: plain.next },
    fraction(words, at),
    short(words, at),
    digits(words, at),
  ];
  return forms.reduce<Found | null>((best, form) => (form !== null && (best === null || form.next > best.next) ? form : best), null);
}

function skipCorrection(words: Words, at: number): number {
  let next = at;
  for (;;) {
    if (words[next] === BREATH) next++;
    const joined = CORRECTIONS.find((c) => c.every((word, i) => words[next + i] === word));
    if (joined === undefined) return next;
    next += joined.length;
  }
}

/** Reads a whole utterance. Every word must belong: "about fifty" and "fifty oh" are none, not 50. */
export function readNumber(text: string): NumberHeard {
  const words = fold(text);
  const texts: string[] = [];
  let unit: SaidUnit | undefined;
  let at = 0;
  while (at < words.length) {
    const start = texts.length === 0 ? at : skipCorrection(words, at);
    const found = numberAt(words, start);
    if (found === null) return { kind: "none" };
    texts.push(found.text);
    unit = UNITS.get(words[found.next] ?? "");
    at = unit === undefined ? found.next : found.next + 1;
  }
  const [only] = texts;
  if (only === undefined) return { kind: "none" };
  if (texts.length > 1) return { kind: "two numbers", texts };
  return unit === undefined ? { kind: "number", text: only } : { kind: "number", text: only, unit };
}
