// Bodies, marks and chance for the tests of the body rules. Chance is seeded: a failure comes back the same.
import fc from "fast-check";
import type { BodyMeasures, NoGo, Region, Side, Spot } from "#events/spot.ts";
import { DEFAULT_BODY } from "#rules/body/area.ts";
import type { SiteUse, SpotQuestion } from "#rules/body/limits.ts";
import type { PlanQuestion } from "#rules/body/planner.ts";
import { type SiteRules, siteRules } from "#rules/body/site-rules.ts";

export const BLANK_CARE = { restDays: null, lastSpotMm: null, navelMm: null };

export const SMALL: BodyMeasures = {
  bellyWidthMm: 330,
  bellyHeightMm: 170,
  thighLengthMm: 300,
  armLengthMm: 260,
  fingerMm: 15,
  handMm: 72,
};
const LARGE: BodyMeasures = {
  bellyWidthMm: 700,
  bellyHeightMm: 340,
  thighLengthMm: 440,
  armLengthMm: 400,
  fingerMm: 20,
  handMm: 90,
};
export const BODIES = { small: SMALL, middle: DEFAULT_BODY, large: LARGE };

export const at = (region: Region, side: Side, outMm: number, downMm: number): Spot => ({ region, side, outMm, downMm });
export const used = (spot: Spot, daysAgo: number): SiteUse => ({ spot, daysAgo });

export const rules = (own: Partial<SiteRules> = {}, body: BodyMeasures = DEFAULT_BODY): SiteRules => ({
  ...siteRules(BLANK_CARE, body),
  ...own,
});

export const question = (own: Partial<SpotQuestion> = {}): SpotQuestion => ({
  body: DEFAULT_BODY,
  noGo: [],
  uses: [],
  rules: rules(),
  region: null,
  ...own,
});

export const plan = (own: Partial<PlanQuestion> = {}): PlanQuestion => ({ ...question(own), declined: [], leftOutRegions: [], ...own });

/** mulberry32: a small public-domain generator of numbers from 0 to 1. */
export const chance = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

const KINDS = ["scar", "mole", "lump", "sore", "other"] as const;

/** A mark somewhere on the body, 2 to 15 mm in radius. */
export const randomMark = (next: () => number, id: number): NoGo => {
  const region = (["belly", "belly", "thigh", "arm", "buttock"] as const)[Math.floor(next() * 5)] ?? "belly";
  const side = next() < 0.5 ? "left" : "right";
  const spot = at(region, side, next() * 130, region === "belly" ? next() * 200 - 100 : 40 + next() * 220);
  return { id: String(id), spot, radiusMm: 2 + next() * 13, kind: KINDS[Math.floor(next() * KINDS.length)] ?? "other" };
};

/** Everything that events/spot.ts allows. */
export const anyBody: fc.Arbitrary<BodyMeasures> = fc.record({
  bellyWidthMm: fc.integer({ min: 150, max: 900 }),
  bellyHeightMm: fc.integer({ min: 80, max: 500 }),
  thighLengthMm: fc.integer({ min: 200, max: 700 }),
  armLengthMm: fc.integer({ min: 150, max: 600 }),
  fingerMm: fc.integer({ min: 10, max: 30 }),
  handMm: fc.integer({ min: 50, max: 130 }),
});

/** The same lengths worked out anew from events/spot.ts: the belly's two sides lie on one plane, others are apart. */
export const gap = (a: Spot, b: Spot): number => {
  const plane = (s: Spot) => (s.region === "belly" ? "belly" : `${s.side} ${s.region}`);
  if (plane(a) !== plane(b)) return Number.POSITIVE_INFINITY;
  const x = (s: Spot) => s.outMm * (s.region === "belly" && s.side === "left" ? -1 : 1);
  return Math.sqrt((x(a) - x(b)) ** 2 + (a.downMm - b.downMm) ** 2);
};
