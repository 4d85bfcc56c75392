import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Spot } from "#events/spot.ts";
import { contains, DEFAULT_BODY, REGIONS, SIDES, usableArea } from "#rules/body/area.ts";
import { denseSpots } from "#rules/body/dense.ts";
import { directions } from "#rules/body/directions.ts";
import { lattice } from "#rules/body/lattice.ts";
import { nextSpot } from "#rules/body/planner.ts";
import { sayPlace } from "#words/en/places.ts";
import { anyBody, BODIES, chance, gap, plan, used } from "../../../kit/bodies.ts";
import { marksOf } from "../../../kit/body-year.ts";
import { follow } from "../../../kit/follow-words.ts";
import { bestHexagonal, ownSpots, PLANES } from "../../../measure/body/hexagonal.ts";
import { mostSpots } from "./packing-oracle.ts";

const spacing = fc.integer({ min: 10, max: 51 });
const bothSides = (region: Spot["region"], body = DEFAULT_BODY, mm = body.fingerMm): Spot[] =>
  SIDES.flatMap((side) => [...denseSpots(region, side, body, mm)]);

describe("the densest pattern of spots", () => {
  it("lies inside its area, a spacing apart, also across the navel, on any body", () => {
    fc.assert(
      fc.property(anyBody, spacing, fc.constantFrom(...REGIONS), (body, mm, region) => {
        const spots = bothSides(region, body, mm);
        const least = Math.max(mm, body.fingerMm) - 1e-6;
        expect(spots.filter((spot) => !contains(usableArea(region, spot.side, body), spot))).toEqual([]);
        spots.forEach((a, i) => {
          for (const b of spots.slice(i + 1)) if (gap(a, b) < least) expect(gap(a, b)).toBeGreaterThanOrEqual(least);
        });
      }),
      { numRuns: 40 },
    );
  });

  it("holds more than the easy spots and never more than geometry allows", () => {
    for (const body of Object.values(BODIES))
      for (const region of REGIONS) {
        const easy = SIDES.flatMap((side) => lattice(region, side, body, body.fingerMm));
        expect(bothSides(region, body).length).toBeGreaterThan(easy.length);
        const { out, down } = usableArea(region, "left", body);
        const [w, h] = [out.to - out.from, down.to - down.from];
        expect(denseSpots(region, "left", body, body.fingerMm).length).toBeLessThanOrEqual(mostSpots(w * h, 2 * (w + h), body.fingerMm));
      }
  });

  it("holds nearly as many as the best of many placements of a hexagonal lattice at any angle, marks left out", () => {
    for (const body of Object.values(BODIES)) {
      const next = chance(2);
      const noGo = marksOf(next);
      for (const plane of PLANES.filter(({ region }) => region !== "buttock")) {
        const densest = bestHexagonal(plane, body, noGo, body.fingerMm, 60, next);
        expect(ownSpots(plane, body, noGo, body.fingerMm).length / densest, plane.region).toBeGreaterThanOrEqual(0.95);
      }
    }
  });

  it("is told in words that lead to within half a finger, on its own side, in two sentences of at most twelve words", () => {
    fc.assert(
      fc.property(anyBody, fc.constantFrom(...REGIONS), (body, region) => {
        for (const spot of bothSides(region, body)) {
          const said = sayPlace(directions(spot, body));
          const there = follow(said, body);
          expect(there.side, said.join(" ")).toBe(spot.side);
          expect(gap({ ...there, side: spot.side }, spot)).toBeLessThanOrEqual(body.fingerMm / 2);
          expect(said.length).toBeLessThanOrEqual(2);
          for (const sentence of said) expect(sentence.split(" ").length, sentence).toBeLessThanOrEqual(12);
        }
      }),
      { numRuns: 25 },
    );
  });
});

describe("the plan", () => {
  const arms = SIDES.flatMap((side) => lattice("arm", side, DEFAULT_BODY, 17));
  const armsUsed = (daysAgo: number) =>
    nextSpot(plan({ region: "arm", uses: arms.map(({ spot }, i) => used(spot, i === 0 ? 1 : daysAgo)) }));
  const isDense = (spot: Spot) => bothSides("arm").some((other) => gap(other, spot) < 1e-6);

  it("keeps to the easy spots while they rest long enough", () => {
    const next = armsUsed(28);
    expect(next.none).toBeUndefined();
    if (!next.none) expect([next.fullRest, arms.some(({ spot }) => gap(spot, next.spot) < 1e-6)]).toEqual([true, true]);
  });

  it("takes the dense pattern once all easy spots were used within the rest", () => {
    const next = armsUsed(27);
    expect(next.none).toBeUndefined();
    if (!next.none) expect([next.fullRest, isDense(next.spot)]).toEqual([true, true]);
  });
});
