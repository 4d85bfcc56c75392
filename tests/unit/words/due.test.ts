import { describe, expect, it } from "vitest";
import { sayNext, sayToday } from "#words/en/due.ts";
import { backgroundOnlyCard } from "../../kit/cards.ts";
import { odileAlone } from "../../kit/explore/at-table.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const lunch = { meal: "lunch", from: "11:30", until: "13:00" } as const;
const dinner = { meal: "dinner", from: "17:30", until: "19:00" } as const;
const two = (bramEats: (typeof lunch | typeof dinner)[]) =>
  new Table([
    { person: { ...odile, mealHours: [lunch, dinner] }, card: fixedCard, pens: [odilePen] },
    { person: { ...bram, mealHours: bramEats }, card: ratioCard, pens: [bramPen] },
  ]);

// The table stands at noon.
describe("what is due next", () => {
  it("is one line, with the names where it is not for all", () => {
    const alone = odileAlone({}, { mealHours: [lunch] });
    expect(sayNext(alone.state, alone.now)).toEqual(["Now: lunch."]);
    const both = two([lunch]);
    expect(sayNext(both.state, both.now)).toEqual(["Now: lunch."]);
    const one = two([dinner]);
    expect(sayNext(one.state, one.now)).toEqual(["Now: lunch, for Odile."]);
    one.pass(2 * 3600);
    expect(sayNext(one.state, one.now)).toEqual(["Next: dinner, from 5:30."]);
  });

  it("is said with the half of the day where no meal's name tells it", () => {
    const t = odileAlone({ background: backgroundOnlyCard.background });
    expect(sayNext(t.state, t.now)).toEqual(["Next: insulin glargine, at 9:30 in the evening."]);
  });

  it("is nothing once the day is over, and names no units at any time", () => {
    const t = odileAlone({ background: backgroundOnlyCard.background }, { mealHours: [lunch] });
    expect(sayToday(t.state, t.now).join(" ")).not.toMatch(/unit/);
    t.pass(11 * 3600);
    expect(sayNext(t.state, t.now)).toEqual([]);
  });
});

describe("today's list", () => {
  it("says of each what the book knows, and does not take silence for a meal", () => {
    const t = two([dinner]);
    t.send({ do: "open meal", person: "odile", meal: "lunch" }, { do: "leave" });
    expect(sayToday(t.state, t.now)).toEqual(["Odile, lunch: in the book.", "Odile, dinner: from 5:30.", "Bram, dinner: from 5:30."]);
    t.pass(8 * 3600);
    expect(sayToday(t.state, t.now)).toEqual([
      "Odile, lunch: in the book.",
      "Odile, dinner: not in the book.",
      "Bram, dinner: not in the book.",
    ]);
  });
});
