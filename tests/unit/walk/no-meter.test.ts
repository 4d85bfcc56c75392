// Without a meter a low is treated at once and somebody is called; how the person feels ends nothing (promise 13).
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sayWalk } from "#words/en/steps.ts";
import { led, odileAlone, twice, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const MINUTE = 60;
const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const noMeter = { do: "no meter" } as const;
const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines.join(" ") ?? "";
const feelsLow = () => odileAlone().send({ do: "open low", person: "odile" });
const treated = (t: Table): Table => {
  t.send(sugar);
  t.pass(15 * MINUTE);
  return t;
};

describe("feeling low without a meter or a strip", () => {
  it("begins with sugar, and asks for no number first", () => {
    expect(doing(feelsLow())).toContain("took sugar");
    expect(lines(feelsLow())).toContain("Treat it as a low.");
  });

  it("is treated once more, then called for", () => {
    const t = treated(feelsLow());
    expect(led(t, noMeter)).toEqual(["cannot measure"]);
    expect(walk(t).low).toMatchObject({ noMeter: true, due: "treat" });
    expect(lines(t)).toContain("There is no number. Treat it as a low. Do not stay alone.");
    treated(t);
    expect(led(t, noMeter)).toEqual(["cannot measure", "call raised"]);
    expect(lines(t)).toContain("Call 911 now.");
  });

  it("never ends the low and never leads to a dose", () => {
    const t = treated(feelsLow()).send(noMeter);
    treated(t).send(noMeter);
    expect(t.step()).toBe("low");
    for (const to of ["heard dose", "finish", "open meal", "meal is ready"]) expect(doing(t)).not.toContain(to);
    t.send({ do: "leave" });
    expect(doing(t)).not.toContain("open meal");
    expect(t.types()).not.toContain("low ended");
  });

  it("ends as any low does once a meter was found", () => {
    const t = treated(feelsLow()).send(noMeter);
    treated(t).number("recheck after low", "110");
    expect(t.step()).toBe("done");
  });

  it("is no answer where nothing was done yet, or where sugar still works", () => {
    expect(led(feelsLow(), noMeter)).toEqual([]);
    expect(led(feelsLow().send(sugar), noMeter)).toEqual([]);
  });

  it("counts a reading that is low again as a reading", () => {
    const t = treated(feelsLow()).send(noMeter);
    twice(treated(t), "recheck after low", "60");
    expect(walk(t).low?.noMeter).toBe(false);
  });
});
