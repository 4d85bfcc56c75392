// A place told by a hand that found it: from which landmark, how many fingers along the middle line, how many outwards.
import type { BodyMeasures, Region, Side, Spot } from "#events/spot.ts";
import { type Landmark, outWay, type Step, spotFromDirections, starts } from "./directions.ts";
import { MOST_FINGERS_COUNTED_ON } from "./tellable.ts";

/** A landmark and the way that leads from it: above the navel, up from the knee. */
export type ToldFrom = { readonly landmark: Landmark; readonly way: "up" | "down" };

export type ToldPlace = {
  readonly region: Region;
  readonly side: Side;
  readonly from: ToldFrom;
  /** Whole fingers of this person. */
  readonly along: number;
  readonly outwards: number;
};

export const MOST_FINGERS_TOLD = MOST_FINGERS_COUNTED_ON;

/** Where one may begin to count on this region. */
export const fromsOf = (region: Region, body: BodyMeasures): readonly ToldFrom[] =>
  starts(region, body).map(({ landmark, way }) => ({ landmark, way }));

/** null: a count that is no whole number of fingers from 0 to 24. */
export function placeTold({ region, side, from, along, outwards }: ToldPlace, body: BodyMeasures): Spot | null {
  if (![along, outwards].every((count) => Number.isInteger(count) && count >= 0 && count <= MOST_FINGERS_TOLD)) return null;
  const step = (count: number, way: Step["way"]): Step[] => (count === 0 ? [] : [{ measure: "fingers", count, way }]);
  const steps = [...step(outwards, outWay(region, side)), ...step(along, from.way)];
  return spotFromDirections({ landmark: from.landmark, side, steps }, body);
}
