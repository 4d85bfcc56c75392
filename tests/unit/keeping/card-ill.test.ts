// What a keeper types for high glucose and ill days. Blank is blank, and old cards stay as they were.
import { describe, expect, it } from "vitest";
import { canonical } from "#events/canonical.ts";
import { doseCard } from "#events/card.ts";
import { readCard } from "#keeping/card-draft.ts";
import type { Draft } from "#keeping/problem.ts";
import { cardSections } from "#screens/drawer/forms/card-specs.ts";
import type { Spec } from "#screens/drawer/parts/spec.ts";
import { fieldHint, fieldName } from "#words/en/drawer/fields.ts";
import { ketoneTrial } from "#words/en/drawer/ill-sheet.ts";
import { cardSheet } from "#words/en/drawer/sheet.ts";
import { ketoneCard, plusCard, stripCard } from "../../kit/cards.ts";
import { fixedCard } from "../../kit/people.ts";
import { typed } from "./typing.ts";

const read = (draft: Draft) => readCard(draft, "odile");
const problems = (draft: Draft) => {
  const found = read(draft);
  return found.ok ? [] : found.problems.map(({ field, why }) => `${field}: ${why}`);
};
const part = (card: typeof fixedCard) => cardSheet(card).find(({ heading }) => heading === "High glucose and ill days")?.lines ?? [];

describe("high glucose and ill days on a card", () => {
  it.each([
    ["blood", ketoneCard],
    ["a strip with words", stripCard],
    ["a strip with plus signs", plusCard],
  ] as const)("come back from what was typed: %s", (_name, card) => {
    expect(read(typed(card))).toEqual({ ok: true, card });
  });

  it("left blank leave the card as it was before they were asked for, to the letter", () => {
    const found = read(typed(fixedCard));
    if (!found.ok) throw new Error("not read");
    expect(canonical(found.card)).toBe(canonical(fixedCard));
    expect(Object.keys(found.card)).not.toContain("ketones");
    expect(Object.keys(found.card)).not.toContain("sickDay");
  });

  it("missing on a card that was signed before are read without a word", () => {
    expect(doseCard.safeParse(fixedCard).success).toBe(true);
    expect(doseCard.safeParse(ketoneCard).success).toBe(true);
    expect(part(fixedCard).map(({ value }) => value)).toEqual([
      "Blank. Call the clinic.",
      "Blank. Call the clinic.",
      "Blank. Call the clinic.",
    ]);
  });

  it("ask for a line, and for a reason to test at all", () => {
    expect(problems({ ...typed(fixedCard), ketones: "blood", "ketones.from": "250", "ketones.whenIll": "no" })).toEqual([
      "ketones.lines.0.from: empty",
    ]);
    expect(problems({ ...typed(ketoneCard), "ketones.from": "", "ketones.whenIll": "no" })).toEqual(["ketones.from: empty"]);
    expect(problems({ ...typed(ketoneCard), "ketones.whenIll": "" })).toEqual(["ketones.whenIll: not chosen"]);
  });

  it("refuse what no ketone meter shows, and a line without a word on whom to call", () => {
    expect(problems({ ...typed(ketoneCard), "ketones.lines.1.from": "60" })).toEqual(["ketones.lines.1.from: too large"]);
    expect(problems({ ...typed(ketoneCard), "ketones.lines.1.call": "" })).toEqual(["ketones.lines.1.call: not chosen"]);
    expect(problems({ ...typed(ketoneCard), "sickDay.rules.0": "x".repeat(121) })).toEqual(["sickDay.rules.0: too long"]);
  });

  it("have a field for everything that is read, each with a name", () => {
    for (const card of [ketoneCard, stripCard, plusCard]) {
      const draft = typed(card);
      const flat = (specs: readonly Spec[]): string[] => specs.flatMap((s) => (s.kind === "row" ? [s.field, ...flat(s.specs)] : [s.field]));
      const fields = cardSections(draft, () => {}).flatMap(({ specs }) => flat(specs));
      for (const [field, value] of Object.entries(draft))
        if (/^(ketones|sickDay|care\.watch)/.test(field) && value !== "") expect(fields, field).toContain(field);
      for (const field of fields) expect(fieldName(field).length).toBeGreaterThan(2);
    }
    expect(fieldHint("ketones.from")).toBe("Blank: not for a reading alone.");
  });

  it("are read back line by line, a blank as a blank", () => {
    expect(part(ketoneCard).map(({ label, value }) => `${label}: ${value}`)).toEqual([
      "Test for ketones: Blood, a number",
      "Test for ketones from: 250 mg/dL or more",
      "Test for ketones when ill, at any reading: Yes",
      "Ketones, line 1: 0 millimoles or more: No ketones. Measure again in 4 hours. Nobody.",
      "Ketones, line 2: 0.6 millimoles or more: Drink a glass of water each hour. Nobody.",
      "Ketones, line 3: 1.5 millimoles or more: This needs us today. Call the clinic now.",
      "Ketones, line 4: 3 millimoles or more: Blank. Call the clinic. Call the emergency number now.",
      "Ill days, rule 1: Drink a glass of water each hour.",
      "Ill days, rule 2: Measure every 4 hours.",
      "Ill days, rule 3: Do not exercise.",
      "When to call on an ill day: Call if food comes up for 4 hours.",
    ]);
  });

  it("stand on the trial sheet: on each line and below it, and every field of a strip", () => {
    expect(ketoneTrial(fixedCard)).toEqual([]);
    expect(ketoneTrial(ketoneCard).map(({ asked }) => asked)).toEqual(
      ["0", "0.5", "0.6", "1.4", "1.5", "2.9", "3"].map((n) => `Ketones: ${n} millimoles`),
    );
    expect(ketoneTrial(ketoneCard).at(-1)?.told).toBe("Blank. Call the clinic. Call the emergency number now.");
    expect(ketoneTrial(stripCard).map(({ asked, told }) => `${asked}: ${told}`)).toEqual([
      "Ketones: None: Blank. Call the clinic.",
      "Ketones: Trace: Blank. Call the clinic.",
      "Ketones: Small: Drink more water.",
      "Ketones: Moderate: Blank. Call the clinic. Call the clinic now.",
      "Ketones: Large: Blank. Call the clinic. Call the clinic now.",
    ]);
  });
});
