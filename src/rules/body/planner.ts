// The next spot.
import type { Region, Spot } from "#events/spot.ts";
import type { SpotQuestion } from "./limits.ts";

export type PlanQuestion = SpotQuestion & { readonly declined: readonly Spot[]; readonly leftOutRegions: readonly Region[] };

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

export const nextSpot = (_q: PlanQuestion): Plan => ({ none: true, why: "no region may be used" });
