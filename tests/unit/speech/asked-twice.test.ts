import { describe, expect, it } from "vitest";
import { AskedTwice, mistakenFor } from "#speech/asked-twice.ts";

describe("an answer in doubt", () => {
  it("is the same only at the same question, with the same guess, within half a minute", () => {
    const doubts: [question: string, guess: string, at: number, same: boolean][] = [
      ["reading", "112", 0, false],
      ["dial", "112", 1000, false],
      ["reading", "112", 2000, false],
      ["reading", "212", 3000, false],
      ["reading", "112", 4000, false],
      ["reading", "112", 34_001, false],
      ["reading", "112", 64_001, true],
      // Both are used up: a third is a first.
      ["reading", "112", 64_002, false],
    ];
    const twice = new AskedTwice();
    expect(doubts.map(([question, guess, at]) => twice.same(question, guess, at))).toEqual(doubts.map(([, , , same]) => same));
  });

  it("is forgotten when something else happened", () => {
    const twice = new AskedTwice();
    twice.same("reading", "112", 0);
    twice.forget();
    expect(twice.same("reading", "112", 1)).toBe(false);
  });
});

describe("what a number is mistaken for", () => {
  it.each([
    ["thirteen", "13", { low: 0, high: 80, step: 0.5 }, "30"],
    ["one hundred fifty", "150", { low: 1.1, high: 600, step: 1 }, "115"],
    ["one five", "15", { low: 0, high: 80, step: 0.5 }, null],
    ["nineteen", "19", { low: 0, high: 80, step: 0.5 }, null],
    ["one hundred twelve", "112", { low: 1.1, high: 600, step: 1 }, null],
    ["thirteen", "13", undefined, null],
    ["one three point six", "13.6", { low: 1.1, high: 600, step: 0.1, fractionsTo: 33.3 }, null],
    ["thirteen point six", "13.6", { low: 1.1, high: 600, step: 0.1, fractionsTo: 33.3 }, "30.6"],
    // No meter shows forty point two in either unit.
    ["fourteen point two", "14.2", { low: 1.1, high: 600, step: 0.1, fractionsTo: 33.3 }, null],
  ] as const)("%s", (said, value, range, partner) => {
    expect(mistakenFor(said, value, range)).toBe(partner);
  });
});
