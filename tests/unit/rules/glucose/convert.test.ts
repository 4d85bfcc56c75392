import { describe, expect, it } from "vitest";
import { toOtherUnit } from "#rules/glucose/convert.ts";

const toMmol = (value: number, factor?: number): number => toOtherUnit({ value, unit: "mg/dL" }, factor).value;
const toMg = (value: number, factor?: number): number => toOtherUnit({ value, unit: "mmol/L" }, factor).value;
const FACTORS = [18, 18.0156, 18.016, 18.0182] as const;
/** Every whole number that a meter in mg/dL can show. */
const WHOLE = Array.from({ length: 581 }, (_, i) => i + 20);

describe("the other unit, for display", () => {
  it("shows 54, 70 and 180 mg/dL as 3.0, 3.9 and 10.0 by any of the four factors in use (source: computed)", () => {
    for (const factor of FACTORS) expect([54, 70, 180].map((n) => toMmol(n, factor))).toEqual([3.0, 3.9, 10.0]);
  });

  it("shows 154 mg/dL as 8.5 by the molar mass, as 8.6 by 18", () => {
    expect([toMmol(154, 18), toMmol(154), toMmol(154, 18.0182)]).toEqual([8.6, 8.5, 8.5]);
  });

  it("knows where 18.0182 parts from the others: 100 and 300 mg/dL", () => {
    expect([toMmol(100, 18.0182), toMmol(300, 18.0182)]).toEqual([5.5, 16.6]);
    expect([toMmol(100), toMmol(300)]).toEqual([5.6, 16.7]);
  });

  it("shows 7.8 mmol/L as 141 mg/dL, 140 by 18; 33.3 as 600, 599 by 18", () => {
    expect([toMg(7.8, 18), toMg(7.8), toMg(33.3, 18), toMg(33.3)]).toEqual([140, 141, 599, 600]);
  });

  it("uses the molar mass of glucose when no factor is named (180.156 g/mol)", () => {
    expect(toMg(10)).toBe(180);
    expect(toOtherUnit({ value: 100, unit: "mg/dL" })).toEqual({ value: 5.6, unit: "mmol/L" });
  });

  it("disagrees between the four factors for 102 of the 581 whole readings, and between the three finer ones for 17", () => {
    const differ = (factors: readonly number[]) => WHOLE.filter((n) => new Set(factors.map((f) => toMmol(n, f))).size > 1);
    expect(differ(FACTORS)).toHaveLength(102);
    expect(differ(FACTORS.slice(1))).toEqual([100, 109, 300, 309, 318, 327, 336, 345, 500, 509, 518, 527, 536, 545, 554, 563, 572]);
  });

  it("changes 258 of 581 readings there and back, so a converted value is never the original", () => {
    expect(WHOLE.filter((n) => toMg(toMmol(n, 18.0182), 18.0182) !== n)).toHaveLength(258);
  });

  it("rounds an exact half up: 4.5 mg/dL per mmol/L of 18 is a quarter, 0.25 shows as 0.3", () => {
    expect(toMmol(4.5, 18)).toBe(0.3);
    expect(toMg(0.25, 18)).toBe(5);
  });
});
