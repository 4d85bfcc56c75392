import { describe, expect, it } from "vitest";
import { highBy } from "#rules/glucose/high.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sayWalk } from "#words/en/steps.ts";
import { nightCard, open, withNight } from "../../kit/background-walk.ts";
import { led, me, twice, walk } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const begun = (): Table => withNight().send({ do: "open reading", person: "odile" }, { do: "already washed" });
const said = (t: Table) => sayWalk(t.state, t.now, GUARDS);
const HI = { do: "read word", word: "HI", via: "touch" } as const;

describe("the reading walk", () => {
  it("washes, reads, and is over: no dose is told", () => {
    const t = begun().number("reading", "120");
    expect(t.step()).toBe("done");
    t.send({ do: "finish" });
    expect(t.step()).toBe("kitchen");
    expect(t.types()).not.toContain("dose told");
    expect(me(t)).toMatchObject({ walk: null, doses: [], backgroundDoses: [] });
  });

  it("leads a low to its sugar, and is over with the low", () => {
    const t = begun().send({ do: "read word", word: "LO", via: "touch" });
    expect(t.step()).toBe("low");
    t.send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
    t.pass(15 * 60);
    expect(t.number("recheck after low", "110").step()).toBe("done");
  });

  it("says the card's own words for a high reading, and those of a background walk too", () => {
    for (const t of [begun(), open(withNight()).send({ do: "already washed" })]) {
      twice(t, "reading", "300");
      expect(t.step()).toBe("ill");
      t.send({ do: "heard ill advice" });
      expect(["done", "card"]).toContain(t.step());
      expect(walk(t).highHeard).toBe(true);
    }
    expect(twice(begun(), "reading", "299").step()).toBe("done");
  });

  it("asks for a new strip at HI, believes it the second time, and asks about danger signs then, which silence does not answer", () => {
    const t = begun().send(HI);
    expect(t.step()).toBe("reading");
    expect(t.send({ do: "change number" }, HI).step()).toBe("ill");
    expect(said(t)?.title).toBe("Danger signs");
    t.send({ do: "danger signs", any: false });
    expect(said(t)?.lines).toContain("Call Harbour Clinic: 555 0142 now.");
    const silent = begun().send(HI, { do: "change number" }, HI);
    silent.pass(5 * 60);
    expect(led(silent, { do: "pass time" })).toEqual(["call raised"]);
  });

  it("by a card that names no high takes 240 for one, says that it is the default, and whom to call", () => {
    const blank = { ...nightCard, high: null };
    const at = (text: string) =>
      twice(withNight(blank).send({ do: "open reading", person: "odile" }, { do: "already washed" }), "reading", text);
    const t = at("450");
    expect(said(t)?.lines).toEqual([
      "Your reading is high.",
      "Your card does not say what is high.",
      "This tablet takes 240 and more.",
      "Inject no more than your card says.",
      "Call Harbour Clinic: 555 0142.",
      "It gets worse? Call 911.",
    ]);
    t.send({ do: "heard ill advice" });
    expect(t.step()).toBe("done");
    expect(t.types()).not.toContain("dose told");
    const night = twice(open(withNight(blank)).send({ do: "already washed" }), "reading", "450");
    expect(night.send({ do: "heard ill advice" }).step()).toBe("card");
  });

  it("in a background walk names HI and the clinic beside the dose, when no second strip is tested", () => {
    const t = open(withNight()).send({ do: "already washed" }, HI, { do: "leave out reading" });
    expect(t.step()).toBe("card");
    expect(walk(t).told).toMatchObject({ units: 14 });
    expect(said(t)?.lines).toEqual(expect.arrayContaining(["The meter showed HI.", "Call Harbour Clinic: 555 0142."]));
    expect(said(t)?.short).toContain("The meter showed HI.");
    const without = open(withNight()).send({ do: "already washed" }, { do: "leave out reading" });
    expect(said(without)?.lines).not.toContain("The meter showed HI.");
  });

  it("takes 13.3 for it in millimoles, and no number below", () => {
    const glucose = (value: number, unit: "mg/dL" | "mmol/L") => ({ value, unit });
    const blank = { ...fixedCard, high: null };
    expect([239, 240].map((n) => highBy(blank, glucose(n, "mg/dL")))).toEqual([null, "default"]);
    expect([13.2, 13.3].map((n) => highBy(null, glucose(n, "mmol/L")))).toEqual([null, "default"]);
    expect([299, 300].map((n) => highBy(fixedCard, glucose(n, "mg/dL")))).toEqual([null, "card"]);
    expect(highBy(blank, glucose(20, "mmol/L"))).toBeNull();
  });

  it("can be left, is offered again, and may be set aside", () => {
    const t = begun().send({ do: "leave" });
    const intents = offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
    expect(intents).toEqual(expect.arrayContaining(["turn to", "set aside", "open meal", "open background", "open reading"]));
    expect(t.send({ do: "open background", person: "odile", at: "21:30", insulin: "glargine-100" }).step()).toBe("wash");
  });

  it("tells nothing about a meal when something is wrong", () => {
    const wrongs = offers(begun().state, begun().now).flatMap((o) =>
      o.offer === "press" && o.intent.do === "report" ? [o.intent.mishap] : [],
    );
    expect(wrongs).toContain("too much");
    expect(wrongs).not.toContain("half eaten");
  });
});
