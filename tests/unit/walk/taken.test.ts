import { describe, expect, it } from "vitest";
import type { Fact } from "#walk/fold.ts";
import { fold } from "#walk/fold.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, led, me, odileAlone, odileAt, setClock, walk } from "../../kit/explore/at-table.ts";
import { bandsCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const open = { do: "open meal", person: "odile", meal: "breakfast" } as const;
const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [JSON.stringify(o.intent)] : []));
const HOUR = 3600;

/** A row of the log that nobody can read, found at the next start. */
function loseRow(t: Table, wall: number | null): void {
  const lost: Fact = { readable: false, seq: t.state.lastSeq + 1, wall };
  t.facts.push(lost);
  t.state = fold(t.state, lost);
  t.restart();
}

const finished = () => bring(odileAlone(), "done").send({ do: "finish" });

describe("taken already? (promise 10)", () => {
  it("is not asked while the log can vouch for the whole window", () => {
    const t = odileAlone().send(open);
    expect(t.step()).toBe("wash");
    expect(walk(t).taken?.how).toBe("log is clear");
  });

  it("says a dose inside the window, and the way on is only a recorded: the first was not taken", () => {
    const t = finished();
    t.pass(HOUR);
    t.send(open);
    expect(t.step()).toBe("taken");
    expect(doing(t)).not.toContain(JSON.stringify({ do: "answer taken", answer: "no" }));
    t.send({ do: "the first was not taken" });
    expect(t.step()).toBe("wash");
    expect(t.types()).toContain("taken answered");
  });

  it("takes the window to the minute: inside at 179, free at 180", () => {
    const t = finished();
    t.pass(180 * 60 - 11 * 60);
    expect(t.send(open).step()).toBe("taken");
    const free = finished();
    free.pass(180 * 60);
    expect(free.send(open).step()).toBe("wash");
  });

  it("I do not know ends without a dose, as a near miss", () => {
    const t = odileAlone();
    setClock(t, -HOUR);
    t.send(open, { do: "agree clock" });
    expect(t.step()).toBe("taken");
    expect(led(t, { do: "answer taken", answer: "do not know" })).toEqual(["near miss", "walk ended"]);
    expect(t.types()).not.toContain("dose told");
  });

  it("yes is kept as a dose of unknown size, and holds for the window and no longer", () => {
    const t = odileAlone();
    setClock(t, -HOUR);
    t.send(open, { do: "agree clock" }, { do: "answer taken", answer: "yes" });
    expect(me(t).doses[0]).toMatchObject({ units: null, agoMinutes: null });
    t.pass(179 * 60);
    expect(t.send(open).step()).toBe("taken");
    t.send({ do: "leave" }, { do: "set aside", person: "odile" });
    t.pass(60);
    expect(t.send(open).step()).toBe("wash");
  });

  it("is asked after set-up, a day away, and a clock that was set", () => {
    const away = odileAlone();
    away.pass(25 * HOUR);
    expect(away.send(open).step()).toBe("taken");
    const set = odileAlone();
    setClock(set, 2 * HOUR);
    expect(set.send(open, { do: "agree clock" }).step()).toBe("taken");
  });

  it("is asked after a day away with the question open on the screen", () => {
    const t = finished();
    t.pass(HOUR);
    t.send(open);
    t.pass(25 * HOUR);
    expect(led(t, { do: "pass time" })).toEqual([]);
    expect(doing(t)).toContain(JSON.stringify({ do: "answer taken", answer: "do not know" }));
  });

  it("is asked again when a walk goes on after a day away", () => {
    const t = odileAt("wash");
    t.pass(25 * HOUR);
    t.send({ do: "already washed" });
    expect(t.step()).toBe("taken");
  });

  it("is asked again in the middle of a walk when a row cannot be read: it may have been a dose", () => {
    for (const stop of ["wash", "plate", "pen", "skin"] as const) {
      const t = odileAt(stop);
      loseRow(t, t.now.wall);
      t.send({ do: "agree clock" });
      expect(t.step(), stop).toBe("taken");
      expect(doing(t)).toContain(JSON.stringify({ do: "answer taken", answer: "no" }));
      expect(walk(t).injectOpened).toBeNull();
    }
  });

  it("takes a row without a readable time as lying just before the next one", () => {
    const t = odileAlone();
    loseRow(t, null);
    t.pass(179 * 60);
    expect(t.send(open, { do: "agree clock" }).step()).toBe("taken");
  });

  it("is asked again in the middle of a walk when the clock was doubted", () => {
    const t = odileAt("pen");
    setClock(t, -HOUR);
    t.send({ do: "pass time" }, { do: "agree clock" });
    expect(t.step()).toBe("taken");
  });

  it("after a start of the app goes on where the walk was, since the log is still clear", () => {
    const t = odileAt("pen");
    t.restart();
    t.send({ do: "agree clock" });
    expect(t.step()).toBe("pen");
  });

  it("a dose told later counts from an hour after what was said, since hours are only told roughly", () => {
    const t = odileAlone().send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo: 120 });
    t.pass(119 * 60);
    expect(t.send(open).step()).toBe("taken");
    const long = odileAlone().send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo: 120 });
    long.pass(120 * 60);
    expect(long.send(open).step()).toBe("wash");
  });

  it("a dose told as three hours ago does not free a window of three hours, and one of four hours does", () => {
    const three = odileAlone().send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo: 180 }, open);
    expect(three.step()).toBe("taken");
    expect(doing(three)).not.toContain(JSON.stringify({ do: "answer taken", answer: "no" }));
    expect(sayWalk(three.state, three.now, GUARDS)?.lines[0]).toContain("4 units went in 3 hours ago");
    expect(odileAlone().send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo: 240 }, open).step()).toBe("wash");
  });

  it("a dose told roughly keeps the correction off for the whole spacing after its latest time", () => {
    const card = { meals: bandsCard.meals, spacingMinutes: 240 };
    const t = odileAlone(card).send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo: 240 });
    t.pass(30 * 60);
    expect(walk(bring(bring(t, "reading").number("reading", "200"), "card")).told?.units).toBe(4);
  });

  it("a window that the card left blank hides no dose that may still act", () => {
    const t = bring(odileAlone({ windowMinutes: null }).send(open, { do: "answer taken", answer: "no" }), "card");
    expect(walk(t).silent?.detail).toContain("windowMinutes");
    const again = odileAlone({ windowMinutes: null }).send({ do: "tell a dose later", person: "odile", units: 4, minutesAgo: 60 }, open);
    expect(doing(again)).not.toContain(JSON.stringify({ do: "answer taken", answer: "no" }));
    expect(sayWalk(again.state, again.now, GUARDS)?.lines[0]).toContain("4 units went in");
    again.send({ do: "leave" }, { do: "set aside", person: "odile" });
    again.pass(12 * HOUR);
    expect(doing(again.send(open))).toContain(JSON.stringify({ do: "answer taken", answer: "no" }));
  });

  it("a dose told later is refused with numbers that no pen and no clock can show, and nothing is stored", () => {
    for (const [units, minutesAgo] of [
      [1800, 10],
      [-4, 10],
      [4, -60],
      [4, 9000],
      [Number.NaN, 10],
    ] as const) {
      const t = odileAlone();
      const decision = t.try({ do: "tell a dose later", person: "odile", units, minutesAgo });
      expect(decision.refusal?.no, `${units} ${minutesAgo}`).toBe("units");
      expect(decision.facts).toEqual([]);
    }
  });

  it("the needle step is opened once in a walk and no second time without a no", () => {
    const t = odileAt("inject");
    expect(t.types().filter((type) => type === "inject opened")).toHaveLength(1);
    t.restart();
    t.send({ do: "needle went in", answer: "not sure" }, { do: "heard mishap advice" }, { do: "put away" }, { do: "eating" });
    expect(t.types().filter((type) => type === "inject opened")).toHaveLength(1);
    t.send({ do: "finish" }, open);
    expect(t.step()).toBe("taken");
    expect(doing(t)).not.toContain(JSON.stringify({ do: "answer taken", answer: "no" }));
  });
});
