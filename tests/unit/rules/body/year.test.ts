// A simulated year: 3 injections a day. What a year is and how its rules are checked: tests/kit/body-year.ts.
import { describe, expect, it } from "vitest";
import type { Region } from "#events/spot.ts";
import { BODIES } from "../../../kit/bodies.ts";
import { DAYS, live } from "../../../kit/body-year.ts";

const ANY: readonly (Region | null)[] = [null, null, null];
const KEPT: readonly (Region | null)[] = ["belly", "belly", "thigh"];
const ARMS: readonly (Region | null)[] = Array.from({ length: 6 }, () => "arm");

describe("a year of three injections a day", () => {
  it.each(Object.entries(BODIES))(
    "breaks no rule on a %s body and rests every spot 28 days",
    (_, body) => {
      expect(live(body, ANY, 7)).toMatchObject({ given: 3 * DAYS, fullRest: 3 * DAYS, leastRest: 28, none: 0, broken: [] });
    },
    60_000,
  );

  it.each(Object.entries(BODIES))(
    "keeps the regions of the meals on a %s body",
    (_, body) => {
      const year = live(body, KEPT, 11);
      expect([year.given, year.none, year.broken]).toEqual([3 * DAYS, 0, []]);
    },
    60_000,
  );

  it.each(Object.entries(BODIES))(
    "tells the true rest on the arms alone of a %s body, where 28 days do not fit",
    (_, body) => {
      const year = live(body, ARMS, 13);
      expect([year.given, year.broken]).toEqual([ARMS.length * DAYS, []]);
      expect(year.fullRest).toBeLessThan(year.given);
      expect(year.leastRest).toBeLessThan(28);
    },
    60_000,
  );
});
