// A very high reading in a low or in its watch was called good: found by a nurse. Blank card: 240 mg/dL, from where the ADA asks for ketones.
import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { odileAlone, odileAt, twice } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const HI = { do: "read word", word: "HI", via: "touch" } as const;
const says = (t: Table): string => {
  const say = sayWalk(t.state, t.now, GUARDS);
  return `${say?.title} ${say?.lines.join(" ")}`;
};

const treated = (t: Table): Table => {
  t.send(sugar);
  t.pass(15 * 60);
  return t;
};
const watched = (card: Partial<DoseCard> = {}): Table => treated(odileAt("eat", card).send({ do: "cannot eat" }));
const lone = (card: Partial<DoseCard> = {}): Table => treated(odileAlone(card).send({ do: "open low", person: "odile" }));
const at = (t: Table, text: string): string => says(twice(t, "recheck after low", text));

describe("a high reading in a low", () => {
  it("is said as high in the watch without a meal, and never as good", () => {
    for (const said of [says(watched().send(HI, HI)), at(watched(), "320"), at(watched({ high: null }), "251")]) {
      expect(said).toContain("high");
      expect(said).not.toMatch(/good/i);
      expect(said).toContain("Feel ill? Press Something is wrong.");
      expect(said).toMatch(/555 0142/);
    }
    expect(says(watched().send(HI, HI))).toContain("HI means very high.");
  });

  it("says the card's own words for it", () => {
    expect(at(watched(), "320")).toContain("Your card says: Drink water.");
  });

  it("is no low that is over: no snack is told", () => {
    for (const said of [says(lone().send(HI, HI)), at(lone(), "320")]) {
      expect(said).toContain("high");
      expect(said).not.toContain("snack");
      expect(said).not.toContain("The low is over");
    }
  });

  it("below the card's line, or below 240 where it has none, is as good as before", () => {
    expect(at(watched(), "299")).toContain("That is good now.");
    expect(says(watched({ high: null }).number("recheck after low", "239"))).toContain("That is good now.");
    expect(says(watched({ high: null }).number("recheck after low", "240"))).toContain("Your reading is high.");
  });
});
