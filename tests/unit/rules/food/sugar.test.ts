// Sugar for a low by the card's own grams. Sources: 15 g (ADA leaflet of 2024), 15 to 20 g (JBDS 01, 2020), 20 g severe and awake (Diabetes Canada leaflet);
// carbohydrate and weights by the sources that the food table names beside each row (USDA SR, UK CoFID 2021).
import { describe, expect, it } from "vitest";
import { FOODS } from "#rules/food/foods.ts";
import { pouredMillilitres } from "#rules/food/millilitres.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { labelOf } from "#words/en/labels.ts";
import { sugarsToGive } from "#words/en/low-labels.ts";
import { me, odileAlone } from "../../../kit/explore/at-table.ts";
import { fixedCard } from "../../../kit/people.ts";

const of = (target: number, id: string) => sugarFoods(target).find((s) => s.id === id);
const low = (treatGrams: number | null, language: "en-GB" | "en-US" = "en-US") =>
  odileAlone({ care: { ...fixedCard.care, treatGrams } }, { language }).send({ do: "open low", person: "odile" });
const offered = (t: ReturnType<typeof low>) =>
  sugarsOffered([], 20).map((s) => labelOf({ do: "took sugar", food: s.id, grams: s.grams }, t.state).shown);

describe("sugar for a card that says 20 grams", () => {
  it("is five tablets of 4 g, and 12 g are never taken for 15 (facts O15)", () => {
    expect(of(15, "glucose-tablets")).toMatchObject({ amount: "four tablets", grams: 16 });
    expect(of(20, "glucose-tablets")).toMatchObject({ amount: "five tablets", grams: 20 });
    expect(of(12, "glucose-tablets")).toMatchObject({ amount: "three tablets", grams: 12 });
  });

  it("is worked out in kitchen measures: 5 and a half ounces of orange juice at 3.6 g each, 5 teaspoons of sugar at 4.2 g", () => {
    expect(of(20, "juice-orange")).toMatchObject({ amount: "five and a half fluid ounces", grams: 19.8 });
    expect(of(20, "sugar-white")).toMatchObject({ amount: "five level teaspoons", grams: 21 });
    expect(of(20, "sugar-packets")).toMatchObject({ amount: "seven packets", grams: 19.6 });
    expect(of(20, "honey")).toMatchObject({ amount: "three and a half teaspoons", grams: 20.2 });
    expect(of(20, "glucose-gel")).toMatchObject({ amount: "one and a half tubes", grams: 22.5 });
    expect(of(20, "jelly-beans")).toMatchObject({ amount: "nineteen small", grams: 19.5 });
  });

  // The amount is read back from its words with the weights of the table: a measure that is not the portion's own would show here.
  it.each([10, 12, 20, 25, 30])("holds at least 95 in 100 of the grams asked for, and less than one measure more: %i", (target) => {
    for (const s of sugarFoods(target)) {
      const food = FOODS.find((f) => f.id === s.id);
      const one = of(0.1, s.id)?.grams ?? 0;
      expect(s.grams, s.id).toBeGreaterThanOrEqual(target * 0.95 - 0.05);
      expect(s.grams - one, s.id).toBeLessThan(target * 0.95 + 0.05);
      const ounces = /^([\w -]+) fluid ounces?$/.exec(s.amount);
      if (ounces && food) {
        const ml = pouredMillilitres(s.amount) ?? 0;
        // 29.57 mL an ounce, poured to the nearest 10 mL; grams a mL from the table's own portion.
        expect(Math.abs((ml / 29.5735) * (food.total / (pouredOf(food.portion) / 29.5735)) - s.grams), s.id).toBeLessThan(2);
      }
    }
  });

  // What the portion holds is asked for, so the words have to be the portion's own. Three teaspoons to a tablespoon: US kitchen measures.
  it("counts in the measures of the table's portions", () => {
    const otherwise: Readonly<Record<string, string>> = { honey: "three teaspoons" };
    for (const { id, food } of sugarFoods()) {
      const same = of(food.total / 0.95, id);
      expect(same?.amount, id).toBe(otherwise[id] ?? food.portion.split(", ").at(-1));
      expect(same?.grams, id).toBe(food.total);
    }
  });

  it("says the amounts of the portions themselves for 15", () => {
    for (const s of sugarFoods()) expect([s.amount, s.grams]).toEqual([s.food.portion, s.food.total]);
  });

  it("can be poured in Britain, whatever the grams", () => {
    for (const target of [12, 20, 30, 60])
      for (const { amount, id } of sugarFoods(target))
        if (amount.includes("fluid")) expect(pouredMillilitres(amount), id).toBeGreaterThan(50);
  });
});

describe("the low walk", () => {
  it("offers the card's own grams, and its buttons say them", () => {
    const t = low(20);
    expect(offered(t)).toEqual([
      "Glucose tablets: five of 4 grams",
      "Glucose tablets: seven of 3 grams",
      "Glucose gel: one and a half tubes",
      "Orange juice: five and a half fluid ounces",
    ]);
    t.send({ do: "took sugar", food: "glucose-tablets", grams: 20 });
    expect(t.try({ do: "took sugar", food: "glucose-tablets", grams: 16 }).refusal).toEqual({ no: "not offered here" });
    expect(offered(low(20, "en-GB")).at(-1)).toBe("Orange juice: 160 millilitres");
  });

  it("hears each sugar by its name, and by the words on its button", () => {
    const label = labelOf({ do: "took sugar", food: "juice-orange", grams: 19.8 }, low(20).state);
    expect(label.said).toEqual(["orange juice: five and a half fluid ounces", "orange juice", "i took orange juice"]);
  });

  it("names what is counted, and says millilitres in Britain, to whoever gives it", () => {
    const given = (grams: number, language: "en-GB" | "en-US", leftOutSugars: string[] = []) =>
      sugarsToGive(me(odileAlone({ care: { ...fixedCard.care, treatGrams: grams } }, { language, leftOutSugars })));
    expect(given(20, "en-US")).toEqual(["five glucose tablets, 4 grams each", "five and a half fluid ounces of orange juice"]);
    expect(given(20, "en-GB")).toEqual(["five glucose tablets, 4 grams each", "160 millilitres of orange juice"]);
    expect(given(15, "en-US")[1]).toBe("half a cup of orange juice");
    expect(given(15, "en-GB", ["glucose-tablets"])).toEqual(["five dextrose tablets, 3 grams each", "120 millilitres of orange juice"]);
    const only = (...ids: string[]) => sugarFoods().flatMap(({ id }) => (ids.includes(id) ? [] : [id]));
    expect(given(20, "en-US", only("sugar-packets", "jelly-beans"))).toEqual(["seven sugar packets", "nineteen small jelly beans"]);
    expect(given(20, "en-US", only("candy-hard", "raisins"))).toEqual(["three tablespoons of raisins"]);
  });

  it("offers 15 g where the card is blank", () => {
    expect(low(null).try({ do: "took sugar", food: "glucose-tablets", grams: 16 }).refusal).toBeNull();
  });
});

/** Millilitres of a portion of the table, not rounded as it is poured. */
function pouredOf(portion: string): number {
  const [, word = "", half] = /([a-z-]+)( and a half)? fluid ounces$/.exec(portion) ?? [];
  const words = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
  return (words.indexOf(word) + (half ? 0.5 : 0)) * 29.5735;
}
