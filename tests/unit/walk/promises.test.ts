// The promises of the walk, proved over every move in every state that has a key of its own. See "The promises" in DEVELOPERS.md.
import { describe, expect, it } from "vitest";
import { explore } from "../../kit/explore/explore.ts";
import { EXPLORATIONS } from "../../kit/explore/households.ts";
import { PLANTED } from "../../kit/explore/planted.ts";
import { PROMISES } from "../../kit/explore/promises.ts";
import { engine } from "../../kit/explore/world.ts";

describe.each(EXPLORATIONS.map((x) => [x.name, x] as const))("explored: %s", (_name, x) => {
  it("breaks no promise, and every offer is taken and stands there once", () => {
    const found = explore(x, engine);
    expect(found.keys.size).toBeGreaterThan(20);
    expect(found.violations.map((v) => `promise ${v.promise}: ${v.what} after ${v.path.slice(-8).join(" > ")}`)).toEqual([]);
    expect(found.badOffers).toEqual([]);
  });
});

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
