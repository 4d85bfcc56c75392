import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { bring, me, odileAlone, setClock, walk } from "../../kit/explore/at-table.ts";
import { bandsCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const tablets = sugarsOffered()[0] ?? { food: { id: "none" }, grams: 0 };
const sugar = { do: "took sugar", food: tablets.food.id, grams: tablets.grams } as const;

/** A low said in the kitchen, treated and over; then so many minutes. */
function lowInTheKitchen(minutes: number, card: Partial<DoseCard> = {}): Table {
  const t = odileAlone({ meals: bandsCard.meals, ...card }).send({ do: "open low", person: "odile" }, sugar);
  t.pass(15 * 60);
  t.number("recheck after low", "110").send({ do: "finish" });
  t.pass(minutes * 60);
  return t;
}
const breakfastAt200 = (t: Table): Table => {
  const s = bring(t, "reading").number("reading", "200");
  return bring(s, "card");
};

describe("a meal after a low in the kitchen", () => {
  it("gets the card's line for after a low: the food part alone", () => {
    const t = breakfastAt200(lowInTheKitchen(10));
    expect(walk(t).told).toMatchObject({ units: 4, correction: 0 });
    expect(walk(t).told?.why).toContainEqual({ reason: "no correction", because: "after a low" });
  });

  it("is asked about where the card left that line blank or says to ask", () => {
    expect(walk(breakfastAt200(lowInTheKitchen(10, { afterLow: null }))).silent?.why).toBe("blank field");
    expect(walk(breakfastAt200(lowInTheKitchen(10, { afterLow: "ask" }))).silent?.why).toBe("after a low: ask");
  });

  it("remembers it for two hours after the low was over, and no longer", () => {
    expect(walk(breakfastAt200(lowInTheKitchen(119))).told?.units).toBe(4);
    expect(walk(breakfastAt200(lowInTheKitchen(121))).told?.units).toBe(8);
  });

  it("is not forgotten by a start of the app, nor while the clock is in doubt", () => {
    const t = lowInTheKitchen(10);
    t.restart();
    t.send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "agree clock" });
    expect(walk(breakfastAt200(t)).told?.units).toBe(4);

    const set = lowInTheKitchen(10);
    setClock(set, 5 * 3600);
    set.send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "agree clock" }, { do: "answer taken", answer: "no" });
    expect(walk(breakfastAt200(set)).told?.units).toBe(4);
  });

  it("does not touch anybody who had no low", () => {
    expect(me(odileAlone()).lastLow).toBeNull();
    expect(walk(breakfastAt200(odileAlone({ meals: bandsCard.meals }))).told?.units).toBe(8);
  });
});
