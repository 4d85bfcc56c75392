// Faults planted in the engine for the watch over too much insulin, never in the code: each is met by the promise that it breaks.
import { describe, expect, it } from "vitest";
import { explore } from "../../kit/explore/explore.ts";
import { EXPLORATIONS } from "../../kit/explore/households.ts";
import { PLANTED_WATCH } from "../../kit/explore/planted-watch.ts";

describe("a fault planted for the watch over insulin", () => {
  it.each(PLANTED_WATCH.map((p) => [p.promise, p.fault, p] as const))("is caught by promise %i: %s", (promise, _fault, planted) => {
    const x = EXPLORATIONS.find((e) => e.name === planted.exploration);
    if (!x) throw new Error(`no exploration is called ${planted.exploration}`);
    expect(explore(x, planted.engine, { stopAt: promise }).violations.map((v) => v.promise)).toContain(promise);
  });
});
