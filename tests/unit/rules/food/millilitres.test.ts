import { describe, expect, it } from "vitest";
import { millilitres, pouredMillilitres } from "#rules/food/millilitres.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import { labelOf } from "#words/en/labels.ts";
import { odileAlone } from "../../../kit/explore/at-table.ts";

describe("fluid ounces", () => {
  it("are 118.29 mL for four American ones, said as 120 (facts O16; source: definition of the US fluid ounce)", () => {
    expect(millilitres(4)).toBeCloseTo(118.29, 2);
    expect(pouredMillilitres("four fluid ounces")).toBe(120);
    expect(pouredMillilitres("three and a half fluid ounces")).toBe(100);
  });

  it("are the only portions that are poured so", () => {
    for (const portion of ["half a cup", "one tablespoon", "four tablets"]) expect(pouredMillilitres(portion)).toBeNull();
  });

  it("of every quick sugar in the table can be poured in Britain", () => {
    const ounces = sugarFoods().flatMap(({ amount }) => (amount.endsWith("fluid ounces") ? [amount.split(", ").at(-1) ?? ""] : []));
    expect(ounces.length).toBeGreaterThan(5);
    for (const amount of ounces) expect(pouredMillilitres(amount), amount).toBeGreaterThan(90);
  });

  it("stand on no British button", () => {
    const juice = { do: "took sugar", food: "juice-orange", grams: 14.4 } as const;
    const t = (language: "en-GB" | "en-US") => odileAlone({}, { language }).send({ do: "open low", person: "odile" });
    expect(labelOf(juice, t("en-GB").state).shown).toBe("Orange juice: 120 millilitres");
    expect(labelOf(juice, t("en-US").state).shown).toBe("Orange juice: half a cup");
  });
});
