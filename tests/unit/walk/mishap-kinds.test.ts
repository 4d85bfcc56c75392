// Each thing that can go wrong: counted or not, the card's own words or "call now", and a number to call at the end.
import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import { GUARDS } from "#walk/guards.ts";
import { MISHAPS } from "#walk/steps/mishap.ts";
import { sayWalk } from "#words/en/steps.ts";
import { me, odileAt, walk } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const CLINIC = "Call Harbour Clinic: 555 0142.";
const heard = { do: "heard mishap advice" } as const;
const says = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];
const at = (stop: Parameters<typeof odileAt>[0], mishap: MishapKind, advice: Partial<DoseCard["advice"]> = {}): Table =>
  odileAt(stop, { advice: { ...fixedCard.advice, ...advice } }).send({ do: "report", mishap });

describe("something went wrong", () => {
  it("is offered in every kind of the list but a number left, which is asked for by its number", () => {
    expect([...MISHAPS].sort()).toEqual(
      [
        ...["too much", "too little", "wrong insulin", "nothing came out", "not sure", "button too stiff", "it hurt or bled"],
        ...["pen ran out", "cannot eat", "half eaten", "vomiting", "eaten, not injected", "needle stick", "feeling ill", "something else"],
      ].sort(),
    );
  });

  it.each(MISHAPS.filter((kind) => kind !== "feeling ill"))("ends with a number to call: %s", (mishap) => {
    expect(says(at("eat", mishap)).at(-1)).toBe(CLINIC);
    expect(says(at("wash", mishap)).at(-1)).toBe(CLINIC);
  });

  // Design, facts of the trade: a double or triple dose means being watched in hospital; the card may give units; blank means call now.
  it("sends a double dose to hospital unless the card gives units", () => {
    expect(says(at("eat", "too much"))).toContain("A double or triple dose is watched in hospital.");
    expect(says(at("eat", "too much"))).toContain("Call 911 now.");
    expect(says(at("eat", "too much", { tooMuch: "Call us." }))).toContain("A double or triple dose is watched in hospital.");
    const own = says(at("eat", "too much", { tooMuch: "Up to 4 units over: eat 40 grams more." }));
    expect(own).toContain("Your card says: Up to 4 units over: eat 40 grams more.");
    expect(own).not.toContain("Call 911 now.");
  });

  it("calls now after the wrong insulin where the card is silent", () => {
    expect(says(at("eat", "wrong insulin"))).toContain("Call 911 now.");
  });

  // Printed actions: rapid up to 6 h, regular up to 12 h; of a wrong insulin the tablet knows nothing, and long ones work for a day.
  it("watches by the insulin: 6 hours of a rapid one, 12 of a regular one, 24 of one that nobody knows", () => {
    expect(says(at("eat", "too much"))).toContain("Watch your glucose for 6 hours.");
    const regular = odileAt("eat", { insulin: { ...fixedCard.insulin, kind: "regular" } }).send({ do: "report", mishap: "too much" });
    expect(says(regular)).toContain("Watch your glucose for 12 hours.");
    expect(says(at("eat", "wrong insulin"))).toContain("Watch your glucose for 24 hours.");
  });

  it.each(["too much", "too little", "wrong insulin", "nothing came out", "not sure", "button too stiff", "pen ran out"] as const)(
    "says that nothing more is injected: %s",
    (mishap) => expect(says(at("inject", mishap))).toContain("Do not inject again."),
  );
});

describe("a pen that ran out", () => {
  it("in the middle of the dose counts as a dose of unknown size, and is never topped up", () => {
    const t = at("inject", "pen ran out").send(heard);
    expect(me(t).doses).toMatchObject([{ units: null, certain: false }]);
    expect(t.step()).toBe("put away");
  });

  it("while it is tested is the pen's trouble, and no dose", () => {
    const t = odileAt("pen").send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "report", mishap: "pen ran out" });
    expect(says(t)).toContain("Take a new pen.");
    t.send(heard);
    expect(t.step()).toBe("pen");
    expect(me(t).doses).toEqual([]);
  });
});

describe("insulin that is in, without food", () => {
  it("is watched as a low is, whenever somebody says that no meal comes", () => {
    const t = at("put away", "cannot eat").send(heard);
    expect(t.step()).toBe("low");
    expect(walk(t).low).toMatchObject({ because: "cannot eat", due: "treat" });
  });

  it("is measured first where food did not stay down", () => {
    const t = at("done", "vomiting").send(heard);
    expect(walk(t).low?.due).toBe("recheck");
    expect(sayWalk(t.state, t.now, GUARDS)?.title).toBe("Measure again");
  });

  it("is no low where none is in yet", () => {
    expect(at("plate", "cannot eat").send(heard).step()).toBe("plate");
    expect(at("plate", "half eaten").send(heard).step()).toBe("plate");
    const t = at("plate", "vomiting").send(heard);
    expect(walk(t).low).toBeNull();
    expect(t.step()).toBe("ill");
  });
});

describe("a meal that was eaten without its insulin", () => {
  it("ends without a dose where the card is silent: its row is for insulin before the meal", () => {
    const t = at("plate", "eaten, not injected");
    expect(says(t)).toContain("Inject nothing for it on your own.");
    t.send(heard);
    expect(me(t).walk).toBeNull();
    expect(t.types()).not.toContain("dose told");
  });

  it("goes on by the card's own words where it has some", () => {
    const t = at("plate", "eaten, not injected", { missed: "Within 1 hour: take it. Later: skip it." });
    expect(says(t)).toContain("Your card says: Within 1 hour: take it. Later: skip it.");
    expect(t.send(heard).step()).toBe("plate");
  });
});
