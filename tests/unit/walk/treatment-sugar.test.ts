import { describe, expect, it } from "vitest";
import type { Refusal } from "#walk/refusal.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { sayRefusal } from "#words/en/refusals.ts";
import { walk } from "../../kit/explore/at-table.ts";
import { bram, bramPen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const add = (food: string) => ({ do: "add food", food, portions: 1 }) as const;
const tablets = sugarsOffered()[0] ?? { food: { id: "none" }, grams: 0 };

/** Bram at his plate, by grams; low: after a low that was treated in this walk. */
function atPlate(low: boolean): Table {
  const t = new Table([{ person: bram, card: ratioCard, pens: [bramPen] }]);
  t.send({ do: "open meal", person: "bram", meal: "breakfast" }, { do: "already washed" });
  if (!low) return t.number("reading", "7.0").send({ do: "exercise", hard: false });
  t.send({ do: "read word", word: "LO", via: "touch" }, { do: "took sugar", food: tablets.food.id, grams: tablets.grams });
  t.pass(15 * 60);
  return t.number("recheck after low", "7.0").send({ do: "exercise", hard: false });
}
const refused = (t: Table, food: string): Refusal | null => t.try(add(food)).refusal;

describe("sugar that treats a low (mistake 32)", () => {
  it("is no food of a meal: tablets and gel are refused in one plain sentence, and nothing is on the plate", () => {
    for (const food of ["glucose-tablets", "glucose-tablets-small", "glucose-gel"]) {
      const t = atPlate(false);
      const no = refused(t, food);
      expect(no, food).toMatchObject({ no: "food", why: "treats a low" });
      expect(no && sayRefusal(no).wrong).toBe("Sugar for a low is never counted for insulin.");
      expect(walk(t, "bram").lines).toEqual([]);
    }
  });

  it("is refused as juice and honey too on the plate after a low", () => {
    const t = atPlate(true);
    expect(refused(t, "juice-orange")).toMatchObject({ why: "treats a low" });
    expect(refused(t, "honey")).toMatchObject({ why: "treats a low" });
    expect(refused(t, "bread-white")).toBeNull();
  });

  it("is a drink like any other where there was no low", () => {
    expect(refused(atPlate(false), "juice-orange")).toBeNull();
  });
});
