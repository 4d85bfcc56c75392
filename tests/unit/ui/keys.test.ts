import { describe, expect, it } from "vitest";
import { type Box, nextPlace } from "#ui/keys.ts";

const box = (left: number, top: number, wide = 20, high = 20): Box => ({ left, top, right: left + wide, bottom: top + high });

// 1 2 3 over 4 5 6, with a wide button far below.
const pad = [box(0, 0), box(24, 0), box(48, 0), box(0, 24), box(24, 24), box(48, 24), box(0, 80, 68)];

describe("arrow keys", () => {
  it("go to the neighbour that lies that way", () => {
    expect(nextPlace(pad, 1, "right")).toBe(2);
    expect(nextPlace(pad, 1, "left")).toBe(0);
    expect(nextPlace(pad, 1, "down")).toBe(4);
    expect(nextPlace(pad, 5, "up")).toBe(2);
    expect(nextPlace(pad, 4, "down")).toBe(6);
  });

  it("go on in order where nothing lies that way, and round at the ends", () => {
    expect(nextPlace(pad, 2, "right")).toBe(3);
    expect(nextPlace(pad, 0, "up")).toBe(6);
    expect(nextPlace(pad, 6, "down")).toBe(0);
  });

  it("start at the first button, or at the last when going back", () => {
    expect(nextPlace(pad, -1, "down")).toBe(0);
    expect(nextPlace(pad, -1, "left")).toBe(6);
  });

  it("reach every button by going down or right, wherever they stand", () => {
    const flat = [box(0, 0, 0, 0), box(0, 0, 0, 0), box(0, 0, 0, 0)];
    expect([0, 1, 2].map((from) => nextPlace(flat, from, "right"))).toEqual([1, 2, 0]);
  });
});
