import { describe, expect, it } from "vitest";
import { DEFAULT_BODY, REGIONS, SIDES } from "#rules/body/area.ts";
import { fromsOf } from "#rules/body/told-place.ts";
import { askAlong, askOutwards, fingersSaid, LUMPS, partLabel } from "#words/en/lumps.ts";

describe("the question about lumps in words", () => {
  it("takes at most twelve words a sentence, with the side of the person's own body", () => {
    const asked = REGIONS.flatMap((region) => [
      ...fromsOf(region, DEFAULT_BODY).map(askAlong),
      ...SIDES.map((side) => askOutwards({ region, side })),
    ]);
    const fixed = Object.values(LUMPS).flatMap((words) => (typeof words === "function" ? [] : words));
    for (const sentence of [...asked, ...fixed, LUMPS.old({ wall: 0, offset: 0 })])
      expect(sentence.split(" ").length, sentence).toBeLessThanOrEqual(12);
    expect(asked).toContain("How many fingers below the navel?");
    expect(asked).toContain("How many fingers to the left?");
    expect(asked).toContain("How many fingers towards the back from there?");
    expect(asked).toContain("How many fingers down from the hip bone?");
  });

  it("names each part once, and each count by words of its own", () => {
    const parts = REGIONS.flatMap((region) => SIDES.map((side) => partLabel({ region, side })));
    expect(new Set(parts).size).toBe(8);
    const said = Array.from({ length: 25 }, (_, n) => fingersSaid(n)).flat();
    expect(new Set(said).size).toBe(said.length);
    expect(fingersSaid(1)).toEqual(["one", "one finger"]);
  });
});
