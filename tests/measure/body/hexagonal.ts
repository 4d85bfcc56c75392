// What the planner's spots are held against: the densest way to lay points one spacing apart, tried at many offsets and angles on the same skin.
import type { BodyMeasures, NoGo, Region, Side, Spot } from "#events/spot.ts";
import { contains, usableArea } from "#rules/body/area.ts";
import { denseSpots } from "#rules/body/dense.ts";
import { lattice } from "#rules/body/lattice.ts";
import { gap } from "../../kit/bodies.ts";

/** A plane of skin: the belly is one, both sides together; every other side of a region is one of its own. */
export type Plane = { region: Region; sides: readonly Side[] };

export const PLANES: readonly Plane[] = [
  { region: "belly", sides: ["left", "right"] },
  ...(["thigh", "arm", "buttock"] as const).flatMap((region) => (["left", "right"] as const).map((side) => ({ region, sides: [side] }))),
];

const NAVEL_MM = 51;
/** The needle stays this far from a mark's edge (rules/body/limits.ts): part of the rule, so both are held to it. */
const MARK_MARGIN_MM = 10;

/** The rules by their own arithmetic: area, navel, marks. */
export function mayBeUsed(spot: Spot, body: BodyMeasures, noGo: readonly NoGo[]): boolean {
  if (!contains(usableArea(spot.region, spot.side, body), spot)) return false;
  if (spot.region === "belly" && Math.hypot(spot.outMm, spot.downMm) < NAVEL_MM - 1e-6) return false;
  return noGo.every((mark) => gap(mark.spot, spot) >= mark.radiusMm + MARK_MARGIN_MM - 1e-6);
}

/** x to the person's left on the belly, outwards elsewhere. */
function spotAt({ region, sides }: Plane, x: number, y: number): Spot {
  const side = region === "belly" ? (x >= 0 ? "left" : "right") : (sides[0] ?? "left");
  return { region, side, outMm: region === "belly" ? Math.abs(x) : x, downMm: y };
}

function boxOf({ region, sides }: Plane, body: BodyMeasures) {
  const { out, down } = usableArea(region, sides[0] ?? "left", body);
  return { left: region === "belly" ? -out.to : out.from, right: out.to, top: down.from, bottom: down.to };
}

/** The most points of a hexagonal lattice that may be used, over `placements` random offsets and angles. */
export function bestHexagonal(
  plane: Plane,
  body: BodyMeasures,
  noGo: readonly NoGo[],
  spacing: number,
  placements: number,
  next: () => number,
): number {
  const box = boxOf(plane, body);
  const [middleX, middleY] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const reach = Math.ceil(Math.hypot(box.right - box.left, box.bottom - box.top) / spacing) + 2;
  let best = 0;
  for (let i = 0; i < placements; i++) {
    const [angle, shiftA, shiftB] = [(next() * Math.PI) / 3, next(), next()];
    const [cos, sin] = [Math.cos(angle) * spacing, Math.sin(angle) * spacing];
    let count = 0;
    for (let row = -reach; row <= reach; row++) {
      for (let column = -reach; column <= reach; column++) {
        const along = column + shiftA + (row + shiftB) / 2;
        const across = ((row + shiftB) * Math.sqrt(3)) / 2;
        const x = middleX + along * cos - across * sin;
        const y = middleY + along * sin + across * cos;
        if (x < box.left || x > box.right || y < box.top || y > box.bottom) continue;
        if (mayBeUsed(spotAt(plane, x, y), body, noGo)) count += 1;
      }
    }
    best = Math.max(best, count);
  }
  return best;
}

/** The planner's own densest pattern on the same skin. */
export const ownSpots = ({ region, sides }: Plane, body: BodyMeasures, noGo: readonly NoGo[], spacing: number): Spot[] =>
  sides.flatMap((side) => denseSpots(region, side, body, spacing)).filter((spot) => mayBeUsed(spot, body, noGo));

/** The spots that are told in whole fingers and hands, of which the plan takes the next as long as they rest long enough. */
export const easySpots = ({ region, sides }: Plane, body: BodyMeasures, noGo: readonly NoGo[], spacing: number): Spot[] =>
  sides
    .flatMap((side) => lattice(region, side, body, spacing))
    .map(({ spot }) => spot)
    .filter((spot) => mayBeUsed(spot, body, noGo));
