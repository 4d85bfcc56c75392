import { describe, expect, it } from "vitest";
import { KINDS } from "../../measure/card/any-card.ts";
import { compareMany } from "../../measure/card/compare.ts";
import { fuzz } from "../../measure/card/fuzz.ts";
import { scoreOf } from "../../measure/card/mutation.ts";

describe("the measure of the dose card", () => {
  it("finds the app's rules and the independent reference of one mind, on every kind of card", () => {
    const { tallies, disagreements } = compareMany("small", 3500);
    expect(disagreements.slice(0, 2)).toEqual([]);
    for (const kind of KINDS) {
      expect(tallies[kind].silent, kind).toBeGreaterThan(20);
      // A card without meals has nothing to tell at a meal.
      if (kind !== "background only") expect(tallies[kind].told, kind).toBeGreaterThan(20);
    }
  });

  it("sees every spoilt card refused in plain sentences or working, and none throwing", () => {
    const { fates, thrown, unclear, disagreements } = fuzz("small", 420);
    expect(thrown).toEqual([]);
    expect(unclear).toEqual([]);
    expect(disagreements).toBe(0);
    const sum = (fate: keyof (typeof fates)["bands"]) => KINDS.reduce((all, kind) => all + fates[kind][fate], 0);
    expect(sum("refused in typing")).toBeGreaterThan(50);
    expect(sum("refused in signing")).toBeGreaterThan(50);
    expect(sum("signed as it was") + sum("signed after alarms")).toBeGreaterThan(30);
  });

  it("reads the mutation score out of the tester's report, leaving out what does not compile", () => {
    const mutants = ["Killed", "Killed", "Timeout", "Survived", "NoCoverage", "CompileError"].map((status) => ({ status }));
    expect(scoreOf({ files: { "a.ts": { mutants }, "b.ts": { mutants: [] } } })).toBe(60);
    expect(scoreOf({ files: {} })).toBeNull();
    expect(scoreOf(null)).toBeNull();
  });
});
