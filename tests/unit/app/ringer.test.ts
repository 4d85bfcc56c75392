import { describe, expect, it } from "vitest";
import { Ringer } from "#app/ringer.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const injected = (t: Table) =>
  t
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send(
      { do: "exercise", hard: false },
      { do: "meal is ready" },
      { do: "heard dose" },
      { do: "pick pen", pen: "odile-meal", how: "mark" },
    )
    .send({ do: "insulin looks", look: "as it should be" }, { do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6")
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" }, { do: "button is down" });

const table = () =>
  new Table([
    { person: odile, card: fixedCard, pens: [odilePen] },
    { person: bram, card: ratioCard, pens: [bramPen] },
  ]);

describe("the bell's own clock", () => {
  it("is quiet until the earliest minute, then calls every two minutes, each minute, each half minute", () => {
    const t = injected(table());
    t.pass(10);
    t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    const ringer = new Ringer();
    const rings: string[] = [];
    for (let s = 0; s < 17 * 60; s++) {
      for (const r of ringer.due(t.state, t.now, false)) rings.push(`${r.level} ${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}`);
      t.pass(1);
    }
    // Card: earliest 5, latest 15 minutes after the injection; half-way is 10.
    expect(rings.slice(0, 4)).toEqual(["calling 5:00", "calling 7:00", "calling 9:00", "insistent 10:00"]);
    expect(rings.filter((r) => r.startsWith("insistent"))).toHaveLength(5);
    expect(rings.filter((r) => r.startsWith("loud"))).toEqual(["loud 15:00", "loud 15:30", "loud 16:00", "loud 16:30"]);
  });

  it("rings at once after a start of the app, when it is due", () => {
    const t = injected(table());
    t.pass(10);
    t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    t.pass(6 * 60);
    t.restart();
    expect(new Ringer().due(t.state, t.now, false)).toEqual([{ person: "odile", kind: "meal bell, loud", level: "loud" }]);
    t.send({ do: "eating" });
    expect(new Ringer().due(t.state, t.now, false)).toEqual([]);
  });

  it("comes into another person's walk only at the edge of a step, and never at the needle", () => {
    const t = injected(table());
    t.pass(10);
    t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" }, { do: "leave" });
    t.send({ do: "open meal", person: "bram", meal: "breakfast" });
    t.pass(6 * 60);
    const ringer = new Ringer();
    t.send({ do: "already washed" });
    expect(ringer.due(t.state, t.now, false)).toEqual([]);
    expect(ringer.due(t.state, t.now, true)).toEqual([{ person: "odile", kind: "meal bell, calling", level: "calling" }]);
  });
});
