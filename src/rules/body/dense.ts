// The densest pattern of spots, for when the easy ones do not rest long enough: rows 0.87 of the spacing apart, every second one shifted by half of it.
// Its spots are told to the nearest half finger, at most a quarter of a finger off each way: less than a hand can feel.
import type { BodyMeasures, Region, Side, Spot } from "#events/spot.ts";
import { contains, distanceMm, ROUNDING_MM, SIDES, usableArea } from "./area.ts";
import { directions, spotFromDirections } from "./directions.ts";

/** Circles of one size lie densest so (a theorem of 1940); a square grid holds 0.87 as many. */
const ROW = Math.sqrt(3) / 2;
/** Offsets tried each way. The pattern does not follow the marks: it would move under spots that rest. */
const TRIED = 20;

/** `turned`: the rows lead up and down. Offsets of the first spot along its row, and of the first row. */
type Pattern = { readonly turned: boolean; readonly along: number; readonly across: number };

const spotsOf = ({ turned, along, across }: Pattern, region: Region, side: Side, body: BodyMeasures, gap: number): Spot[] => {
  const area = usableArea(region, side, body);
  const [rowAxis, crossAxis] = turned ? [area.down, area.out] : [area.out, area.down];
  const found: Spot[] = [];
  for (let row = Math.floor((crossAxis.from - across) / (gap * ROW)); across + row * gap * ROW <= crossAxis.to; row++) {
    const v = across + row * gap * ROW;
    const first = along + (row % 2 === 0 ? 0 : gap / 2);
    for (let u = first + Math.floor((rowAxis.from - first) / gap) * gap; u <= rowAxis.to; u += gap) {
      const spot: Spot = { region, side, outMm: turned ? v : u, downMm: turned ? u : v };
      if (contains(area, spot)) found.push(spot);
    }
  }
  return found;
};

type BothSides = Record<Side, readonly Spot[]>;

const offsets = (length: number): number[] => Array.from({ length: TRIED }, (_, i) => (i / TRIED) * length);

/**
 * The belly is one plane: its columns begin half a row's distance on either side of the middle line, where a spot would have no side, and the right
 * side's are shifted against the left's. The other regions have the same pattern on both sides.
 */
function patternsOf(region: Region, gap: number): Record<Side, Pattern>[] {
  if (region === "belly")
    return offsets(gap).map((along) => {
      const left = { turned: true, along, across: (gap * ROW) / 2 };
      return { left, right: { ...left, along: along + gap / 2 } };
    });
  return [false, true].flatMap((turned) =>
    offsets(gap).flatMap((along) =>
      offsets(gap * ROW).map((across) => {
        const pattern = { turned, along, across };
        return { left: pattern, right: pattern };
      }),
    ),
  );
}

/** A quarter of a finger off both ways at once. */
const MOST_OFF = Math.SQRT2 / 4;

/** Words lead to it, as near as a hand can feel; on the largest bodies the far ends are out of their reach. */
const isTold = (spot: Spot, body: BodyMeasures): boolean =>
  distanceMm(spotFromDirections(directions(spot, body), body), spot) <= MOST_OFF * body.fingerMm + ROUNDING_MM;

const layOut = (region: Region, body: BodyMeasures, gap: number): BothSides => {
  const on = (patterns: Record<Side, Pattern>): BothSides => ({
    left: spotsOf(patterns.left, region, "left", body, gap),
    right: spotsOf(patterns.right, region, "right", body, gap),
  });
  const count = (spots: BothSides) => SIDES.reduce((sum, side) => sum + spots[side].length, 0);
  const best = patternsOf(region, gap)
    .map(on)
    .reduce((most, spots) => (count(spots) > count(most) ? spots : most));
  const told = (side: Side) => best[side].filter((spot) => isTold(spot, body));
  return { left: told("left"), right: told("right") };
};

const known = new WeakMap<BodyMeasures, Map<string, BothSides>>();

/** Spots a full spacing (at least one finger) apart, also across the belly's middle line. */
export const denseSpots = (region: Region, side: Side, body: BodyMeasures, spacingMm: number): readonly Spot[] => {
  const ofBody = known.get(body) ?? new Map<string, BothSides>();
  known.set(body, ofBody);
  const name = `${region} ${spacingMm}`;
  const found = ofBody.get(name) ?? layOut(region, body, Math.max(spacingMm, body.fingerMm));
  ofBody.set(name, found);
  return found[side];
};
