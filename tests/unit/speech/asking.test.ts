import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Asking, asWhole, doubted, follows, onItsWay, turnedDown, withDigit } from "#speech/asking.ts";
import type { NumberRange } from "#speech/range.ts";

const reading: NumberRange = { low: 1.1, high: 600, step: 1 };
const millimoles: NumberRange = { low: 1.1, high: 600, step: 0.1, fractionsTo: 33.9 };
const units: NumberRange = { low: 0, high: 80, step: 0.5 };

const spell = (text: string, range: NumberRange): Asking | null =>
  [...text].reduce<Asking | null>((a, mark) => a && withDigit(a, mark, range), { how: "digits", said: "", doubts: 0 });

describe("how a number is asked for", () => {
  it("goes from whole to digits to touch, one step a doubt or a no, and never back", () => {
    const rank = { whole: 0, which: 1, digits: 2, "by touch": 3 };
    fc.assert(
      fc.property(fc.array(fc.constantFrom("doubt", "two guesses", "no"), { minLength: 12, maxLength: 20 }), (script) => {
        let a: Asking = asWhole;
        for (const what of script) {
          const before = rank[a.how];
          a = what === "no" ? turnedDown(a) : doubted(a, what === "doubt" ? ["15"] : ["15", "50"]);
          expect(rank[a.how]).toBeGreaterThanOrEqual(before);
        }
        expect(a.how).toBe("by touch");
      }),
    );
  });

  it("takes one guess twice as two doubts, not as two numbers", () => {
    expect(doubted(asWhole, ["15", "15"])).toEqual({ how: "whole", doubts: 1 });
    expect(doubted(asWhole, ["15", "50", "15"])).toEqual({ how: "which", texts: ["15", "50"] });
  });

  it("forgets the digits once they are on their way, and that they were digits it does not forget", () => {
    const digits = spell("112", reading) as Asking;
    expect(onItsWay(digits)).toEqual({ how: "digits", said: "", doubts: 0 });
    expect(turnedDown(onItsWay(digits))).toEqual({ how: "by touch" });
    expect(onItsWay(asWhole)).toBe(asWhole);
  });
});

describe("a number in digits", () => {
  it.each([
    ["a reading in mg/dL", reading, 600, 1],
    ["a reading in mmol/L", millimoles, 34, 10],
    ["units", units, 80, 2],
  ] as const)("reaches every answer of %s", (_, range, most, parts) => {
    for (let n = Math.ceil(range.low * parts); n <= most * parts; n++) {
      const text = String(n / parts);
      const said = spell(text, range);
      expect(said, text).toMatchObject({ how: "digits", said: text });
      expect(follows(text, range).done, text).toBe(true);
    }
  });

  it.each([
    ["601", reading],
    ["05", units],
    ["5.3", units],
    ["5.55", millimoles],
    ["5..", millimoles],
    [".5", units],
    ["81", units],
    ["1.1", reading],
    ["0", reading],
    ["40.2", millimoles],
  ] as const)("never becomes %s", (text, range) => {
    expect(spell(text, range)).toBeNull();
  });

  it("is no answer before its first digit, after its point, and below the smallest", () => {
    expect([follows("", units).done, follows("5.", units).done, follows("1", reading).done, follows("0", units).done]).toEqual([
      false,
      false,
      false,
      true,
    ]);
  });

  it("takes no digit where none is asked for", () => {
    expect(withDigit(asWhole, "1", reading)).toBeNull();
    expect(withDigit({ how: "by touch" }, "1", reading)).toBeNull();
  });
});
