// The call in a low: help may be far, so sugar goes on and the door is open.
import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import type { Hearer } from "#events/person.ts";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { odileAlone } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const LO = { do: "read word", word: "LO", via: "touch" } as const;
const says = (t: Table): string => (sayWalk(t.state, t.now, GUARDS)?.lines ?? []).join(" ");

function called(card: Partial<DoseCard> = {}, hearer: Hearer = { who: "nobody" }): Table {
  const t = odileAlone(card);
  if (t.state.household) t.state = { ...t.state, household: { ...t.state.household, hearer } };
  t.send({ do: "open low", person: "odile" });
  for (let i = 0; i < 3; i++) {
    t.send({ ...sugar, grams: card.care?.treatGrams ?? sugar.grams });
    t.pass(15 * 60);
    t.send(LO);
    if (says(t).includes("This low needs help.")) return t;
  }
  throw new Error("no call was raised");
}

describe("the call in a low", () => {
  it("goes on with sugar for whoever can swallow, in the card's own grams", () => {
    expect(says(called())).toContain("Can you swallow? Take 15 grams again now.");
    expect(says(called({ care: { ...fixedCard.care, treatGrams: 20 } }))).toContain("Take 20 grams again now.");
  });

  it("says when to measure once sugar was taken", () => {
    const t = called().send(sugar);
    expect(says(t)).toContain("Measure again in 15 minutes.");
    expect(says(t)).not.toContain("Take 15 grams");
    t.pass(15 * 60);
    expect(says(t)).toContain("Measure again now.");
  });

  it("opens the door where nobody hears, and not where somebody is in the house", () => {
    expect(says(called())).toContain("Open the front door, then sit.");
    expect(says(called({}, { who: "always" }))).not.toContain("front door");
  });

  it("does not say again where no sugar was taken", () => {
    const t = odileAlone().send({ do: "open low", person: "odile" });
    t.pass(5 * 60);
    t.send({ do: "pass time" });
    expect(says(t)).toContain("Can you swallow? Take 15 grams now.");
  });
});
