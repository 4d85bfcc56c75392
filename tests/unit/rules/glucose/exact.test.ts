import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compare, exact, isMultipleOf, minus, ONE, over, plus, roundTo, times, toNumber } from "#rules/glucose/exact.ts";

const decimal = fc.tuple(fc.integer({ min: -200_000, max: 200_000 }), fc.integer({ min: 0, max: 4 })).map(([n, d]) => Number(`${n}e-${d}`));

describe("an exact number", () => {
  it("adds a tenth and two tenths to three tenths", () => {
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(toNumber(plus(exact(0.1), exact(0.2)))).toBe(0.3);
  });

  it("rounds 1.005 up to hundredths, where binary numbers go down", () => {
    expect(Math.round(1.005 * 100) / 100).toBe(1);
    expect(toNumber(roundTo(exact(1.005), exact(0.01), "nearest, half up"))).toBe(1.01);
  });

  it("puts 3 units of 0.1 on the step of 0.3", () => {
    expect(isMultipleOf(exact(0.3), exact(0.1))).toBe(true);
    expect(isMultipleOf(exact(0.35), exact(0.1))).toBe(false);
  });

  it("reads numbers that are written with an exponent", () => {
    expect(toNumber(times(exact(1.5e-7), exact(1e7)))).toBe(1.5);
    expect(exact(1e21).top).toBe(10n ** 21n);
  });

  it("refuses what is no number, and division by zero", () => {
    expect(() => exact(Number.NaN)).toThrow(RangeError);
    expect(() => exact(Number.POSITIVE_INFINITY)).toThrow(RangeError);
    expect(() => over(ONE, exact(0))).toThrow(RangeError);
  });

  it("rounds below zero: down goes down, a half goes up", () => {
    const half = exact(-2.5);
    expect(toNumber(roundTo(half, ONE, "down"))).toBe(-3);
    expect(toNumber(roundTo(half, ONE, "nearest, half up"))).toBe(-2);
    expect(toNumber(roundTo(half, ONE, "up"))).toBe(-2);
  });

  it("gives back every decimal that went in", () => {
    fc.assert(fc.property(decimal, (n) => toNumber(exact(n)) === n));
  });

  it("adds and takes away without a trace", () => {
    fc.assert(fc.property(decimal, decimal, (a, b) => compare(minus(plus(exact(a), exact(b)), exact(b)), exact(a)) === 0));
  });

  it("rounds to a multiple that is never further than a step away, and nearest never further than half", () => {
    fc.assert(
      fc.property(decimal, fc.constantFrom(0.1, 0.5, 1, 2, 5), (n, step) => {
        const away = (how: "down" | "up" | "nearest, half up") => {
          const rounded = roundTo(exact(n), exact(step), how);
          expect(isMultipleOf(rounded, exact(step))).toBe(true);
          return minus(rounded, exact(n));
        };
        expect(away("down").top <= 0n && compare(away("down"), exact(-step)) > 0).toBe(true);
        expect(away("up").top >= 0n && compare(away("up"), exact(step)) < 0).toBe(true);
        expect(compare(away("nearest, half up"), exact(step / 2)) <= 0).toBe(true);
        expect(compare(away("nearest, half up"), exact(-step / 2)) > 0).toBe(true);
      }),
    );
  });
});
