// A heard utterance and what the walk would accept right now -> one offer, one number, a question, or nothing. Pure.
// Whole phrases only: a recogniser bound to a grammar always returns some word of it (120 of 120 television sentences, measured),
// so a near match is no evidence, and words outside the present offers turn the whole utterance away.
import { BREATH, fold, foldPhrase } from "./fold.ts";
import { NUMBER_WORDS, numberAt, readNumber, type SaidUnit, UNITS } from "./numbers.ts";
import type { Heard } from "./ports.ts";

/** Something the walk would accept right now, as an ear can hear it. `refuses` marks the no-kind: it wins over whatever is said with it. */
export type SpokenOffer =
  | { id: string; phrases: readonly string[]; refuses?: true }
  /** A number, one such offer at most; said with a unit, it is taken only if the unit is this one. */
  | { id: string; number: true; unit?: SaidUnit };

export type Understood =
  | { kind: "offer"; id: string; phrase: string }
  | { kind: "number"; id: string; text: string }
  | { kind: "two numbers"; texts: string[] }
  | { kind: "ask which"; ids: string[] }
  | { kind: "nothing" };

type Phrase = { id: string; phrase: string; words: string[]; refuses: boolean };
type Part = { phrases: Phrase[] } | { number: string };

const NOTHING: Understood = { kind: "nothing" };

function phrasesOf(offers: readonly SpokenOffer[]): Phrase[] {
  return offers
    .flatMap((o) =>
      "phrases" in o ? o.phrases.map((phrase) => ({ id: o.id, phrase, words: foldPhrase(phrase), refuses: o.refuses === true })) : [],
    )
    .filter((p) => p.words.length > 0);
}

/** Where the phrase ends if it begins at this word (breaths do not count), or null. */
function endOf(phrase: Phrase, words: readonly string[], at: number): number | null {
  let next = at;
  for (const word of phrase.words) {
    if (words[next] === BREATH) next++;
    if (words[next] !== word) return null;
    next++;
  }
  return next;
}

/** The utterance cut into present phrases and numbers, the longest first; null as soon as one word belongs to neither. */
function cut(words: readonly string[], phrases: readonly Phrase[], numbers: boolean): Part[] | null {
  const parts: Part[] = [];
  let at = 0;
  while (at < words.length) {
    if (words[at] === BREATH) {
      at++;
      continue;
    }
    const start = at;
    const ends = phrases.map((p) => ({ p, end: endOf(p, words, start) ?? 0 }));
    const longest = Math.max(0, ...ends.map((e) => e.end));
    const found = numbers ? numberAt(words, start) : null;
    if (found === null && longest === 0) return null;
    if (longest > 0 && longest >= (found?.next ?? 0)) parts.push({ phrases: ends.filter((e) => e.end === longest).map((e) => e.p) });
    if (found !== null && found.next >= longest) parts.push({ number: found.text });
    at = Math.max(longest, found?.next ?? 0);
    if (found !== null && at === found.next && UNITS.has(words[at] ?? "")) at++;
  }
  return parts;
}

const distinct = (ids: string[]): string[] => [...new Set(ids)];

function readText(text: string, offers: readonly SpokenOffer[]): Understood {
  const words = fold(text);
  const numberOffer = offers.find((o) => "number" in o);
  const whole = numberOffer === undefined ? ({ kind: "none" } as const) : readNumber(text);
  const parts = cut(words, phrasesOf(offers), numberOffer !== undefined);
  if (parts === null) return whole.kind === "two numbers" ? whole : NOTHING;

  const said = parts.flatMap((p) => ("phrases" in p ? p.phrases : []));
  const refusals = said.filter((p) => p.refuses);
  const deciding = refusals.length > 0 ? refusals : said;
  const ids = distinct(deciding.map((p) => p.id));
  const [first] = deciding;
  if (refusals.length === 0 && numberOffer !== undefined && parts.some((p) => "number" in p)) {
    if (first !== undefined) return { kind: "ask which", ids: distinct([...ids, numberOffer.id]) };
    if (whole.kind !== "number") return whole.kind === "two numbers" ? whole : NOTHING;
    if (whole.unit !== undefined && whole.unit !== numberOffer.unit) return NOTHING;
    return { kind: "number", id: numberOffer.id, text: whole.text };
  }
  if (first === undefined) return NOTHING;
  return ids.length > 1 ? { kind: "ask which", ids } : { kind: "offer", id: first.id, phrase: first.phrase };
}

/**
 * What an utterance means among the present offers. "No" wins over "yes" and over a number; a phrase of no present offer, a word more or less,
 * and silence are nothing. The recogniser's other guesses never rescue an utterance; they can only make it doubtful:
 * another number among them gives "two numbers", a refusal among them gives "ask which".
 */
export function understand(heard: Heard, offers: readonly SpokenOffer[]): Understood {
  const best = readText(heard.text, offers);
  const refusing = new Set(offers.flatMap((o) => ("phrases" in o && o.refuses ? [o.id] : [])));
  if (best.kind === "offer" && refusing.has(best.id)) return best;
  if (best.kind !== "offer" && best.kind !== "number") return best;
  const others = heard.alternatives.map((text) => readText(text, offers));
  const refusal = others.find((o) => o.kind === "offer" && refusing.has(o.id));
  if (refusal?.kind === "offer") return { kind: "ask which", ids: [best.id, refusal.id] };
  if (best.kind !== "number") return best;
  const texts = distinct([best.text, ...others.flatMap((o) => (o.kind === "number" ? [o.text] : []))]);
  return texts.length > 1 ? { kind: "two numbers", texts } : best;
}

/** Everything the present offers can be answered with, for an ear that can be told what to expect. */
export function vocabularyOf(offers: readonly SpokenOffer[]): string[] {
  return distinct(offers.flatMap((o) => ("phrases" in o ? [...o.phrases] : [...NUMBER_WORDS])));
}
