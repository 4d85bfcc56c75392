// What a recogniser wrote down, made plain: lower case, no punctuation, no filler words.

/** A breath between words: punctuation, or a filler such as "um". It matters between numbers: "five, um, fifty" is not 550. */
export const BREATH = "|";

/** Words that people say around an answer without meaning anything by them. */
const FILLERS: ReadonlySet<string> = new Set(["um", "uhm", "uh", "er", "erm", "ah", "hmm", "please", "the"]);

const PUNCTUATION = /^[.,;:!?"'()\u2013\u2014-]+$/;

/**
 * The words of one stretch without spaces. A stretch with a figure in it stays whole, less the punctuation after it:
 * taking ".5" or "-5" or "5,5" apart would make a 5 of it, so these stay words that no grammar knows.
 */
function pieces(stretch: string): string[] {
  if (/\d/.test(stretch)) {
    const bare = stretch.replace(/[.,;:!?]+$/, "");
    return bare === stretch ? [bare] : [bare, BREATH];
  }
  const spaced = stretch.replace(/(\p{L})-(?=\p{L})/gu, "$1 ");
  return [...spaced.matchAll(/\p{L}+(?:'\p{L}+)*|[^\s\p{L}]+/gu)].map(([word]) => (PUNCTUATION.test(word) ? BREATH : word));
}

/** "Um, forty-two." -> ["forty","two"]; "fifty... fifteen" -> ["fifty","|","fifteen"]. No breath at either end, never two in a row. */
export function fold(text: string): string[] {
  const stretches = text
    .toLowerCase()
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/\u2026|\.{3}/g, ` ${BREATH} `)
    .split(/\s+/);
  // ". 5" and "- 5" may be .5 and -5 with a gap: the sign stays a word, and no grammar knows it.
  const isSign = (stretch: string, next: string | undefined): boolean => /^[.,-]+$/.test(stretch) && /^\d/.test(next ?? "");
  const words = stretches
    .flatMap((stretch, i) => (isSign(stretch, stretches[i + 1]) ? [stretch] : pieces(stretch)))
    .map((word) => (FILLERS.has(word) ? BREATH : word));
  const kept = words.filter((word, i) => word !== BREATH || words[i - 1] !== BREATH);
  if (kept[0] === BREATH) kept.shift();
  if (kept.at(-1) === BREATH) kept.pop();
  return kept;
}

/** The words alone, for comparing phrases: where somebody breathes does not change a command. */
export function foldPhrase(text: string): string[] {
  return fold(text).filter((word) => word !== BREATH);
}
