import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { helperPage } from "#words/en/helper.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { sayWalk } from "#words/en/steps.ts";
import { me, odileAt } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const said = (t: Table): string => (sayWalk(t.state, t.now, GUARDS)?.lines ?? []).join(" ");
/** The whole dose still stands in the window, so many units as that is. */
const left = (text: string): Table => {
  const t = odileAt("inject").send({ do: "button is down" });
  t.pass(10);
  t.send({ do: "wait is over" }, { do: "give number", slot: "left in window", text, via: "touch", helper: null }, { do: "agree number" });
  return t.send({ do: "heard mishap advice" }, { do: "put away" });
};
const loud = (text: string): Table => {
  const t = left(text);
  t.pass(16 * 60);
  return t;
};

describe("a meal bell after an injection of which nothing went in", () => {
  it("says that nobody is sure how much, and never that insulin is working", () => {
    const t = loud("6");
    expect(t.step()).toBe("eat");
    expect(said(t)).toMatch(/^Odile, eat now\. Nobody is sure how much went in\. No meal yet\./);
    for (const words of [said(t), dueNow(t.state, t.now).join(" ")]) {
      expect(words).toContain("Odile, eat now. Nobody is sure how much went in.");
      expect(words).not.toMatch(/working|0 units/);
    }
    expect(helperPage(t.state, me(t), t.now).facts).toContain("Nobody is sure how much went in.");
    t.send({ do: "eating" });
    expect(said(t)).toContain("Nobody is sure how much went in");
    expect(said(t)).not.toContain("0 units");
  });

  it("says of any other amount that insulin is working", () => {
    const t = loud("2");
    expect(said(t)).toContain("Insulin is working. 4 units of insulin lispro went in");
    expect(dueNow(t.state, t.now)[0]).toBe("Odile, eat now. Insulin is working.");
  });
});
