// The loud call of an ill day, and the page for whoever comes: sugar is for a low reading alone.
import { describe, expect, it } from "vitest";
import { Ringer } from "#app/ringer.ts";
import { whoCalls } from "#walk/helper-case.ts";
import { callers } from "#walk/offers.ts";
import { helperPage } from "#words/en/helper.ts";
import { sayCaller, sayIllCall } from "#words/en/kitchen.ts";
import { me, odileAlone, odileAt } from "../../kit/explore/at-table.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const MINUTE = 60;
const danger = (t: Table, person = "odile"): Table =>
  t.send({ do: "open mishap", person, mishap: "feeling ill" }, { do: "danger signs", any: true });

describe("a danger sign", () => {
  it("rings loudly, again each half minute, and falls silent an hour after the last answer", () => {
    const t = danger(odileAlone());
    const ringer = new Ringer();
    expect(ringer.due(t.state, t.now, false)).toEqual([{ person: "odile", kind: "danger sign, call raised", level: "loud" }]);
    expect(ringer.due(t.state, t.now, false)).toEqual([]);
    t.pass(30);
    expect(ringer.due(t.state, t.now, false)).toEqual([{ person: "odile", kind: "danger sign, call raised", level: "loud" }]);
    t.pass(61 * MINUTE);
    expect(ringer.due(t.state, t.now, false)).toEqual([]);
  });

  it("stops ringing once help was called", () => {
    const t = danger(odileAlone()).send({ do: "finish ill" });
    expect(new Ringer().due(t.state, t.now, false)).toEqual([]);
  });

  it("comes into another person's walk, and says whose it is", () => {
    const t = new Table([
      { person: odile, card: fixedCard, pens: [odilePen] },
      { person: bram, card: ratioCard, pens: [bramPen] },
    ]);
    danger(t).send({ do: "leave" }, { do: "open meal", person: "bram", meal: "breakfast" });
    expect(callers(t.state, t.now).map((p) => p.person.id)).toEqual(["odile"]);
    expect(sayCaller(t.state, me(t), t.now)).toBe("Call 911 now. Odile may be in danger.");
    expect(new Ringer().due(t.state, t.now, false)).toEqual([{ person: "odile", kind: "danger sign, call raised", level: "loud" }]);
  });

  it("says the number first where nobody hears the tablet, and calls for somebody where one does", () => {
    const t = danger(odileAlone());
    expect(sayIllCall(t.state, me(t), t.now)).toBe("Call 911 now. Odile may be in danger.");
    const household = t.state.household && { ...t.state.household, hearer: { who: "always" as const } };
    expect(sayIllCall({ ...t.state, household }, me(t), t.now)).toBe("Odile may be in danger. Come and help now.");
  });

  it("has a page for whoever comes, which gives no sugar", () => {
    const t = danger(odileAlone());
    expect(whoCalls(t.state, t.now)?.person.id).toBe("odile");
    const { facts, todo } = helperPage(t.state, me(t), t.now);
    expect(facts).toContain("Odile is ill, and may be in danger.");
    expect(todo.join(" ")).not.toContain("sugar");
    expect(todo).toContain("Call 911.");
  });

  it("keeps the meal bell ringing where an ill day without one lies over eating", () => {
    const t = odileAt("eat");
    t.pass(16 * MINUTE);
    t.send({ do: "report", mishap: "feeling ill" }, { do: "danger signs", any: false });
    expect(new Ringer().due(t.state, t.now, false)).toEqual([{ person: "odile", kind: "meal bell, loud", level: "loud" }]);
  });
});
