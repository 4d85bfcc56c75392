// The part of the body that may be used, in millimetres over the skin, and distances on it.
import type { BodyMeasures, Region, Side, Spot } from "#events/spot.ts";

export type Range = { readonly from: number; readonly to: number };

/** Usable area of one side of one region, in the coordinates of events/spot.ts. The navel, marks and rest are rules of their own (limits.ts). */
export type Area = {
  readonly region: Region;
  readonly side: Side;
  readonly out: Range;
  readonly down: Range;
  /** The belly's corners are ribs, hip bones and groin folds: only the half oval around the navel is used. */
  readonly oval: boolean;
};

export const REGIONS: readonly Region[] = ["belly", "thigh", "buttock", "arm"];
export const SIDES: readonly Side[] = ["left", "right"];

/**
 * Averages for people over 60: waist about 980 to 1050 mm (half of it lies between the flanks), upper leg 380 to 410 mm, upper arm 360 to 380 mm,
 * four fingers and the palm's edge 78 to 88 mm, index finger 14 to 20 mm. US NHANES and US Army surveys, both from memory; the belly's height too.
 * The smaller end is taken where it keeps the needle further from an edge.
 */
export const DEFAULT_BODY: BodyMeasures = {
  bellyWidthMm: 500,
  bellyHeightMm: 240,
  thighLengthMm: 380,
  armLengthMm: 360,
  fingerMm: 17,
  handMm: 80,
};

/** Kept free below the ribs and above the pubic bone: 1 cm (2016 recommendations, Mayo Clin Proc 91:1231; the figure is from memory). */
const EDGE_MM = 10;
/** The front and outer quarter of the thigh and the back and outer quarter of the arm, as a part of their length. From memory (circumference 43 to 50 cm and 30 cm). */
const THIGH_QUARTER = 0.28;
const ARM_QUARTER = 0.2;

/** Hand-width limits of thigh and arm, flanks and navel: nursing hand-outs (common practice). The buttock's is the upper outer quarter, one hand square. */
export const usableArea = (region: Region, side: Side, body: BodyMeasures): Area => {
  const hand = body.handMm;
  switch (region) {
    case "belly": {
      const half = body.bellyHeightMm / 2 - EDGE_MM;
      return { region, side, out: { from: 0, to: body.bellyWidthMm / 2 }, down: { from: -half, to: half }, oval: true };
    }
    case "thigh":
      return {
        region,
        side,
        out: { from: 0, to: body.thighLengthMm * THIGH_QUARTER },
        down: { from: hand, to: body.thighLengthMm - hand },
        oval: false,
      };
    case "arm":
      return {
        region,
        side,
        out: { from: 0, to: body.armLengthMm * ARM_QUARTER },
        down: { from: hand, to: body.armLengthMm - hand },
        oval: false,
      };
    case "buttock": {
      const square = { from: body.fingerMm, to: body.fingerMm + hand };
      return { region, side, out: square, down: square, oval: false };
    }
  }
};

/** Lengths are told in whole fingers; a sum of them may miss an edge by a rounding error. */
export const ROUNDING_MM = 1e-6;

const within = (value: number, range: Range): boolean => value >= range.from - ROUNDING_MM && value <= range.to + ROUNDING_MM;

export const contains = (area: Area, spot: Spot): boolean => {
  if (spot.region !== area.region || spot.side !== area.side) return false;
  if (!within(spot.outMm, area.out) || !within(spot.downMm, area.down)) return false;
  if (!area.oval) return true;
  return (spot.outMm / area.out.to) ** 2 + (spot.downMm / area.down.to) ** 2 <= 1 + ROUNDING_MM;
};

/** Both sides of the belly are one plane with the navel in the middle; every other side is a plane of its own. */
export const placeOnPlane = (spot: Spot): { plane: string; x: number; y: number } => {
  if (spot.region !== "belly") return { plane: `${spot.side} ${spot.region}`, x: spot.outMm, y: spot.downMm };
  return { plane: "belly", x: spot.side === "left" ? spot.outMm : -spot.outMm, y: spot.downMm };
};

/** Millimetres between two spots; Infinity when they lie on different planes. */
export const distanceMm = (a: Spot, b: Spot): number => {
  if (a.region !== b.region || (a.side !== b.side && a.region !== "belly")) return Number.POSITIVE_INFINITY;
  // Across the belly's middle line the two ways out add up.
  const x = a.side === b.side ? a.outMm - b.outMm : a.outMm + b.outMm;
  return Math.hypot(x, a.downMm - b.downMm);
};

/** Exactly the distance is far enough. */
export const nearerThan = (a: Spot, b: Spot, mm: number): boolean => distanceMm(a, b) < mm - ROUNDING_MM;

/** Millimetres to the navel; Infinity off the belly. */
const navelDistanceMm = (spot: Spot): number => (spot.region === "belly" ? Math.hypot(spot.outMm, spot.downMm) : Number.POSITIVE_INFINITY);

export const nearNavel = (spot: Spot, navelMm: number): boolean => navelDistanceMm(spot) < navelMm - ROUNDING_MM;
