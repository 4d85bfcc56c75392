import { describe, expect, it } from "vitest";
import { offers } from "#walk/offers.ts";
import { sayInjected } from "#words/en/daybook.ts";
import { bring, me, odileAlone, odileAt, twice, walk } from "../../kit/explore/at-table.ts";
import { bandsCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
const comeBack: readonly [string, (t: Table) => void][] = [
  ["a start of the app", (t) => t.restart()],
  ["leaving", (t) => void t.send({ do: "leave" }, { do: "turn to", person: "odile" })],
];
const asked = (how: (t: Table) => void): Table => {
  const t = odileAt("inject");
  how(t);
  return t;
};

describe("Did the needle go in? (promise 11, mistake 23)", () => {
  for (const [name, how] of comeBack) {
    it(`is the only question after ${name}, and injecting is not offered`, () => {
      const t = asked(how);
      expect(t.step()).toBe("needle question");
      expect(doing(t)).not.toContain("button is down");
      expect(doing(t).filter((d) => d === "needle went in")).toHaveLength(3);
    });
    it(`counts as taken after ${name} until the answer is no`, () => {
      const t = asked(how);
      expect(me(t).doses).toHaveLength(1);
      expect(me(t).bell).not.toBeNull();
      t.send({ do: "needle went in", answer: "no" });
      expect(me(t)).toMatchObject({ doses: [], bell: null, uses: [] });
      expect(walk(t)).toMatchObject({ dial: null, injectOpened: null });
    });
  }

  it.each(["no", "yes"] as const)("stands before the advice that was being read, which comes after a %s", (answer) => {
    for (const [, how] of comeBack) {
      const t = odileAt("inject").send({ do: "report", mishap: "half eaten" });
      expect(t.step()).toBe("mishap");
      how(t);
      expect(t.step()).toBe("needle question");
      expect(doing(t)).not.toContain("heard mishap advice");
      t.send({ do: "needle went in", answer });
      expect(t.step()).toBe("mishap");
      t.send({ do: "heard mishap advice" });
      expect(doing(t).includes("button is down")).toBe(false);
      expect(me(t).doses).toHaveLength(answer === "yes" ? 1 : 0);
    }
  });

  it("waits for a low that was said or read at the needle, and is asked when the low is over (promise 13)", () => {
    const read = odileAt("inject").send({ do: "report", mishap: "feeling ill" }, { do: "needle went in", answer: "yes" });
    twice(read.send({ do: "danger signs", any: false }), "reading when ill", "62").restart();
    const said = asked((t) => t.restart()).send({ do: "open low", person: "odile" });
    for (const t of [read, said]) {
      expect(t.step()).toBe("low");
      expect(doing(t)).not.toContain("button is down");
      t.send({ do: "took sugar", food: "glucose-tablets", grams: 16 });
      t.pass(15 * 60);
      t.number("recheck after low", "110");
      expect(t.step()).toBe("needle question");
    }
  });

  it("yes goes on to the window; not sure is the mishap and a dose of unknown size", () => {
    const yes = asked((t) => t.restart()).send({ do: "needle went in", answer: "yes" });
    expect(doing(yes)).toContain("window is at zero");
    const unsure = asked((t) => t.restart()).send({ do: "needle went in", answer: "not sure" });
    expect(unsure.step()).toBe("mishap");
    expect(walk(unsure).injected).toMatchObject({ units: null, certain: false });
    unsure.send({ do: "heard mishap advice" });
    expect(doing(unsure)).not.toContain("button is down");
    expect(me(unsure).doses).toHaveLength(1);
  });

  it("not sure is stored as insulin that may have gone in, and the day book says so", () => {
    const t = asked((s) => s.restart()).send({ do: "needle went in", answer: "not sure" });
    const stored = t.facts.flatMap((f) => (f.readable && f.event.type === "injected" ? [f.event] : []));
    expect(stored).toMatchObject([{ units: null, left: null, certain: false, pen: "odile-meal" }]);
    expect(stored.flatMap((event) => sayInjected(event, null))).toContain("How much is not certain. It counts as taken.");
    // At its worst the whole dose left the pen: 2 units of priming, 6 of the dose.
    expect(me(t).pens[0]?.used).toBe(8);
  });

  it("not sure counts as a full dose at the next meal: asked about inside the window, no correction inside the spacing", () => {
    const t = bring(odileAlone({ meals: bandsCard.meals, windowMinutes: 60 }), "inject", "4");
    t.restart();
    t.send(
      { do: "needle went in", answer: "not sure" },
      { do: "heard mishap advice" },
      { do: "put away" },
      { do: "eating" },
      { do: "finish" },
    );
    const open = { do: "open meal", person: "odile", meal: "breakfast" } as const;
    expect(t.send(open, { do: "agree clock" }).step()).toBe("taken");
    t.send({ do: "leave" }, { do: "set aside", person: "odile" });
    t.pass(2 * 3600);
    t.send(open);
    const next = bring(bring(t, "reading").number("reading", "200"), "card");
    expect(walk(next).told).toMatchObject({ units: 4, correction: 0 });
  });
});
