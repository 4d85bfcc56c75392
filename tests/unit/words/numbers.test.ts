import fc from "fast-check";
import { toCardinal as british } from "n2words/en-GB";
import { toCardinal as american } from "n2words/en-US";
import { describe, expect, it } from "vitest";
import { digitsOf, inWords, soundAlike } from "#words/numbers.ts";

/** Every number a card, a meter or a plate can show: 0 to 1000, and 0.0 to 33.3 and halves. */
const wholes = Array.from({ length: 1001 }, (_, n) => String(n));
const decimals = Array.from({ length: 334 }, (_, n) => (n / 10).toFixed(1));
const halves = Array.from({ length: 1000 }, (_, n) => `${n}.5`);

describe("a number put into words", () => {
  it("agrees with an independent generator in both Englishes", () => {
    for (const text of [...wholes, ...halves, ...decimals.filter((d) => !d.endsWith(".0"))]) {
      expect(inWords(text, "en-US")).toBe(american(text));
      expect(inWords(text, "en-GB")).toBe(british(text));
    }
  });

  it("agrees with it for any larger whole number", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999_999 }), (n) => {
        expect(inWords(String(n), "en-US").replace(/,/g, "")).toBe(american(n).replace(/,/g, ""));
      }),
    );
  });

  it("says 'and' in British English only", () => {
    expect(inWords("180", "en-US")).toBe("one hundred eighty");
    expect(inWords("180", "en-GB")).toBe("one hundred and eighty");
  });

  it("always says the zero in front and never one behind", () => {
    expect(inWords("0.5", "en-US")).toBe("zero point five");
    expect(inWords("5.0", "en-US")).toBe("five");
    expect(digitsOf("5.0")).toEqual(["five"]);
  });

  it("refuses, as a defect, what is no number", () => {
    for (const text of ["", ".5", "-5", "05", "1e3", "NaN", "5,5", "1800000", " 5"])
      expect(() => inWords(text, "en-US")).toThrow(RangeError);
  });
});

describe("a number digit by digit", () => {
  it("names every digit and the point", () => {
    expect(digitsOf("180")).toEqual(["one", "eight", "zero"]);
    expect(digitsOf("5.5")).toEqual(["five", "point", "five"]);
    expect(digitsOf("0.5")).toEqual(["zero", "point", "five"]);
  });

  it("can be put together again to the same number", () => {
    const figure = new Map("zero one two three four five six seven eight nine".split(" ").map((w, n) => [w, String(n)]));
    for (const text of [...wholes, ...decimals]) {
      const back = digitsOf(text)
        .map((w) => (w === "point" ? "." : figure.get(w)))
        .join("");
      expect(Number(back)).toBe(Number(text));
    }
  });
});

describe("numbers that sound alike", () => {
  it("pairs every teen with its ten, also after hundreds and before a point", () => {
    expect(soundAlike("15")).toBe("50");
    expect(soundAlike("50")).toBe("15");
    expect(soundAlike("113")).toBe("130");
    expect(soundAlike("215")).toBe("250");
    expect(soundAlike("15.5")).toBe("50.5");
  });

  it("finds no partner where there is none", () => {
    for (const text of ["0", "5", "12", "20", "21", "55", "100", "112", "120", "1000"]) expect(soundAlike(text)).toBeNull();
  });

  it("is mutual: the partner's partner is the number itself", () => {
    for (const text of wholes) {
      const other = soundAlike(text);
      if (other !== null) expect(soundAlike(other)).toBe(text);
    }
    expect(wholes.filter((text) => soundAlike(text) !== null)).toHaveLength(140);
  });
});
