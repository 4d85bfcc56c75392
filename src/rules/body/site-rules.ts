// The site rules of one card, with the named default where the clinic left a care field blank.
import type { BodyMeasures } from "#events/spot.ts";

export type SiteRules = {
  /** Days before a spot may be used again. */
  readonly restDays: number;
  /** Least distance from the last injection. */
  readonly lastSpotMm: number;
  /** Least distance from the navel. */
  readonly navelMm: number;
  /** Two spots nearer than this count as the same skin. */
  readonly spacingMm: number;
  /** A shorter rest that the planner reported because the full one does not fit; null while the full rest holds. */
  readonly acceptedRestDays: number | null;
};

/** 4 weeks: 2016 recommendations, Mayo Clin Proc 91:1231. A US educators' handout rests 24 days: the card's field. */
export const REST_DAYS = 28;
/** 2 inches: common practice, no single source. */
export const LAST_SPOT_MM = 51;
/** 2 inches: common practice; satisfies the 1 cm, 2.5 cm and 5 cm that are taught. */
export const NAVEL_MM = 51;
/** Spots at least 1 cm apart (2016 recommendations, as above). No card goes below. */
export const HARD_SPACING_MM = 10;

type SiteCare = { readonly restDays: number | null; readonly lastSpotMm: number | null; readonly navelMm: number | null };

/** Spacing is one finger of this person. */
export const siteRules = (care: SiteCare, body: BodyMeasures, acceptedRestDays: number | null = null): SiteRules => ({
  restDays: care.restDays ?? REST_DAYS,
  lastSpotMm: care.lastSpotMm ?? LAST_SPOT_MM,
  navelMm: care.navelMm ?? NAVEL_MM,
  spacingMm: Math.max(HARD_SPACING_MM, body.fingerMm),
  acceptedRestDays,
});
