import { describe, expect, it } from "vitest";
import { waitLeft } from "#walk/context.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sceneKey } from "#walk/scene-key.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { sayWalk } from "#words/en/steps.ts";
import { odileAt, setClock, twice, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const tablets = sugarsOffered()[0] ?? { food: { id: "none" }, grams: 0 };
const sugar = { do: "took sugar", food: tablets.food.id, grams: tablets.grams } as const;
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];
const left = (t: Table) => waitLeft(walk(t), t.now, t.state.doubt === null);

/** Five minutes into the wait after sugar. */
function waiting(): Table {
  const t = twice(odileAt("reading"), "reading", "62").send(sugar);
  t.pass(5 * 60);
  return t;
}

describe("the wait of a low while the clock is in doubt", () => {
  for (const [name, doubt] of [
    ["the clock was set", (t: Table) => setClock(t, -3600)],
    ["the app started again", (t: Table) => t.restart()],
  ] as const) {
    it(`shows no countdown, says that the time is not sure, and asks for a reading: ${name}`, () => {
      const t = waiting();
      expect(left(t)).toBe(600_000);
      expect(lines(t)).toContain("Then measure again.");
      const before = sceneKey(t.state, t.now);
      doubt(t);
      t.send({ do: "pass time" });
      expect(left(t)).toBe(0);
      expect(lines(t)[0]).toBe("The time is not sure.");
      expect(lines(t)).toContain("Measure again. Say or press the number.");
      expect(sceneKey(t.state, t.now)).not.toBe(before);
      expect(offers(t.state, t.now).some((o) => o.offer === "number" && o.slot === "recheck after low")).toBe(true);
    });
  }

  it("ends no low on a good number that came too early by the clock that still ticks: it is asked for again", () => {
    const t = waiting();
    setClock(t, -3600);
    t.number("recheck after low", "110");
    expect(t.step()).toBe("low");
    expect(lines(t)[0]).toBe("The time is not sure.");
    t.pass(10 * 60);
    t.number("recheck after low", "110");
    expect(walk(t).low).toBeNull();
  });
});
