import { describe, expect, it } from "vitest";
import type { Hearer } from "#events/person.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, led, me, odileAlone, odileAt, twice, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const tablets = sugarsOffered()[0] ?? { food: { id: "none" }, grams: 0 };
const sugar = { do: "took sugar", food: tablets.food.id, grams: tablets.grams } as const;
const MINUTE = 60;

/** Who can hear a call: the tests above the last group have somebody in the house. */
function withHearer(t: Table, hearer: Hearer | null): Table {
  const { household } = t.state;
  if (household) t.state = { ...t.state, household: { ...household, ...(hearer ? { hearer } : {}) } };
  return t;
}

/** A low reading in a meal walk, read back and given twice since it lies outside the usual band. */
const lowAt = (text: string, hearer: Hearer | null = { who: "always" }): Table =>
  twice(withHearer(odileAt("reading"), hearer), "reading", text);
const recheck = (t: Table, text: string): Table =>
  Number(text) < 80 ? twice(t, "recheck after low", text) : t.number("recheck after low", text);
const doing = (t: Table) =>
  offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : [`number ${"slot" in o ? o.slot : ""}`]));
const calls = (t: Table) => t.facts.flatMap((f) => (f.readable && f.event.type === "call raised" ? [f.event.why] : []));

// Sources: 15 g, 15 min, again (ADA leaflet of 2024); three treatments, then a call (JBDS 01, 4th edition 2020); nothing by mouth (ADA patient page).
describe("a low (promise 13)", () => {
  it("62, sugar, 68, sugar, 74: two treatments, and the walk goes on (facts O13)", () => {
    const t = lowAt("62").send(sugar);
    t.pass(15 * MINUTE);
    recheck(t, "68");
    expect(t.step()).toBe("low");
    t.send(sugar);
    t.pass(15 * MINUTE);
    recheck(t, "74");
    expect(t.types().filter((type) => type === "sugar taken")).toHaveLength(2);
    expect(calls(t)).toEqual([]);
    expect(walk(t)).toMatchObject({ low: null, afterLow: true });
    expect(t.step()).toBe("plate");
  });

  it("is called for after three treatments that did not help (JBDS 01, 2020)", () => {
    const t = lowAt("66");
    for (const text of ["64", "65", "66"]) {
      expect(calls(t)).toEqual([]);
      t.send(sugar);
      t.pass(15 * MINUTE);
      recheck(t, text);
    }
    expect(calls(t)).toEqual(["still low"]);
    expect(t.step()).toBe("low");
  });

  it("is called for after two treatments when the new reading is below 54, not when the one before it was", () => {
    const better = lowAt("50").send(sugar);
    better.pass(15 * MINUTE);
    recheck(better, "50").send(sugar);
    better.pass(15 * MINUTE);
    recheck(better, "66");
    expect(calls(better)).toEqual([]);

    const worse = lowAt("66").send(sugar);
    worse.pass(15 * MINUTE);
    recheck(worse, "66").send(sugar);
    worse.pass(15 * MINUTE);
    recheck(worse, "50");
    expect(calls(worse)).toEqual(["still low"]);
  });

  it("takes LO for very low: meters show it below about 20 mg/dL", () => {
    const t = lowAt("66").send(sugar);
    t.pass(15 * MINUTE);
    recheck(t, "66").send(sugar);
    t.pass(15 * MINUTE);
    t.send({ do: "read word", word: "LO", via: "touch" });
    expect(calls(t)).toEqual(["still low"]);
  });

  it("at 66 no dose is checked for any meal (facts O26)", () => {
    for (const meal of ["breakfast", "lunch", "dinner"] as const) {
      const t = odileAlone().send({ do: "open meal", person: "odile", meal }, { do: "already washed" });
      twice(t, "reading", "66");
      expect(t.types()).not.toContain("dose told");
      expect(t.types()).not.toContain("card silent");
      expect(doing(t)).not.toContain("heard dose");
    }
  });

  it("begins at the card's own edge: 70 is low, 71 is not", () => {
    expect(lowAt("70").step()).toBe("low");
    expect(twice(odileAt("reading"), "reading", "71").step()).toBe("plate");
  });

  it("begins on LO without any number", () => {
    const t = odileAt("reading").send({ do: "read word", word: "LO", via: "touch" });
    expect(t.step()).toBe("low");
    expect(doing(t)).toContain("took sugar");
  });

  it("is never ended by a word or a wish: only a number that is not low ends it", () => {
    const t = lowAt("62").send(sugar);
    t.pass(15 * MINUTE);
    t.send({ do: "read word", word: "LO", via: "touch" });
    expect(t.step()).toBe("low");
    t.send({ do: "leave" });
    expect(doing(t)).not.toContain("set aside");
    t.send({ do: "turn to", person: "odile" });
    expect(t.step()).toBe("low");
  });

  it("offers nothing by mouth to somebody who cannot swallow, and calls (facts O14)", () => {
    const t = lowAt("62");
    expect(led(t, { do: "cannot swallow" })).toEqual(["call raised"]);
    expect(doing(t)).not.toContain("took sugar");
    expect(doing(t)).toContain("number recheck after low");
  });

  it("calls when nobody answers: five minutes without sugar, or five after the wait", () => {
    const untreated = lowAt("62");
    untreated.pass(5 * MINUTE - 1);
    expect(led(untreated, { do: "pass time" })).toEqual([]);
    untreated.pass(1);
    expect(led(untreated, { do: "pass time" })).toEqual(["call raised"]);
    expect(calls(untreated)).toEqual(["no answer"]);
    expect(led(untreated, { do: "pass time" })).toEqual([]);

    const waiting = lowAt("62").send(sugar);
    waiting.pass(19 * MINUTE);
    expect(led(waiting, { do: "pass time" })).toEqual([]);
    waiting.pass(MINUTE);
    expect(led(waiting, { do: "pass time" })).toEqual(["call raised"]);
  });

  it("calls when the walk was left in a low, and after the app started again", () => {
    const t = lowAt("62").send({ do: "leave" });
    t.restart();
    t.pass(5 * MINUTE);
    expect(led(t, { do: "pass time" })).toEqual(["call raised"]);
  });

  it("the food part alone is told after a low, and treatment sugar is never dosed for", () => {
    const t = lowAt("62").send(sugar);
    t.pass(15 * MINUTE);
    recheck(t, "90").send({ do: "exercise", hard: false }, { do: "meal is ready" });
    expect(walk(t).told).toMatchObject({ units: 6, correction: 0 });
    expect(walk(t).sugarEaten).toHaveLength(1);
  });

  it("of the kitchen is a walk of its own, and is no clean meal walk", () => {
    const t = odileAlone().send({ do: "open low", person: "odile" }, sugar);
    t.pass(15 * MINUTE);
    recheck(t, "95");
    expect(doing(t)).not.toContain("back");
    t.send({ do: "finish" });
    expect(me(t)).toMatchObject({ walk: null, cleanWalks: 0 });
    expect(me(bring(t, "done").send({ do: "finish" })).cleanWalks).toBe(1);
  });
});

