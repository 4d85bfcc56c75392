// How many spots a body offers, and the rest that this allows: told at set-up, before the first injection.
import type { Region } from "#events/spot.ts";
import { REGIONS, SIDES } from "./area.ts";
import { denseSpots } from "./dense.ts";
import { type SpotQuestion, spacingOf, whyNever } from "./limits.ts";

/** Spots a full finger apart that break no standing rule: the last injection and the rest are left aside. */
export const spotsThatFit = (q: SpotQuestion, leftOutRegions: readonly Region[]): number =>
  REGIONS.filter((region) => !leftOutRegions.includes(region))
    .flatMap((region) => SIDES.flatMap((side) => denseSpots(region, side, q.body, spacingOf(q.rules))))
    .filter((spot) => whyNever(spot, { ...q, uses: [] }) === null).length;

/** Whole days between two uses of a spot when every spot takes its turn: 60 spots at 3 a day rest 20 days. */
export const restThatFits = (spots: number, injectionsPerDay: number): number => Math.floor(spots / injectionsPerDay);
