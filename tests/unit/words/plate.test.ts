import { describe, expect, it } from "vitest";
import { grams } from "#events/quantity.ts";
import { type Counting, FOOD_GROUPS, FOODS, foodById, type Locale } from "#rules/food/foods.ts";
import { carbs, groupName, lineLabel, noteSentence, plateWords, portionCount, portionLabel, portionSentences } from "#words/en/plate.ts";

describe("the words of the plate", () => {
  const LOCALES: Locale[] = ["US", "UK"];
  const fixed = Object.values(plateWords).filter((word) => typeof word === "string");
  const made = [
    ...plateWords.soFar(45.5),
    plateWords.others(1),
    plateWords.others(3),
    plateWords.usual("toast", 30),
    plateWords.ambiguous("plain lemonade"),
    plateWords.heard("gravel"),
    plateWords.fibre("pumpkin pie"),
    plateWords.range(["a", "b"]),
    ...LOCALES.map(plateWords.fibreTodo),
    ...Object.values(noteSentence),
    ...FOOD_GROUPS.flatMap((group) => LOCALES.map((locale) => groupName(group, locale))),
    ...FOODS.flatMap((food) =>
      LOCALES.flatMap((locale) =>
        (["total", "available"] as const).flatMap((counting) => portionSentences(food, food.total, counting, locale)),
      ),
    ),
  ];
  const sentences = [...fixed, ...made].flatMap((text) => text.split(/(?<=[.?]) /));

  it("are sentences of at most 12 words", () => {
    expect(sentences.filter((sentence) => sentence.split(/\s+/).length > 12)).toEqual([]);
  });

  it("hold no word that the style forbids: please, sorry, just, simply, invalid, a lone U or g", () => {
    expect(sentences.filter((sentence) => /\b(please|sorry|just|simply|invalid|U|g)\b/.test(sentence))).toEqual([]);
  });

  it("count in words", () => {
    expect([0.5, 1, 1.5, 2, 3.5, 12].map(portionCount)).toEqual([
      "half a portion",
      "one portion",
      "one and a half portions",
      "two portions",
      "three and a half portions",
      "twelve portions",
    ]);
    expect(portionLabel(2)).toBe("Two portions");
    expect([carbs(1), carbs(22.5)]).toEqual(["1 gram of carbs", "22.5 grams of carbs"]);
    expect(lineLabel({ food: "bread-white", name: "white bread", portion: "one slice", portions: 2, grams: grams(28.4) })).toBe(
      "Two portions of white bread, 28.4 grams",
    );
  });

  it("own up to what is an estimate", () => {
    const said = (id: string, counting: Counting, locale: Locale) => {
      const food = foodById(id);
      return food === null ? "" : portionSentences(food, food.total, counting, locale).join(" ");
    };
    expect(said("shepherds-pie", "total", "US")).toContain("Counted another way it holds 38.1 grams of carbs.");
    expect(said("crumpet", "total", "US")).toContain("The weight is an estimate.");
    expect(said("bread-white", "total", "US")).not.toContain("estimate");
    expect(said("dal", "available", "US")).toContain("Its fibre is an estimate.");
    expect(said("rice-white", "total", "UK")).toContain("A cup here holds 240 millilitres.");
    expect(said("curry-chicken", "total", "US")).toContain("curries count more");
  });
});
