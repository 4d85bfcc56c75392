import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bodyMeasures } from "#events/spot.ts";
import { contains, DEFAULT_BODY, distanceMm, REGIONS, SIDES, usableArea } from "#rules/body/area.ts";
import { siteCode } from "#rules/body/site-code.ts";
import { anyBody, at, gap } from "../../../kit/bodies.ts";

const anySpot = fc.record({
  region: fc.constantFrom(...REGIONS),
  side: fc.constantFrom(...SIDES),
  outMm: fc.integer({ min: -50, max: 300 }),
  downMm: fc.integer({ min: -250, max: 400 }),
});

describe("the usable area", () => {
  it("begins one hand below the groin or shoulder and ends one hand above the knee or elbow", () => {
    for (const region of ["thigh", "arm"] as const) {
      const { down } = usableArea(region, "left", DEFAULT_BODY);
      const length = region === "thigh" ? DEFAULT_BODY.thighLengthMm : DEFAULT_BODY.armLengthMm;
      expect([down.from, down.to]).toEqual([80, length - 80]);
    }
  });

  it("stays 1 cm from the ribs and the pubic bone and narrows towards the flanks", () => {
    const belly = usableArea("belly", "left", DEFAULT_BODY);
    expect(contains(belly, at("belly", "left", 0, 110))).toBe(true);
    expect(contains(belly, at("belly", "left", 0, 111))).toBe(false);
    expect(contains(belly, at("belly", "left", 250, 0))).toBe(true);
    expect(contains(belly, at("belly", "left", 200, 100))).toBe(false);
  });

  it("is the front and outer thigh, the outer back of the arm and the upper outer buttock: nothing inwards", () => {
    for (const region of REGIONS) expect(contains(usableArea(region, "left", DEFAULT_BODY), at(region, "left", -1, 120))).toBe(false);
  });

  it("belongs to its own side", () => {
    for (const region of REGIONS) {
      const spot = at(region, "right", 60, 90);
      expect(contains(usableArea(region, "right", DEFAULT_BODY), spot)).toBe(true);
      expect(contains(usableArea(region, "left", DEFAULT_BODY), spot)).toBe(false);
    }
  });

  it("has average measures that the stored shape accepts", () => {
    expect(bodyMeasures.parse(DEFAULT_BODY)).toEqual(DEFAULT_BODY);
  });

  it("is empty rather than upside down on a limb shorter than two hands", () => {
    fc.assert(
      fc.property(anyBody, anySpot, (body, spot) => {
        const { down } = usableArea(spot.region, spot.side, body);
        if (down.to < down.from) expect(contains(usableArea(spot.region, spot.side, body), spot)).toBe(false);
      }),
    );
  });
});

describe("the distance between two spots", () => {
  it("is the same both ways and as worked out from the stored coordinates", () => {
    fc.assert(
      fc.property(anySpot, anySpot, (a, b) => {
        expect(distanceMm(a, b)).toBe(distanceMm(b, a));
        if (Number.isFinite(gap(a, b))) expect(distanceMm(a, b)).toBeCloseTo(gap(a, b), 6);
        else expect(distanceMm(a, b)).toBe(Number.POSITIVE_INFINITY);
      }),
    );
  });

  it("counts across the navel", () => {
    expect(distanceMm(at("belly", "left", 60, 0), at("belly", "right", 60, 0))).toBe(120);
    expect(distanceMm(at("belly", "left", 30, 40), at("belly", "right", 0, 0))).toBe(50);
  });
});

describe("the HL7 v2-0163 code", () => {
  it.each([
    ["LLAQ", at("belly", "left", 60, 20)],
    ["RLAQ", at("belly", "right", 60, 0)],
    ["LUAQ", at("belly", "left", 60, -20)],
    ["RUAQ", at("belly", "right", 60, -20)],
    ["LT", at("thigh", "left", 0, 100)],
    ["RT", at("thigh", "right", 0, 100)],
    ["LUA", at("arm", "left", 0, 100)],
    ["RUA", at("arm", "right", 0, 100)],
    ["LG", at("buttock", "left", 40, 40)],
    ["RG", at("buttock", "right", 40, 40)],
  ] as const)("is %s", (code, spot) => expect(siteCode(spot)).toBe(code));
});
