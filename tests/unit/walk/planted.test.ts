// Faults planted in the engine, never in the code: each is met by the promise that it breaks.
import { describe, expect, it } from "vitest";
import { explore } from "../../kit/explore/explore.ts";
import { EXPLORATIONS } from "../../kit/explore/households.ts";
import { PLANTED } from "../../kit/explore/planted.ts";
import { PROMISES } from "../../kit/explore/promises.ts";

describe("a fault planted in the engine", () => {
  it("is there for every promise", () => {
    const numbers = [...new Set(PLANTED.map((p) => p.promise))].sort((a, b) => a - b);
    expect(numbers).toEqual(PROMISES.map((p) => p.number).sort((a, b) => a - b));
  });
  it.each(PLANTED.map((p) => [p.promise, p.fault, p] as const))("is caught by promise %i: %s", (promise, _fault, planted) => {
    const x = EXPLORATIONS.find((e) => e.name === planted.exploration);
    if (!x) throw new Error(`no exploration is called ${planted.exploration}`);
    expect(explore(x, planted.engine, { stopAt: promise }).violations.map((v) => v.promise)).toContain(promise);
  });
});
