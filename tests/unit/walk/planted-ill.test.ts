// Faults planted in the engine for ill days and meals that were not eaten whole, never in the code: each is met by the promise that it breaks.
import { describe, expect, it } from "vitest";
import { explore } from "../../kit/explore/explore.ts";
import { ILL_EXPLORATIONS } from "../../kit/explore/households-ill.ts";
import { PLANTED_ILL } from "../../kit/explore/planted-ill.ts";

describe("a fault planted for ill days", () => {
  it.each(PLANTED_ILL.map((p) => [p.promise, p.fault, p] as const))("is caught by promise %i: %s", (promise, _fault, planted) => {
    const x = ILL_EXPLORATIONS.find((e) => e.name === planted.exploration);
    if (!x) throw new Error(`no exploration is called ${planted.exploration}`);
    expect(explore(x, planted.engine, { stopAt: promise }).violations.map((v) => v.promise)).toContain(promise);
  });
});
