// Every field has a name, every answer its words, and every sentence a keeper meets is plain and short.
import { describe, expect, it } from "vitest";
import { units } from "#events/quantity.ts";
import { EMPTY_CARD, readCard } from "#keeping/card-draft.ts";
import type { Draft, Problem, ProblemWhy } from "#keeping/problem.ts";
import type { SignRefusal } from "#keeping/sign.ts";
import type { Alarm } from "#rules/card/alarm.ts";
import { cardSections } from "#screens/drawer/forms/card-specs.ts";
import { HOUSEHOLD, KEEPER, penSections, personSections } from "#screens/drawer/forms/other-specs.ts";
import type { Section, Spec } from "#screens/drawer/parts/spec.ts";
import { sayAlarm } from "#words/en/drawer/alarms.ts";
import { CARD, saySignRefusal } from "#words/en/drawer/card.ts";
import { EAR } from "#words/en/drawer/ear.ts";
import { fieldHint, fieldName } from "#words/en/drawer/fields.ts";
import { optionName, unitWords } from "#words/en/drawer/options.ts";
import { PHOTO } from "#words/en/drawer/photo.ts";
import { sayLeaf, sayProblem, shownDifferences } from "#words/en/drawer/problems.ts";
import { cardSheet } from "#words/en/drawer/sheet.ts";
import { TRIAL } from "#words/en/drawer/trial.ts";
import { DRAWER, notFor, waitWords } from "#words/en/drawer.ts";
import { FAULT, FIRST, INSECURE, SECOND_WINDOW } from "#words/en/first.ts";
import { EVERY_KIND, gridCard } from "../../kit/cards.ts";
import { bandsCard, fixedCard, ratioCard } from "../../kit/people.ts";
import { typed } from "./typing.ts";

const flat = (specs: readonly Spec[]): Spec[] => specs.flatMap((spec) => (spec.kind === "row" ? flat(spec.specs) : [spec]));
const specsOf = (sections: readonly Section[]): Spec[] => sections.flatMap((section) => flat(section.specs));
const nothing = () => undefined;
const drafts: Draft[] = [
  EMPTY_CARD,
  typed(fixedCard),
  typed(bandsCard),
  typed(ratioCard),
  typed({
    ...bandsCard,
    onBoard: { model: "linear", hours: 4 },
    regions: { breakfast: "belly", lunch: "belly", dinner: "thigh", snack: "arm" },
  }),
  ...EVERY_KIND.map(([, card]) => typed(card)),
  { ...typed(fixedCard), onBoard: "two compartments" },
  { ...typed(fixedCard), onBoard: "triangle" },
];
const all = [
  ...drafts.flatMap((draft) => specsOf(cardSections(draft, nothing))),
  ...specsOf([...HOUSEHOLD, ...KEEPER, ...personSections(true), ...penSections({}, false), ...penSections({}, true)]),
];

/** Twelve words, as everywhere; what a field is called or what was typed is not ours to shorten. */
const plain = (sentence: string) => {
  expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(12);
  expect(sentence).not.toMatch(/\b(please|sorry|oops|invalid|illegal|forbidden|just|simply|should|try|error|undefined|null|NaN)\b/i);
};
const sentences = (text: string) => text.split(/(?<=[.?!])\s+/);

describe("a form of the drawer", () => {
  it("has a name for every field, and no two fields of one form share it", () => {
    expect(all.length).toBeGreaterThan(300);
    for (const draft of drafts) {
      const names = specsOf(cardSections(draft, nothing)).map((spec) => fieldName(spec.field));
      expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    }
  });

  it("asks for every field that reading a card can miss", () => {
    for (const draft of drafts) {
      const asked = new Set(specsOf(cardSections(draft, nothing)).map((spec) => spec.field));
      const blank = Object.fromEntries(
        Object.entries(draft).filter(([field]) =>
          /kind$|^(onBoard|bedtime|high|regions)$|correction$|^background\\.0\\.insulin\\.name$/.test(field),
        ),
      );
      const read = readCard(blank, "odile");
      const wanted = read.ok ? [] : read.problems.map((problem) => problem.field);
      expect(wanted.length).toBeGreaterThan(8);
      expect(wanted.filter((field) => !asked.has(field))).toEqual([]);
    }
  });

  it("has words of its own for every answer that is not a unit or a number", () => {
    const bare = all.flatMap((spec) =>
      spec.kind === "choice" ? spec.options.filter((option) => optionName(spec.field, option) === option) : [],
    );
    expect(new Set(bare)).toEqual(new Set(["mg/dL", "mmol/L"]));
  });

  it("says a unit beside every number of insulin, glucose, carbohydrate or time", () => {
    const numbers = all.filter((spec) => spec.kind === "number" && unitWords(spec.field, "mg/dL") === "");
    expect(numbers).toEqual([]);
    const texts = all.filter((spec) => spec.kind === "text" && unitWords(spec.field, "mg/dL") !== "");
    expect(texts).toEqual([]);
  });

  it("keeps its hints short", () => {
    for (const spec of all) for (const sentence of sentences(fieldHint(spec.field) ?? "")) plain(sentence);
  });
});

