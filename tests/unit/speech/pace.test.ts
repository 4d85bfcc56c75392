import { describe, expect, it } from "vitest";
import { pauseBetween, spokenSeconds } from "#speech/pace.ts";

describe("how long speech takes", () => {
  it("is five seconds for twelve words at 145 words a minute", () => {
    expect(spokenSeconds(["Put the pen down on the table and wash your hands with soap."])).toBeCloseTo((13 / 145) * 60, 5);
    expect(spokenSeconds(["one two three four five six seven eight nine ten eleven twelve"])).toBeCloseTo(4.97, 2);
  });

  it("grows with every pause: 0.7 s between sentences, 1 s before a question, 0.25 s between digits", () => {
    expect(spokenSeconds(["Wash.", "Dry."], 60)).toBeCloseTo(2 + 0.7, 5);
    expect(spokenSeconds(["Wash. Dry."], 60)).toBeCloseTo(2 + 0.7, 5);
    expect(spokenSeconds(["Wash.", "Ready?"], 60)).toBeCloseTo(2 + 1, 5);
    expect(spokenSeconds(["One.", "Eight.", "Zero."], 60)).toBeCloseTo(3 + 0.5, 5);
    expect(spokenSeconds(["Wash, then dry."], 60)).toBeCloseTo(3 + 0.3, 5);
    expect(pauseBetween("One.", "Is that right?")).toBe(1000);
  });

  it("counts a figure as the words it is said in", () => {
    expect(spokenSeconds(["Dial 180 units."], 60)).toBeCloseTo(5, 5);
    expect(spokenSeconds(["Dial 5.5 units."], 60)).toBeCloseTo(5, 5);
    expect(spokenSeconds(["Call 0555 now."], 60)).toBeCloseTo(6, 5);
  });

  it("is nothing for nothing", () => {
    expect(spokenSeconds([])).toBe(0);
    expect(spokenSeconds(["", "..."])).toBe(0);
  });
});
