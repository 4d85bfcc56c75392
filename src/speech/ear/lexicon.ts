// Words -> sounds. Written by hand where it matters (numbers, answers, foods of many kitchens), the rest as the free synthesisers say them
// (public/ear/words.tsv, made by recipe/synth.py --words). A word that is in neither cannot be heard, and its phrase is left to the buttons.
import { BY_HAND } from "./words-by-hand.ts";

/** The ways to say a word, the commonest first, each a row of phones by their place in the net's list; undefined for a word nobody wrote down. */
export type Lexicon = (word: string) => readonly (readonly number[])[] | undefined;

/** `found`: lines of word, sounds, and perhaps other sounds, parted by tabs. `phones`: the net's own list. */
export function lexiconOf(found: string, phones: readonly string[]): Lexicon {
  const place = new Map(phones.map((phone, i) => [phone, i]));
  const read = (sounds: string): number[] =>
    sounds
      .trim()
      .split(/\s+/)
      .map((phone) => {
        const at = place.get(phone);
        if (at === undefined) throw new Error(`the net has no phone ${phone}`);
        return at;
      });
  const words = new Map<string, number[][]>();
  for (const line of found.split("\n")) {
    const [word = "", ...ways] = line.split("\t");
    const said = ways.filter((way) => way.trim() !== "");
    if (said.length > 0) words.set(word, said.map(read));
  }
  for (const line of BY_HAND) {
    const [word = "", ...rest] = line.trim().split(" ");
    if (rest.length > 0) words.set(word, rest.join(" ").split("/").map(read));
  }
  return (word) => words.get(word);
}

/** Every way to say a phrase; empty when one of its words is unknown. At most `most` ways, the commonest first. */
export function waysToSay(words: readonly string[], lexicon: Lexicon, most = 24): number[][] {
  let ways: number[][] = [[]];
  for (const word of words) {
    const sounds = lexicon(word);
    if (sounds === undefined) return [];
    ways = ways.flatMap((way) => sounds.map((sound) => [...way, ...sound])).slice(0, most);
  }
  return ways;
}
