import { describe, expect, it } from "vitest";
import type { Hearing } from "#speech/ear/answers.ts";
import { CLOSING_MS } from "#speech/ear/endpoint.ts";
import { closingAfter, FRACTION_GOES_ON_MS, NUMBER_GOES_ON_MS, usualClosing } from "#speech/ear/patience.ts";

const reading: Hearing = { offers: [{ id: "n", number: true }], range: { low: 1.1, high: 600, step: 1 } };
const millimoles: Hearing = { offers: [{ id: "n", number: true }], range: { low: 1.1, high: 600, step: 0.1 } };
const units: Hearing = { offers: [{ id: "n", number: true, unit: "units" }], range: { low: 0, high: 80, step: 0.5 } };
const yesNo: Hearing = { offers: [{ id: "yes", phrases: ["yes"] }, { id: "no", phrases: ["no"] }] }; // biome-ignore format: pairs

const heard = (text: string, hearing: Hearing) => closingAfter({ kind: "understood", text }, hearing);

describe("how long a silence lasts before an answer counts as all of it", () => {
  it.each([
    ["one hundred", reading, NUMBER_GOES_ON_MS],
    ["one", reading, NUMBER_GOES_ON_MS],
    ["one hundred twenty", reading, NUMBER_GOES_ON_MS],
    ["one eighty", reading, NUMBER_GOES_ON_MS],
    ["one eight", reading, NUMBER_GOES_ON_MS],
    ["one hundred twelve", reading, CLOSING_MS],
    ["one eighty four", reading, CLOSING_MS],
    ["one eight zero", reading, CLOSING_MS],
    ["two hundred", units, CLOSING_MS],
    ["fourteen", units, FRACTION_GOES_ON_MS],
    ["fourteen units", units, CLOSING_MS],
    ["fourteen and a half", units, CLOSING_MS],
    ["twenty", units, NUMBER_GOES_ON_MS],
    ["fourteen", millimoles, FRACTION_GOES_ON_MS],
    ["fourteen point two", millimoles, CLOSING_MS],
  ] as const)("%s", (text, hearing, ms) => {
    expect(heard(text, hearing)).toBe(ms);
  });

  it("is short after a word, at a question for a number too", () => {
    expect(heard("help", reading)).toBe(CLOSING_MS);
    expect(heard("yes", yesNo)).toBe(CLOSING_MS);
    expect(usualClosing(yesNo).ms).toBe(CLOSING_MS);
  });

  it("is long while nothing is known of a number, or what was heard of it is no answer yet", () => {
    expect(usualClosing(reading).ms).toBe(NUMBER_GOES_ON_MS);
    expect(closingAfter({ kind: "turned away", why: "other speech" }, reading)).toBe(NUMBER_GOES_ON_MS);
    expect(closingAfter({ kind: "turned away", why: "other speech" }, yesNo)).toBe(CLOSING_MS);
  });

  it("is as long as the longest guess needs, where the ear is in doubt", () => {
    expect(closingAfter({ kind: "ask again", texts: ["fifteen", "fifty"] }, reading)).toBe(NUMBER_GOES_ON_MS);
    expect(closingAfter({ kind: "ask again", texts: ["one hundred twelve", "two hundred twelve"] }, reading)).toBe(CLOSING_MS);
  });

  it("is used for looks that end before it does, so that nobody waits for the net as well", () => {
    for (const hearing of [reading, yesNo]) {
      const { ms, looks } = usualClosing(hearing);
      expect(looks.length).toBeGreaterThan(0);
      for (const look of looks) expect(look).toBeLessThan(ms);
    }
  });

  it("never keeps an answer waiting for most of a second", () => {
    expect(Math.max(NUMBER_GOES_ON_MS, FRACTION_GOES_ON_MS)).toBeLessThanOrEqual(750);
  });
});
