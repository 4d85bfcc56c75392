// Ketones as data. Sources: rules/glucose/guidelines.ts (facts, section 3); the numbers of the card are the clinic's.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { KetoneRule } from "#events/ill-rules.ts";
import { KETONE_GUIDELINES } from "#rules/glucose/guidelines.ts";
import { checkKetones, ketoneLineOf, ketonesDue, stripLevels } from "#rules/glucose/ketones.ts";

const rule = (over: Partial<KetoneRule> = {}): KetoneRule => ({
  test: "blood",
  from: 250,
  whenIll: false,
  lines: [
    { from: 0.6, says: "a", call: "no" },
    { from: 1.5, says: "b", call: "clinic" },
    { from: 3, says: null, call: "emergency" },
  ],
  ...over,
});
const at = (value: number) => ({ glucose: { value, unit: "mg/dL" } as const, word: null });

describe("when ketones are looked for", () => {
  it("is from the card's number on, and HI is above any number", () => {
    expect([ketonesDue(rule(), at(249), false), ketonesDue(rule(), at(250), false), ketonesDue(rule(), at(600), false)]).toEqual([
      false,
      true,
      true,
    ]);
    expect(ketonesDue(rule(), { glucose: null, word: "HI" }, false)).toBe(true);
    expect(ketonesDue(rule(), { glucose: null, word: "LO" }, true)).toBe(false);
  });

  it("is at any reading, or at none, when ill and the card says so", () => {
    expect([ketonesDue(rule({ whenIll: true }), at(90), true), ketonesDue(rule({ whenIll: true }), null, true)]).toEqual([true, true]);
    expect([ketonesDue(rule({ whenIll: true }), at(90), false), ketonesDue(rule(), at(90), true)]).toEqual([false, false]);
    expect(ketonesDue(rule({ from: null }), at(600), false)).toBe(false);
  });

  it("is never where the card is blank", () => expect(ketonesDue(undefined, { glucose: null, word: "HI" }, true)).toBe(false));
});

describe("the card's line for a result", () => {
  it("reaches from its number up to where the next begins; below the first there is none", () => {
    const of = (value: number) => ketoneLineOf(rule(), value)?.from ?? null;
    expect([0, 0.5, 0.6, 1.4, 1.5, 2.9, 3, 8].map(of)).toEqual([null, null, 0.6, 0.6, 1.5, 1.5, 3, 3]);
  });

  it("does not depend on the order in which the lines were typed", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2], { minLength: 3 }), fc.integer({ min: 0, max: 80 }), (order, tenths) => {
        const lines = order.flatMap((i) => rule().lines[i] ?? []);
        expect(ketoneLineOf(rule({ lines }), tenths / 10)).toEqual(ketoneLineOf(rule(), tenths / 10));
      }),
    );
  });

  it("of two that begin alike is the one that calls sooner", () => {
    const lines = [
      { from: 1.5, says: "a", call: "no" as const },
      { from: 1.5, says: "b", call: "emergency" as const },
    ];
    expect(ketoneLineOf(rule({ lines }), 2)?.call).toBe("emergency");
    expect(ketoneLineOf(rule({ lines: [...lines].reverse() }), 2)?.call).toBe("emergency");
  });
});

describe("a result", () => {
  it("is 0 to 8 with one decimal, a point or a comma", () => {
    expect(checkKetones("1.5")).toEqual({ ok: true, value: 1.5 });
    expect(checkKetones(" 0,6 ")).toEqual({ ok: true, value: 0.6 });
    expect(checkKetones("8")).toEqual({ ok: true, value: 8 });
    expect(["15", "8.1", "1.55", "", "HI", "-1"].map((text) => checkKetones(text))).toEqual(
      ["too high", "too high", "too many decimals", "empty", "not a number", "not a number"].map((why) => ({ ok: false, why })),
    );
  });

  it("of a strip is one of its fields: five with words, six with plus signs", () => {
    expect([stripLevels("urine words").length, stripLevels("urine plus signs").length]).toEqual([5, 6]);
  });
});

describe("published sheets", () => {
  it("look for ketones at numbers that differ: 240 and 250 mg/dL, 14 mmol/L, or at any reading when ill", () => {
    expect([...new Set(KETONE_GUIDELINES.flatMap(({ testFrom }) => (testFrom ? [`${testFrom.value} ${testFrom.unit}`] : [])))]).toEqual([
      "250 mg/dL",
      "240 mg/dL",
      "14 mmol/L",
    ]);
    expect(KETONE_GUIDELINES.filter(({ whenIll }) => whenIll).map(({ by }) => by)).toEqual(["ADA", "UK", "Australia"]);
  });

  it("call at 1.0 to 1.5 mmol/L and send an ambulance at 3.0; after 4, 6 or 8 hours of vomiting", () => {
    expect([...new Set(KETONE_GUIDELINES.flatMap(({ callAt }) => callAt ?? []))]).toEqual([1.5, 1]);
    expect(KETONE_GUIDELINES.flatMap(({ emergencyAt }) => emergencyAt ?? [])).toEqual([3]);
    expect([...new Set(KETONE_GUIDELINES.flatMap(({ vomitingHours }) => vomitingHours ?? []))].sort()).toEqual([4, 6, 8]);
  });
});
