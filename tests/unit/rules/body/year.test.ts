// A simulated year: 3 injections a day, marks that turn up, places turned down. The rules are checked here by their own arithmetic, not by limits.ts.
import { describe, expect, it } from "vitest";
import type { NoGo, Region, Spot } from "#events/spot.ts";
import { whyNot } from "#rules/body/limits.ts";
import { nextSpot } from "#rules/body/planner.ts";
import { siteRules } from "#rules/body/site-rules.ts";
import { BLANK_CARE, BODIES, chance, gap, randomMark } from "./bodies.ts";

const DAYS = 365;
const ANY: readonly (Region | null)[] = [null, null, null];
const KEPT: readonly (Region | null)[] = ["belly", "belly", "thigh"];
const ARMS: readonly (Region | null)[] = ["arm", "arm", "arm"];

type Given = { spot: Spot; day: number };
type Year = { given: number; fullRest: number; leastRest: number; none: number; broken: string[] };

const live = (body: (typeof BODIES)[keyof typeof BODIES], meals: readonly (Region | null)[], seed: number): Year => {
  const next = chance(seed);
  const noGo: NoGo[] = Array.from({ length: 8 }, (_, id) => randomMark(next, id));
  const given: Given[] = [];
  const rules = siteRules(BLANK_CARE, body);
  const broken: string[] = [];
  const year: Year = { given: 0, fullRest: 0, leastRest: 28, none: 0, broken };
  for (let day = 0; day < DAYS; day += 1) {
    if (next() < 0.01) noGo.push(randomMark(next, noGo.length));
    for (const region of meals) {
      const uses = given.map(({ spot, day: then }) => ({ spot, daysAgo: day - then }));
      const declined: Spot[] = [];
      const ask = () => nextSpot({ body, noGo, uses, rules, region, declined, leftOutRegions: [] });
      let plan = ask();
      while (!plan.none && next() < 0.15 && declined.length < 3) {
        declined.push(plan.spot);
        plan = ask();
      }
      if (plan.none) {
        year.none += 1;
        continue;
      }
      const { spot, restDays, fullRest } = plan;
      const say = (rule: string, holds: boolean) => holds || broken.push(`day ${day}: ${rule} ${JSON.stringify(spot)}`);
      const far = (other: Spot, mm: number) => gap(other, spot) >= mm - 1e-6;
      say("region", region === null || spot.region === region);
      say(
        "declined",
        declined.every((no) => far(no, body.fingerMm)),
      );
      say(
        "mark",
        noGo.every((mark) => far(mark.spot, mark.radiusMm + 10)),
      );
      say("navel", spot.region !== "belly" || Math.sqrt(spot.outMm ** 2 + spot.downMm ** 2) >= 51 - 1e-6);
      say(
        "last",
        given.slice(0, 1).every((use) => far(use.spot, 51)),
      );
      const rest = Math.min(28, ...given.filter((use) => !far(use.spot, body.fingerMm)).map((use) => day - use.day));
      say("rest told", restDays === rest && fullRest === rest >= 28);
      say("check", whyNot(spot, { body, noGo, uses, region, rules: { ...rules, acceptedRestDays: fullRest ? null : restDays } }) === null);
      given.unshift({ spot, day });
      year.given += 1;
      year.fullRest += Number(fullRest);
      year.leastRest = Math.min(year.leastRest, rest);
    }
  }
  return year;
};

describe("a year of three injections a day", () => {
  it.each(Object.entries(BODIES))(
    "breaks no rule on a %s body and rests every spot 28 days",
    (_, body) => {
      expect(live(body, ANY, 7)).toEqual({ given: 3 * DAYS, fullRest: 3 * DAYS, leastRest: 28, none: 0, broken: [] });
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
      expect([year.given, year.broken]).toEqual([3 * DAYS, []]);
      expect(year.fullRest).toBeLessThan(year.given);
      expect(year.leastRest).toBeLessThan(28);
    },
    60_000,
  );
});
