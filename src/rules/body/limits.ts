// Why a spot may not be used (mistake 16: same spot, scar, lump, too near the navel).
import type { BodyMeasures, NoGo, Region, Spot } from "#events/spot.ts";
import { contains, nearerThan, nearNavel, usableArea } from "./area.ts";
import { HARD_SPACING_MM, type SiteRules } from "./site-rules.ts";
import { type SiteUse, usesOnSkin } from "./uses.ts";

export type { SiteUse };

export type SpotQuestion = {
  readonly body: BodyMeasures;
  readonly noGo: readonly NoGo[];
  /** Newest first: the first is "the last one". */
  readonly uses: readonly SiteUse[];
  readonly rules: SiteRules;
  /** The region kept for this meal; null = any. */
  readonly region: Region | null;
};

export type SpotReason =
  | { readonly why: "another region is kept for this meal"; readonly region: Region }
  | { readonly why: "outside the area" }
  | { readonly why: "too near the navel"; readonly leastMm: number }
  | { readonly why: "on a marked place"; readonly id: string; readonly kind: NoGo["kind"] }
  | { readonly why: "too near the last one"; readonly leastMm: number }
  | { readonly why: "still resting"; readonly daysAgo: number; readonly restDays: number };

/** Fingers feel to about half a finger: the needle stays this far from a mark's edge. Own choice, the same 1 cm that is taught between spots. */
const MARK_MARGIN_MM = 10;

export const spacingOf = (rules: SiteRules): number => Math.max(HARD_SPACING_MM, rules.spacingMm);

/** Every reason but rest: what no shortage of skin can excuse. */
export const whyNever = (spot: Spot, q: SpotQuestion): null | SpotReason => {
  if (q.region !== null && spot.region !== q.region) return { why: "another region is kept for this meal", region: q.region };
  if (!contains(usableArea(spot.region, spot.side, q.body), spot)) return { why: "outside the area" };
  if (nearNavel(spot, q.rules.navelMm)) return { why: "too near the navel", leastMm: q.rules.navelMm };
  const mark = q.noGo.find((place) => nearerThan(place.spot, spot, place.radiusMm + MARK_MARGIN_MM));
  if (mark !== undefined) return { why: "on a marked place", id: mark.id, kind: mark.kind };
  const last = q.uses[0];
  if (last !== undefined && nearerThan(last.spot, spot, q.rules.lastSpotMm))
    return { why: "too near the last one", leastMm: q.rules.lastSpotMm };
  return null;
};

/** null: the spot may be used. A spot used exactly restDays ago is free. */
export const whyNot = (spot: Spot, q: SpotQuestion): null | SpotReason => {
  const never = whyNever(spot, q);
  if (never !== null) return never;
  const rest = Math.min(q.rules.restDays, q.rules.acceptedRestDays ?? q.rules.restDays);
  const days = usesOnSkin(q.uses).daysSince(spot, spacingOf(q.rules));
  return days === null || days >= rest ? null : { why: "still resting", daysAgo: days, restDays: rest };
};
