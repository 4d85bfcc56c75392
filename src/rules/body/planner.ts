// The next spot: sides take turns, the longest rested skin first, and an honest word about the rest where four weeks do not fit.
import type { Region, Spot } from "#events/spot.ts";
import { nearerThan, REGIONS, SIDES } from "./area.ts";
import { type Candidate, lattice } from "./lattice.ts";
import { type SiteUse, type SpotQuestion, spacingOf, whyNever } from "./limits.ts";
import { HARD_SPACING_MM } from "./site-rules.ts";
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
/**
 * Where the full rest does not fit, skin 1 cm from any use of the last four weeks (2016 recommendations) comes before longer rested skin that was hit
 * itself, but only if the finger's width around it had a quarter of the rest, a week. Own choice, seen in simulated years: without it the narrowest arm
 * is sent beside this morning's spot, with more than a week the 1 cm rule is kept far less often.
 */
const NEIGHBOURS_REST = 1 / 4;

type Ranked = Candidate & {
  readonly rested: number;
  readonly fullRest: boolean;
  /** No use within 1 cm during the rest, though there is one within a finger. */
  readonly hardRest: boolean;
  readonly order: number;
};

const horizonOf = ({ rules }: PlanQuestion): number => rules.restDays * LONG_RESTED;

const rank = (candidates: readonly Candidate[], q: PlanQuestion, onSkin: UsesOnSkin): Ranked[] => {
  const { restDays } = q.rules;
  const horizon = horizonOf(q);
  const spacingMm = spacingOf(q.rules);
  return candidates.map(({ spot, between, effort }, order) => {
    const rested = Math.max(0, onSkin.daysSince(spot, spacingMm) ?? horizon);
    const fullRest = rested >= restDays;
    const hardRest = fullRest || (rested >= restDays * NEIGHBOURS_REST && (onSkin.daysSince(spot, HARD_SPACING_MM) ?? horizon) >= restDays);
    return { spot, between, effort, order, rested, fullRest, hardRest };
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
    return Number(a.between) - Number(b.between) || region || sameSide(a) - sameSide(b) || b.rested - a.rested || easier;
  }
  return Number(b.hardRest) - Number(a.hardRest) || b.rested - a.rested || sameSide(a) - sameSide(b) || easier;
};

const newestSide = (region: Region, uses: readonly SiteUse[]): Spot["side"] | null =>
  uses.find((use) => use.spot.region === region)?.spot.side ?? null;

const best = (ranked: readonly Ranked[], q: PlanQuestion): Plan | null => {
  const [first, ...others] = ranked;
  if (first === undefined) return null;
  const sides = new Map(REGIONS.map((region) => [region, newestSide(region, q.uses)]));
  const { spot, rested, fullRest } = others.reduce((a, b) => (compare(a, b, (region) => sides.get(region) ?? null) <= 0 ? a : b), first);
  return { spot, restDays: fullRest ? q.rules.restDays : rested, fullRest };
};

/** Deterministic: the same question has the same answer. */
export const nextSpot = (q: PlanQuestion): Plan => {
  const regions = REGIONS.filter((region) => !q.leftOutRegions.includes(region) && (q.region === null || q.region === region));
  if (regions.length === 0) return { none: true, why: "no region may be used" };
  const spotsOf = (region: Region) => SIDES.flatMap((side) => lattice(region, side, q.body, spacingOf(q.rules)));
  const notDeclined = ({ spot }: Candidate) => !q.declined.some((declined) => nearerThan(declined, spot, spacingOf(q.rules)));
  const onSkin = usesOnSkin(q.uses, horizonOf(q));
  const allowed = ({ spot }: Candidate) => whyNever(spot, q) === null;

  // Nearly always the first region has rested skin on its lines, and the rest need not be looked at.
  for (const region of regions) {
    const lines = spotsOf(region).filter((c) => !c.between && allowed(c) && notDeclined(c));
    const rested = best(
      rank(lines, q, onSkin).filter(({ fullRest }) => fullRest),
      q,
    );
    if (rested !== null) return rested;
  }
  const all = regions.flatMap(spotsOf);
  const open = all.filter(allowed);
  const next = best(rank(open.filter(notDeclined), q, onSkin), q);
  if (next !== null) return next;
  if (open.length > 0) return { none: true, why: "every place was declined" };
  const butForTheLast = all.some(({ spot }) => whyNever(spot, q)?.why === "too near the last one");
  return { none: true, why: butForTheLast ? "every place is too near the last one" : "every place is ruled out" };
};
