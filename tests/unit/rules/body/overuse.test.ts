import { describe, expect, it } from "vitest";
import { overused } from "#rules/body/overuse.ts";
import { at, used } from "../../../kit/bodies.ts";

const rules = { restDays: 28, spacingMm: 17 };
const spot = at("belly", "left", 68, 34);

describe("skin that was used too soon again", () => {
  it("is told with how often, and the shortest rest it had", () => {
    const uses = [used(spot, 1), used(spot, 6), used({ ...spot, outMm: 60 }, 16), used(spot, 27)];
    expect(overused(uses, rules)).toEqual([{ spot, times: 4, leastRestDays: 5 }]);
  });

  it("is none where every use waited for the rest of the card, to the day", () => {
    expect(overused([used(spot, 0), used(spot, 28), used(spot, 56)], rules)).toEqual([]);
    expect(overused([used(spot, 0), used(spot, 27)], rules)).toEqual([{ spot, times: 2, leastRestDays: 27 }]);
    expect(overused([used(spot, 0), used(spot, 20)], { ...rules, restDays: 20 })).toEqual([]);
  });

  it("is the skin within one finger, across the middle of the belly too, and never another thigh's", () => {
    const near = [used(at("belly", "left", 5, 80), 1), used(at("belly", "right", 5, 80), 3)];
    expect(overused(near, rules)).toMatchObject([{ times: 2, leastRestDays: 2 }]);
    const apart = [used(spot, 1), used({ ...spot, outMm: spot.outMm + 17 }, 3)];
    expect(overused(apart, rules)).toEqual([]);
    expect(overused([used(at("thigh", "left", 34, 120), 1), used(at("thigh", "right", 34, 120), 2)], rules)).toEqual([]);
  });

  it("comes with the most often used first", () => {
    const other = at("arm", "left", 17, 120);
    const uses = [used(other, 1), used(spot, 2), used(spot, 4), used(other, 9), used(spot, 12)];
    expect(overused(uses, rules).map(({ times }) => times)).toEqual([3, 2]);
  });
});
