import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, led, odileAt, walk } from "../../kit/explore/at-table.ts";
import { bandsCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const afterwards: Partial<DoseCard> = {
  meals: bandsCard.meals,
  timing: { when: "after eating", earliestMinutes: 0, latestMinutes: 30 },
};
const breakfast = bandsCard.meals.breakfast;
const noFoodRow: Partial<DoseCard> = {
  ...afterwards,
  meals: { ...bandsCard.meals, breakfast: breakfast?.kind === "bands" ? { ...breakfast, foodOnly: null } : null },
};

/** A reading of 200 before the meal, where the card's row says 8 units and 4 of them are for the food. */
function told(card: Partial<DoseCard> = afterwards): Table {
  const t = odileAt("reading", card).number("reading", "200");
  return bring(t, "card");
}
const eaten = (minutes: number): Table => {
  const t = told().send({ do: "heard dose" });
  t.pass(minutes * 60);
  return t.send({ do: "meal eaten first" });
};

describe("insulin after eating", () => {
  it("is the food part alone, and the words say why", () => {
    const t = told();
    expect(walk(t).told).toMatchObject({ units: 4, correction: 0, timing: "after eating" });
    expect(sayWalk(t.state, t.now, GUARDS)?.lines).toContain("No correction, because the meal is eaten first.");
  });

  it("is asked about where the card does not name its food-only row", () => {
    expect(walk(told(noFoodRow)).silent?.why).toBe("no food-only row");
  });

  it("goes by the reading from before the meal: no new one is asked for after forty minutes at table", () => {
    const t = bring(eaten(40), "dial");
    expect(led(t, { do: "pass time" })).toEqual([]);
    bring(t, "eat", "4");
    expect(t.types()).not.toContain("reading grew old");
    expect(t.types().filter((type) => type === "dose told")).toHaveLength(1);
    expect(walk(t).injected?.units).toBe(units(4));
  });

  it("tells no correction either where the card is asked a second time", () => {
    const t = bring(eaten(40), "dial");
    t.send({ do: "back" }, { do: "back" });
    expect(t.step()).toBe("card");
    expect(walk(t).told).toMatchObject({ units: 4, correction: 0 });
  });

  it("asks for a new reading once an hour and a half has gone by", () => {
    const t = bring(eaten(91), "pen");
    bring(t, "pen");
    t.send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" }, { do: "needle fitted" });
    expect(led(t, { do: "primed", stream: true })).toContain("reading grew old");
    t.number("reading", "200");
    expect(walk(t).told).toMatchObject({ units: 4, correction: 0 });
  });
});
