// Insulin is in and no meal came. Sources of the hours: printed actions named in rules/glucose/watch.ts; half an hour between readings is our choice.
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, led, me, odileAt, walk } from "../../kit/explore/at-table.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;

const noMeal = (t: Table): Table => {
  bring(t, "eat").send({ do: "cannot eat" }, sugar);
  t.pass(15 * MINUTE);
  return t;
};
const good = (t: Table): Table => t.number("recheck after low", "110");

describe("a meal that does not come after the insulin", () => {
  it("begins a low at once, and ends the bell", () => {
    const t = odileAt("eat").send({ do: "cannot eat" });
    expect(t.step()).toBe("low");
    expect(me(t).bell).toBeNull();
  });

  it("is not over with one good reading: the next one is asked for in half an hour", () => {
    const t = good(noMeal(odileAt("eat")));
    expect(t.step()).toBe("low");
    expect(walk(t).wait).toMatchObject({ for: "watch", ms: 30 * MINUTE * 1000 });
    t.pass(31 * MINUTE);
    expect(good(t).step()).toBe("low");
  });

  it("is over with a good reading once the insulin's main action is over: 4 hours of a rapid one, 8 of a regular one", () => {
    const rapid = good(noMeal(odileAt("eat")));
    rapid.pass(3 * HOUR);
    expect(good(rapid).step()).toBe("low");
    rapid.pass(50 * MINUTE);
    expect(good(rapid).step()).toBe("done");

    const regular = good(noMeal(odileAt("eat", { insulin: { ...fixedCard.insulin, kind: "regular" } })));
    regular.pass(5 * HOUR);
    expect(good(regular).step()).toBe("low");
    regular.pass(3 * HOUR);
    expect(good(regular).step()).toBe("done");
  });

  it("is over once something was eaten, and is asked about as any meal is", () => {
    const t = good(noMeal(odileAt("eat"))).send({ do: "eating" });
    expect(t.step()).toBe("done");
    expect(walk(t).eat).toBe("eating");
    expect(me(t).mealQuestion).not.toBeNull();
  });

  it("that comes during the wait after sugar still needs a good reading", () => {
    const t = odileAt("eat").send({ do: "cannot eat" }, sugar, { do: "eating" });
    expect(t.step()).toBe("low");
    t.pass(15 * MINUTE);
    expect(good(t).step()).toBe("done");
  });

  it("brings sugar again when the reading falls, and a call after three treatments", () => {
    const t = good(noMeal(odileAt("eat")));
    for (let round = 0; round < 2; round++) {
      t.pass(30 * MINUTE);
      t.send({ do: "read word", word: "LO", via: "touch" });
      expect(walk(t).low?.due).toBe("treat");
      t.send(sugar);
      t.pass(15 * MINUTE);
      if (round === 0) good(t);
    }
    expect(led(t, { do: "read word", word: "LO", via: "touch" })).toContain("call raised");
  });

  it("calls when the reading that is due is not given for five minutes, and goes on watching once it is", () => {
    const t = good(noMeal(odileAt("eat")));
    t.pass(34 * MINUTE);
    expect(led(t, { do: "pass time" })).toEqual([]);
    t.pass(MINUTE);
    expect(led(t, { do: "pass time" })).toEqual(["call raised"]);
    good(t);
    expect(walk(t).low).toMatchObject({ callRaised: false });
    expect(walk(t).wait?.for).toBe("watch");
  });

  it("is watched on after a start of the app: measured at once, then every half hour, until food was eaten", () => {
    const t = good(noMeal(odileAt("eat")));
    const { title } = sayWalk(t.state, t.now, GUARDS) ?? {};
    expect(title).toBe("Keep watch");
    t.restart();
    expect(sayWalk(t.state, t.now, GUARDS)?.title).toBe("Measure again");
    expect(sayWalk(good(t).state, t.now, GUARDS)?.title).toBe("Day and time");
    t.send({ do: "doubt clock" });
    expect(sayWalk(t.state, t.now, GUARDS)?.title).toBe("Keep watch");
    t.pass(5 * HOUR);
    expect(good(t).step()).toBe("low");
    expect(t.send({ do: "eating" }).step()).toBe("done");
  });

  it("leaves another person's walk in peace until the next reading is due", () => {
    const t = new Table([
      { person: odile, card: fixedCard, pens: [odilePen] },
      { person: bram, card: ratioCard, pens: [bramPen] },
    ]);
    t.send({ do: "open meal", person: "odile", meal: "breakfast" });
    good(noMeal(t)).send({ do: "leave" });
    expect(dueNow(t.state, t.now)[0]).toBe("Odile had insulin and no meal. Measure on time.");
    t.send({ do: "open meal", person: "bram", meal: "breakfast" });
    expect(led(t, { do: "turn to", person: "odile" })).toEqual([]);
    t.pass(30 * MINUTE);
    expect(led(t, { do: "turn to", person: "odile" })).toContain("walk turned to");
  });
});
