import { describe, expect, it } from "vitest";
import { type BellLevel, bellNow } from "#walk/bell.ts";
import { bring, led, me, odileAlone, odileAt, setClock } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const MINUTE = 60;

function level(t: Table): BellLevel | "none" {
  const { bell } = me(t);
  return bell ? bellNow(bell, t.now, t.state.doubt === null).level : "none";
}

/** Minutes after the insulin at which silence was written down. */
const written = (t: Table) => t.facts.flatMap((f) => (f.readable && f.event.type === "bell not answered" ? [f.event.minutes] : []));

/** The app's own tick, minute by minute on a clock that only the test moves. */
function minutes(t: Table, n: number): (BellLevel | "none")[] {
  return Array.from({ length: n }, () => {
    t.pass(MINUTE);
    t.send({ do: "pass time" });
    return level(t);
  });
}

describe("the meal bell (promise 7)", () => {
  it("is quiet until the earliest minute, then calling, insistent, and loud from the latest minute on", () => {
    const heard = minutes(odileAt("eat"), 20);
    expect(heard.slice(0, 4)).toEqual(["quiet", "quiet", "quiet", "quiet"]);
    expect(heard.slice(4, 9)).toEqual(["calling", "calling", "calling", "calling", "calling"]);
    expect(heard.slice(9, 14)).toEqual(["insistent", "insistent", "insistent", "insistent", "insistent"]);
    expect(heard.slice(14)).toEqual(Array.from({ length: 6 }, () => "loud"));
  });

  it("writes the silence down at once and again later, each time once", () => {
    const t = odileAt("eat");
    minutes(t, 80);
    expect(written(t)).toEqual([0, 5, 15, 30, 60]);
    expect(level(t)).toBe("loud");
  });

  it("is due at once after a start of the app, while nobody can say how long ago the insulin was", () => {
    const t = odileAt("eat");
    t.pass(2 * MINUTE);
    t.restart();
    expect(level(t)).toBe("loud");
    expect(t.step()).toBe("eat");
  });

  it("is not lost by leaving, by a start of the app or by folding the log anew", () => {
    const t = odileAt("eat").send({ do: "leave" });
    t.restart();
    expect(me(t).bell).not.toBeNull();
    t.pass(20 * MINUTE);
    t.send({ do: "pass time" });
    expect(level(t)).toBe("loud");
    t.send({ do: "turn to", person: "odile" });
    expect(t.step()).toBe("eat");
  });

  it("is ended by eating and by not being able to eat, and by nothing else", () => {
    const t = odileAt("eat");
    t.pass(30 * MINUTE);
    for (const intent of [
      { do: "pass time" },
      { do: "report", mishap: "something else" },
      { do: "heard mishap advice" },
      { do: "report", mishap: "feeling ill" },
      { do: "danger signs", any: false },
      { do: "leave" },
      { do: "turn to", person: "odile" },
    ] as const) {
      t.send(intent);
      expect(level(t), intent.do).toBe("loud");
    }
    expect(led(odileAt("eat"), { do: "eating" })).toEqual(["eating"]);
    expect(level(odileAt("eat").send({ do: "eating" }))).toBe("none");
    expect(level(odileAt("eat").send({ do: "cannot eat" }))).toBe("none");
    // What an ill day asks lies over eating: once it is done with, eating is asked for again.
    t.send({ do: "no meter" }, { do: "heard ill advice" }, { do: "heard ill advice" }, { do: "finish ill" });
    expect(t.step()).toBe("eat");
    expect(led(t, { do: "finish" })).not.toContain("walk ended");
    expect(level(t)).toBe("loud");
  });

  it("comes early rather than late when the tablet slept: the wall clock went on, the other stood still", () => {
    const t = odileAt("eat");
    setClock(t, 40 * MINUTE);
    expect(led(t, { do: "pass time" })).toContain("clock doubted");
    expect(level(t)).toBe("loud");
  });

  it("counts from the end of the hold, however late that is said", () => {
    const t = odileAt("inject").send({ do: "button is down" });
    t.pass(16 * MINUTE);
    t.send({ do: "wait is over" }, { do: "window is at zero" });
    expect(level(t)).toBe("loud");
  });

  it("counts from the opening of the needle step where nobody saw the needle go in", () => {
    const t = odileAt("inject");
    t.restart(16 * MINUTE);
    t.send({ do: "needle went in", answer: "yes" }, { do: "window is at zero" }, { do: "put away" });
    expect(level(t)).toBe("loud");
  });

  it("goes with the dose when the needle did not go in", () => {
    const t = odileAt("inject");
    t.restart();
    t.send({ do: "needle went in", answer: "no" });
    expect(level(t)).toBe("none");
  });

  it("is not set where the card says after eating and the meal was eaten", () => {
    const t = bring(odileAlone({ timing: { when: "after eating", earliestMinutes: 0, latestMinutes: 30 } }), "card").send({
      do: "heard dose",
    });
    expect(t.step()).toBe("eat first");
    bring(t.send({ do: "meal eaten first" }), "put away");
    expect(level(t)).toBe("none");
    t.send({ do: "put away" });
    expect(t.step()).toBe("done");
  });
});
