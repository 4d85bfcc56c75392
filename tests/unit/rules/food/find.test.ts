import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ASK_WORDS } from "#rules/food/ask-words.ts";
import { type Found, findFoods } from "#rules/food/find.ts";
import { fold, stem } from "#rules/food/fold.ts";
import { FOODS, type Food, foodById, type Locale, nameOf } from "#rules/food/foods.ts";

const LOCALES: readonly Locale[] = ["US", "UK"];

const idsOf = (found: Found): string[] => {
  switch (found.kind) {
    case "one":
      return [found.food.id];
    case "several":
      return found.foods.map((food) => food.id);
    case "ask":
      return found.choices.map((food) => food.id);
    case "none":
      return [];
  }
};
const formsOf = (food: Food): string[] => [...new Set([food.us, food.uk, ...food.aliases])];
const asked = (locale: Locale) => ASK_WORDS.filter(({ only }) => only === undefined || only === locale);

describe.each(LOCALES)("finding foods in the %s", (locale) => {
  it("finds every food by its own name alone, or asks where the word is ambiguous", () => {
    const missed = FOODS.filter((food) => {
      const found = findFoods(nameOf(food, locale), locale);
      return !(found.kind === "one" && found.food === food) && !(found.kind === "ask" && found.choices.includes(food));
    });
    expect(missed.map((food) => food.id)).toEqual([]);
  });

  it("finds every food by every other name: alone, first of several, or among what is asked", () => {
    const missed = FOODS.flatMap((food) =>
      formsOf(food).filter((form) => {
        const found = findFoods(form, locale);
        return found.kind === "ask" ? !found.choices.includes(food) : idsOf(found)[0] !== food.id;
      }),
    );
    expect(missed).toEqual([]);
  });

  it("never lets one word be two foods, unless it is asked about", () => {
    const owners = new Map<string, Set<string>>();
    for (const food of FOODS) for (const form of formsOf(food)) owners.set(fold(form), (owners.get(fold(form)) ?? new Set()).add(food.id));
    const shared = [...owners].filter(([, ids]) => ids.size > 1).map(([form]) => form);
    expect(shared.filter((form) => findFoods(form, locale).kind !== "ask")).toEqual([]);
    expect(shared).toEqual(["baked beans", "lemonade"]);
  });

  it("asks about every ambiguous word, in the plural and with an article too", () => {
    for (const { words, choices } of asked(locale))
      for (const word of words)
        for (const said of [word, `${word}s`.replace(/ss$/, "s"), `some ${word}`, word.toUpperCase()]) {
          expect(findFoods(said, locale), said).toMatchObject({ kind: "ask" });
          expect(idsOf(findFoods(said, locale))).toEqual(choices);
        }
  });

  it("keeps accents, case, spaces and apostrophes out of it", () => {
    const noisy = fc.constantFrom(...FOODS).chain((food) => fc.constantFrom(...formsOf(food)));
    fc.assert(
      fc.property(noisy, fc.array(fc.boolean(), { minLength: 1, maxLength: 8 }), (form, caps) => {
        const said = [...form]
          .map((letter, i) => (caps[i % caps.length] ? letter.toUpperCase() : letter))
          .join("")
          .replaceAll(" ", "   ");
        expect(idsOf(findFoods(`  ${said} `, locale))).toEqual(idsOf(findFoods(form, locale)));
      }),
    );
    expect(idsOf(findFoods("creme caramel", locale))).toEqual(["flan"]);
    expect(idsOf(findFoods("shepherds pie", locale))).toEqual(idsOf(findFoods("shepherd’s pie", locale)));
  });
});

describe("words to ask about", () => {
  it("offer only foods of the table", () => {
    for (const { choices } of ASK_WORDS) expect(choices.filter((id) => foodById(id) === null)).toEqual([]);
  });

  it("hold every word that the trade knows to be ambiguous", () => {
    for (const word of [
      "biscuit",
      "chips",
      "jelly",
      "squash",
      "pudding",
      "candy",
      "sweets",
      "lemonade",
      "plain lemonade",
      "baked beans",
      "porridge",
      "curry",
      "muffin",
    ])
      for (const locale of LOCALES) expect(findFoods(word, locale).kind, word).toBe("ask");
  });

  it("differ where the word does: potato chips are clear in the US, asked in the UK", () => {
    expect(findFoods("potato chips", "US")).toMatchObject({ kind: "one", food: { id: "potato-chips" } });
    expect(findFoods("potato chips", "UK").kind).toBe("ask");
    expect(findFoods("pancake", "US")).toMatchObject({ kind: "one" });
    expect(findFoods("pancake", "UK").kind).toBe("ask");
  });
});

describe("what a bare word finds", () => {
  it("shows the choice where a drink may hold 39 g or 1 g", () => {
    expect(idsOf(findFoods("cola", "US"))).toEqual(["soda-cola", "cola-can", "cola-diet"]);
  });

  it("shows several for rice, milk, juice, cake, burger, sandwich and tea; a bread roll is one", () => {
    for (const word of ["rice", "milk", "juice", "cake", "burger", "sandwich", "tea"])
      expect(findFoods(word, "US").kind, word).toBe("several");
    expect(findFoods("bread roll", "US")).toMatchObject({ kind: "one", food: { id: "roll-dinner" } });
  });

  it("matches beginnings of words only: ice is not rice, and bana is a banana", () => {
    expect(idsOf(findFoods("ice", "US"))).not.toContain("rice-white");
    expect(idsOf(findFoods("bana", "US"))).toEqual(["banana", "plantain-boiled"]);
    expect(idsOf(findFoods("choc chip", "US"))).toEqual(["cookies-choc-chip"]);
  });

  it("finds nothing for nothing, one letter, an unknown food, or a plate of two foods", () => {
    for (const text of ["", "  ", "a", "x", "the", "!!", "gravel", "beans on toast"])
      expect(findFoods(text, "US"), text).toEqual({ kind: "none" });
  });

  it("knows plurals", () => {
    expect(["potatoes", "fries", "cookies", "cherries", "peaches", "glasses"].map(stem)).toEqual(
      ["potato", "fry", "cookie", "cherry", "peach", "glass"].map(stem),
    );
    expect(stem("peas")).not.toBe(stem("pear"));
  });
});
