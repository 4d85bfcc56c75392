import { describe, expect, it } from "vitest";
import type { Glucose } from "#events/quantity.ts";
import { adaLevel, classify, isVeryLow } from "#rules/glucose/classify.ts";

const mg = (value: number): Glucose => ({ value, unit: "mg/dL" });
const mmol = (value: number): Glucose => ({ value, unit: "mmol/L" });

describe("a low", () => {
  it("is 53 and 54 and 69, not 70 and 71, by level (source: ADA Standards of Care section 6, 2018 on)", () => {
    const levels = [53, 54, 69, 70, 71].map((n) => adaLevel(mg(n), { limitCounts: false }));
    expect(levels).toEqual(["level 2", "level 1", "level 1", "none", "none"]);
  });

  it("takes in 70 itself in the older wording (source: ADA 2017 table 6.3)", () => {
    expect(adaLevel(mg(70), { limitCounts: true })).toBe("level 1");
    expect(adaLevel(mg(71), { limitCounts: true })).toBe("none");
  });

  it("has the same levels at 3.0 and 3.9 mmol/L (source: ADA)", () => {
    const levels = [2.9, 3.0, 3.8, 3.9, 4.0].map((n) => adaLevel(mmol(n), { limitCounts: false }));
    expect(levels).toEqual(["level 2", "level 1", "level 1", "none", "none"]);
    expect(adaLevel(mmol(3.9), { limitCounts: true })).toBe("level 1");
  });

  it("is 3.9 and not 4.0 on a card that says below 4.0 mmol/L (source: UK teaching)", () => {
    const low = { value: 4.0, counts: "below" } as const;
    expect(classify(mmol(3.9), low)).toBe("low");
    expect(classify(mmol(4.0), low)).toBe("not low");
  });

  it("is 70 on a card that says at or below 70 mg/dL, and not on one that says below", () => {
    expect(classify(mg(70), { value: 70, counts: "at or below" })).toBe("low");
    expect(classify(mg(70), { value: 70, counts: "below" })).toBe("not low");
    expect(classify(mg(71), { value: 70, counts: "at or below" })).toBe("not low");
  });

  it("is very low below 54 mg/dL and below 3.0 mmol/L, not at them (source: ADA level 2)", () => {
    expect([mg(53), mg(54), mmol(2.9), mmol(3)].map(isVeryLow)).toEqual([true, false, true, false]);
  });
});
