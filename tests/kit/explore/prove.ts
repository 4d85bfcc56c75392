// One exploration as tests: no promise broken, every offer taken and there once, and nothing outside when nothing is merged.
import { describe, expect, it } from "vitest";
import { type Explored, explore, runByChance } from "./explore.ts";
import { EXPLORATIONS } from "./households.ts";
import type { Exploration } from "./moves.ts";
import { engine } from "./world.ts";

/** More than twenty meals of answers. */
const STEPS = 240;
const SEEDS = [11, 23];

/** A busy machine only takes longer. */
const PATIENT = 600_000;

/** Explorations in three parts of about the same work, so that files can run side by side. */
const PARTS = [[0], [2], [1, 3]] as const;
export const partOf = (part: 0 | 1 | 2): readonly Exploration[] =>
  EXPLORATIONS.filter((_, i) => PARTS[part].some((rest) => i % 4 === rest));

export function prove(explorations: readonly Exploration[]): void {
  describe.each(explorations.map((x) => [x.name, x] as const))("explored: %s", (_name, x) => {
    let found: Explored | undefined;
    const explored = (): Explored => {
      found ??= explore(x, engine);
      return found;
    };

    it("breaks no promise", { timeout: PATIENT }, () => {
      expect(explored().violations.map((v) => `promise ${v.promise}: ${v.what} after ${v.path.slice(-8).join(" > ")}`)).toEqual([]);
      expect(explored().keys.size).toBeGreaterThan(20);
    });
    it("takes every move that it offers, and offers each once", () => {
      expect(explored().badOffers).toEqual([]);
    });
    it("is closed: long runs by chance break no promise and reach no state outside", { timeout: PATIENT }, () => {
      for (const seed of SEEDS) {
        const run = runByChance(x, engine, seed, STEPS, explored().keys);
        expect(run.steps).toBe(STEPS);
        expect(run.violations.map((v) => `promise ${v.promise}: ${v.what}`)).toEqual([]);
        expect(run.outside.slice(0, 2)).toEqual([]);
      }
    });
  });
}
