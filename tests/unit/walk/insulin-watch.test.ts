// Too much insulin, or the wrong one, is watched whatever walk it was told in. Sources of the hours: printed actions named in rules/glucose/watch.ts.
// An hour between readings is common practice, no source; the minutes of the calls are our choices (walk/insulin-watch.ts).
import { describe, expect, it } from "vitest";
import { Ringer } from "#app/ringer.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import { GUARDS } from "#walk/guards.ts";
import { insulinWatched } from "#walk/insulin-watch.ts";
import { offers } from "#walk/offers.ts";
import { MISHAPS } from "#walk/steps/mishap.ts";
import { sayInsulinWatch, sayInsulinWatchCall, sayWatchScreen } from "#words/en/insulin-watch.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { sayWalk } from "#words/en/steps.ts";
import { me, odileAlone, odileAt } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const sure = (t: Table): boolean => t.state.doubt === null;
const isWatched = (t: Table): boolean => insulinWatched(me(t), t.now, sure(t)) !== null;
const says = (t: Table): string => (sayWalk(t.state, t.now, GUARDS)?.lines ?? []).join(" ");

/** Told in the kitchen, and its advice heard. */
const told = (mishap: MishapKind = "too much", t = odileAlone()): Table =>
  t.send({ do: "open mishap", person: "odile", mishap }, { do: "heard mishap advice" });
const reads = (t: Table, glucose: string): Table =>
  t.send({ do: "open reading", person: "odile" }, { do: "already washed" }).number("reading", glucose);
const goesHome = (t: Table): Table => (t.step() === "kitchen" ? t : t.send({ do: "finish" }));

/** Ticks through so many minutes, as the app does: minute and kind of each ring. */
function rings(t: Table, minutes: number): [number, string][] {
  const ringer = new Ringer();
  const heard: [number, string][] = [];
  for (let minute = 0; minute < minutes; minute++) {
    for (const ring of ringer.due(t.state, t.now, false)) heard.push([minute, ring.kind]);
    t.pass(MINUTE);
    t.try({ do: "pass time" });
  }
  return heard;
}

describe("too much insulin, or the wrong one", () => {
  it.each(MISHAPS)("is watched after those two mishaps and no other: %s", (mishap) => {
    const t = odileAt("eat").send({ do: "report", mishap });
    expect(isWatched(t)).toBe(mishap === "too much" || mishap === "wrong insulin");
  });

  it("is watched from the moment it was told, advice heard or not, in a walk or in the kitchen, over a start of the app", () => {
    expect(isWatched(odileAlone().send({ do: "open mishap", person: "odile", mishap: "too much" }))).toBe(true);
    const t = odileAt("pen").send({ do: "report", mishap: "wrong insulin" }, { do: "leave" });
    t.restart();
    expect(isWatched(t)).toBe(true);
  });

  it("is watched for 6 hours of a rapid insulin, 12 of a regular one, and 24 where the wrong one went in", () => {
    const lasts = (t: Table): number => {
      for (let hours = 0; hours < 48; hours++) {
        t.pass(HOUR - 1);
        if (!isWatched(t)) return hours;
        t.pass(1);
        if (!isWatched(t)) return hours + 1;
      }
      return Number.POSITIVE_INFINITY;
    };
    const regular = { insulin: { ...fixedCard.insulin, kind: "regular" as const } };
    expect(lasts(odileAt("eat").send({ do: "report", mishap: "too much" }))).toBe(6);
    expect(lasts(odileAt("eat", regular).send({ do: "report", mishap: "too much" }))).toBe(12);
    expect(lasts(odileAt("eat").send({ do: "report", mishap: "wrong insulin" }))).toBe(24);
  });

  it("never ends sooner because of a second mishap", () => {
    const t = told("wrong insulin");
    t.pass(HOUR);
    told("too much", t);
    t.pass(20 * HOUR);
    expect(isWatched(t)).toBe(true);
  });

  it("is not over by a clock in doubt", () => {
    const t = told();
    t.pass(20 * HOUR);
    expect(isWatched(t)).toBe(false);
    const doubtful = told();
    doubtful.restart(20 * HOUR);
    expect(isWatched(doubtful)).toBe(true);
  });
});

