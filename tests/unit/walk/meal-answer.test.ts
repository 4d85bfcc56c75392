// Less than the whole meal after the insulin: no sentence that is read and forgotten, but facts that stand.
// A reading in an hour, sugar in reach, whom to call: design, common practice without a source. Food that came up: measured now, and watched.
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, led, me, odileAlone, odileAt, walk } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const heard = { do: "heard mishap advice" } as const;
const ate = (how: "half" | "hardly any" | "not kept down") => ({ do: "answer meal", person: "odile", ate: how }) as const;
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];
const doing = (t: Table) =>
  offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : [`number ${"slot" in o ? o.slot : ""}`]));

/** The calm question is due: in the kitchen after Done, or at the last screen. */
function asked(where: "kitchen" | "last screen", advice: Partial<typeof fixedCard.advice> = {}): Table {
  const t = bring(odileAlone({ advice: { ...fixedCard.advice, ...advice } }), "done");
  if (where === "kitchen") t.send({ do: "finish" });
  t.pass(20 * MINUTE);
  return t;
}

describe.each(["kitchen", "last screen"] as const)("the answer about the meal, at the %s", (where) => {
  it("half: the advice with a number to call, then a reading in an hour that nothing loses", () => {
    const t = asked(where).send(ate("half"));
    expect(t.types()).toContain("meal answered");
    expect(t.step()).toBe("mishap");
    expect(lines(t).at(-1)).toBe("Call Harbour Clinic: 555 0142.");
    t.send(heard);
    expect(walk(t).low).toMatchObject({ because: "half eaten" });
    expect(walk(t).wait).toMatchObject({ for: "watch", ms: HOUR * 1000 });
    t.send({ do: "leave" });
    expect(dueNow(t.state, t.now)).toContain("Odile ate little after insulin. Measure on time.");
    t.pass(HOUR);
    t.send({ do: "turn to", person: "odile" });
    expect(doing(t)).toContain("number recheck after low");
    t.number("recheck after low", "110");
    expect(t.step()).toBe("done");
    expect(led(t, { do: "finish" })).toEqual(["walk ended"]);
  });

  it("half: a low reading in that hour is treated as any low is", () => {
    const t = asked(where).send(ate("half"), heard);
    t.pass(30 * MINUTE);
    t.send({ do: "read word", word: "LO", via: "touch" });
    expect(doing(t)).toContain("took sugar");
  });

  it("half: nobody gives the reading that is due: somebody is called", () => {
    const t = asked(where).send(ate("half"), heard);
    t.pass(HOUR + 4 * MINUTE);
    expect(led(t, { do: "pass time" })).toEqual([]);
    t.pass(MINUTE);
    expect(led(t, { do: "pass time" })).toEqual(["call raised"]);
  });

  it.each(["hardly any", "not kept down"] as const)("%s: measured now, then watched until food or the insulin's end", (how) => {
    const t = asked(where).send(ate(how), heard);
    expect(sayWalk(t.state, t.now, GUARDS)?.title).toBe("Measure again");
    t.number("recheck after low", "110");
    expect(t.step()).toBe("low");
    expect(walk(t).wait).toMatchObject({ for: "watch", ms: 30 * MINUTE * 1000 });
    t.restart();
    expect(t.number("recheck after low", "110").step()).toBe("low");
    t.send({ do: "agree clock" });
    t.pass(4 * HOUR);
    expect(t.number("recheck after low", "110").step()).toBe("done");
  });

  it.each(["hardly any", "not kept down"] as const)("%s: something eaten later ends the watch, and is asked about as a meal is", (how) => {
    const t = asked(where).send(ate(how), heard).number("recheck after low", "110").send({ do: "eating" });
    expect(t.step()).toBe("done");
    expect(me(t).mealQuestion).not.toBeNull();
  });

  it("says the card's own words where it has some", () => {
    const t = asked(where, { halfEaten: "Drink a glass of milk.", ill: "Ring us at once." });
    expect(lines(t.send(ate("half")))).toContain("Your card says: Drink a glass of milk.");
    expect(lines(asked(where, { halfEaten: "Drink a glass of milk." }).send(ate("hardly any")))).toContain(
      "Your card says: Drink a glass of milk.",
    );
    expect(lines(asked(where, { ill: "Ring us at once." }).send(ate("not kept down")))).toContain("Your card says: Ring us at once.");
  });
});

