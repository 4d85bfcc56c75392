// The printed schemes that people are given, followed to the letter on the belly: what is the shortest rest of any skin?
import type { BodyMeasures, NoGo, Spot } from "#events/spot.ts";
import { usableArea } from "#rules/body/area.ts";
import { gap } from "../../kit/bodies.ts";
import { mayBeUsed } from "./hexagonal.ts";

const DAYS = 365;

/** Shortest time in days between two uses of skin within one finger, when each day's spots are used in turn. */
function shortestRest(daysOf: readonly (readonly Spot[])[], fingerMm: number): number {
  const used: { spot: Spot; day: number }[] = [];
  let shortest = DAYS;
  for (const [day, spots] of daysOf.entries())
    for (const spot of spots) {
      for (const use of used) if (day - use.day < shortest && gap(use.spot, spot) < fingerMm - 1e-6) shortest = day - use.day;
      used.push({ spot, day });
    }
  return shortest;
}

/** Spots one finger apart in rows, as somebody would fill a quarter of the belly. */
function fingerGrid(body: BodyMeasures, noGo: readonly NoGo[], side: Spot["side"], upper: boolean): Spot[] {
  const { out, down } = usableArea("belly", side, body);
  const along = (mm: number) => Array.from({ length: Math.floor(mm / body.fingerMm) }, (_, i) => (i + 0.5) * body.fingerMm);
  return along(down.to)
    .flatMap((downMm) => along(out.to).map((outMm): Spot => ({ region: "belly", side, outMm, downMm: upper ? -downMm : downMm })))
    .filter((spot) => mayBeUsed(spot, body, noGo));
}

/** A quarter of the belly a week, spots a finger apart, every quarter begun anew (2016 recommendations, Mayo Clin Proc 91:1231). */
export function restOfQuadrants(body: BodyMeasures, noGo: readonly NoGo[], perDay: number): number {
  const quarters = (["left", "right"] as const).flatMap((side) => [true, false].map((upper) => fingerGrid(body, noGo, side, upper)));
  const days = Array.from({ length: DAYS }, (_, day) => {
    const quarter = quarters[Math.floor(day / 7) % 4] ?? [];
    return Array.from({ length: perDay }, (_, i) => quarter[((day % 7) * perDay + i) % quarter.length]).filter((s) => s !== undefined);
  });
  return shortestRest(days, body.fingerMm);
}

/** The printed grid of 2 × 15 squares: 12 days on the left, 12 on the right, one square an injection (common practice, a US educators' hand-out). */
export const restOfGrid = (perDay: number): number => Math.floor(24 / perDay);
