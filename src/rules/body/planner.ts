// The next spot: sides take turns, the longest rested skin first, and an honest word about the rest where four weeks do not fit.
import type { Region, Spot } from "#events/spot.ts";
import { nearerThan, REGIONS, SIDES } from "./area.ts";
import { type Candidate, lattice } from "./lattice.ts";
import { daysSinceUse, type SiteUse, type SpotQuestion, spacingOf, whyNever } from "./limits.ts";
import { HARD_SPACING_MM } from "./site-rules.ts";

export type PlanQuestion = SpotQuestion & {
  /** Places the person said no to in this walk: neither they nor their neighbours come back. */
  readonly declined: readonly Spot[];
  readonly leftOutRegions: readonly Region[];
};

export type NoSpotWhy =
  | "no region may be used"
  | "every place is ruled out"
  | "every place is too near the last one"
  | "every place was declined";

export type Plan =
  | {
      readonly none?: never;
      readonly spot: Spot;
      /** The rest this skin had, in days: say it, and hand it to whyNot as acceptedRestDays when fullRest is false. */
      readonly restDays: number;
      readonly fullRest: boolean;
    }
  | { readonly none: true; readonly why: NoSpotWhy };

/** Skin that rested four times the rule is as good as new: older uses are not looked at, so years of history cost nothing. */
const LONG_RESTED = 4;

type Ranked = Candidate & {
  readonly rested: number;
  readonly fullRest: boolean;
  /** No use within 1 cm during the rest, though there is one within a finger. */
  readonly hardRest: boolean;
  readonly order: number;
};

const rank = (candidates: readonly Candidate[], q: PlanQuestion): Ranked[] => {
  const horizon = q.rules.restDays * LONG_RESTED;
  const recent = q.uses.filter((use) => !(use.daysAgo > horizon));
  return candidates.map((candidate, order) => {
    const near = recent.filter((use) => nearerThan(use.spot, candidate.spot, spacingOf(q.rules)));
    const rested = daysSinceUse(candidate.spot, near, spacingOf(q.rules)) ?? horizon;
    const hard = daysSinceUse(candidate.spot, near, HARD_SPACING_MM) ?? horizon;
    return { ...candidate, order, rested, fullRest: rested >= q.rules.restDays, hardRest: hard >= q.rules.restDays };
  });
};

/** Negative: a is the better spot. Each line decides only where the lines above leave a tie. */
const compare = (a: Ranked, b: Ranked, lastSide: (region: Region) => Spot["side"] | null): number => {
  if (a.fullRest !== b.fullRest) return a.fullRest ? -1 : 1;
  if (a.between !== b.between && a.fullRest) return a.between ? 1 : -1;
  const region = REGIONS.indexOf(a.spot.region) - REGIONS.indexOf(b.spot.region);
  // The same region for the same meal, while its skin is rested.
  if (a.fullRest && region !== 0) return region;
  if (a.hardRest !== b.hardRest) return a.hardRest ? -1 : 1;
  const otherSide = Number(a.spot.side === lastSide(a.spot.region)) - Number(b.spot.side === lastSide(b.spot.region));
  if (a.fullRest && otherSide !== 0) return otherSide;
  return b.rested - a.rested || otherSide || a.effort - b.effort || a.order - b.order;
};

const newestIn = (region: Region, uses: readonly SiteUse[]): Spot["side"] | null => uses.find((use) => use.spot.region === region)?.spot.side ?? null;

/** Deterministic: the same question has the same answer. */
export const nextSpot = (q: PlanQuestion): Plan => {
  const regions = REGIONS.filter((region) => !q.leftOutRegions.includes(region) && (q.region === null || q.region === region));
  if (regions.length === 0) return { none: true, why: "no region may be used" };
  const all = regions.flatMap((region) => SIDES.flatMap((side) => lattice(region, side, q.body, spacingOf(q.rules))));
  const allowed = all.filter(({ spot }) => whyNever(spot, q) === null);
  if (allowed.length === 0) {
    const butForTheLast = all.some(({ spot }) => whyNever(spot, q)?.why === "too near the last one");
    return { none: true, why: butForTheLast ? "every place is too near the last one" : "every place is ruled out" };
  }
  const open = allowed.filter(({ spot }) => !q.declined.some((declined) => nearerThan(declined, spot, spacingOf(q.rules))));
  const lastSides = new Map(regions.map((region) => [region, newestIn(region, q.uses)]));
  const [first, ...others] = rank(open, q);
  if (first === undefined) return { none: true, why: "every place was declined" };
  const best = others.reduce((a, b) => (compare(a, b, (region) => lastSides.get(region) ?? null) <= 0 ? a : b), first);
  return { spot: best.spot, restDays: best.fullRest ? q.rules.restDays : best.rested, fullRest: best.fullRest };
};
