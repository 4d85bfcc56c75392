import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contains, DEFAULT_BODY, REGIONS, SIDES, usableArea } from "#rules/body/area.ts";
import { restThatFits, spotsThatFit } from "#rules/body/capacity.ts";
import { lattice } from "#rules/body/lattice.ts";
import { anyBody, BODIES, gap, question, rules, SMALL } from "../../../kit/bodies.ts";
import { mostSpots, squareGrid, staggeredRows } from "./packing-oracle.ts";

const spacing = fc.integer({ min: 10, max: 51 });

describe("the packing formulas that the lattice is measured by", () => {
  // O33 and four more worked examples: width and height in cm, spacing in cm, square, staggered, bound.
  it.each([
    [12, 10, 1, 143, 150, 161],
    [12, 10, 2.5, 25, 25, 31],
    [10, 20, 2.54, 32, 40, 48],
    [15, 12, 2.5, 35, 39, 45],
    [10, 10, 2, 36, 33, 39],
  ])("give the published counts for %d by %d cm at %d cm", (w, h, d, square, staggered, bound) => {
    expect([squareGrid(w, h, d), staggeredRows(w, h, d), mostSpots(w * h, 2 * (w + h), d)]).toEqual([square, staggered, bound]);
  });
});

describe("the spots that a plan chooses from", () => {
  it("lie inside their area, on any body and at any spacing", () => {
    fc.assert(
      fc.property(anyBody, spacing, (body, mm) => {
        for (const region of REGIONS)
          for (const side of SIDES) {
            const area = usableArea(region, side, body);
            expect(lattice(region, side, body, mm).filter(({ spot }) => !contains(area, spot))).toEqual([]);
          }
      }),
      { numRuns: 60 },
    );
  });

  it("lie at least the spacing and one finger apart, also across the navel", () => {
    fc.assert(
      fc.property(anyBody, spacing, (body, mm) => {
        for (const region of REGIONS) {
          const spots = SIDES.flatMap((side) => lattice(region, side, body, mm)).map(({ spot }) => spot);
          const least = Math.max(mm, body.fingerMm) - 1e-6;
          spots.forEach((a, i) => {
            for (const b of spots.slice(i + 1)) if (gap(a, b) < least) expect(gap(a, b)).toBeGreaterThanOrEqual(least);
          });
        }
      }),
      { numRuns: 30 },
    );
  });

  it("are never more than geometry allows in a convex area", () => {
    fc.assert(
      fc.property(anyBody, spacing, (body, mm) => {
        for (const region of ["thigh", "arm", "buttock"] as const) {
          const { out, down } = usableArea(region, "left", body);
          const [w, h] = [out.to - out.from, down.to - down.from];
          const bound = h < 0 ? 0 : mostSpots(w * h, 2 * (w + h), Math.max(mm, body.fingerMm));
          expect(lattice(region, "left", body, mm).length).toBeLessThanOrEqual(bound);
        }
      }),
    );
  });

  it("never repeat a place, and never stand on the belly's middle line, where there is no side", () => {
    for (const body of Object.values(BODIES)) {
      const all = SIDES.flatMap((side) => lattice("belly", side, body, body.fingerMm)).map(({ spot }) => spot);
      expect(new Set(all.map((s) => `${s.side} ${s.outMm} ${s.downMm}`)).size).toBe(all.length);
      expect(Math.min(...all.map((s) => s.outMm))).toBeGreaterThan(0);
    }
  });

  it("are the same on both sides", () => {
    for (const region of REGIONS) {
      const [left, right] = SIDES.map((side) => lattice(region, side, SMALL, 15).map(({ spot }) => ({ ...spot, side: "left" })));
      expect(left).toEqual(right);
    }
  });
});

describe("the rest that fits", () => {
  // 60 spots at 3 a day: the belly alone at one inch does not hold 28 days (28 × 3 = 84 spots needed).
  it("is 20 days for 60 spots at 3 injections a day", () => {
    expect(restThatFits(60, 3)).toBe(20);
  });

  // Four weeks without a spot used twice (2016 recommendations, Mayo Clin Proc 91:1231) need 28 spots for each injection a day: arithmetic.
  it.each([
    [28, 1],
    [84, 3],
    [112, 4],
    [168, 6],
  ])("is 28 days with %d spots at %d a day, and 27 with one spot less", (spots, perDay) => {
    expect([restThatFits(spots, perDay), restThatFits(spots - 1, perDay)]).toEqual([28, 27]);
  });

  it("is 28 days and more on a middle belly at one finger", () => {
    expect(spotsThatFit(question(), ["thigh", "arm", "buttock"])).toBeGreaterThanOrEqual(84);
  });

  it("is less than 28 days on a belt of 30 by 12 cm at one inch, within the 60 spots that geometry was seen to allow", () => {
    const belt = { ...DEFAULT_BODY, bellyWidthMm: 300, bellyHeightMm: 140 };
    const spots = spotsThatFit(question({ body: belt, rules: rules({ spacingMm: 25.4 }) }), ["thigh", "arm", "buttock"]);
    expect(spots).toBeLessThanOrEqual(60);
    expect(restThatFits(spots, 3)).toBeLessThan(28);
  });

  it("shrinks with every marked place", () => {
    const scar = { id: "s", spot: { region: "belly", side: "left", outMm: 85, downMm: 0 }, radiusMm: 20, kind: "scar" } as const;
    expect(spotsThatFit(question({ noGo: [scar] }), [])).toBeLessThan(spotsThatFit(question(), []));
  });
});
