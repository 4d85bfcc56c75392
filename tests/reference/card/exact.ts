/** Reckoning without a rounding of its own: every figure is a ratio of whole numbers. */
import Fraction from "fraction.js";
import type { Figure, GlucoseUnit } from "./shapes.ts";

export const ZERO = new Fraction(0);
const HALF = new Fraction(1, 2);

export function figure(written: Figure): Fraction {
  return new Fraction(written);
}

/** Half up is towards the larger number: 2.25 to halves is 2.5 and 2.75 is 3. */
export function nearest(value: Fraction, step: Fraction): Fraction {
  return value.div(step).add(HALF).floor().mul(step);
}

export function down(value: Fraction, step: Fraction): Fraction {
  return value.div(step).floor().mul(step);
}

export function notBelowZero(value: Fraction): Fraction {
  return value.lt(ZERO) ? ZERO : value;
}

export function isStepOf(value: Fraction, step: Fraction): boolean {
  return value.div(step).d === 1n;
}

/** Molar mass of glucose 180.156 g/mol, so 18.0156 mg/dL are 1 mmol/L. Nothing is rounded on the way. */
const MG_PER_MMOL = new Fraction("18.0156");

export function inUnit(value: Fraction, from: GlucoseUnit, to: GlucoseUnit): Fraction {
  if (from === to) return value;
  return to === "mg/dL" ? value.mul(MG_PER_MMOL) : value.div(MG_PER_MMOL);
}

/** Sixty digits after the point are carried, forty are given: far more than any rounding to a pen's step can notice. */
const SCALE = 10n ** 60n;
const GIVEN = 10n ** 40n;

function scaled(value: Fraction): bigint {
  return (value.s * value.n * SCALE) / value.d;
}

/** e to the power of minus `x`, x not below zero. e^-x is irrational for every ratio x > 0, so no tie can hang on the last digit. */
function fallingScaled(x: bigint): bigint {
  let term = SCALE;
  let sum = SCALE;
  for (let k = 1n; term > 0n; k += 1n) {
    term = (term * x) / (SCALE * k);
    sum += term;
  }
  return (SCALE * SCALE) / sum;
}

function given(value: bigint): Fraction {
  return new Fraction(value / (SCALE / GIVEN), GIVEN);
}

export function falling(x: Fraction): Fraction {
  return x.equals(ZERO) ? new Fraction(1) : given(fallingScaled(scaled(x)));
}

/** The natural logarithm of 2 as the sum of 1 / (k 2^k). */
const LN2 = (() => {
  let sum = 0n;
  for (let k = 1n; k < 210n; k += 1n) sum += SCALE / (k * 2n ** k);
  return sum;
})();

/** One half to the power of `x`; exact where x is a whole number. */
export function halved(x: Fraction): Fraction {
  if (x.d === 1n) return new Fraction(1n, 2n ** x.n);
  return given(fallingScaled((scaled(x) * LN2) / SCALE));
}
