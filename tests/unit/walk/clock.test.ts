import { describe, expect, it } from "vitest";
import { offers } from "#walk/offers.ts";
import { bring, led, me, odileAlone, odileAt, setClock, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const open = { do: "open meal", person: "odile", meal: "breakfast" } as const;
const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
const hours = (n: number) => n * 3600;

describe("doubtful time (promise 14)", () => {
  it("is seen when the wall clock falls behind the last entry, jumps ahead, or the app starts again", () => {
    for (const seconds of [-3600, -2, hours(2), 31]) {
      const t = odileAt("wash");
      setClock(t, seconds);
      expect(led(t, { do: "pass time" }), `${seconds} s`).toContain("clock doubted");
    }
    const wobble = odileAt("wash");
    setClock(wobble, -1);
    expect(led(wobble, { do: "pass time" })).toEqual([]);
    const again = odileAt("wash");
    again.restart();
    expect(again.state.doubt).toBe("restart");
  });

  it("is seen when the tablet moves to another time zone: day, bedtime and the last dose are looked at again", () => {
    const t = odileAt("dial");
    t.now = { ...t.now, zone: "Europe/Paris", offset: 120 };
    expect(led(t, { do: "pass time" })).toContain("clock doubted");
    expect(t.state.doubt).toBe("another time zone");
    expect(doing(t)).toEqual(["agree clock", "doubt clock", "leave"]);
    expect(led(t, { do: "agree clock" })).toContain("clock agreed");
    expect(t.step()).toBe("taken");
    // Agreed once, it is not asked about again.
    expect(led(t, { do: "pass time" })).toEqual([]);
  });

  it("asks for day and time before any step before the needle goes on", () => {
    for (const stop of ["wash", "reading", "plate", "card", "pen", "dial", "place", "skin"] as const) {
      const t = odileAt(stop);
      setClock(t, hours(-1));
      t.send({ do: "pass time" });
      expect(doing(t), stop).toEqual(["agree clock", "doubt clock", "leave"]);
    }
  });

  it("stays doubtful when the person says no", () => {
    const t = odileAt("pen");
    setClock(t, hours(-1));
    t.send({ do: "pass time" }, { do: "doubt clock" });
    expect(doing(t)).toEqual(["agree clock", "doubt clock", "leave"]);
  });

  it("does not stand between the person and the needle that is in", () => {
    const t = odileAt("inject").send({ do: "button is down" });
    setClock(t, hours(-1));
    t.pass(10);
    t.send({ do: "wait is over" }, { do: "window is at zero" });
    expect(t.step()).toBe("put away");
  });

  it("ends no wait: the drying of the skin is over only once day and time were agreed", () => {
    const t = odileAt("skin").send({ do: "skin cleaned", how: "wiped" });
    t.restart(60);
    expect(doing(t)).not.toContain("wait is over");
    t.send({ do: "agree clock" });
    expect(doing(t)).toContain("wait is over");
    t.send({ do: "wait is over" });
    expect(t.step()).toBe("inject");
  });

  it("frees no second meal: a jump forward beyond the window leaves the question open", () => {
    const t = bring(odileAlone(), "done").send({ do: "finish" });
    setClock(t, hours(5));
    t.send(open, { do: "agree clock" });
    expect(t.step()).toBe("taken");
    expect(doing(t)).toContain("the first was not taken");
  });

  it("tells no correction: a dose of an earlier start of the app counts as just now until the clock was agreed", () => {
    const t = bring(odileAlone(), "done").send({ do: "finish" });
    t.restart(10 * 3600);
    expect(t.state.doubt).toBe("restart");
    t.send(open);
    expect(doing(t)).toEqual(["agree clock", "doubt clock", "leave"]);
    t.send({ do: "agree clock" });
    expect(t.step()).toBe("wash");
  });

  it("lets go of no dose and of no lost row: a clock three days ahead forgets nothing", () => {
    const t = bring(odileAlone(), "done").send({ do: "finish" });
    setClock(t, hours(72));
    t.send({ do: "tell a dose later", person: "odile", units: 2, minutesAgo: 10 });
    setClock(t, hours(-72));
    expect(me(t).doses.map((d) => d.units)).toEqual([2, 6]);
    t.send(open, { do: "agree clock" });
    expect(t.step()).toBe("taken");
  });

  it("lets a dose go two days after it, by clocks that agree", () => {
    const t = bring(odileAlone(), "done").send({ do: "finish" });
    t.pass(hours(49));
    t.send({ do: "tell a dose later", person: "odile", units: 2, minutesAgo: 10 });
    expect(me(t).doses.map((d) => d.units)).toEqual([2]);
  });

  it("sees the clock being set after a start of the app too: the log is not clear across it", () => {
    const t = bring(odileAlone(), "done").send({ do: "finish" });
    t.restart();
    setClock(t, hours(4));
    t.send(open, { do: "agree clock" });
    expect(t.step()).toBe("taken");
  });

  it("makes the bell due, however little time has passed", () => {
    const t = odileAt("eat");
    setClock(t, hours(-1));
    expect(led(t, { do: "pass time" })).toEqual(["clock doubted", "bell not answered"]);
  });

  it("takes a slow drift of the wall clock for no jump", () => {
    const t = odileAt("wash");
    for (let i = 0; i < 20; i++) {
      t.pass(60);
      setClock(t, 5);
      t.send({ do: "begin wait" }, { do: "back" });
    }
    expect(t.state.doubt).toBeNull();
    expect(walk(t).wash).toBeNull();
  });
});
