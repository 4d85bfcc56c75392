import { describe, expect, it } from "vitest";
import type { Household } from "#events/person.ts";
import { isHeard, isQuietHour } from "#rules/time/house-hours.ts";
import { minuteOf } from "#rules/time/local.ts";

const house = (more: Partial<Household> = {}): Household => ({ kind: "home", emergencyNumber: "911", country: "US", ...more });
const at = (time: string): number => minuteOf(time);

describe("the quiet hours", () => {
  it.each([
    ["21:59", false],
    ["22:00", true],
    ["00:00", true],
    ["05:59", true],
    ["06:00", false],
    ["12:00", false],
  ])("are ten at night to six in the morning where nobody typed any: %s", (time, quiet) => {
    expect(isQuietHour(house(), at(time))).toBe(quiet);
    expect(isQuietHour(null, at(time))).toBe(quiet);
  });

  it("are those that a keeper typed, in the daytime too", () => {
    const nap = house({ quietHours: { from: "13:00", until: "15:00" } });
    expect(["12:59", "13:00", "14:59", "15:00", "23:00"].map((time) => isQuietHour(nap, at(time)))).toEqual([
      false,
      true,
      true,
      false,
      false,
    ]);
  });
});

describe("who can hear the tablet", () => {
  it("is nobody where it is not known, and nobody where it is said so", () => {
    expect(isHeard(house(), at("12:00"))).toBe(false);
    expect(isHeard(null, at("12:00"))).toBe(false);
    expect(isHeard(house({ hearer: { who: "nobody" } }), at("12:00"))).toBe(false);
  });

  it("is somebody at any hour, with a clock in doubt too, where somebody is always there", () => {
    expect(isHeard(house({ hearer: { who: "always" } }), null)).toBe(true);
    expect(isHeard(house({ hearer: { who: "always" } }), at("03:00"))).toBe(true);
  });

  it("is somebody between the hours alone, and nobody while the clock is in doubt", () => {
    const evenings = house({ hearer: { who: "between", from: "17:30", until: "08:00" } });
    expect(["17:29", "17:30", "23:00", "07:59", "08:00"].map((time) => isHeard(evenings, at(time)))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    expect(isHeard(evenings, null)).toBe(false);
  });
});
