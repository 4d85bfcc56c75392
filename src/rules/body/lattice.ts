// The spots that a plan chooses from: crossings of lines that can be told by touch, at least one finger apart.
import type { BodyMeasures, Region, Side, Spot } from "#events/spot.ts";
import { contains, type Range, usableArea } from "./area.ts";
import { directions, starts } from "./directions.ts";
import { effort, type Tellable, tellableLengths } from "./tellable.ts";

export type Candidate = {
  readonly spot: Spot;
  /** Between the lines, half a finger off: nearer than one finger to its neighbours, kept for when the lines are used up. */
  readonly between: boolean;
  /** How hard the spot is to find. */
  readonly effort: number;
};

/** Every position on an axis that words reach, shortest from the landmarks first. */
const positions = (lengths: readonly Tellable[], range: Range, ends: readonly { downMm: number; sign: 1 | -1 }[]): number[] =>
  [...new Set(ends.flatMap(({ downMm, sign }) => lengths.map(({ mm }) => downMm + sign * mm)))]
    .filter((mm) => mm >= range.from - 1e-6 && mm <= range.to + 1e-6)
    .sort((a, b) => a - b);

/** The first position, then each that lies a full gap further: no choice fits more lines. */
const apart = (sorted: readonly number[], gap: number): number[] => {
  const lines: number[] = [];
  for (const mm of sorted) {
    const last = lines.at(-1);
    if (last === undefined || mm >= last + gap - 1e-6) lines.push(mm);
  }
  return lines;
};

type Lines = { readonly on: readonly number[]; readonly between: readonly number[] };

const axis = (body: BodyMeasures, gap: number, range: Range, ends: readonly { downMm: number; sign: 1 | -1 }[]): Lines => {
  const lengths = tellableLengths(body);
  // Half fingers only where the clinic's spacing is wider than a finger: whole ones are felt better.
  const plain = gap > body.fingerMm + 1e-6 ? lengths : lengths.filter(({ measure, count }) => measure === "hands" || Number.isInteger(count));
  const usable = positions(plain, range, ends);
  // From the landmark's own line outwards both ways, so that lines above and below the navel mirror each other.
  const below = apart(usable.filter((mm) => mm >= 0), gap);
  const above = apart(usable.filter((mm) => mm <= 0).map((mm) => -mm).reverse(), gap).map((mm) => -mm);
  const on = [...new Set([...above, ...below].map((mm) => mm + 0))].sort((a, b) => a - b);
  return { on, between: positions(lengths, range, ends).filter((mm) => !on.includes(mm)) };
};

/**
 * A hexagonal lattice holds 2/√3 as many spots as a square one, but its rows lie 0.87 fingers apart and cannot be told. Snapped to half fingers it holds
 * no more than whole fingers both ways (both one square finger a spot), so the plain crossings are used; the crossings between them are its staggered rows.
 */
export const lattice = (region: Region, side: Side, body: BodyMeasures, spacingMm: number): Candidate[] => {
  const area = usableArea(region, side, body);
  const gap = Math.max(spacingMm, body.fingerMm);
  // A spot on the belly's middle line has no side: the first line is one gap out on either side, which keeps the two sides apart too.
  const outRange = region === "belly" ? { from: gap, to: area.out.to } : area.out;
  const out = axis(body, gap, outRange, [{ downMm: 0, sign: 1 }]);
  const down = axis(body, gap, area.down, starts(region, body));
  const cross = (outs: readonly number[], downs: readonly number[], between: boolean): Candidate[] =>
    outs.flatMap((outMm) =>
      downs
        .map((downMm): Spot => ({ region, side, outMm, downMm }))
        .filter((spot) => contains(area, spot))
        .map((spot) => ({ spot, between, effort: directions(spot, body).steps.reduce((sum, { count }) => sum + effort(count), 0) })),
    );
  return [...cross(out.on, down.on, false), ...cross(out.between, down.between, true)];
};