describe("the answer about the meal, later", () => {
  it("comes before a meal that has not come to the needle, and that meal is set aside", () => {
    const t = odileAt("done").send({ do: "finish" }, { do: "open meal", person: "odile", meal: "snack" }, { do: "leave" });
    t.pass(20 * MINUTE);
    t.send(ate("half"));
    expect(me(t).walk).toMatchObject({ kind: "mishap", mishap: "half eaten" });
    expect(me(t).mealQuestion).toBeNull();
  });

  it("never sets a low or an ill day aside: it is told within them", () => {
    const t = bring(odileAlone(), "done").send({ do: "finish" });
    t.pass(20 * MINUTE);
    t.send({ do: "open mishap", person: "odile", mishap: "vomiting" }, heard, { do: "leave" });
    expect(led(t, ate("half"))).not.toContain("walk ended");
    expect(walk(t).low).not.toBeNull();
    t.send(heard);
    expect(t.step()).toBe("low");
    const ill = bring(odileAlone(), "done").send({ do: "finish" });
    ill.pass(20 * MINUTE);
    ill.send({ do: "open mishap", person: "odile", mishap: "feeling ill" }, { do: "danger signs", any: true }, { do: "leave" });
    expect(led(ill, ate("half"))).not.toContain("walk ended");
    expect(walk(ill).ill).not.toBeNull();
  });

  it("opens no watch once the insulin has worked itself out: its words are heard, and that is all", () => {
    const t = asked("kitchen");
    t.pass(5 * HOUR);
    t.send(ate("half"), heard);
    expect(me(t).walk).toBeNull();
    const up = asked("kitchen");
    up.pass(5 * HOUR);
    expect(up.send(ate("not kept down"), heard).step()).toBe("ill");
  });

  it("leaves the bell of a second meal ringing: half of the first one opens no watch over it", () => {
    const t = odileAlone({ windowMinutes: 10, spacingMinutes: 120 });
    bring(t, "done").send({ do: "finish" });
    t.pass(3 * HOUR);
    t.send({ do: "open meal", person: "odile", meal: "lunch" });
    bring(t, "eat", "5").send({ do: "leave" }, ate("half"), heard);
    expect(me(t).bell).not.toBeNull();
    expect(walk(t).low).toBeNull();
    expect(t.step()).toBe("eat");
  });
});

describe("food that came up, told in the kitchen", () => {
  it("is watched as a meal that did not come while insulin works, and is an ill day without", () => {
    const t = bring(odileAlone(), "done").send({ do: "finish" });
    t.pass(HOUR);
    t.send({ do: "open mishap", person: "odile", mishap: "vomiting" }, heard);
    expect(walk(t).low).toMatchObject({ because: "cannot eat", due: "recheck" });
    expect(odileAlone().send({ do: "open mishap", person: "odile", mishap: "vomiting" }, heard).step()).toBe("ill");
  });

  it("before the needle, with an earlier meal's insulin in, asks for one reading and lets no food of then be taken for the meal to come", () => {
    const t = bring(odileAlone({ windowMinutes: 10, spacingMinutes: 120 }), "done").send({ do: "finish" });
    t.pass(2 * HOUR);
    t.send({ do: "open meal", person: "odile", meal: "lunch" }, { do: "report", mishap: "vomiting" }, heard);
    expect(walk(t).low).toMatchObject({ because: "half eaten", due: "recheck" });
    expect(doing(t)).not.toContain("eating");
    t.number("recheck after low", "110");
    expect(walk(t)).toMatchObject({ low: null, eat: null });
  });
});
