import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plateLine } from "#events/plate.ts";
import { grams } from "#events/quantity.ts";
import { FOODS, type Food, foodById } from "#rules/food/foods.ts";
import { lineFor, plateTotal } from "#rules/food/plate.ts";
import { sugarFoods } from "#rules/food/sugar.ts";

const food = (id: string): Food => {
  const found = foodById(id);
  if (found === null) throw new Error(`no food ${id}`);
  return found;
};
const gramsOf = (line: ReturnType<typeof lineFor>) => ("refused" in line ? line.refused : line.grams);

describe("a line of the plate", () => {
  it("counts fibre only where the clinic does: half a cup of chickpeas is 22.5 g total, 16.3 g available", () => {
    expect(gramsOf(lineFor(food("chickpeas"), 1, "total", "US"))).toBe(22.5);
    expect(gramsOf(lineFor(food("chickpeas"), 1, "available", "US"))).toBe(16.3);
  });

  it("refuses to guess available carbohydrate where fibre is not known, and counts total all the same", () => {
    expect(lineFor(food("cornbread"), 1, "available", "US")).toEqual({
      refused: "available carbohydrate not known",
      food: food("cornbread"),
    });
    expect(gramsOf(lineFor(food("cornbread"), 1, "total", "US"))).toBe(28.3);
    for (const one of FOODS.filter((f) => f.fibrePer100 === null)) expect(lineFor(one, 1, "available", "UK")).toHaveProperty("refused");
  });

  it("takes halves from a half to twenty, nothing else", () => {
    expect(gramsOf(lineFor(food("chickpeas"), 0.5, "total", "US"))).toBe(11.3);
    expect(gramsOf(lineFor(food("bread-white"), 2, "total", "US"))).toBe(28.4);
    expect(gramsOf(lineFor(food("bread-white"), 20, "total", "US"))).toBe(284);
    for (const portions of [0, -1, 0.25, 1.1, 20.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(gramsOf(lineFor(food("apple"), portions, "total", "US")), String(portions)).toBe("portions not in halves");
  });

  it("speaks the person's English", () => {
    expect(lineFor(food("potato-chips"), 1, "total", "US")).toMatchObject({
      food: "potato-chips",
      name: "potato chips",
      portion: "one ounce, about twenty-two",
    });
    expect(lineFor(food("potato-chips"), 1, "total", "UK")).toMatchObject({ name: "crisps" });
  });

  it("fits the stored shape for every food, within half a tenth of a gram", () => {
    const halves = fc.integer({ min: 1, max: 40 }).map((n) => n / 2);
    fc.assert(
      fc.property(fc.constantFrom(...FOODS), halves, fc.constantFrom("total" as const, "available" as const), (one, portions, counting) => {
        const line = lineFor(one, portions, counting, "US");
        if ("refused" in line) {
          expect([counting, one.available]).toEqual(["available", null]);
          return;
        }
        expect(plateLine.parse(line)).toEqual(line);
        const portion = counting === "total" ? one.total : (one.available ?? Number.NaN);
        expect(Math.abs(line.grams - portion * portions)).toBeLessThanOrEqual(0.05 + 1e-9);
      }),
    );
  });
});

describe("the total of a plate", () => {
  const line = (tenths: number) => ({ food: "x", name: "x", portion: "one", portions: 1, grams: grams(tenths / 10) });

  it("is exactly the sum of the tenths shown, in any order", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 5000 }), { maxLength: 40 }), (tenths) => {
        const total = plateTotal(tenths.map(line));
        expect(total).toBe(tenths.reduce((a, b) => a + b, 0) / 10);
        expect(plateTotal(tenths.map(line).toReversed())).toBe(total);
        expect(String(total)).toMatch(/^\d+(\.\d)?$/);
      }),
    );
  });

  it("lets no binary fraction creep in: 0.1 and 0.2 are 0.3", () => {
    expect(plateTotal([line(1), line(2)])).toBe(0.3);
    expect(plateTotal([])).toBe(0);
  });
});

describe("sugar for a low", () => {
  it("gives about 15 g each, glucose first, raisins last, with the amount in words", () => {
    const sugars = sugarFoods();
    expect(sugars).toHaveLength(18);
    expect(sugars.filter((sugar) => sugar.grams < 13.5 || sugar.grams > 17.5)).toEqual([]);
    expect(sugars[0]).toMatchObject({ id: "glucose-tablets", amount: "four tablets", grams: 16 });
    expect(sugars.at(-1)?.id).toBe("raisins");
  });

  it("says how much food holds exactly 15 g: 130 g of orange juice, 142 g of cola, 15 g of white sugar", () => {
    const weightOf = (id: string) => sugarFoods().find((sugar) => sugar.id === id)?.weightFor15;
    expect([weightOf("juice-orange"), weightOf("soda-cola"), weightOf("sugar-white")]).toEqual([130, 142, 15]);
  });

  it("holds nothing slow: no chocolate, ice cream, milk, diet drink or biscuit", () => {
    expect(sugarFoods().filter(({ id }) => /choc|milk|diet|cookie|cream/.test(id))).toEqual([]);
  });
});
