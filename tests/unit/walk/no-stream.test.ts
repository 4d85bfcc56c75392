import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sayWalk } from "#words/en/steps.ts";
import { me, odileAt, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const fitted = { do: "needle fitted" } as const;
const none = { do: "primed", stream: false } as const;
const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];

/** Tested so many times without a stream. */
function dry(times: number): Table {
  const t = odileAt("pen").send(
    { do: "pick pen", pen: "odile-meal", how: "mark" },
    { do: "insulin looks", look: "as it should be" },
    fitted,
  );
  for (let i = 0; i < times; i++) {
    if (doing(t).includes("needle fitted")) t.send(fitted);
    t.try(none);
  }
  return t;
}

describe("no stream", () => {
  it("once: the pen is tested again", () => {
    const t = dry(1);
    expect(doing(t)).toContain("primed");
    expect(doing(t)).not.toContain("needle fitted");
  });

  it("two times: a new needle, and the words say so", () => {
    const t = dry(2);
    expect(doing(t)).toContain("needle fitted");
    expect(doing(t)).not.toContain("primed");
    expect(lines(t)).toEqual(["No stream two times. Take the needle off.", "New needle. Both caps off."]);
  });

  it("three times: nothing is injected, and the clinic's number is said", () => {
    const t = dry(3);
    expect(doing(t)).not.toContain("primed");
    expect(doing(t)).not.toContain("needle fitted");
    expect(doing(t)).toContain("leave");
    expect(lines(t)).toContain("Call Harbour Clinic: 555 0142.");
    expect(t.try(none).refusal?.no).toBe("not offered here");
  });

  it("three times, then another pen is picked: it is tested from the start", () => {
    const t = dry(3).send({ do: "back" });
    expect(doing(t)).toContain("pick pen");
    expect(walk(t).penCheck.dry).toBe(0);
  });

  it("a stream after two times goes on", () => {
    const t = dry(2).send(fitted, { do: "primed", stream: true });
    expect(t.step()).toBe("dial");
    // Each test takes its units out of the pen.
    expect(me(t).pens[0]?.used).toBe(6);
  });
});
