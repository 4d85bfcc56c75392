import { describe, expect, it } from "vitest";
import { Ringer } from "#app/ringer.ts";
import { dueNow, sayCaller } from "#words/en/kitchen.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const table = () =>
  new Table([
    { person: odile, card: fixedCard, pens: [odilePen] },
    { person: bram, card: ratioCard, pens: [bramPen] },
  ]);
const toNeedle = (t: Table) =>
  t
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" })
    .send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" })
    .send({ do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6")
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" });
const toPutAway = (t: Table) => {
  toNeedle(t).send({ do: "button is down" });
  t.pass(10);
  return t.send({ do: "wait is over" }, { do: "window is at zero" });
};

/** Who rings in so many minutes in which nobody touches the tablet. */
function rungWhileNobodyAnswers(t: Table, minutes: number): Set<string> {
  const ringer = new Ringer();
  const rung = new Set<string>();
  for (let s = 0; s < minutes * 60; s++) {
    t.pass(1);
    if (s % 60 === 0) t.send({ do: "pass time" });
    for (const r of ringer.due(t.state, t.now, s === 0)) rung.add(`${r.person} ${r.level}`);
  }
  return rung;
}

describe("a bell that nobody can lose", () => {
  it("rings where the pen was not put away on the tablet", () => {
    expect(rungWhileNobodyAnswers(toPutAway(table()), 20)).toContain("odile loud");
  });

  it("rings where nobody said that the needle is out, or that it went in", () => {
    expect(rungWhileNobodyAnswers(toNeedle(table()).send({ do: "button is down" }), 20)).toContain("odile loud");
    expect(rungWhileNobodyAnswers(toNeedle(table()), 30)).toContain("odile loud");
  });

  it("rings while the advice after a mishap stands on the screen", () => {
    expect(rungWhileNobodyAnswers(toPutAway(table()).send({ do: "report", mishap: "feeling ill" }), 20)).toContain("odile loud");
  });

  it("rings while another person's walk stands there, and nobody answers it", () => {
    const t = toPutAway(table()).send({ do: "put away" }, { do: "leave" }, { do: "open meal", person: "bram", meal: "breakfast" });
    expect(rungWhileNobodyAnswers(t, 20)).toContain("odile loud");
  });

  it("leaves the needle in peace while somebody is at it", () => {
    const t = toNeedle(table());
    t.pass(4 * 60);
    t.send({ do: "button is down" });
    expect(new Ringer().due(t.state, t.now, true)).toEqual([]);
  });
});

describe("a low that needs help", () => {
  it("rings loud once the call is raised, on the screen and from the kitchen, and says whom to call", () => {
    const t = table().send({ do: "open low", person: "odile" });
    expect(rungWhileNobodyAnswers(t, 7)).toEqual(new Set(["odile loud"]));
    t.send({ do: "leave" });
    expect(rungWhileNobodyAnswers(t, 1)).toEqual(new Set(["odile loud"]));
    expect(dueNow(t.state, t.now)[0]).toBe("Call 911 now. Odile has a low.");
  });

  it("falls silent an hour after the last answer, and stays on the screen", () => {
    const t = table().send({ do: "open low", person: "odile" }, { do: "cannot swallow" });
    t.pass(61 * 60);
    expect(new Ringer().due(t.state, t.now, true)).toEqual([]);
    expect(dueNow(t.state, t.now)[0]).toBe("Call 911 now. Odile has a low.");
  });

  it("is never announced to the other person as a meal", () => {
    const t = table().send({ do: "open low", person: "odile" });
    const me = t.state.people.odile;
    expect(me && sayCaller(t.state, me, t.now)).toBe("Odile has a low. Sugar first.");
  });
});

describe("the tone at the end of a wait", () => {
  it("sounds once, when the wait is over, and not when it was cut short", () => {
    const t = toNeedle(table()).send({ do: "button is down" });
    const ringer = new Ringer();
    const tones: number[] = [];
    for (let s = 1; s <= 20; s++) {
      t.pass(1);
      if (ringer.waitEnded(t.state, t.now)) tones.push(s);
    }
    expect(tones).toEqual([10]);
  });
});
