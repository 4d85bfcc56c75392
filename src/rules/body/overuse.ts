// Skin that was used again before it was rested, as the body chart names it.
import type { Spot } from "#events/spot.ts";
import { nearerThan } from "./area.ts";
import type { SiteUse } from "./uses.ts";

export type Overused = {
  /** The newest use of this skin. */
  readonly spot: Spot;
  readonly times: number;
  /** Whole days of the shortest rest between two uses. */
  readonly leastRestDays: number;
};

/**
 * uses: newest first. Uses nearer than one spacing to the newest of them are the same skin. Skin that had the rest the card asks for each
 * time is left out. The most often used first.
 */
export function overused(uses: readonly SiteUse[], rules: { restDays: number; spacingMm: number }): Overused[] {
  const found: Overused[] = [];
  let left = [...uses];
  while (left.length > 0) {
    const [newest] = left;
    if (!newest) break;
    const same = left.filter(({ spot }) => nearerThan(spot, newest.spot, rules.spacingMm));
    left = left.filter((use) => !same.includes(use));
    const rests = same.slice(1).map((use, i) => use.daysAgo - (same[i]?.daysAgo ?? use.daysAgo));
    const leastRestDays = Math.min(...rests);
    if (rests.length > 0 && leastRestDays < rules.restDays) found.push({ spot: newest.spot, times: same.length, leastRestDays });
  }
  return found.sort((a, b) => b.times - a.times || a.leastRestDays - b.leastRestDays);
}
