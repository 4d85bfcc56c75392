import { describe, expect, it } from "vitest";
import type { BodyMeasures, Spot } from "#events/spot.ts";
import { DEFAULT_BODY, REGIONS, SIDES } from "#rules/body/area.ts";
import { directions } from "#rules/body/directions.ts";
import { lattice } from "#rules/body/lattice.ts";
import { placeName, sayMark, sayPlace, saySpotReason } from "#words/en/places.ts";

const say = (spot: Spot): string => sayPlace(directions(spot, DEFAULT_BODY)).join(" ");
const at = (region: Spot["region"], side: Spot["side"], outMm: number, downMm: number): Spot => ({ region, side, outMm, downMm });

const BODIES: BodyMeasures[] = [
  DEFAULT_BODY,
  { bellyWidthMm: 330, bellyHeightMm: 170, thighLengthMm: 300, armLengthMm: 260, fingerMm: 15, handMm: 72 },
  { bellyWidthMm: 900, bellyHeightMm: 500, thighLengthMm: 700, armLengthMm: 600, fingerMm: 21, handMm: 95 },
];
const everything = BODIES.flatMap((body) =>
  REGIONS.flatMap((region) => SIDES.flatMap((side) => lattice(region, side, body, body.fingerMm))).map(({ spot }) => ({
    spot,
    said: sayPlace(directions(spot, body)),
  })),
);

describe("a place in words", () => {
  it.each([
    ["Find your navel. Go three fingers left and two fingers down.", at("belly", "left", 51, 34)],
    ["Find your navel. Go four fingers right.", at("belly", "right", 68, 0)],
    ["Find your navel. Go one finger left and four fingers up.", at("belly", "left", 17, -68)],
    ["Find your right knee. Go one hand up and two fingers outwards.", at("thigh", "right", 34, 300)],
    ["Find your left groin. Go one and a half hands down and two fingers outwards.", at("thigh", "left", 34, 120)],
    ["Find your left hip bone. Go half a hand down and two fingers outwards.", at("buttock", "left", 34, 40)],
    ["Find your right shoulder. Go two hands down and one finger towards the back.", at("arm", "right", 17, 160)],
    ["From your left shoulder go one and a half hands down. Then go three fingers towards the back.", at("arm", "left", 51, 120)],
    ["Find your navel.", at("belly", "left", 0, 0)],
  ])("is: %s", (sentence, spot) => expect(say(spot)).toBe(sentence));

  it("takes at most two sentences of at most twelve words, with no figures", () => {
    for (const { said } of everything) {
      expect(said.length).toBeLessThanOrEqual(2);
      for (const sentence of said) {
        expect(sentence.split(" ").length, sentence).toBeLessThanOrEqual(12);
        expect(sentence).toMatch(/^[A-Z][a-z ]*\.$/);
      }
    }
  });

  it("always names the side it is on and never the other", () => {
    for (const { spot, said } of everything) {
      const other = spot.side === "left" ? "right" : "left";
      expect(said.join(" ")).toMatch(new RegExp(`\\b${spot.side}\\b`));
      expect(said.join(" ")).not.toMatch(new RegExp(`\\b${other}\\b`));
    }
  });

  it("has a name", () => {
    expect(REGIONS.map((region) => placeName(at(region, "left", 60, 90)))).toEqual([
      "left side of the belly",
      "left thigh",
      "left buttock",
      "back of the left upper arm",
    ]);
  });
});

describe("a mark of the body chart in words", () => {
  const mark = (own: Partial<Parameters<typeof sayMark>[0]>) =>
    sayMark({ xMm: 0, yMm: 0, kind: "rest", radiusMm: 0, daysAgo: null, place: null, ...own });

  it("carries its days, or what it is", () => {
    const said = [
      mark({ daysAgo: 0 }),
      mark({ daysAgo: 1 }),
      mark({ daysAgo: 12, kind: "old" }),
      mark({ kind: "here" }),
      mark({ kind: "never", place: "scar" }),
    ];
    expect(said).toEqual(["today", "1 day", "12 days", "here", "scar"]);
  });
});

describe("a reason in words", () => {
  it.each([
    ["This meal keeps to the thigh.", { why: "another region is kept for this meal", region: "thigh" }],
    ["This place is outside the area for injections.", { why: "outside the area" }],
    ["This place is too near the navel.", { why: "too near the navel", leastMm: 51 }],
    ["A lump is marked here.", { why: "on a marked place", id: "1", kind: "lump" }],
    ["This place is marked as never to be used.", { why: "on a marked place", id: "1", kind: "other" }],
    ["This place is too near the last injection.", { why: "too near the last one", leastMm: 51 }],
    ["This place was used 12 days ago.", { why: "still resting", daysAgo: 12.4, restDays: 28 }],
    ["This place was used 1 day ago.", { why: "still resting", daysAgo: 1, restDays: 28 }],
    ["This place was used today.", { why: "still resting", daysAgo: 0, restDays: 28 }],
  ] as const)("is: %s", (sentence, reason) => expect(saySpotReason(reason)).toBe(sentence));
});
