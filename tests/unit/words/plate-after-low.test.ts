import { expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bram, bramPen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const atThePlate = (t: Table) =>
  t
    .send({ do: "open meal", person: "bram", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "6.4")
    .send({ do: "exercise", hard: false });

const NOT_THE_SUGAR = "Do not count the sugar for your low.";

it("says at the plate that the sugar for a low is not counted, for two hours after one (mistake 32)", () => {
  const t = new Table([{ person: bram, card: ratioCard, pens: [bramPen] }]);
  t.send({ do: "open low", person: "bram" }, { do: "took sugar", food: "glucose-tablets", grams: 16 });
  t.pass(16 * 60);
  t.number("recheck after low", "6.2").send({ do: "finish" });
  expect(sayWalk(atThePlate(t).state, t.now, GUARDS)?.lines).toContain(NOT_THE_SUGAR);
});

it("says nothing of it where no low was", () => {
  const t = atThePlate(new Table([{ person: bram, card: ratioCard, pens: [bramPen] }]));
  expect(sayWalk(t.state, t.now, GUARDS)?.lines).toEqual(["What will you eat?"]);
});
