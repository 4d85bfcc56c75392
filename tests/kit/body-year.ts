// A simulated year of injections, marks that turn up, places turned down. The rules are checked here by their own arithmetic, not by limits.ts.
import type { BodyMeasures, NoGo, Region, Spot } from "#events/spot.ts";
import { whyNot } from "#rules/body/limits.ts";
import { nextSpot } from "#rules/body/planner.ts";
import { siteRules } from "#rules/body/site-rules.ts";
import { BLANK_CARE, chance, gap, randomMark } from "./bodies.ts";

export const DAYS = 365;

type Given = { spot: Spot; day: number };
/** Eight marks somewhere on the body. */
export const marksOf = (next: () => number): NoGo[] => Array.from({ length: 8 }, (_, id) => randomMark(next, id));

export type Year = { given: number; fullRest: number; leastRest: number; shortestRest: number; none: number; broken: string[] };

/** `meals`: the region kept for each injection of a day, null = any. A calm year: no mark turns up later and no place is turned down. */
export const live = (body: BodyMeasures, meals: readonly (Region | null)[], seed: number, calm = false): Year => {
  const next = chance(seed);
  const noGo: NoGo[] = marksOf(next);
  const given: Given[] = [];
  const rules = siteRules(BLANK_CARE, body);
  const broken: string[] = [];
  const year: Year = { given: 0, fullRest: 0, leastRest: 28, shortestRest: DAYS, none: 0, broken };
  for (let day = 0; day < DAYS; day += 1) {
    if (!calm && next() < 0.01) noGo.push(randomMark(next, noGo.length));
    for (const region of meals) {
      const uses = given.map(({ spot, day: then }) => ({ spot, daysAgo: day - then }));
      const declined: Spot[] = [];
      const ask = () => nextSpot({ body, noGo, uses, rules, region, declined, leftOutRegions: [] });
      let plan = ask();
      while (!calm && !plan.none && next() < 0.15 && declined.length < 3) {
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
      const sinceUsed = Math.min(DAYS, ...given.filter((use) => !far(use.spot, body.fingerMm)).map((use) => day - use.day));
      const rest = Math.min(28, sinceUsed);
      say("rest told", restDays === rest && fullRest === rest >= 28);
      say("check", whyNot(spot, { body, noGo, uses, region, rules: { ...rules, acceptedRestDays: fullRest ? null : restDays } }) === null);
      given.unshift({ spot, day });
      year.given += 1;
      year.fullRest += Number(fullRest);
      year.leastRest = Math.min(year.leastRest, rest);
      year.shortestRest = Math.min(year.shortestRest, sinceUsed);
    }
  }
  return year;
};
