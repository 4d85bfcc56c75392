import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findRow, rowName } from "#rules/card/band-row.ts";
import { lookUp } from "#rules/card/lookup.ts";
import { at, band, bandCard, said } from "./sample-card.ts";

const PRINTED = [band(71, 140, 4), band(141, 180, 5), band(181, 220, 6)];

describe("a band table", () => {
  it("is silent below, above and between its rows", () => {
    const card = bandCard([band(90, 140, 4), band(160, 220, 6)], 4);
    expect([89, 90, 140, 141, 159, 160, 220, 221].map((g) => said(card, g))).toEqual([
      "below the bands",
      4,
      4,
      "hole between bands",
      "hole between bands",
      6,
      6,
      "above the bands",
    ]);
  });

  it("reads a row up to where the next begins, when the card says so, and ends the last row where it is printed to end", () => {
    const card = bandCard(PRINTED, 4, { edges: "up to the next" });
    expect([140.5, 180.156, 180.5, 220, 220.1].map((g) => said(card, g))).toEqual([4, 5, 5, 6, "above the bands"]);
  });

  it("tells nothing from an edge that two printed rows claim, unless the card reads up to the next", () => {
    const shared = [band(71, 140, 4), band(140, 180, 5)];
    expect(said(bandCard(shared, 4), 140)).toBe("in two bands");
    expect(said(bandCard(shared, 4, { edges: "up to the next" }), 140)).toBe(5);
  });

  it("tells nothing where rows overlap by more than an edge, however the edges are read", () => {
    const slipped = [band(71, 190, 4), band(180, 220, 6)];
    for (const edges of ["as printed", "up to the next"] as const) {
      expect([179, 185, 200].map((g) => said(bandCard(slipped, 4, { edges }), g))).toEqual([4, "in two bands", 6]);
    }
    const twice = [band(181, null, 4), band(181, null, 6)];
    for (const edges of ["as printed", "up to the next"] as const)
      expect([181, 200].map((g) => said(bandCard(twice, 4, { edges }), g))).toEqual(["in two bands", "in two bands"]);
  });

  it("tells nothing where an open row runs into the next as printed", () => {
    expect(said(bandCard([band(251, null, 2), band(351, null, 4)], 0), 360)).toBe("in two bands");
  });

  it("claims nothing by a row that is upside down", () => {
    expect([140, 100].map((g) => said(bandCard([band(140, 71, 4)], 4), g))).toEqual(["above the bands", "below the bands"]);
  });

  it("may be typed in any order", () => {
    for (const edges of ["as printed", "up to the next"] as const) {
      expect([100, 150, 200].map((g) => said(bandCard([...PRINTED].reverse(), 4, { edges }), g))).toEqual([4, 5, 6]);
    }
  });

  it("compares in the card's unit: 10.0 mmol/L is in its own row, though it is 180.156 mg/dL", () => {
    const card = bandCard([band(4, 10, 5), band(10.1, null, 6)], 4, { glucoseUnit: "mmol/L", low: { value: 4, counts: "below" } });
    expect([10, 10.1].map((g) => said(card, g))).toEqual([5, 6]);
  });

  it("names the row that it used, as printed", () => {
    expect(rowName("dinner", band(181, 220, 4))).toBe("dinner band 181-220");
    expect(rowName("lunch", band(null, 140, 4))).toBe("lunch band up to 140");
    expect(rowName("snack", band(401, null, 4))).toBe("snack band from 401");
    expect(rowName("snack", band(null, null, 4))).toBe("snack band for any reading");
    const card = bandCard(PRINTED, 4);
    expect(lookUp(card, at(card, 200))).toMatchObject({
      units: 6,
      food: 4,
      correction: 2,
      rows: ["dinner band 181-220"],
      why: [{ reason: "band", from: 181, to: 220, units: 6 }],
    });
  });

  it("tells the whole row where the clinic names no food part and nothing is left off", () => {
    const card = bandCard(PRINTED, null);
    expect(lookUp(card, at(card, 200))).toMatchObject({ units: 6, food: 6, correction: 0 });
  });

  it("never finds a row whose printed edges the reading is outside of, as printed", () => {
    const edge = fc.option(fc.integer({ min: 60, max: 300 }), { nil: null });
    const rows = fc.array(
      fc.tuple(edge, edge, fc.integer({ min: 0, max: 20 })).map(([a, b, dose]) => band(a, b, dose)),
      { minLength: 1, maxLength: 6 },
    );
    const value = fc.integer({ min: 500, max: 3500 }).map((n) => n / 10);
    fc.assert(
      fc.property(rows, value, (bands, g) => {
        const inside = bands.filter((b) => (b.from === null || b.from <= g) && (b.to === null || g <= b.to));
        const row = findRow({ bands, edges: "as printed" }, g);
        if (inside.length === 1) expect(row).toBe(inside[0]);
        else expect(typeof row === "string" && (row === "in two bands") === inside.length > 1).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});
