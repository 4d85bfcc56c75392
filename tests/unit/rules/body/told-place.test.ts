import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEFAULT_BODY, REGIONS, SIDES } from "#rules/body/area.ts";
import { directions } from "#rules/body/directions.ts";
import { fromsOf, placeTold } from "#rules/body/told-place.ts";
import { sayPlace } from "#words/en/places.ts";
import { anyBody } from "../../../kit/bodies.ts";

const finger = DEFAULT_BODY.fingerMm;

describe("a place told by fingers", () => {
  it.each([
    ["belly", "left", 0, 2, 4, { outMm: 4 * finger, downMm: 2 * finger }],
    ["belly", "right", 1, 3, 1, { outMm: finger, downMm: -3 * finger }],
    ["thigh", "right", 0, 6, 2, { outMm: 2 * finger, downMm: 6 * finger }],
    ["thigh", "right", 1, 6, 2, { outMm: 2 * finger, downMm: DEFAULT_BODY.thighLengthMm - 6 * finger }],
    ["arm", "left", 1, 7, 0, { outMm: 0, downMm: DEFAULT_BODY.armLengthMm - 7 * finger }],
    ["buttock", "left", 0, 3, 3, { outMm: 3 * finger, downMm: 3 * finger }],
  ] as const)("lies where they lead: %s, %s, landmark %d, %d along, %d outwards", (region, side, which, along, outwards, lies) => {
    const from = fromsOf(region, DEFAULT_BODY)[which];
    if (!from) throw new Error("no such landmark");
    expect(placeTold({ region, side, from, along, outwards }, DEFAULT_BODY)).toEqual({ region, side, ...lies });
  });

  it("is on the side that was told, in its own words too, on any body", () => {
    fc.assert(
      fc.property(
        anyBody,
        fc.constantFrom(...REGIONS),
        fc.constantFrom(...SIDES),
        fc.nat(8),
        fc.nat(6),
        (body, region, side, along, outwards) => {
          for (const from of fromsOf(region, body)) {
            const spot = placeTold({ region, side, from, along, outwards }, body);
            if (!spot) throw new Error("turned away");
            expect([spot.region, spot.side]).toEqual([region, side]);
            // Without a step outwards a place of the belly's middle line has no side in words.
            if (outwards > 0) expect(sayPlace(directions(spot, body)).join(" ")).toContain(region === "belly" ? ` ${side}` : `${side} `);
          }
        },
      ),
    );
  });

  it("is none where the count is no whole number of fingers, or more than are ever told", () => {
    const [from] = fromsOf("belly", DEFAULT_BODY);
    if (!from) throw new Error("no landmark");
    const told = (along: number, outwards: number) => placeTold({ region: "belly", side: "left", from, along, outwards }, DEFAULT_BODY);
    expect([told(-1, 2), told(2.5, 2), told(25, 2), told(2, 25), told(2, Number.NaN)]).toEqual([null, null, null, null, null]);
    expect(told(24, 24)).not.toBeNull();
  });
});
