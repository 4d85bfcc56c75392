import { describe, expect, it } from "vitest";
import { offers } from "#walk/offers.ts";
import { open, withNight } from "../../kit/background-walk.ts";
import { me, twice, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const begun = (): Table => withNight().send({ do: "open reading", person: "odile" }, { do: "already washed" });
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

  it("asks for a new strip at HI, and believes it the second time", () => {
    const t = begun().send(HI);
    expect(t.step()).toBe("reading");
    expect(t.send({ do: "change number" }, HI).step()).toBe("ill");
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
