// The alert ladder as a whole. Levels and pauses are our own; that a low comes before all, and that a bell belongs to insulin that is in, are promises 7 and 13.
import { describe, expect, it } from "vitest";
import { Ringer } from "#app/ringer.ts";
import { ALERTS, type AlertKind, isMoreUrgent } from "#walk/alerts.ts";
import { me } from "../../kit/explore/at-table.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const ORDER: readonly AlertKind[] = [
  "low, call raised",
  "danger sign, call raised",
  "meal bell, loud",
  "insulin watch, no answer",
  "meal bell, insistent",
  "insulin watch",
  "meal bell, calling",
  "reminder",
  "wait is over",
];

describe("the alert ladder", () => {
  it("has one order, the low on top and what was only noted at the bottom", () => {
    expect(ALERTS.map(({ kind }) => kind)).toEqual(ORDER);
    for (const [i, a] of ORDER.entries()) for (const [j, b] of ORDER.entries()) expect(isMoreUrgent(a, b), `${a} before ${b}`).toBe(i < j);
  });

  it("never falls in level on the way up, and calls more often the more urgent it is", () => {
    for (let i = 1; i < ALERTS.length; i++) {
      const [upper, lower] = [ALERTS[i - 1], ALERTS[i]];
      expect(upper?.level).toBeGreaterThanOrEqual(lower?.level ?? 0);
      expect(upper?.everySeconds ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(lower?.everySeconds ?? Number.POSITIVE_INFINITY);
    }
  });

  it("gives one tone to a level, and the loud one to level 3 alone", () => {
    expect(ALERTS.map(({ level, tone }) => [level, tone])).toEqual([
      [3, "loud"],
      [3, "loud"],
      [3, "loud"],
      [3, "loud"],
      [2, "insistent"],
      [2, "insistent"],
      [1, "calling"],
      [1, "calling"],
      [0, "note"],
    ]);
  });

  it("lets the quiet hours silence reminders and nothing else, and calls the house at level 3 alone", () => {
    expect(ALERTS.filter(({ inQuietHours }) => inQuietHours === "silent").map(({ kind }) => kind)).toEqual(["reminder"]);
    for (const { level, saidTo } of ALERTS) expect(saidTo === "the person and the house").toBe(level === 3);
  });

  it("repeats nothing below a meal bell: fatigue takes the ear off the calls that matter", () => {
    expect(ALERTS.filter(({ everySeconds }) => everySeconds === null).map(({ kind }) => kind)).toEqual(["reminder", "wait is over"]);
  });
});

const table = () =>
  new Table([
    { person: odile, card: fixedCard, pens: [odilePen] },
    { person: bram, card: ratioCard, pens: [bramPen] },
  ]);
const bell = (person: "odile" | "bram", t: Table) => {
  const p = t.state.people[person];
  if (!p) throw new Error(person);
  const of = { walk: `of ${person}`, from: t.now, earliestMs: 0, latestMs: 15 * 60_000, unansweredMinutes: -1 };
  t.state = { ...t.state, people: { ...t.state.people, [person]: { ...p, bell: of } } };
  return t;
};

describe("the tablet's voice", () => {
  it("is one: two bells at once sound one after the other, and each sounds", () => {
    const t = bell("bram", bell("odile", table()));
    const ringer = new Ringer();
    const rung: [second: number, person: string][] = [];
    for (let s = 0; s < 20 * 60; s++) {
      const now = ringer.due(t.state, t.now, false);
      expect(now.length).toBeLessThanOrEqual(1);
      for (const { person } of now) rung.push([s, person]);
      t.pass(1);
    }
    expect(new Set(rung.map(([, person]) => person))).toEqual(new Set(["odile", "bram"]));
    const pauses = rung.slice(1).map(([s], i) => s - (rung[i]?.[0] ?? 0));
    expect(Math.min(...pauses)).toBeGreaterThanOrEqual(10);
  });

  it("is cut short by what is more urgent, at once", () => {
    const t = bell("bram", table());
    const ringer = new Ringer();
    expect(ringer.due(t.state, t.now, false)).toEqual([{ person: "bram", kind: "meal bell, calling", level: "calling" }]);
    t.send({ do: "open low", person: "odile" }, { do: "cannot swallow" });
    t.pass(1);
    expect(me(t).walk?.low?.callRaised).toBe(true);
    expect(ringer.due(t.state, t.now, false)).toEqual([{ person: "odile", kind: "low, call raised", level: "loud" }]);
    t.pass(1);
    expect(ringer.due(t.state, t.now, true)).toEqual([]);
  });

  it("calls for a low and for a meal in the middle of the night", () => {
    const t = table();
    t.pass(14 * 3600);
    expect(new Ringer().due(bell("odile", t).state, t.now, false)).toHaveLength(1);
    t.send({ do: "open low", person: "odile" }, { do: "cannot swallow" });
    expect(new Ringer().due(t.state, t.now, false)).toEqual([{ person: "odile", kind: "low, call raised", level: "loud" }]);
  });
});
