import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { unfinished } from "#words/en/kitchen.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const one = () => new Table([{ person: odile, card: fixedCard, pens: [odilePen] }]);
const two = () =>
  new Table([
    { person: odile, card: fixedCard, pens: [odilePen] },
    { person: bram, card: ratioCard, pens: [bramPen] },
  ]);
const toCard = (t: Table) =>
  t
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send({ do: "exercise", hard: false }, { do: "meal is ready" });
const toNeedle = (t: Table) =>
  toCard(t)
    .send({ do: "heard dose" }, { do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" })
    .send({ do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6")
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" });
const toEat = (t: Table) => {
  toNeedle(t).send({ do: "button is down" });
  t.pass(10);
  return t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
};
const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines.join(" ") ?? "";

describe("a dose told while a walk is open", () => {
  it("is stored, and the open walk asks about it before the card", () => {
    const t = toCard(one()).send({ do: "heard dose" }, { do: "leave" });
    t.send({ do: "tell a dose later", person: "odile", units: 6, minutesAgo: 0 }, { do: "turn to", person: "odile" });
    expect(t.step()).toBe("taken");
  });

  it("is asked about when the needle of the open walk did not go in", () => {
    const t = toNeedle(one()).send({ do: "leave" }, { do: "tell a dose later", person: "odile", units: 6, minutesAgo: 0 });
    t.send({ do: "turn to", person: "odile" }, { do: "needle went in", answer: "no" });
    expect(t.step()).toBe("taken");
    expect(t.state.people.odile?.doses).toMatchObject([{ walk: null, units: 6 }]);
  });
});

describe("a low felt while a walk is open", () => {
  it("is heard from the kitchen and at every step, and ends the walk that had not reached the needle", () => {
    const t = toCard(one()).send({ do: "open low", person: "odile" });
    expect(t.step()).toBe("low");
    expect(t.state.people.odile?.walk?.kind).toBe("low");
  });

  it("comes before the meal after the needle, and the bell stays", () => {
    const t = toEat(one()).send({ do: "leave" }, { do: "open low", person: "odile" });
    expect(t.step()).toBe("low");
    expect(t.state.people.odile?.bell).not.toBeNull();
    t.send(sugar);
    t.pass(15 * 60);
    t.number("recheck after low", "110");
    expect(t.step()).toBe("eat");
  });

  it("comes before the question about the needle, which is asked when the low is over", () => {
    const t = toNeedle(one()).send({ do: "leave" }, { do: "open low", person: "odile" });
    expect(t.step()).toBe("low");
    t.send(sugar);
    t.pass(15 * 60);
    t.number("recheck after low", "110");
    expect(t.step()).toBe("needle question");
  });

  it("of one person is heard while the other's walk is open", () => {
    const t = two().send({ do: "open meal", person: "bram", meal: "breakfast" }, { do: "leave" }, { do: "open low", person: "odile" });
    expect(t.step()).toBe("low");
    expect(t.state.front).toBe("odile");
  });
});

describe("a walk left at one meal and found at the next", () => {
  it("gives way to the new meal", () => {
    const t = toCard(one()).send({ do: "leave" });
    t.pass(4 * 60 * 60);
    t.send({ do: "open meal", person: "odile", meal: "lunch" });
    expect(t.state.people.odile?.walk).toMatchObject({ meal: "lunch", reading: null });
  });

  it("never gives way while insulin may be in and nobody ate", () => {
    for (const t of [toNeedle(one()), toEat(one())]) {
      t.send({ do: "leave" });
      const doing = offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
      expect(doing).not.toContain("open meal");
    }
  });

  it("says which meal it was, and asks again whether the meal is ready", () => {
    const t = toCard(one()).send({ do: "leave" });
    t.pass(12 * 60);
    const me = t.state.people.odile;
    expect(me && unfinished(t.state, me, t.now)).toBe("Odile's breakfast stopped at the dose, 12 minutes ago.");
    t.send({ do: "turn to", person: "odile" });
    expect(t.step()).toBe("plate");
  });

  it("goes on where it was after a moment", () => {
    const t = toCard(one()).send({ do: "leave" });
    t.pass(60);
    t.send({ do: "turn to", person: "odile" });
    expect(t.step()).toBe("card");
  });
});

describe("the dose of the card", () => {
  it("is told with the meal, and with the person in a house of two", () => {
    expect(lines(toCard(one()))).toContain("Breakfast: your card says 6 units.");
    expect(lines(toCard(two()))).toContain("Odile. Breakfast: your card says 6 units.");
  });
});
