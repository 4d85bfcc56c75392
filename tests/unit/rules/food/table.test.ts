import { describe, expect, it } from "vitest";
import { FOOD_GROUPS, FOODS, type Food, foodById, readFood } from "#rules/food/foods.ts";
import { FOOD_CREDITS, sourceOf } from "#rules/food/sources.ts";
import { TABLE } from "#rules/food/table.ts";

/**
 * A tenth is printed, so a printed figure may lie half a tenth from the product. Figures converted from another unit were
 * computed before their per-100 g value was itself cut to two decimals, which adds half a hundredth per 100 g.
 */
const slackOf = (food: Food): number => 0.05 + 1e-9 + (sourceOf(food.source).total === "estimated" ? (0.005 * food.weight) / 100 : 0);

/** Everything that is wrong with a food's figures, in words; empty when it adds up. */
const faultsOf = (food: Food): string[] => {
  const faults: string[] = [];
  const { name, number } = sourceOf(food.source);
  const at = `${food.id} (${name} ${number})`;
  const off = (a: number, b: number) => Math.abs(a - b) > slackOf(food);
  if (off(food.total, (food.totalPer100 * food.weight) / 100)) faults.push(`${at}: total is not per-100 g x weight`);
  if ((food.available === null) !== (food.fibrePer100 === null))
    faults.push(`${at}: available is known without fibre, or the other way round`);
  if (food.available !== null && off(food.available, ((food.totalPer100 - (food.fibrePer100 ?? 0)) * food.weight) / 100))
    faults.push(`${at}: available is not total - fibre`);
  if (food.available !== null && food.available > food.total) faults.push(`${at}: available is more than total`);
  if ((food.fibrePer100 ?? 0) > food.totalPer100) faults.push(`${at}: more fibre than carbohydrate`);
  if (food.totalPer100 > 100) faults.push(`${at}: more carbohydrate than food`);
  if (food.otherTotal !== null && Math.abs(food.otherTotal - food.total) <= 1.5) faults.push(`${at}: the other total is no different`);
  if (food.group === "fast sugar" && (food.total < 13.5 || food.total > 17.5)) faults.push(`${at}: not about 15 g of quick sugar`);
  return faults;
};

const chickpeas = TABLE.split("\n").find((line) => line.startsWith("chickpeas|")) ?? "";

describe("the food table", () => {
  it("holds 235 foods, each with its own id, in every group", () => {
    expect(FOODS).toHaveLength(235);
    expect(new Set(FOODS.map((food) => food.id)).size).toBe(235);
    expect(FOOD_GROUPS.filter((group) => !FOODS.some((food) => food.group === group))).toEqual([]);
  });

  it("adds up on every row, source by source", () => {
    expect(FOODS.flatMap(faultsOf)).toEqual([]);
  });

  it("names a source for every row: 194 US, 29 UK, 5 Japanese, 2 US survey, 2 computed, 3 labels", () => {
    const count = (letter: string) => FOODS.filter((food) => food.source.startsWith(letter)).length;
    expect(["S", "C", "J", "F", "I", "L"].map(count)).toEqual([194, 29, 5, 2, 2, 3]);
    for (const food of FOODS) expect(sourceOf(food.source).name.length).toBeGreaterThan(10);
    expect(sourceOf("S16057")).toMatchObject({ name: "USDA National Nutrient Database, Standard Reference, food", number: "16057" });
  });

  it("says which 41 portion weights and which 5 carbohydrate figures are from memory", () => {
    expect(FOODS.filter((food) => food.weightFromMemory)).toHaveLength(41);
    expect(["crumpet", "noodles-udon", "samosa-vegetable", "chickpeas"].map((id) => foodById(id)?.weightFromMemory)).toEqual([
      true,
      true,
      true,
      false,
    ]);
    expect(FOODS.filter((food) => food.carbohydrateFromMemory).map((food) => food.id)).toEqual([
      "idli",
      "dosa",
      "glucose-tablets",
      "glucose-tablets-small",
      "glucose-gel",
    ]);
  });

  it("keeps the four foods whose source reports no fibre blank", () => {
    expect(FOODS.filter((food) => food.available === null).map((food) => food.id)).toEqual([
      "cornbread",
      "pancake",
      "pie-pumpkin",
      "dumplings-pork",
    ]);
  });

  it("agrees with figures known from elsewhere", () => {
    // Half a cup of chickpeas, a slice of white bread, a medium banana, a small apple (USDA Standard Reference 16057, 18069, 09040, 09003).
    const figures = ["chickpeas", "bread-white", "banana", "apple"].map((id) => [foodById(id)?.total, foodById(id)?.available]);
    expect(figures).toEqual([
      [22.5, 16.3],
      [14.2, 13.4],
      [27, 23.9],
      [20.6, 17],
    ]);
    expect(foodById("shepherds-pie")).toMatchObject({ total: 29.1, otherTotal: 38.1 });
  });

  it("speaks portions in words, so that no digit is misheard", () => {
    expect(FOODS.filter((food) => /\d/.test(food.portion)).map((food) => food.id)).toEqual([]);
  });

  it("carries the credit that the licence of the UK data asks for", () => {
    expect(FOOD_CREDITS).toContain("Contains public sector information licensed under the Open Government Licence v3.0");
  });
});

describe("a fault planted in a row", () => {
  const planted: [string, string, string][] = [
    ["carbohydrate ten times too large", "|22.5|", "|225|"],
    ["carbohydrate a tenth off", "|22.5|", "|22.6|"],
    ["fibre counted as carbohydrate", "|16.3|", "|22.5|"],
    ["another weight", "|82|", "|164|"],
    ["other fibre", "|7.6|", "|6.7|"],
    ["available known without fibre", "|7.6|", "||"],
  ];
  it.each(planted)("is caught: %s", (_, is, becomes) => {
    expect(faultsOf(readFood(chickpeas))).toEqual([]);
    expect(chickpeas).toContain(is);
    expect(faultsOf(readFood(chickpeas.replace(is, becomes)))).not.toEqual([]);
  });

  const unreadable: [string, string, string][] = [
    ["a letter for a number", "|82|", "|8x|"],
    ["a blank weight", "|82|", "||"],
    ["an unknown group", "|legume|", "|pulses|"],
    ["an unknown source", "|S16057|", "|Q16057|"],
    ["a source without a number", "|S16057|", "|S|"],
  ];
  it.each(unreadable)("stops the program at start: %s", (_, is, becomes) => {
    expect(chickpeas).toContain(is);
    expect(() => readFood(chickpeas.replace(is, becomes))).toThrow();
  });

  it("stops the program at start: an unknown note", () => {
    expect(() => readFood(`${chickpeas}|z`)).toThrow(/unknown note/);
  });
});
