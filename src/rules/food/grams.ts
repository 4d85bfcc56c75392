// Carbohydrate given as a number: grams somebody typed or said, or servings of 15 g.
import { type Grams, grams } from "#events/quantity.ts";
import { inHalves } from "./plate.ts";

/** Grams of carbohydrate in one serving of the published exchange lists (ADA and Academy of Nutrition and Dietetics meal-planning lists). */
const GRAMS_PER_SERVING = 15;
/** Above this many grams a single meal is asked about. Own figure, no source: about ten slices of bread. */
const MUCH_FOR_ONE_MEAL = 150;
/** A meal this many times the person's usual one is asked about. Own figure, no source. */
const TIMES_USUAL = 3;
/** Above this many grams nothing is taken. Own figure, no source: 45 with a digit too many is 450. */
const MOST_GRAMS = 400;

type NoNumber = { ok: false; why: "empty" | "not a number" | "zero" | "too many" | "too many decimals" };
type GramsCheck = { ok: true; grams: Grams } | { ok: "ask"; grams: Grams; why: "much for one meal" } | NoNumber;
type ServingsCheck = { ok: true; servings: number } | { ok: "ask"; servings: number; why: "much for one meal" } | NoNumber;

const read = (text: string, unit: RegExp): { ok: true; value: number } | NoNumber => {
  const bare = text.trim().replace(unit, "").trim().replace(",", ".");
  if (bare === "") return { ok: false, why: "empty" };
  if (!/^(\d+\.?\d*|\.\d+)$/.test(bare)) return { ok: false, why: "not a number" };
  if ((bare.split(".")[1] ?? "").length > 1) return { ok: false, why: "too many decimals" };
  const value = Number(bare);
  return value === 0 ? { ok: false, why: "zero" } : { ok: true, value };
};

const isMuch = (value: number, usual: number | null): boolean =>
  value > MUCH_FOR_ONE_MEAL || (usual !== null && usual > 0 && value >= TIMES_USUAL * usual);

/**
 * Grams for one meal, "45" or "45.5"; "45,5" and a trailing "g" or "grams" are understood.
 * This is where a figure typed ten times too large is caught: much is asked about, more than MOST_GRAMS is refused.
 * usual: grams of the person's usual meal, or null when none is known.
 */
export const checkGrams = (text: string, usual: number | null = null): GramsCheck => {
  const found = read(text, /(g|grams?)$/i);
  if (!found.ok) return found;
  if (found.value > MOST_GRAMS) return { ok: false, why: "too many" };
  const value = grams(found.value);
  return isMuch(value, usual) ? { ok: "ask", grams: value, why: "much for one meal" } : { ok: true, grams: value };
};

/** Servings of 15 g for one meal, in halves up to 20: "3", "3.5". A quarter serving is "too many decimals". usual: as for checkGrams. */
export const checkServings = (text: string, usual: number | null = null): ServingsCheck => {
  const found = read(text, /servings?$/i);
  if (!found.ok) return found;
  const servings = found.value;
  if (!Number.isInteger(servings * 2)) return { ok: false, why: "too many decimals" };
  if (!inHalves(servings)) return { ok: false, why: "too many" };
  return isMuch(fromServings(servings), usual) ? { ok: "ask", servings, why: "much for one meal" } : { ok: true, servings };
};

/** Grams of that many servings of 15 g. The number comes from checkServings; any that it would refuse is a defect and throws. */
export const fromServings = (servings: number): Grams => {
  if (!inHalves(servings)) throw new RangeError(`servings not in halves from 0.5 to 20: ${servings}`);
  return grams(servings * GRAMS_PER_SERVING);
};
