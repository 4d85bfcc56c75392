import { describe, expect, it } from "vitest";
import type { Intent } from "#events/intent.ts";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

type Mishap = Extract<Intent, { do: "report" }>["mishap"];

const table = () => new Table([{ person: odile, card: fixedCard, pens: [odilePen] }]);
const toPen = () =>
  table()
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" });
const toDial = () =>
  toPen().send(
    { do: "pick pen", pen: "odile-meal", how: "mark" },
    { do: "insulin looks", look: "as it should be" },
    { do: "needle fitted" },
    { do: "primed", stream: true },
  );
const toNeedle = () => toDial().number("dial", "6").send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" });
const toPutAway = () => {
  const t = toNeedle().send({ do: "button is down" });
  t.pass(10);
  return t.send({ do: "wait is over" }, { do: "window is at zero" });
};
const report = (t: Table, mishap: Mishap) => t.send({ do: "report", mishap }, { do: "heard mishap advice" });
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];

describe("what went wrong before the tablet came to the needle", () => {
  it.each(["too much", "too little", "wrong insulin", "not sure", "nothing came out", "button too stiff"] as const)(
    "counts insulin that may be in after '%s', and does not go on to a second dose",
    (mishap) => {
      const t = report(toDial(), mishap);
      expect(t.step()).toBe("taken");
      expect(t.state.people.odile?.doses).toMatchObject([{ units: null, certain: false }]);
    },
  );

  it("goes on only after somebody says that the first was not taken, and then asks the card anew", () => {
    const t = report(toDial(), "wrong insulin");
    expect(t.try({ do: "give number", slot: "dial", text: "6", via: "touch", helper: null }).refusal).not.toBeNull();
    t.send({ do: "the first was not taken" });
    expect(t.step()).toBe("card");
  });

  it("takes a pen that fails its test for the pen's trouble, and counts no dose", () => {
    const t = toPen().send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "report", mishap: "nothing came out" });
    expect(lines(t).join(" ")).toContain("Test the pen again.");
    expect(lines(t).join(" ")).not.toContain("Do not inject again.");
    t.send({ do: "heard mishap advice" });
    expect(t.step()).toBe("pen");
    expect(t.state.people.odile?.doses).toEqual([]);
  });

  it("keeps a low in front of every other question", () => {
    const t = table().send({ do: "open low", person: "odile" });
    report(t, "too much");
    expect(t.step()).toBe("low");
    expect(t.state.people.odile?.doses).toHaveLength(1);
  });
});

describe("what turns out wrong after the needle", () => {
  it.each(["too much", "wrong insulin"] as const)("no longer trusts the amount in the book after '%s'", (mishap) => {
    const t = report(toPutAway(), mishap);
    expect(t.step()).toBe("put away");
    expect(t.state.people.odile?.doses[0]).toMatchObject({ units: null, certain: false });
  });
});
