import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { sceneKey } from "#walk/scene-key.ts";
import { labelOf } from "#words/en/labels.ts";
import { sayWalk } from "#words/en/steps.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const CLINIC = "Harbour Clinic: 555 0142";
const table = (pen = odilePen) => new Table([{ person: odile, card: fixedCard, pens: [pen] }]);
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines.join(" ") ?? "";
const open = (t: Table, meal: "breakfast" | "lunch" = "breakfast") => t.send({ do: "open meal", person: "odile", meal });
const toPen = (t: Table) =>
  open(t)
    .send({ do: "already washed" })
    .number("reading", "120")
    .send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" });
const toEat = (t: Table) => {
  toPen(t)
    .send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" })
    .send({ do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6")
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" }, { do: "button is down" });
  t.pass(10);
  return t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
};

describe("no dead end without a number to call", () => {
  it("holds where a dose is inside the window, and the question fits its answers", () => {
    const t = toEat(table()).send({ do: "eating" }, { do: "finish" });
    t.pass(2 * 60 * 60);
    open(t, "lunch");
    expect(t.step()).toBe("taken");
    expect(lines(t)).toContain(CLINIC);
    expect(lines(t)).toMatch(/Did you take that dose\?$/);
  });

  it("holds where the meter shows HI", () => {
    expect(lines(open(table()).send({ do: "already washed" }, { do: "read word", word: "HI", via: "touch" }))).toContain(CLINIC);
  });

  it("holds where the last pen was put aside", () => {
    const t = toPen(table()).send({ do: "pick pen", pen: "odile-meal", how: "mark" });
    t.try({ do: "insulin looks", look: "frozen" });
    expect(lines(t)).toContain(CLINIC);
    expect(lines(t)).not.toContain("Which mark?");
  });

  it("holds where somebody says that the clock is wrong, and that is a new screen", () => {
    const t = table();
    t.restart();
    open(t);
    const before = sceneKey(t.state, t.now);
    t.send({ do: "doubt clock" });
    expect(lines(t)).toContain(CLINIC);
    expect(sceneKey(t.state, t.now)).not.toBe(before);
  });
});

describe("after insulin without a meal", () => {
  it("does not end with a promise to ask about the meal", () => {
    const t = toEat(table()).send({ do: "cannot eat" }, { do: "took sugar", food: "glucose-tablets", grams: 16 });
    t.pass(15 * 60);
    expect(lines(t)).toContain("Wash the sugar off your hands.");
    t.number("recheck after low", "110");
    expect(t.step()).toBe("low");
    expect(lines(t)).toContain("The insulin still works.");
    expect(lines(t)).toContain(CLINIC);
    t.pass(4 * 60 * 60);
    t.number("recheck after low", "110");
    expect(t.step()).toBe("done");
    expect(lines(t)).toContain("Watch your glucose for 4 hours.");
    expect(lines(t)).toContain(CLINIC);
    expect(lines(t)).not.toContain("I ask about the meal");
  });
});

describe("clear insulin that turned cloudy", () => {
  const clumped = { do: "insulin looks", look: "clumped" } as const;

  it("has an answer of its own", () => {
    const clear = toPen(table()).send({ do: "pick pen", pen: "odile-meal", how: "mark" });
    expect(labelOf(clumped, clear.state).shown).toBe("No, it is cloudy");
    const cloudy = toPen(table({ ...odilePen, cloudy: true })).send({ do: "pick pen", pen: "odile-meal", how: "mark" });
    expect(labelOf(clumped, cloudy.state).shown).toBe("It has clumps");
  });
});
