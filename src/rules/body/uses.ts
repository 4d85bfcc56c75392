// Past injections laid out by plane, so that years of them are searched in a moment.
import type { Spot } from "#events/spot.ts";
import { placeOnPlane, ROUNDING_MM } from "./area.ts";

/** An injection that was given: days before now, whole or part. */
export type SiteUse = { readonly spot: Spot; readonly daysAgo: number };

export type UsesOnSkin = {
  /** Days since the newest use nearer than mm; null if there is none. */
  readonly daysSince: (spot: Spot, mm: number) => number | null;
};

type Use = { readonly x: number; readonly y: number; readonly daysAgo: number };

/** Uses older than the horizon are left aside; one whose days are not a number stays, as the newest. */
export const usesOnSkin = (uses: readonly SiteUse[], horizonDays = Number.POSITIVE_INFINITY): UsesOnSkin => {
  const planes = new Map<string, Use[]>();
  for (const { spot, daysAgo } of uses) {
    if (daysAgo > horizonDays) continue;
    const { plane, x, y } = placeOnPlane(spot);
    const known = planes.get(plane);
    const use = { x, y, daysAgo: Number.isNaN(daysAgo) ? Number.NEGATIVE_INFINITY : daysAgo };
    if (known === undefined) planes.set(plane, [use]);
    else known.push(use);
  }
  return {
    daysSince: (spot, mm) => {
      const { plane, x, y } = placeOnPlane(spot);
      const least = (mm - ROUNDING_MM) ** 2;
      let newest = Number.POSITIVE_INFINITY;
      for (const use of planes.get(plane) ?? []) {
        if (use.daysAgo < newest && (use.x - x) ** 2 + (use.y - y) ** 2 < least) newest = use.daysAgo;
      }
      return newest === Number.POSITIVE_INFINITY ? null : newest;
    },
  };
};
