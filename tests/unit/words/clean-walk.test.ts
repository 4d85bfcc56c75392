import { describe, expect, it } from "vitest";
import { FAMILIAR_AFTER } from "#words/en/steps.ts";
import { HOUSEHOLDS, saidOnCleanWalk, secondsOnCleanWalk } from "../../kit/clean-walk.ts";

const kinds = Object.keys(HOUSEHOLDS) as (keyof typeof HOUSEHOLDS)[];

// The limits are our own promise: design of the meal walk, "Pace".
describe.each(kinds)("a clean walk with a card of %s", (kind) => {
  it("speaks at most 100 s in all", () => {
    expect(secondsOnCleanWalk(kind)).toBeLessThanOrEqual(100);
  });
  it("speaks at most 50 s at the familiar pace", () => {
    expect(secondsOnCleanWalk(kind, FAMILIAR_AFTER)).toBeLessThanOrEqual(50);
  });
  it("keeps every step at the familiar pace", () => {
    expect(saidOnCleanWalk(kind, FAMILIAR_AFTER).length).toBe(saidOnCleanWalk(kind).length);
  });
  it("says at most 12 words in a sentence", () => {
    const long = saidOnCleanWalk(kind)
      .flat()
      .flatMap((line) => line.split(/(?<=[.?!])\s+/))
      .filter((s) => s.split(/\s+/).length > 12);
    expect(long).toEqual([]);
  });
});
