// Whole numbers in the words of the food table: "four tablets".
const WORDS = (
  "no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen " +
  "twenty twenty-one twenty-two twenty-three twenty-four twenty-five twenty-six twenty-seven twenty-eight twenty-nine thirty"
).split(" ");

/** Above thirty in figures. */
export const countWord = (n: number): string => WORDS[n] ?? String(n);

/** The number a word or figures stand for; null where it is none. */
export function countOfWord(word: string): number | null {
  const found = WORDS.indexOf(word);
  if (found > 0) return found;
  return /^\d+$/.test(word) ? Number(word) : null;
}
