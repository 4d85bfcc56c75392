// Sugar to drink needs a number first, and a low that is over at night is not over with a snack.
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { odileAlone, odileAt, twice } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const vomits = { do: "report", mishap: "vomiting" } as const;
const says = (t: Table): string => (sayWalk(t.state, t.now, GUARDS)?.lines ?? []).join(" ");

describe("food that does not stay down", () => {
  it("brings no sugary drink before there is a number", () => {
    const said = says(odileAlone().send({ do: "open mishap", person: "odile", mishap: "vomiting" }));
    expect(said).toContain("Measure next. Sip water.");
    expect(said).not.toContain("sugary drink");
  });

  it("brings none where the number is high, or older than a reading may be", () => {
    const high = twice(odileAt("reading"), "reading", "320");
    expect(says(high.send(vomits))).not.toContain("sugary drink");
    const old = odileAt("eat");
    old.pass(16 * 60);
    expect(says(old.send(vomits))).toContain("Measure next. Sip water.");
  });

  it("brings it with a number that is not high, and in a low", () => {
    expect(says(odileAt("eat").send(vomits))).toContain("Take small sips of a sugary drink.");
    expect(says(odileAlone().send({ do: "open low", person: "odile" }, vomits))).toContain("Take small sips of a sugary drink.");
  });
});

describe("a low that is over", () => {
  const over = (hours: number): string => {
    const t = odileAlone();
    t.pass(hours * 3600);
    t.send({ do: "open low", person: "odile" }, sugar);
    t.pass(15 * 60);
    return says(t.number("recheck after low", "110"));
  };

  it("asks for one more reading at bedtime hours, and at no others", () => {
    expect(over(10)).toContain("Measure again before you sleep.");
    expect(over(2)).not.toContain("before you sleep");
    expect(over(2)).toContain("The low is over.");
  });
});
