// Faults planted in the engine for background insulin, never in the code: each is met by the promise that it breaks.
import { describe, expect, it } from "vitest";
import { explore } from "../../kit/explore/explore.ts";
import { BACKGROUND_EXPLORATIONS } from "../../kit/explore/households-background.ts";
import { PLANTED_BACKGROUND } from "../../kit/explore/planted-background.ts";

describe("a fault planted for background insulin", () => {
  it.each(PLANTED_BACKGROUND.map((p) => [p.promise, p.fault, p] as const))("is caught by promise %i: %s", (promise, _fault, planted) => {
    const x = BACKGROUND_EXPLORATIONS.find((e) => e.name === planted.exploration);
    if (!x) throw new Error(`no exploration is called ${planted.exploration}`);
    expect(explore(x, planted.engine, { stopAt: promise }).violations.map((v) => v.promise)).toContain(promise);
  });
});
