// The next spot: sides take turns, the longest rested skin first, and an honest word about the rest where four weeks do not fit.
import type { Region, Spot } from "#events/spot.ts";
import { nearerThan, REGIONS, SIDES } from "./area.ts";
import { denseSpots } from "./dense.ts";
import { type Candidate, lattice } from "./lattice.ts";
import { type SiteUse, type SpotQuestion, spacingOf, whyNever } from "./limits.ts";
import { type UsesOnSkin, usesOnSkin } from "./uses.ts";

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

type Found = {
  readonly none?: never;
  readonly spot: Spot;
  /** The rest this skin had, in days: say it, and hand it to whyNot as acceptedRestDays when fullRest is false. */
  readonly restDays: number;
  readonly fullRest: boolean;
};

export type Plan = Found | { readonly none: true; readonly why: NoSpotWhy };

/** Skin that rested four times the rule is as good as new: older uses are not looked at, so years of history cost nothing. */
const LONG_RESTED = 4;

type Ranked = Candidate & {
  readonly rested: number;
  readonly fullRest: boolean;
  readonly order: number;
};

const horizonOf = ({ rules }: PlanQuestion): number => rules.restDays * LONG_RESTED;

const rank = (candidates: readonly Candidate[], q: PlanQuestion, onSkin: UsesOnSkin): Ranked[] => {
  const horizon = horizonOf(q);
  const spacingMm = spacingOf(q.rules);
  return candidates.map(({ spot, effort }, order) => {
    const rested = Math.max(0, onSkin.daysSince(spot, spacingMm) ?? horizon);
    return { spot, effort, order, rested, fullRest: rested >= q.rules.restDays };
  });
};

type LastSide = (region: Region) => Spot["side"] | null;

/** Negative: a is the better spot. Each line decides only where the lines above leave a tie. */
const compare = (a: Ranked, b: Ranked, lastSide: LastSide): number => {
  const sameSide = (r: Ranked): number => Number(r.spot.side === lastSide(r.spot.region));
  const easier = a.effort - b.effort || a.order - b.order;
  if (a.fullRest !== b.fullRest) return a.fullRest ? -1 : 1;
  if (a.fullRest) {
    // Fully rested skin: the same region as long as it lasts, the sides in turn, then the longest rest.
    const region = REGIONS.indexOf(a.spot.region) - REGIONS.indexOf(b.spot.region);
    return region || sameSide(a) - sameSide(b) || b.rested - a.rested || easier;
  }
  return b.rested - a.rested || sameSide(a) - sameSide(b) || easier;
};

const newestSide = (region: Region, uses: readonly SiteUse[]): Spot["side"] | null =>
  uses.find((use) => use.spot.region === region)?.spot.side ?? null;

const best = (ranked: readonly Ranked[], q: PlanQuestion): Found | null => {
  const [first, ...others] = ranked;
  if (first === undefined) return null;
  const sides = new Map(REGIONS.map((region) => [region, newestSide(region, q.uses)]));
  const { spot, rested, fullRest } = others.reduce((a, b) => (compare(a, b, (region) => sides.get(region) ?? null) <= 0 ? a : b), first);
  return { spot, restDays: fullRest ? q.rules.restDays : rested, fullRest };
};

/** The dense pattern's spots are told in halves and long counts: all of them are as hard to find as the hardest easy one. */
const DENSE_EFFORT = 12;

const denseOf = (region: Region, q: PlanQuestion): Candidate[] =>
  SIDES.flatMap((side) => denseSpots(region, side, q.body, spacingOf(q.rules))).map((spot) => ({
    spot,
    effort: DENSE_EFFORT,
  }));

/** Days that show how often somebody injects: early enough that few easy spots lie in the dense pattern's way. */
const PACE_DAYS = 3;

/** At this pace the easy spots come up again before they are rested: only the dense pattern may hold them all. */
const crowded = (easy: readonly Candidate[], regions: readonly Region[], q: PlanQuestion): boolean => {
  const { restDays } = q.rules;
  const within = (days: number) => q.uses.filter((use) => use.daysAgo < days && regions.includes(use.spot.region)).length;
  return Math.max(within(restDays), (within(PACE_DAYS) * restDays) / PACE_DAYS) >= easy.length;
};

const longerRested = (first: Found | null, second: Found | null): Found | null =>
  first === null || (second !== null && second.restDays > first.restDays) ? second : first;

/** Deterministic: the same question has the same answer. */
export const nextSpot = (q: PlanQuestion): Plan => {
  const regions = REGIONS.filter((region) => !q.leftOutRegions.includes(region) && (q.region === null || q.region === region));
  if (regions.length === 0) return { none: true, why: "no region may be used" };
  const spotsOf = (region: Region) => SIDES.flatMap((side) => lattice(region, side, q.body, spacingOf(q.rules)));
  const notDeclined = ({ spot }: Candidate) => !q.declined.some((declined) => nearerThan(declined, spot, spacingOf(q.rules)));
  const onSkin = usesOnSkin(q.uses, horizonOf(q));
  const allowed = ({ spot }: Candidate) => whyNever(spot, q) === null;
  const ever = { ...q, uses: [] };
  const easy = regions.flatMap(spotsOf).filter((c) => whyNever(c.spot, ever) === null);
  const full = crowded(easy, regions, q);
  const dense = regions.flatMap((region) => denseOf(region, q));

  // Nearly always the first region has rested skin on its easy spots, and the rest need not be looked at.
  for (const region of regions) {
    const inRegion = (full ? dense : easy).filter((c) => c.spot.region === region && allowed(c) && notDeclined(c));
    const rested = best(
      rank(inRegion, q, onSkin).filter(({ fullRest }) => fullRest),
      q,
    );
    if (rested !== null) return rested;
  }
  const restedMost = (candidates: readonly Candidate[]) => best(rank(candidates.filter(allowed).filter(notDeclined), q, onSkin), q);
  // The pattern in use is not left for skin that rested no longer.
  const [inUse, other] = full ? [dense, easy] : [easy, dense];
  const next = longerRested(restedMost(inUse), restedMost(other));
  if (next !== null) return next;
  const all = [...easy, ...dense];
  if (all.some(allowed)) return { none: true, why: "every place was declined" };
  const butForTheLast = all.some(({ spot }) => whyNever(spot, q)?.why === "too near the last one");
  return { none: true, why: butForTheLast ? "every place is too near the last one" : "every place is ruled out" };
};
