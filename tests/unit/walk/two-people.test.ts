import { describe, expect, it } from "vitest";
import { waitLeft } from "#walk/context.ts";
import { callers, offers } from "#walk/offers.ts";
import { bring, walk } from "../../kit/explore/at-table.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const both = () =>
  new Table([
    { person: odile, card: fixedCard, pens: [odilePen] },
    { person: bram, card: ratioCard, pens: [bramPen] },
  ]);
const calling = (t: Table) => callers(t.state, t.now).map((p) => p.person.id);
const turns = (t: Table) =>
  offers(t.state, t.now).flatMap((o) => (o.offer === "press" && o.intent.do === "turn to" ? [o.intent.person] : []));

/** Bram's low lies open in the kitchen, then Odile's walk is brought to a step. */
const withBramsLow = (to: Parameters<typeof bring>[1]) => bring(both().send({ do: "open low", person: "bram" }, { do: "leave" }), to);

describe("two people in one kitchen", () => {
  it("one walk is in front, and the other keeps its wait", () => {
    const t = withBramsLow("skin").send({ do: "skin cleaned", how: "wiped" }, { do: "turn to", person: "bram" });
    t.pass(5);
    expect(t.state.front).toBe("bram");
    t.send({ do: "leave" }, { do: "turn to", person: "odile" });
    expect(t.step()).toBe("skin");
    expect(waitLeft(walk(t), t.now, true)).toBe(15_000);
  });

  it("a low of the other comes in even between the dial and putting away", () => {
    for (const stop of ["wash", "dial", "skin", "inject", "put away"] as const) expect(turns(withBramsLow(stop)), stop).toContain("bram");
  });

  it("a bell of the other comes in before the dial and after putting away, and never between", () => {
    const start = () => {
      const t = bring(both(), "eat").send({ do: "leave" });
      t.pass(20 * 60);
      return t.send({ do: "open meal", person: "bram", meal: "breakfast" });
    };
    const t = start();
    expect(calling(t)).toEqual(["odile"]);
    t.send({ do: "already washed" }).number("reading", "7.0").send({ do: "exercise", hard: false }).number("grams", "30");
    t.send({ do: "meal is ready" }, { do: "heard dose" }, { do: "pick pen", pen: "bram-meal", how: "mark" });
    t.send({ do: "insulin looks", look: "as it should be" }, { do: "needle fitted" }, { do: "primed", stream: true });
    expect(t.step()).toBe("dial");
    expect(calling(t)).toEqual([]);
    expect(turns(t)).toEqual([]);
  });

  it("the other person's pen stops the walk", () => {
    const t = bring(both(), "pen");
    expect(t.try({ do: "pick pen", pen: "bram-meal", how: "mark" }).refusal).toMatchObject({
      no: "pen",
      reason: { why: "another person's pen" },
      name: "Bram",
    });
    expect(walk(t).penCheck.pen).toBeNull();
  });
});
