import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NUMBER_WORDS, readNumber } from "#speech/numbers.ts";
import { digitsOf, inWords } from "#words/numbers.ts";
import { allSpokenForms } from "./spoken-forms.ts";

const forms = allSpokenForms();
const said = [...forms.keys()];

describe("a number said in an accepted way", () => {
  it("is read as that number, for every form of every number to 1000", () => {
    expect(forms.size).toBeGreaterThan(20_000);
    for (const [words, text] of forms) expect([words, readNumber(words)]).toEqual([words, { kind: "number", text }]);
  });

  it("comes back from the tablet's own read-back", () => {
    for (const text of new Set(forms.values())) {
      for (const lang of ["en-US", "en-GB"] as const) expect(readNumber(inWords(text, lang))).toEqual({ kind: "number", text });
    }
  });

  it("may carry capitals, hyphens, fillers around it, and a full stop", () => {
    for (const words of ["Um, One Hundred Eighty.", "uh one eighty please", "one-hundred and eighty", "the 180"]) {
      expect(readNumber(words)).toEqual({ kind: "number", text: "180" });
    }
  });

  it("may be spelled digit by digit with a breath between the digits", () => {
    expect(readNumber("one, eight, zero")).toEqual({ kind: "number", text: "180" });
  });

  it("may be spelled as the tablet spells it when it asks which of two, tenths too, in one breath", () => {
    for (let tenths = 10; tenths <= 999; tenths++) {
      const text = String(tenths / 10);
      if (Number(text) >= 10) expect([text, readNumber(digitsOf(text).join(" "))]).toEqual([text, { kind: "number", text }]);
    }
    for (const words of ["five, five point five", "one three point", "one three point six six"])
      expect(readNumber(words).kind).not.toBe("number");
  });

  it("keeps the unit that was said, for the caller to check", () => {
    expect(readNumber("six units")).toEqual({ kind: "number", text: "6", unit: "units" });
    expect(readNumber("seven and a half grams")).toEqual({ kind: "number", text: "7.5", unit: "grams" });
  });
});

describe("two numbers in one breath", () => {
  it("are never taken for either, nor for the sum of their sounds", () => {
    const pairs: [string, string[]][] = [
      ["one fifty ... fifteen", ["150", "15"]],
      ["one fifty fifteen", ["150", "15"]],
      ["fifteen or fifty", ["15", "50"]],
      ["fifty, no, fifteen", ["50", "15"]],
      ["fifty sorry I mean fifteen", ["50", "15"]],
      ["five um fifty", ["5", "50"]],
      ["fifty, five", ["50", "5"]],
      ["one hundred, eighty", ["100", "80"]],
      ["one eighty, one eight zero", ["180", "180"]],
      ["150...15", ["150", "15"]],
      ["six units eight units", ["6", "8"]],
    ];
    for (const [words, texts] of pairs) expect([words, readNumber(words)]).toEqual([words, { kind: "two numbers", texts }]);
  });
});

describe("anything else", () => {
  it("is not understood, never bent to a near number", () => {
    const turnedAway = [
      "",
      "   ",
      "...",
      "um",
      "point five",
      ".5",
      ". 5",
      "..5",
      "....5",
      "-5",
      "- 5",
      "5 . 5 .",
      "minus five",
      "5,5",
      "1,000",
      "5.55",
      "05",
      "1800",
      "1001",
      "one oh five",
      "two oh",
      "a hundred",
      "a half",
      "half",
      "zero and a half",
      "five point fifteen",
      "five point",
      "hundred",
      "one hundred and",
      "twenty zero and",
      "about fifty",
      "fifty ish",
      "fiftee",
      "fiffty",
      "fifty one hundred and",
      "not fifty",
      "one eighty and a half and",
      "7½",
      "180mg",
      "5%",
      "1/2",
      "twelve hundred",
      "units",
      "six units of",
      "fifty I mean",
      "zero hundred",
    ];
    for (const words of turnedAway) expect([words, readNumber(words).kind]).toEqual([words, "none"]);
  });

  it("is no number for any salad of the grammar's own words, unless the salad is one of the accepted forms", () => {
    const words = NUMBER_WORDS.filter((w) => !/^(unit|gram|minute|click)/.test(w));
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...words), { minLength: 1, maxLength: 6 }), (salad) => {
        const text = salad.join(" ");
        const heard = readNumber(text);
        expect(heard.kind === "number" ? heard.text : undefined).toBe(forms.get(text));
      }),
      { numRuns: 20_000 },
    );
  });

  it("is no number for an accepted form with one word changed, dropped or put in, unless that is an accepted form too", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...said),
        fc.constantFrom(...NUMBER_WORDS.slice(0, -8), "oh", "fiftee", ""),
        fc.nat(8),
        fc.boolean(),
        (form, word, at, insert) => {
          const changed = form.split(" ");
          changed.splice(at % (changed.length + 1), insert ? 0 : 1, ...(word === "" ? [] : [word]));
          const text = changed.join(" ");
          const heard = readNumber(text);
          expect(heard.kind === "number" ? heard.text : undefined).toBe(forms.get(text));
        },
      ),
      { numRuns: 20_000 },
    );
  });

  it("is no number for any jumble of figures and signs, except one plain numeral with punctuation after it", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom("0", "1", "5", "8", ".", ",", "-", "/", "%", "½", " "), { minLength: 1, maxLength: 7 }),
        (signs) => {
          const text = signs.join("");
          const heard = readNumber(text);
          if (heard.kind === "number")
            expect(
              forms.get(
                text
                  .replace(/^[ .,-]*\.{3}/, "")
                  .trim()
                  .replace(/[ .,-]+$/, ""),
              ),
            ).toBe(heard.text);
        },
      ),
      { numRuns: 50_000 },
    );
  });
});
