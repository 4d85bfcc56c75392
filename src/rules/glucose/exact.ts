// Exact numbers: a fraction of two whole numbers. 0.1 + 0.2 is 0.3 here, so a binary rounding error can never move a dose across a half step.

/** top / bottom in lowest terms; bottom is above 0. */
export interface Exact {
  readonly top: bigint;
  readonly bottom: bigint;
}

export type Rounding = "nearest, half up" | "down" | "up";

function lowestTerms(top: bigint, bottom: bigint): Exact {
  if (bottom === 0n) throw new RangeError("Division by zero");
  let a = top < 0n ? -top : top;
  let b = bottom < 0n ? -bottom : bottom;
  while (b !== 0n) [a, b] = [b, a % b];
  const divisor = bottom < 0n ? -a : a;
  return { top: top / divisor, bottom: bottom / divisor };
}

/** The decimal number that was typed: exact(0.1) is one tenth. Throws RangeError for NaN and infinities: those are defects. */
export function exact(n: number): Exact {
  if (!Number.isFinite(n)) throw new RangeError(`Not a number: ${n}`);
  const [digits = "0", exponent = "0"] = String(n).split("e");
  const [whole = "0", decimals = ""] = digits.split(".");
  const power = Number(exponent) - decimals.length;
  const top = BigInt(whole + decimals);
  return power >= 0 ? lowestTerms(top * 10n ** BigInt(power), 1n) : lowestTerms(top, 10n ** BigInt(-power));
}

export const ZERO: Exact = { top: 0n, bottom: 1n };
export const ONE: Exact = { top: 1n, bottom: 1n };

export const plus = (a: Exact, b: Exact): Exact => lowestTerms(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
export const minus = (a: Exact, b: Exact): Exact => lowestTerms(a.top * b.bottom - b.top * a.bottom, a.bottom * b.bottom);
export const times = (a: Exact, b: Exact): Exact => lowestTerms(a.top * b.top, a.bottom * b.bottom);
/** Throws RangeError when b is zero. */
export const over = (a: Exact, b: Exact): Exact => lowestTerms(a.top * b.bottom, a.bottom * b.top);
export const negative = (a: Exact): Exact => ({ top: -a.top, bottom: a.bottom });

/** Below 0, 0 or above 0 as a is less than, equal to or more than b. */
export function compare(a: Exact, b: Exact): -1 | 0 | 1 {
  const left = a.top * b.bottom;
  const right = b.top * a.bottom;
  return left < right ? -1 : left > right ? 1 : 0;
}
export const larger = (a: Exact, b: Exact): Exact => (compare(a, b) < 0 ? b : a);
export const smaller = (a: Exact, b: Exact): Exact => (compare(a, b) > 0 ? b : a);

/** Bigint division cuts towards zero; this one goes down. */
function floor(a: Exact): bigint {
  const cut = a.top / a.bottom;
  return a.top % a.bottom < 0n ? cut - 1n : cut;
}

/** The multiple of step that is nearest (a half goes up), next below or next above. Step is above 0. */
export function roundTo(a: Exact, step: Exact, how: Rounding): Exact {
  const steps = over(a, step);
  const down = floor(steps);
  const rest = minus(steps, { top: down, bottom: 1n });
  const goesUp = how === "up" ? rest.top > 0n : how === "nearest, half up" && rest.top * 2n >= rest.bottom;
  return times({ top: goesUp ? down + 1n : down, bottom: 1n }, step);
}

export const isMultipleOf = (a: Exact, step: Exact): boolean => over(a, step).bottom === 1n;

/** The nearest ordinary number, for showing and storing; back through exact() it is the same decimal. */
export const toNumber = (a: Exact): number => Number(a.top) / Number(a.bottom);