describe("the readings of the watch", () => {
  it("are due at once, and then an hour after each, which the kitchen says by the clock", () => {
    const t = told();
    expect(dueNow(t.state, t.now)).toContain("Odile, measure now.");
    goesHome(reads(t, "140"));
    expect(sayInsulinWatch(t.state, me(t), t.now)).toEqual([
      "Too much insulin may be in.",
      "Odile, measure again at 1:00 in the afternoon.",
    ]);
    t.pass(HOUR);
    expect(dueNow(t.state, t.now)).toContain("Odile, measure now.");
  });

  it("end neither the watch nor a low: the end of each says that it goes on", () => {
    const good = reads(told(), "140");
    expect(good.step()).toBe("done");
    expect(says(good)).toContain("Too much insulin may be in. Measure again in 1 hour.");
    expect(isWatched(goesHome(good))).toBe(true);

    // Outside the usual band its digits are asked for a second time.
    const low = reads(told(), "60").send(
      { do: "give number", slot: "reading", text: "60", via: "touch", helper: null },
      { do: "took sugar", food: "glucose-tablets", grams: 16 },
    );
    low.pass(15 * MINUTE);
    low.number("recheck after low", "110");
    expect(says(low)).toContain("The low is over. Too much insulin may be in. Measure again in 1 hour.");
    expect(isWatched(goesHome(low))).toBe(true);
    const without = odileAlone().send({ do: "open low", person: "odile" }, { do: "took sugar", food: "glucose-tablets", grams: 16 });
    without.pass(15 * MINUTE);
    expect(says(without.number("recheck after low", "110"))).not.toContain("insulin");
  });

  it("are called for: after 10 minutes, every 2 minutes, after half an hour loud and each minute, for an hour", () => {
    const heard = rings(told(), 120);
    const calm = heard.filter(([, kind]) => kind === "insulin watch").map(([minute]) => minute);
    const loud = heard.filter(([, kind]) => kind === "insulin watch, no answer").map(([minute]) => minute);
    expect(calm).toEqual([10, 12, 14, 16, 18, 20, 22, 24, 26, 28]);
    expect(loud).toEqual(Array.from({ length: 60 }, (_, i) => 30 + i));
    expect(heard).toHaveLength(70);
  });

  it("are called for an hour after the last one, in the quiet hours too, and not before", () => {
    const t = goesHome(reads(told("wrong insulin"), "140"));
    t.state = {
      ...t.state,
      household: { kind: "home", emergencyNumber: "911", country: "US", quietHours: { from: "12:00", until: "18:00" } },
    };
    expect(rings(t, 63).map(([minute]) => minute)).toEqual([60, 62]);
  });

  it("keep silent while that walk is in front and answered", () => {
    const t = told();
    t.pass(12 * MINUTE);
    t.send({ do: "open reading", person: "odile" });
    expect(new Ringer().due(t.state, t.now, true)).toEqual([]);
  });

  it("call the house once nobody answers, or where nobody hears, name the number", () => {
    const t = told();
    t.pass(11 * MINUTE);
    expect(sayInsulinWatchCall(t.state, me(t), t.now)).toBe("Odile, measure now. Insulin is still working.");
    t.pass(30 * MINUTE);
    expect(sayInsulinWatchCall(t.state, me(t), t.now)).toBe("Odile, measure now. The number to call: 911.");
    t.state = {
      ...t.state,
      household: {
        kind: "home",
        emergencyNumber: "911",
        country: "US",
        hearer: { who: "always" },
      },
    };
    expect(sayInsulinWatchCall(t.state, me(t), t.now)).toBe("Odile does not answer. Come and look now.");
  });
});

describe("a doctor who watches", () => {
  const given = { do: "doctor watches", person: "odile" } as const;
  const isOffered = (t: Table): boolean => offers(t.state, t.now).some((o) => o.offer === "press" && o.intent.do === "doctor watches");

  it("ends the calls once somebody says so, and is offered only while there is a watch", () => {
    expect(isOffered(odileAlone())).toBe(false);
    const t = told();
    expect(sayWatchScreen(t.state, me(t), t.now)).toContain("Measure each hour until 6:00 in the evening.");
    expect(isOffered(t)).toBe(true);
    t.send(given);
    expect(isWatched(t)).toBe(false);
    expect(isOffered(t)).toBe(false);
    expect(rings(t, 90)).toEqual([]);
  });
});
