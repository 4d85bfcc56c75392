import { describe, expect, it } from "vitest";
import { waitLeft } from "#walk/context.ts";
import { type Fact, fold } from "#walk/fold.ts";
import { emptyHouse, type HouseState, stepOf } from "#walk/state.ts";
import { bring, odileAlone, odileAt } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const copy = <T>(value: T): T => JSON.parse(JSON.stringify(value));

const foldAll = (facts: readonly Fact[], from: HouseState = emptyHouse): HouseState => facts.reduce(fold, from);

const stands = (house: HouseState, t: Table) => {
  const walk = house.people["odile"]?.walk;
  return walk ? [stepOf(walk), walk.wait, waitLeft(walk, t.now, true)] : "kitchen";
};

/** A whole meal with a wiped skin, so that the log holds waits too. */
function meal(): Table {
  const t = bring(odileAlone(), "skin").send({ do: "skin cleaned", how: "wiped" });
  t.pass(20);
  t.send({ do: "wait is over" });
  return bring(t, "done").send({ do: "finish" });
}

describe("a cut at any event (mistake 23)", () => {
  it("leads to the same step and the same wait, from the log or from a checkpoint", () => {
    const t = meal();
    let live = foldAll([]);
    for (let n = 1; n <= t.facts.length; n++) {
      const head = t.facts.slice(0, n);
      const last = head.at(-1);
      if (last) live = fold(live, last);
      expect(stands(foldAll(copy(head)), t), `row ${n}`).toEqual(stands(live, t));
      expect(copy(foldAll(copy(t.facts.slice(n)), copy(live))), `checkpoint at ${n}`).toEqual(copy(t.state));
    }
  });

  it("leaves the same wait running", () => {
    const t = odileAt("skin").send({ do: "skin cleaned", how: "wiped" });
    t.pass(7);
    const again = foldAll(copy(t.facts)).people["odile"]?.walk;
    expect(again && waitLeft(again, t.now, true)).toBe(13_000);
  });

  it("with any one row of the walk unreadable never takes the log for clear inside the window", () => {
    const t = meal();
    const opened = t.facts.findIndex((f) => f.readable && f.event.type === "walk opened");
    for (let n = opened; n < t.facts.length; n++) {
      const rows = t.facts.map((f, i): Fact => (i === n && f.readable ? { readable: false, seq: f.seq, wall: f.at.wall } : f));
      const u = odileAlone();
      u.now = t.now;
      u.state = foldAll(rows);
      u.restart();
      const types = [...u.try({ do: "open meal", person: "odile", meal: "lunch" }).facts, ...u.try({ do: "agree clock" }).facts].map((f) =>
        f.event.type === "taken answered" ? f.event.how : f.event.type,
      );
      expect(types, `row ${n}`).not.toContain("log is clear");
      expect(types, `row ${n}`).not.toContain("inject opened");
    }
  });
});
