// What a keeper types for high glucose and ill days. Blank is blank, and old cards stay as they were.
import { describe, expect, it } from "vitest";
import { canonical } from "#events/canonical.ts";
import { doseCard } from "#events/card.ts";
import { readCard } from "#keeping/card-draft.ts";
import type { Draft } from "#keeping/problem.ts";
import { signCard } from "#keeping/sign.ts";
import { cardSections } from "#screens/drawer/forms/card-specs.ts";
import type { Spec } from "#screens/drawer/parts/spec.ts";
import { fieldHint, fieldName } from "#words/en/drawer/fields.ts";
import { ketoneTrial } from "#words/en/drawer/ill-sheet.ts";
import { sayLeaf, shownDifferences } from "#words/en/drawer/problems.ts";
import { cardSheet } from "#words/en/drawer/sheet.ts";
import { ketoneCard, plusCard, stripCard } from "../../kit/cards.ts";
import { fixedCard, odile } from "../../kit/people.ts";
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

  // Five lines and eight rules: the most that a card holds, our choice.
  it("are read to the last line and the last rule, and when to call without any rule", () => {
    const most: typeof fixedCard = {
      ...fixedCard,
      ketones: {
        test: "blood",
        from: null,
        whenIll: true,
        lines: [0, 0.6, 1, 1.5, 3].map((from) => ({ from, says: `Line from ${from}.`, call: "clinic" })),
      },
      sickDay: { rules: [1, 2, 3, 4, 5, 6, 7, 8].map((n) => `Rule ${n}.`), callWhen: null },
    };
    expect(read(typed(most))).toEqual({ ok: true, card: most });
    expect(part(most).filter(({ label }) => /line|rule/.test(label))).toHaveLength(13);
    const callOnly: typeof fixedCard = { ...fixedCard, sickDay: { rules: [], callWhen: "Call after 4 hours." } };
    expect(read(typed(callOnly))).toEqual({ ok: true, card: callOnly });
    expect(part(callOnly).map(({ value }) => value)).toEqual(["Blank. Call the clinic.", "Blank. Call the clinic.", "Call after 4 hours."]);
  });

  it("ask where a line has words and nothing else", () => {
    expect(problems({ ...typed(ketoneCard), "ketones.lines.4.says": "Drink." })).toEqual([
      "ketones.lines.4.from: empty",
      "ketones.lines.4.call: not chosen",
    ]);
  });

  // 10 to 120 minutes: own bounds, no source.
  it("take a reading every 10 to 120 minutes while no meal comes", () => {
    const every = (minutes: string) => problems({ ...typed(fixedCard), "care.watchMinutes": minutes });
    expect([every("10"), every("120"), every("")]).toEqual([[], [], []]);
    expect(every("9")).toEqual(["care.watchMinutes: too small"]);
    expect(every("121")).toEqual(["care.watchMinutes: too large"]);
    expect(every("45.5")).toEqual(["care.watchMinutes: too many decimals"]);
  });

  // Both typings as fingers type them: each field differs by itself, is named, and is said in words on both sides.
  it.each([
    [ketoneCard, "ketones.from", "270", "Test for ketones from: 250, 270"],
    [ketoneCard, "ketones.whenIll", "no", "Test for ketones when ill, at any reading: Yes, No"],
    [ketoneCard, "ketones.lines.1.from", "0.9", "Ketones, line 2: from: 0.6 mmol/L, 0.9 mmol/L"],
    [ketoneCard, "ketones.lines.1.says", "Rest.", "Ketones, line 2: what the card says: Drink a glass of water each hour., Rest."],
    [ketoneCard, "ketones.lines.1.call", "clinic", "Ketones, line 2: whom to call: Nobody, Call the clinic now"],
    [ketoneCard, "ketones.lines.3.says", "Go in.", "Ketones, line 4: what the card says: blank, Go in."],
    [ketoneCard, "sickDay.rules.1", "Rest.", "Ill days, rule 2: Measure every 4 hours., Rest."],
    [ketoneCard, "sickDay.rules.3", "Rest.", "Ill days, rule 4: blank, Rest."],
    [ketoneCard, "sickDay.callWhen", "", "When to call on an ill day: Call if food comes up for 4 hours., blank"],
    [
      stripCard,
      "ketones.lines.0.from",
      "trace",
      "Ketones, line 1: from: 2 mmol/L, or on a strip: Small, 1 plus, 1 mmol/L, or on a strip: Trace",
    ],
    [stripCard, "ketones", "urine plus signs", "Test for ketones: Urine strip with words, Urine strip with plus signs"],
    [plusCard, "care.watchMinutes", "30", "Readings while no meal comes, every: 45 minutes, 30 minutes"],
    [plusCard, "care.watchMinutes", "", "Readings while no meal comes, every: 45 minutes, blank"],
    [fixedCard, "sickDay.callWhen", "Call.", "Rules for ill days: blank, filled in"],
  ])("are compared between the two typings", (card, field, other, said) => {
    const first = read(typed(card));
    const second = read({ ...typed(card), [field]: other });
    if (!first.ok || !second.ok) throw new Error("not read");
    for (const [a, b] of [[first, second] as const, [second, first] as const]) {
      const signed = signCard({
        ...{ first: a.card, second: b.card, readBack: true, agreed: [], person: odile, keeper: { id: "k1", name: "Ines" } },
        ...{ today: "2026-06-03", hash: () => "h" },
      });
      if (signed.ok || signed.refused !== "typings differ") throw new Error("the difference was not found");
      const shown = shownDifferences(signed.differences).map((d) => {
        const leaves = [sayLeaf(d.field, d.first), sayLeaf(d.field, d.second)];
        return `${fieldName(d.field)}: ${(a === first ? leaves : leaves.reverse()).join(", ")}`;
      });
      expect(shown).toEqual([said]);
    }
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

  it("are read back of a strip in its own words, for a reading alone or for ill days alone", () => {
    const said = (card: typeof fixedCard) => part(card).map(({ label, value }) => `${label}: ${value}`);
    expect(said(stripCard)).toEqual([
      "Test for ketones: Urine strip with words",
      "Test for ketones from: 240 mg/dL or more",
      "Test for ketones when ill, at any reading: No",
      "Ketones, line 1: Small or more: Drink more water. Nobody.",
      "Ketones, line 2: Moderate or more: Blank. Call the clinic. Call the clinic now.",
      "Rules for ill days: Blank. Call the clinic.",
      "When to call on an ill day: Blank. Call the clinic.",
    ]);
    expect(said(plusCard).slice(0, 4)).toEqual([
      "Test for ketones: Urine strip with plus signs",
      "Test for ketones from: Blank.",
      "Test for ketones when ill, at any reading: Yes",
      "Ketones, line 1: 1 plus or more: Ring the ward. Call the clinic now.",
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
