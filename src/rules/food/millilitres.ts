// Fluid ounces of the table in millilitres, for a British kitchen: its own fluid ounce is smaller than the American one.

import { countOfWord } from "./count-words.ts";

/** US customary fluid ounce, by definition 231/128 cubic inches (NIST Handbook 44, from memory). */
const PER_US_OUNCE = 29.5735295625;

export const millilitres = (usOunces: number): number => usOunces * PER_US_OUNCE;

/** "four fluid ounces" to 120, the nearest ten that is poured; null where the portion is no number of fluid ounces. */
export function pouredMillilitres(portion: string): number | null {
  const [, word = "", half] = /^([\w-]+)( and a half)? fluid ounces?$/.exec(portion) ?? [];
  const whole = countOfWord(word);
  return whole === null ? null : Math.round(millilitres(whole + (half ? 0.5 : 0)) / 10) * 10;
}
