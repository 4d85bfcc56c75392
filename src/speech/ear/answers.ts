// Everything that may be said at a question, and everything else that is likely to be said: both are scored, so that a word that is no answer
// has a place of its own to go and is not bent to the nearest answer.
import { type SaidUnit, UNITS } from "#speech/numbers.ts";
import { type NumberRange, within } from "#speech/range.ts";
import type { SpokenOffer } from "#speech/understand.ts";
import { inWords, soundAlike } from "#words/numbers.ts";
import { type Lexicon, waysToSay } from "./lexicon.ts";
import { Trie } from "./trie.ts";

/** What the ear is to expect. A number outside the range is heard as what it is, and is no answer. */
export interface Hearing {
  offers: readonly SpokenOffer[];
  /** Of the number offer: smallest, largest, and steps of 1, 0.5 or 0.1. */
  range?: NumberRange;
  /** Names of foods, while the plate is filled. */
  foods?: readonly string[];
}

/** Words of other questions and of every kitchen. */
const ELSEWHERE =
  "yes;no;okay;yeah;help;again;repeat;quiet;back;go back;go on;carry on;ready;done;stop;stop here;wait;not yet;all of it;half;hardly any;left;right;low;high;breakfast;lunch;dinner;snack;tea;the same;change it;i am not sure;i do not know;something is wrong;i feel low;i took it;hello;thank you;come here;what;who;now;then;more;one more".split(
    ";",
  );

