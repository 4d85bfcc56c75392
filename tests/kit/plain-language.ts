// How hard a sentence is: words, syllables, actions. English only, and the syllables are counted by groups of vowels: right within one for most words.

export const wordsOf = (sentence: string): string[] => sentence.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word));

export function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, "");
  if (letters === "") return 1;
  const silent = letters.replace(/(?:[^laeiouy]es|[^td]ed|[^laeiouy]e)$/, (end) => end.charAt(0));
  return Math.max(1, silent.match(/[aeiouy]+/g)?.length ?? 1);
}

/** School years that the text asks for (the Flesch-Kincaid grade of 1975). */
export function grade(sentences: readonly string[]): number {
  const words = sentences.flatMap(wordsOf);
  const all = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (all / words.length) - 15.59;
}

const ACTIONS = "press|take|call|measure|inject|wash|eat|sit|wait|put|give|turn|change|test|dial|keep|watch|look|say|drink|bend|stay";

/** Two things to do in one sentence: "press, and then call". Two ways to do one thing ("say or press it") are one. */
export const twoActions = (sentence: string): boolean =>
  new RegExp(`\\b(?:${ACTIONS})\\b.*\\b(?:and|then)\\s+(?:${ACTIONS})\\b`, "i").test(sentence);
