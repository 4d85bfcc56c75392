import { describe, expect, it } from "vitest";
import { sayNext, soFar, whichOf } from "#words/en/asking.ts";

describe("a number that was not heard well, in words", () => {
  it.each([
    ["15", "50", "One five, or five zero?"],
    ["13.5", "30.5", "One three point five, or three zero point five?"],
    ["112", "212", "One one two, or two one two?"],
  ])("%s or %s", (one, two, words) => {
    expect(whichOf(one, two)).toBe(words);
    expect(words.split(" ").length).toBeLessThanOrEqual(12);
  });

  it("tells the digits so far, the point too", () => {
    expect([soFar("1"), soFar("17"), soFar("5."), soFar("5.5")]).toEqual(["One.", "One, seven.", "Five, point.", "Five, point, five."]);
  });

  it("asks for what may follow", () => {
    const digits = ["1"];
    expect(sayNext({ digits, point: true, done: true })).toBe("Next digit, point, or done?");
    expect(sayNext({ digits, point: false, done: true })).toBe("Next digit, or done?");
    expect(sayNext({ digits, point: false, done: false })).toBe("Next digit?");
    expect(sayNext({ digits: [], point: true, done: true })).toBe("Point, or done?");
  });
});