describe("a problem", () => {
  const whys: ProblemWhy[] = [
    { why: "empty" },
    { why: "not chosen" },
    { why: "not a number" },
    { why: "too many decimals", most: 0 },
    { why: "too many decimals", most: 1 },
    { why: "too small", least: 1 },
    { why: "too large", most: 160 },
    { why: "not a date" },
    { why: "two dates" },
    { why: "date has passed" },
    { why: "date is to come" },
    { why: "not a time" },
    { why: "too long", most: 40 },
    { why: "taken", by: "Marta" },
    { why: "upside down" },
    { why: "open too long" },
    { why: "not a telephone number" },
    ...(["empty", "not digits", "too short", "too long", "easily guessed", "not the same"] as const).map((pin) => ({
      why: "pin" as const,
      pin,
    })),
  ];
  it("is said in three parts: what we got, what is wrong, what to do", () => {
    for (const why of whys) {
      const problem: Problem = { field: "largestDose", got: "1800", ...why };
      const parts = sentences(sayProblem(problem));
      expect(parts, sayProblem(problem)).toHaveLength(3);
      parts.forEach(plain);
    }
  });
  it("repeats what was typed, but never a PIN", () => {
    expect(sayProblem({ field: "largestDose", got: "1800", why: "too large", most: 160 })).toBe(
      "You typed 1800. Here numbers go up to 160. Look at the paper again.",
    );
    expect(sayProblem({ field: "keeper.pin", got: "1234", why: "pin", pin: "easily guessed" })).not.toContain("1234");
  });
});

describe("a refusal to sign", () => {
  const refusals: SignRefusal[] = [
    { refused: "no keeper" },
    { refused: "not a card", typing: "second" },
    { refused: "another person's card" },
    { refused: "typings differ", differences: [] },
    { refused: "another unit than the meter's", card: "mmol/L", meter: "mg/dL" },
    { refused: "dates in the wrong order", from: "2026-06-03", until: "2026-06-02" },
    { refused: "already over", until: "2026-06-02" },
    { refused: "overlaps", from: "2026-06-03", old: [fixedCard] },
    { refused: "overlaps", from: "2026-06-03", old: [{ ...fixedCard, validUntil: null }] },
    { refused: "alarms not confirmed", alarms: [] },
    { refused: "not read back" },
  ];
  it("has a heading and three different parts", () => {
    for (const refusal of refusals) {
      const { heading, got, wrong, todo } = saySignRefusal(refusal);
      expect(new Set([heading, got, wrong, todo]).size).toBe(4);
      for (const part of [heading, got, wrong, todo]) sentences(part).forEach(plain);
    }
  });
});