// Up to three treatments, then a call (JBDS 01, 4th edition 2020); sooner below 54 mg/dL, 3.0 mmol/L (level 2, ADA Standards of Care section 6), and
// sooner where nobody can hear the tablet call: our choice, no source.
describe("a low of somebody whom nobody can hear", () => {
  const failed = (hearer: Hearer | null, ...readings: string[]): number => {
    const t = lowAt("66", hearer);
    for (const [i, text] of readings.entries()) {
      t.send(sugar);
      t.pass(15 * MINUTE);
      recheck(t, text);
      if (calls(t).length > 0) return i + 1;
    }
    return 0;
  };

  it("is called for after the second failed reading, and after the first one below 54", () => {
    expect(failed({ who: "nobody" }, "66", "66", "66")).toBe(2);
    expect(failed({ who: "nobody" }, "53", "66", "66")).toBe(1);
    expect(failed({ who: "nobody" }, "54", "66", "66")).toBe(2);
  });

  it("is taken for that wherever it is not known who can hear", () => {
    expect(failed(null, "66", "66", "66")).toBe(2);
  });

  it("waits for the third, or the second below 54, where somebody is in the house at that hour", () => {
    expect(failed({ who: "always" }, "66", "66", "66")).toBe(3);
    expect(failed({ who: "always" }, "53", "53", "66")).toBe(2);
    // The table stands at noon.
    expect(failed({ who: "between", from: "08:00", until: "18:00" }, "66", "66", "66")).toBe(3);
    expect(failed({ who: "between", from: "18:00", until: "08:00" }, "66", "66", "66")).toBe(2);
  });

  it("is not counted as heard while the clock is in doubt", () => {
    const t = lowAt("66", { who: "between", from: "08:00", until: "18:00" }).send(sugar);
    t.pass(15 * MINUTE);
    recheck(t, "66").send(sugar);
    t.restart(15 * MINUTE);
    expect(t.step()).toBe("low");
    t.send({ do: "read word", word: "LO", via: "touch" });
    expect(calls(t)).toEqual(["still low"]);
  });

  it("is told the number first; with somebody near, to call for them first", () => {
    const says = (hearer: Hearer | null): string[] => {
      const t = lowAt("66", hearer);
      for (const text of ["66", "53"]) {
        t.send(sugar);
        t.pass(15 * MINUTE);
        if (calls(t).length === 0) recheck(t, text);
      }
      return sayWalk(t.state, t.now, GUARDS)?.lines ?? [];
    };
    expect(says({ who: "nobody" })[0]).toBe("Call 911 now.");
    expect(says({ who: "always" })).toEqual(expect.arrayContaining(["Call for whoever is in the house.", "Nobody comes? Call 911 now."]));
  });
});
