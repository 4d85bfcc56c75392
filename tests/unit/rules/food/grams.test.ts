import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkGrams, checkServings, fromServings } from "#rules/food/grams.ts";

const why = (text: string, usual: number | null = null) => {
  const checked = checkGrams(text, usual);
  return checked.ok === true ? checked.grams : checked.why;
};

describe("grams for a meal", () => {
  it("are taken as typed, with one decimal", () => {
    expect(["45", "45.5", "45,5", " 45 ", "045", "45 g", "45 grams", "0.5", ".5", "150"].map((text) => why(text))).toEqual([
      45, 45.5, 45.5, 45, 45, 45, 45, 0.5, 0.5, 150,
    ]);
  });

  it("are refused with the reason", () => {
    expect(["", "  ", "grams"].map((text) => why(text))).toEqual(["empty", "empty", "empty"]);
    expect(["abc", "-5", "4 5", "1.2.3", "1,200.5", "1e2", "∞", "NaN", "45 units", "."].map((text) => why(text))).toEqual(
      Array(10).fill("not a number"),
    );
    expect(["0", "0.0", "00"].map((text) => why(text))).toEqual(["zero", "zero", "zero"]);
    expect(["45.25", "1,200"].map((text) => why(text))).toEqual(["too many decimals", "too many decimals"]);
    expect(["400.1", "450", "4500", "99999999999"].map((text) => why(text))).toEqual(Array(4).fill("too many"));
  });

  it("above 150 are asked about, up to 400", () => {
    expect(["150.1", "151", "400"].map((text) => why(text))).toEqual(Array(3).fill("much for one meal"));
    expect(checkGrams("180")).toEqual({ ok: "ask", grams: 180, why: "much for one meal" });
  });

  it("three times the usual meal are asked about, even where 150 would not", () => {
    expect(why("44.9", 15)).toBe(44.9);
    expect(why("45", 15)).toBe("much for one meal");
    expect(why("45", 60)).toBe(45);
    expect(why("45", 0)).toBe(45);
  });

  it("typed ten times too large are never taken as they stand, once a usual meal is known", () => {
    const tenths = fc.integer({ min: 1, max: 4000 });
    fc.assert(
      fc.property(tenths, (usual) => {
        const slip = checkGrams(String(usual), usual / 10);
        expect(slip.ok).not.toBe(true);
      }),
    );
  });

  it("typed ten times too large are caught from 15.1 g on, with no usual meal known", () => {
    for (const meant of [15.1, 20, 45, 60, 90, 120]) expect(checkGrams(String(meant * 10)).ok, String(meant)).not.toBe(true);
  });
});

describe("servings of 15 g", () => {
  it("are counted in halves", () => {
    expect(checkServings("3")).toEqual({ ok: true, servings: 3 });
    expect(checkServings("3.5 servings")).toEqual({ ok: true, servings: 3.5 });
    expect([0.5, 1, 3.5, 20].map(fromServings)).toEqual([7.5, 15, 52.5, 300]);
  });

  it("are refused with the reason", () => {
    const reason = (text: string) => {
      const checked = checkServings(text);
      return checked.ok === true ? "taken" : checked.why;
    };
    expect(["", "x", "0", "3.2", "3.25", "20.5", "45"].map(reason)).toEqual([
      "empty",
      "not a number",
      "zero",
      "too many decimals",
      "too many decimals",
      "too many",
      "too many",
    ]);
  });

  it("are asked about above 150 g, or three times the usual grams", () => {
    expect(checkServings("10").ok).toBe(true);
    expect(checkServings("10.5")).toEqual({ ok: "ask", servings: 10.5, why: "much for one meal" });
    expect(checkServings("6", 30).ok).toBe("ask");
  });

  it("that were never checked are a defect", () => {
    for (const servings of [0, -1, 0.3, 21, Number.NaN]) expect(() => fromServings(servings)).toThrow(RangeError);
  });
});
