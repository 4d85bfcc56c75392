import { describe, expect, it } from "vitest";
import { FOODS } from "#rules/food/foods.ts";
import { byFirstLetter, byGroup, firstLetters, groups, mealGroups } from "#rules/food/groups.ts";

describe("the groups of the kitchen", () => {
  it("hold every food between them, none twice in one group", () => {
    const all = groups().flatMap(byGroup);
    expect(new Set(all).size).toBe(FOODS.length);
    for (const group of groups()) expect(new Set(byGroup(group)).size).toBe(byGroup(group).length);
  });

  it("are never more than six screens of four foods, drinks seven", () => {
    expect(groups().filter((group) => byGroup(group).length > 24)).toEqual(["drink"]);
    expect(byGroup("drink").length).toBeLessThanOrEqual(28);
  });

  it("begin with bread; what is kept for a low is no group of a meal", () => {
    expect(groups()[0]).toBe("bread");
    expect(groups()).toContain("fast sugar");
    expect(mealGroups()).not.toContain("fast sugar");
    expect(mealGroups()).toHaveLength(18);
  });

  it("let every quick sugar but the glucose be found in a meal's groups too", () => {
    const found = new Set(mealGroups().flatMap(byGroup));
    const missing = FOODS.filter((food) => !found.has(food)).map((food) => food.id);
    expect(missing).toEqual(["glucose-tablets", "glucose-tablets-small", "glucose-gel"]);
  });
});

describe.each(["US", "UK"] as const)("first letters in the %s", (locale) => {
  it("lead to every food between them, and each letter to something", () => {
    const letters = firstLetters(locale);
    expect(new Set(letters.flatMap((letter) => byFirstLetter(letter, locale))).size).toBe(FOODS.length);
    expect(letters.filter((letter) => byFirstLetter(letter, locale).length === 0)).toEqual([]);
    expect(letters.every((letter) => /^[a-z]$/.test(letter))).toBe(true);
  });

  it("put names that begin with the letter first, and take it in either case", () => {
    const found = byFirstLetter("R", locale).map((food) => (locale === "UK" ? food.uk : food.us));
    expect(found).toEqual(byFirstLetter("r", locale).map((food) => (locale === "UK" ? food.uk : food.us)));
    const lastOwn = found.findLastIndex((name) => name.toLowerCase().startsWith("r"));
    const firstOther = found.findIndex((name) => !name.toLowerCase().startsWith("r"));
    expect(firstOther).toBe(lastOwn + 1);
    expect(found).toContain("white rice");
  });

  it("find nothing under a letter that no food has", () => {
    expect(byFirstLetter("x", locale)).toEqual([]);
    expect(byFirstLetter("", locale)).toEqual([]);
  });
});
