// Plain language, checked on every sentence the tool can say from its tables. Limits: access facts named in DEVELOPERS.md (one action, 12 words);
// banned words after public style guides on error messages; units never shortened (ISMP list of error-prone abbreviations).
import { describe, expect, it } from "vitest";
import { units } from "#events/quantity.ts";
import type { Refusal } from "#walk/refusal.ts";
import { ASKING } from "#words/en/asking.ts";
import { whySilent, whyTold } from "#words/en/card.ts";
import { TODAY } from "#words/en/due.ts";
import { CAUTIONS, FIXED, HELP, IN_THE_WAY, NOT_FOR, PAD_TITLE } from "#words/en/fixed.ts";
import { HELPER } from "#words/en/helper.ts";
import { sayRefusal } from "#words/en/refusals.ts";

const readings = [
  "empty",
  "not a number",
  "too many decimals",
  "zero",
  "too high",
  "too low",
  "fits only the other unit",
  "word HI",
  "word LO",
];
const refusals: Refusal[] = [
  ...readings.flatMap((why): Refusal[] =>
    ["mg/dL", "mmol/L"].map((unit) => ({ no: "reading", why, text: why === "empty" ? "" : "1800", unit })),
  ),
  ...["empty", "not a number", "zero", "too many", "too many decimals"].map((why): Refusal => ({ no: "grams", why, text: "4000" })),
  ...["empty", "not a number", "off the pen's step", "too many"].map((why): Refusal => ({ no: "units", why, text: "6.3" })),
  { no: "not offered here" },
  { no: "wrong unit", unit: "mg/dL" },
  { no: "two numbers differ", first: "15", second: "50" },
  { no: "pen", name: "Henk", reason: { why: "another person's pen", person: "henk" } },
  { no: "pen", name: null, reason: { why: "not mealtime insulin", name: "insulin glargine" } },
  { no: "pen", name: null, reason: { why: "another insulin than the card's", name: "insulin aspart" } },
  { no: "pen", name: null, reason: { why: "not background insulin", name: "insulin aspart" } },
  { no: "pen", name: null, reason: { why: "does not stop at the dose", units: 13 } },
  { no: "pen name", name: "insulin glargine" },
  { no: "pen", name: null, reason: { why: "expired", on: "2026-03-01" } },
  { no: "pen", name: null, reason: { why: "open too long", days: 28, lastDay: "2026-03-01" } },
  { no: "pen", name: null, reason: { why: "put aside" } },
  { no: "pen", name: null, reason: { why: "too little left", left: 3 } },
  { no: "insulin look", look: "clumped" },
  { no: "no stream" },
  { no: "dial is not the card", dialled: 16, told: 6 },
  { no: "window shows more than was dialled", left: 9, dialled: 6 },
  { no: "telephoned number", why: "above the largest dose", units: 40 },
  { no: "telephoned number", why: "not allowed", units: 4 },
  { no: "not ready to inject", why: "dial" },
  { no: "wait is not over" },
  { no: "food", why: "not in the table", food: "x" },
  { no: "food", why: "treats a low", food: "glucose-gel" },
];

const silences = [
  "no card",
  "hole between bands",
  "reading is low",
  "no longer valid",
  "above the largest dose",
  "no food-only row",
  "no dose at this hour",
].map((why) => whySilent({ why, detail: null }));
const blanks = ["largestDose", "spacingMinutes", "windowMinutes", "onBoard", "afterExercise", "afterLow", "background.windowMinutes"].map(
  (field) => whySilent({ why: "blank field", detail: JSON.stringify({ field }) }),
);
const told = whyTold({
  units: units(8),
  food: 6,
  correction: 2,
  cardHash: "h",
  rows: [],
  timing: "before eating",
  by: "card",
  why: [
    { reason: "food", units: 6, grams: 60 },
    { reason: "reading is high", units: 2 },
  ],
  cautions: [{ caution: "review date has passed", reviewBy: "2026-03-01" }],
});

const fixed = Object.values(FIXED).filter((v): v is Exclude<typeof v, (...args: never[]) => string> => typeof v === "string");
const sentences = [
  ...refusals.flatMap((r) => Object.values(sayRefusal(r)) as string[]),
  ...silences,
  ...blanks,
  ...told,
  ...CAUTIONS,
  ...NOT_FOR,
  ...fixed,
  ...Object.values(IN_THE_WAY).flat(),
  ...Object.values(ASKING),
  ...Object.values(HELP).flat(),
  ...Object.values(PAD_TITLE),
  ...Object.values(TODAY),
  ...Object.values(HELPER),
].flatMap((line) => line.split(/(?<=[.?!])\s+/));

const BANNED = /\b(please|sorry|oops|invalid|valid|illegal|forbidden|just|simply|should|try|IU|U|error)\b/;

describe("every sentence of the tables", () => {
  it("there are many of them", () => expect(sentences.length).toBeGreaterThan(150));
  it.each([...new Set(sentences)])("is plain: %s", (sentence) => {
    expect(sentence.split(/\s+/).length).toBeLessThanOrEqual(12);
    // "not valid yet" is the card's own term.
    if (!sentence.startsWith("The card is")) expect(sentence).not.toMatch(BANNED);
    expect(sentence).not.toMatch(/\d\.0\b|(^|\s)\.\d/);
    expect(sentence).not.toMatch(/\b(green|red|blue|left|right|round) (button|key|one)\b/i);
  });
});

describe("a refusal", () => {
  it.each(refusals.map((r) => [JSON.stringify(r), r] as const))("has what we got, what is wrong, and what to do: %s", (_name, r) => {
    const said = sayRefusal(r);
    for (const part of [said.heading, said.got, said.wrong, said.todo]) expect(part.trim()).not.toBe("");
    expect(new Set([said.got, said.wrong, said.todo]).size).toBe(3);
  });
});
