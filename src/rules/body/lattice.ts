// The spots that a plan chooses from: crossings of lines that can be told by touch, at least one finger apart.
import type { BodyMeasures, Region, Side, Spot } from "#events/spot.ts";
import { contains, type Range, ROUNDING_MM, usableArea } from "./area.ts";
import { starts } from "./directions.ts";
import { easyLengths, effort, type Tellable } from "./tellable.ts";

export type Candidate = {
  readonly spot: Spot;
  /** How hard the spot is to find. */
  readonly effort: number;
};

type Position = { readonly mm: number; readonly effort: number };
type End = { readonly downMm: number; readonly sign: 1 | -1 };

/** Every position on an axis that words reach from its landmarks, in order; each with the least effort. */
const positions = (lengths: readonly Tellable[], range: Range, ends: readonly End[]): Position[] => {
  const found = new Map<number, Position>();
  for (const { downMm, sign } of ends) {
    for (const length of lengths) {
      const mm = downMm + sign * length.mm + 0; // + 0: no minus nought
      if (mm < range.from - ROUNDING_MM || mm > range.to + ROUNDING_MM) continue;
      const known = found.get(mm)?.effort ?? Number.POSITIVE_INFINITY;
      found.set(mm, { mm, effort: Math.min(known, effort(length.count)) });
    }
  }
  return [...found.values()].sort((a, b) => a.mm - b.mm);
};

/** The first position, then each that lies a full gap further: no choice fits more lines. */
const apart = (inOrder: readonly Position[], gap: number): Position[] => {
  const lines: Position[] = [];
  for (const position of inOrder) {
    const last = lines.at(-1);
    if (last === undefined || Math.abs(position.mm - last.mm) >= gap - ROUNDING_MM) lines.push(position);
  }
  return lines;
};

const axis = (body: BodyMeasures, gap: number, range: Range, ends: readonly End[]): readonly Position[] => {
  const lengths = easyLengths(body);
  // Half fingers only where the clinic's spacing is wider than a finger: whole ones are felt better.
  const plain =
    gap > body.fingerMm + ROUNDING_MM ? lengths : lengths.filter(({ measure, count }) => measure === "hands" || Number.isInteger(count));
  const usable = positions(plain, range, ends);
  // From the landmark's own line outwards both ways, so that lines above and below the navel mirror each other.
  const down = apart(
    usable.filter(({ mm }) => mm >= 0),
    gap,
  );
  const up = apart(usable.filter(({ mm }) => mm <= 0).reverse(), gap).filter(({ mm }) => mm < 0);
  return [...up, ...down];
};

const layOut = (region: Region, side: Side, body: BodyMeasures, spacingMm: number): readonly Candidate[] => {
  const area = usableArea(region, side, body);
  const gap = Math.max(spacingMm, body.fingerMm);
  // A spot on the belly's middle line has no side: the first line is one gap out on either side, which keeps the two sides apart too.
  const outRange = region === "belly" ? { from: gap, to: area.out.to } : area.out;
  const out = axis(body, gap, outRange, [{ downMm: 0, sign: 1 }]);
  const down = axis(body, gap, area.down, starts(region, body));
  return out.flatMap((o) =>
    down
      .map((d): Candidate => ({ spot: { region, side, outMm: o.mm, downMm: d.mm }, effort: o.effort + d.effort }))
      .filter(({ spot }) => contains(area, spot)),
  );
};

/** Lattices laid out before, by the body they were laid out on: a person's measures seldom change, and every walk asks for them. */
const known = new WeakMap<BodyMeasures, Map<string, readonly Candidate[]>>();

/**
 * The easy spots. They leave skin between them unused: what a body can hold at most is the pattern of dense.ts, whose rows cannot be told exactly. Snapped to
 * half fingers that pattern holds no more than whole fingers both ways (both one square finger a spot), so the plain crossings are used here.
 */
export const lattice = (region: Region, side: Side, body: BodyMeasures, spacingMm: number): readonly Candidate[] => {
  const ofBody = known.get(body) ?? new Map<string, readonly Candidate[]>();
  known.set(body, ofBody);
  const name = `${region} ${side} ${spacingMm}`;
  const found = ofBody.get(name) ?? layOut(region, side, body, spacingMm);
  ofBody.set(name, found);
  return found;
};