describe("what looks odd", () => {
  const alarms: Alarm[] = [
    { alarm: "row is upside down", meal: "lunch", from: 200, to: 150 },
    { alarm: "gap between rows", meal: "lunch", after: 150, before: 160 },
    { alarm: "rows overlap", meal: "lunch", from: null, to: 150 },
    { alarm: "dose falls as glucose rises", meal: "lunch", before: units(6), units: units(4) },
    { alarm: "large step", meal: "lunch", before: units(6), units: units(14) },
    { alarm: "tenfold step", meal: "lunch", before: units(6), units: units(60) },
    { alarm: "food-only above every row", meal: "lunch", units: units(9) },
    { alarm: "dose falls as glucose rises", meal: "lunch", column: 2, before: units(6), units: units(4) },
    { alarm: "food-only above every row", meal: "lunch", column: 2, units: units(9) },
    { alarm: "dose falls as the meal grows", meal: "lunch", before: units(6), units: units(4) },
    { alarm: "tenfold step between columns", meal: "lunch", before: units(6), units: units(60) },
    { alarm: "column is upside down", meal: "lunch", from: 60, to: 30 },
    { alarm: "gap between columns", meal: "lunch", after: 30, before: 40 },
    { alarm: "columns overlap", meal: "lunch", from: 30, to: 40 },
    { alarm: "grams per serving unusual", meal: "lunch", grams: 10 },
    { alarm: "this insulin is not for meals", kind: "long-acting" },
    { alarm: "this insulin does not correct", meal: "lunch", kind: "premixed" },
    { alarm: "eating late for this insulin", minutes: 40, usual: 20 },
    { alarm: "mealtime insulin by the clock", name: "insulin lispro", at: "21:30" },
    { alarm: "two background doses at one time", at: "21:30" },
    { alarm: "tenfold between meals", meal: "lunch", other: "dinner" },
    { alarm: "grams per unit unusual", meal: "lunch", gramsPerUnit: 100 },
    { alarm: "glucose per unit unusual", meal: "lunch", perUnit: 300 },
    { alarm: "grams per unit far from the rule of thumb", meal: "lunch", gramsPerUnit: 40, usual: 12.5 },
    { alarm: "glucose per unit far from the rule of thumb", meal: "lunch", perUnit: 10, usual: 45 },
    { alarm: "target is low", meal: "lunch", target: 60 },
    { alarm: "target is upside down", meal: "lunch", low: 120, high: 100 },
    { alarm: "looks like the other unit", where: "target", value: 5.5 },
    { alarm: "off the pen's step", meal: "lunch", units: units(6.5) },
    { alarm: "above the largest dose", meal: "lunch", units: units(30) },
    { alarm: "time unusual", of: "spacing", minutes: 18 },
    { alarm: "time unusual", of: "window", minutes: 18 },
    { alarm: "bell ends before it begins", earliest: 15, latest: 5 },
    { alarm: "dates in the wrong order", earlier: "2026-06-03", later: "2026-06-02" },
  ];
  it("is one short sentence or two", () => {
    for (const alarm of alarms) sentences(sayAlarm(alarm)).forEach(plain);
    expect(new Set(alarms.map(sayAlarm)).size).toBe(alarms.length);
  });
});

