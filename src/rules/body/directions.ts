// A spot told by touch: a landmark that fingers find, then at most two steps.
import type { BodyMeasures, Region, Side, Spot } from "#events/spot.ts";
import { effort, lengthMm, type Measure, NO_LENGTH, type Tellable, tellableLengths } from "./tellable.ts";

export type Landmark = "navel" | "hip bone" | "knee" | "groin" | "shoulder" | "elbow";
export type Way = "left" | "right" | "up" | "down" | "outwards" | "towards the back";
/** count is whole or half. */
export type Step = { readonly measure: Measure; readonly count: number; readonly way: Way };
/** side is the person's own. No step: the landmark itself. */
export type Direction = { readonly landmark: Landmark; readonly side: Side; readonly steps: readonly Step[] };

/** A landmark on the region's line of outMm 0: where it lies and which way its steps go. */
type Start = { readonly landmark: Landmark; readonly downMm: number; readonly sign: 1 | -1; readonly way: "up" | "down" };

/** Navel, groin, shoulder and hip bone are the zero of their region; knee and elbow lie one limb's length below. */
export const starts = (region: Region, body: BodyMeasures): readonly Start[] => {
  switch (region) {
    case "belly":
      return [
        { landmark: "navel", downMm: 0, sign: 1, way: "down" },
        { landmark: "navel", downMm: 0, sign: -1, way: "up" },
      ];
    case "thigh":
      return [
        { landmark: "groin", downMm: 0, sign: 1, way: "down" },
        { landmark: "knee", downMm: body.thighLengthMm, sign: -1, way: "up" },
      ];
    case "arm":
      return [
        { landmark: "shoulder", downMm: 0, sign: 1, way: "down" },
        { landmark: "elbow", downMm: body.armLengthMm, sign: -1, way: "up" },
      ];
    case "buttock":
      return [{ landmark: "hip bone", downMm: 0, sign: 1, way: "down" }];
  }
};

const REGION_OF: Record<Landmark, Region> = {
  navel: "belly",
  groin: "thigh",
  knee: "thigh",
  shoulder: "arm",
  elbow: "arm",
  "hip bone": "buttock",
};

export const outWay = (region: Region, side: Side): Way => {
  if (region === "belly") return side;
  return region === "arm" ? "towards the back" : "outwards";
};

type Guess = { readonly start: Start | null; readonly length: Tellable; readonly errorMm: number };

/** Nearest first; of two as near the easier one. */
const better = (a: Guess, b: Guess): Guess => {
  if (Math.abs(a.errorMm - b.errorMm) > 1e-6) return a.errorMm < b.errorMm ? a : b;
  return effort(a.length.count) <= effort(b.length.count) ? a : b;
};

const step = (length: Tellable, way: Way): Step[] => (length.count === 0 ? [] : [{ measure: length.measure, count: length.count, way }]);

/**
 * The nearest directions that can be told. Exact for every easy spot (lattice.ts), within a quarter of a finger each way for the others that the planner
 * offers (dense.ts). On the belly they always name a side.
 */
export const directions = (spot: Spot, body: BodyMeasures): Direction => {
  const lengths = tellableLengths(body);
  const nearest = (mm: number, start: Start | null): Guess =>
    lengths
      .map((length): Guess => ({ start, length, errorMm: Math.abs(length.mm - mm) }))
      .reduce(better, { start, length: NO_LENGTH, errorMm: Math.abs(mm) });
  const out = nearest(spot.outMm, null).length;
  const down = starts(spot.region, body)
    .map((start) => nearest((spot.downMm - start.downMm) * start.sign, start))
    .reduce(better);
  const start = down.start;
  if (start === null) throw new Error("a region without a landmark");
  const outStep = step(out, outWay(spot.region, spot.side));
  const downStep = step(down.length, start.way);
  // On the belly sideways comes first: it settles which side before anything else.
  const steps = spot.region === "belly" ? [...outStep, ...downStep] : [...downStep, ...outStep];
  return { landmark: start.landmark, side: spot.side, steps };
};

/** Where the directions lead. On the belly the way decides the side, as it does for the person who follows it. */
export const spotFromDirections = (d: Direction, body: BodyMeasures): Spot => {
  const region = REGION_OF[d.landmark];
  let side = d.side;
  let outMm = 0;
  let downMm = starts(region, body).find((start) => start.landmark === d.landmark)?.downMm ?? 0;
  for (const { measure, count, way } of d.steps) {
    const mm = lengthMm(measure, count, body);
    if (way === "down") downMm += mm;
    else if (way === "up") downMm -= mm;
    else outMm += mm;
    if (way === "left" || way === "right") side = way;
  }
  return { region, side, outMm, downMm };
};