/** Said for an answer, these mean what it means: no way out of the question where that answer is offered. */
const SAME: Readonly<Record<string, readonly string[]>> = {
  yes: ["yeah", "okay"],
  "that is right": ["right"],
  "stop here": ["stop"],
  "go on": ["carry on"],
  "i am not sure": ["i do not know"],
};

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/\d+(?:\.\d+)?/g, (figure) => inWords(figure, "en-US"))
    .replace(/-/g, " ")
    .replace(/[^a-z' ]/g, "")
    .split(" ")
    .filter((w) => w !== "");

const spoken = (n: number, and: boolean): string => inWords(String(n), and ? "en-GB" : "en-US").replace(/-/g, " ");
const inDigits = (n: number): string => [...String(n)].map((d) => spoken(Number(d), false)).join(" ");

/** Every way of saying the whole numbers 0 to 999, tenths up to 33.9 and halves up to 99.5 that `readNumber` reads. */
function numberForms(): { forms: string[]; value: number }[] {
  const all: { forms: string[]; value: number }[] = [];
  for (let n = 0; n <= 999; n++) {
    const forms = [spoken(n, false), spoken(n, true)];
    if (n >= 10) forms.push(inDigits(n));
    if (n >= 100 && n % 100 >= 10) forms.push(`${spoken(Math.floor(n / 100), false)} ${spoken(n % 100, false)}`);
    all.push({ forms: [...new Set(forms)], value: n });
  }
  for (let n = 0; n < 340; n++) {
    const whole = Math.floor(n / 10);
    // "Three zero point six" is the answer to "One three point six, or three zero point six?"
    const ways = [spoken(whole, false), ...(whole >= 10 ? [inDigits(whole)] : [])];
    if (n % 10 !== 0) all.push({ forms: ways.map((way) => `${way} point ${spoken(n % 10, false)}`), value: n / 10 });
    else all.push({ forms: [`${spoken(n / 10, false)} point zero`], value: n / 10 });
  }
  for (let n = 1; n < 100; n++) {
    const asked = n >= 34 ? [`${inDigits(n)} point five`] : [];
    all.push({ forms: [`${spoken(n, false)} and a half`, ...asked], value: n + 0.5 });
  }
  return all;
}

const KEY = (value: number): string => `number ${value}`;

/** The number a key stands for, or null. */
export const numberOfKey = (key: string): number | null => (key.startsWith("number ") ? Number(key.slice(7)) : null);

/** A few numbers as words of elsewhere, for a question that asks for none. */
const STRAY_NUMBERS: readonly number[] = [...Array(21).keys(), 30, 40, 50, 60, 70, 80, 90];

/** All numbers, once for every question that asks for one. */
export function numberTrie(lexicon: Lexicon): Trie {
  const trie = new Trie();
  for (const { forms, value } of numberForms()) for (const text of forms) addTo(trie, text, KEY(value), lexicon);
  return trie;
}

function addTo(trie: Trie, said: string, key: string, lexicon: Lexicon, text = said): boolean {
  const ways = waysToSay(wordsOf(said), lexicon);
  for (const way of ways) trie.add(way, { key, text });
  return ways.length > 0;
}

export interface Expected {
  /** Whether all numbers are to be scored as well. */
  numbers: boolean;
  /** Phrases of the question and of elsewhere; numbers have a trie of their own. */
  phrases: Trie;
  /** Whether an utterance with this key answers the question. */
  answers(key: string): boolean;
  /** Whether it is the question's no, which wins where it may have been said. */
  refuses(key: string): boolean;
  /** Phrases with a word nobody wrote down: buttons only. */
  unheard: string[];
}

/** A number that answers nothing but is likely to be said: without a place of its own "sixty and a half units" was heard as sixteen and a half. */
const isNear = (value: number, range: NumberRange): boolean =>
  value > range.high && ((value < 100 && Number.isInteger(value * 2)) || within(Number(soundAlike(String(value)) ?? Number.NaN), range));

/** Numbers said with the unit of the question, in every form that they have without it: those that answer it, and those that sound like them. */
function addWithUnit(trie: Trie, range: NumberRange, unit: SaidUnit, lexicon: Lexicon): void {
  const one = unit.replace(/s$/, "");
  for (const { forms, value } of numberForms()) {
    if (!within(value, range) && !isNear(value, range)) continue;
    for (const text of forms) addTo(trie, `${text} ${value === 1 ? one : unit}`, KEY(value), lexicon);
  }
  // With another unit it is an answer to something else: "forty two minutes" came out as a question about 42 units (synthesised voices).
  for (const other of new Set(UNITS.values())) {
    if (other === unit) continue;
    for (let n = 0; n <= Math.min(100, range.high); n++) {
      const text = `${spoken(n, false)} ${n === 1 ? other.replace(/s$/, "") : other}`;
      addTo(trie, text, `elsewhere ${text}`, lexicon);
    }
  }
  // Written so that `readNumber` reads it, which knows no bare half.
  if (within(0.5, range)) addTo(trie, `half a ${one}`, KEY(0.5), lexicon, `zero point five ${unit}`);
}

export function expected(hearing: Hearing, lexicon: Lexicon): Expected {
  const phrases = new Trie();
  const keys = new Set<string>();
  const refusals = new Set<string>();
  const unheard: string[] = [];
  const own = new Set<string>();
  for (const offer of hearing.offers) {
    if (!("phrases" in offer)) continue;
    keys.add(offer.id);
    if (offer.refuses) refusals.add(offer.id);
    for (const phrase of offer.phrases) {
      own.add(wordsOf(phrase).join(" "));
      if (!addTo(phrases, phrase, offer.id, lexicon)) unheard.push(phrase);
    }
  }
  for (const food of hearing.foods ?? []) {
    const key = `food ${food}`;
    if (addTo(phrases, food, key, lexicon)) keys.add(key);
    else unheard.push(food);
  }
  for (const text of [...own]) for (const same of SAME[text] ?? []) own.add(same);
  for (const text of ELSEWHERE) if (!own.has(text)) addTo(phrases, text, `elsewhere ${text}`, lexicon);
  const number = hearing.offers.find((o) => "number" in o);
  const { range } = hearing;
  if (number === undefined) for (const n of STRAY_NUMBERS) addTo(phrases, spoken(n, false), KEY(n), lexicon);
  if (number !== undefined && "unit" in number && number.unit !== undefined && range !== undefined)
    addWithUnit(phrases, range, number.unit, lexicon);
  return {
    numbers: number !== undefined,
    phrases,
    unheard,
    refuses: (key) => refusals.has(key),
    answers(key) {
      const value = numberOfKey(key);
      if (value === null) return keys.has(key);
      return number !== undefined && (range === undefined || within(value, range));
    },
  };
}