describe("the sheet that is read back", () => {
  it("says every number of a table with its unit", () => {
    const lines = cardSheet(bandsCard).flatMap((part) => part.lines.map((line) => `${line.label} | ${line.value}`));
    expect(lines).toContain("Breakfast, row 2 | 141 to 180 mg/dL: 6 units");
    expect(lines).toContain("Largest dose | 20 units");
    expect(lines).toContain("Time between corrections | 4 hours");
  });

  it("says every cell of a grid by itself, with its meal", () => {
    const lines = cardSheet(gridCard).flatMap((part) => part.lines.map((line) => `${line.label} | ${line.value}`));
    expect(lines).toContain("Breakfast, row 3 | 251 mg/dL or more, and call the clinic");
    expect(lines).toContain("Breakfast, row 3, column 2: units | 31 to 60 grams: 6 units");
    expect(lines).toContain("Breakfast, column 3: food only | 61 grams or more: 6 units");
  });

  it("says of a blank dosing field what follows from it, and of a default that it is one", () => {
    const lines = cardSheet({ ...bandsCard, largestDose: null, spacingMinutes: null, afterLow: null, bedtime: null }).flatMap(
      (part) => part.lines,
    );
    const of = (field: string) => lines.find((line) => line.label === fieldName(field))?.value;
    expect([of("largestDose"), of("spacingMinutes"), of("afterLow")]).toEqual(Array(3).fill("Blank. Stop and ask the clinic."));
    expect(of("bedtime")).toBe("Blank. No correction from 21:00 to 05:00.");
    expect(of("care.holdSeconds")).toBe("10 seconds (blank on the card: the usual)");
    expect(of("advice.ill")).toBe("Blank. Call the clinic.");
  });

  it("leaves out no field of the card", () => {
    const changed = (change: Partial<typeof fixedCard>) => JSON.stringify(cardSheet({ ...fixedCard, ...change }));
    const before = changed({});
    const changes: Partial<typeof fixedCard>[] = [
      { carbohydrate: "available" },
      { glucoseUnit: "mmol/L" },
      { rounding: { step: "2", direction: "nearest, half up" } },
      { rounding: { step: "1", direction: "down" } },
      { largestDose: units(19) },
      { spacingMinutes: 180 },
      { windowMinutes: 120 },
      { onBoard: { model: "linear", hours: 4 } },
      { bedtime: { from: "21:00", until: "05:00", correction: true } },
      { afterExercise: "ask" },
      { afterLow: "ask" },
      { low: { value: 71, counts: "at or below" } },
      { low: { value: 70, counts: "below" } },
      { high: null },
      { timing: { when: "before eating", earliestMinutes: 6, latestMinutes: 15 } },
      { timing: { when: "after eating", earliestMinutes: 5, latestMinutes: 15 } },
      { telephonedDose: "never" },
      { regions: { breakfast: "belly", lunch: "belly", dinner: "belly", snack: "belly" } },
      { care: { ...fixedCard.care, navelMm: 60 } },
      { advice: { ...fixedCard.advice, ill: "Call." } },
      { clinic: { name: "Harbour Clinic", phone: "555 0143" } },
      { insulin: { ...fixedCard.insulin, kind: "regular" } },
      { unitsADay: 40 },
      ...EVERY_KIND.map(([, { meals, background, insulin, ketones, care }]) => ({
        meals,
        insulin,
        care,
        ...(background ? { background } : {}),
        ...(ketones ? { ketones } : {}),
      })),
      { care: { ...fixedCard.care, watchMinutes: 45 } },
      { sickDay: { rules: ["Drink."], callWhen: null } },
      { sickDay: { rules: [], callWhen: "Call." } },
      { validFrom: "2026-01-02" },
      { reviewBy: null },
      { validUntil: null },
    ];
    for (const change of changes) expect(changed(change), JSON.stringify(change)).not.toBe(before);
  });
});

describe("a difference", () => {
  it("is said with its unit, and a blank as blank", () => {
    expect([
      sayLeaf("largestDose", 6),
      sayLeaf("spacingMinutes", 240),
      sayLeaf("validFrom", "2026-06-03"),
      sayLeaf("afterLow", null),
      sayLeaf("low.counts", "below"),
      sayLeaf("ketones.lines.1.from", 1.5),
      sayLeaf("ketones.lines.1.from", 3),
    ]).toEqual(["6 units", "4 hours", "3 June 2026", "blank", "Only below it", "1.5 mmol/L", "3 mmol/L, or on a strip: Moderate, 2 plus"]);
  });
  it("names the insulin once, not its inner name as well", () => {
    const both = [
      { field: "insulin.id", first: "lispro-100", second: "aspart-100" },
      { field: "insulin.name", first: "insulin lispro", second: "insulin aspart" },
    ];
    expect(shownDifferences(both).map((d) => d.field)).toEqual(["insulin.name"]);
    expect(shownDifferences(both.slice(0, 1))).toHaveLength(1);
  });
});

describe("the fixed words of drawer and first screens", () => {
  const strings = (value: unknown): string[] => {
    if (typeof value === "string") return [value];
    return typeof value === "object" && value !== null ? Object.values(value).flatMap(strings) : [];
  };
  it("are plain and short", () => {
    const found = [DRAWER, CARD, EAR, PHOTO, TRIAL, FIRST, INSECURE, INSECURE.lines("https://a.example"), SECOND_WINDOW, FAULT].flatMap(
      strings,
    );
    expect(found.length).toBeGreaterThan(120);
    for (const text of found) sentences(text).forEach(plain);
    for (const what of ["children", "pumps", "syringes"] as const) plain(notFor(what));
    expect([waitWords(1000), waitWords(29_001), waitWords(90_000), waitWords(3_600_000)]).toEqual([
      "1 second",
      "30 seconds",
      "2 minutes",
      "60 minutes",
    ]);
  });
});
