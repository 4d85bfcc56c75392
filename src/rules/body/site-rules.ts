// The site rules of one card, with the named default (card/care.ts) where the clinic left a care field blank.
import type { BodyMeasures } from "#events/spot.ts";
import { DEFAULTS } from "#rules/card/care.ts";

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

/** Spots at least 1 cm apart (2016 recommendations, as above). No card goes below. */
export const HARD_SPACING_MM = 10;

type SiteCare = { readonly restDays: number | null; readonly lastSpotMm: number | null; readonly navelMm: number | null };

/** Spacing is one finger of this person. */
export const siteRules = (care: SiteCare, body: BodyMeasures, acceptedRestDays: number | null = null): SiteRules => ({
  restDays: care.restDays ?? DEFAULTS.restDays,
  lastSpotMm: care.lastSpotMm ?? DEFAULTS.lastSpotMm,
  navelMm: care.navelMm ?? DEFAULTS.navelMm,
  spacingMm: Math.max(HARD_SPACING_MM, body.fingerMm),
  acceptedRestDays,
});
