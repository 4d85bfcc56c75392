// Hard exercise lowers glucose for up to 24 hours (patient pages on lows at night). Bedtime goals of older people: 80 to 180, 100 to 180 and 110 to 200
// mg/dL by health (ADA Standards of Care 2024, table 13.1); 100 is the middle row, 5.6 mmol/L as the ADA prints it.
import { describe, expect, it } from "vitest";
import type { Glucose } from "#events/quantity.ts";
import { nearLowForNight } from "#rules/glucose/cautions.ts";
import { GUARDS } from "#walk/guards.ts";
import { sayEvening } from "#words/en/cautions.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, me, odileAlone, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const HOUR = 3600;
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines.join(" ") ?? "";
const evening = (t: Table) => sayEvening(t.state, t.now).join(" ");
const mg = (value: number): Glucose => ({ value, unit: "mg/dL" });

/** The table stands at noon; card: bedtime from 21:00 until 05:00. */
const exercised = (hard: boolean): Table => {
  const t = bring(odileAlone(), "plate").send({ do: "exercise", hard }, { do: "meal is ready" });
  return bring(t, "done");
};
const readingAt = (hours: number, reading: string): Table => {
  const t = odileAlone();
  t.pass(hours * HOUR);
  return t.send({ do: "open reading", person: "odile" }, { do: "already washed" }).number("reading", reading);
};

describe("after hard exercise", () => {
  it("a caution ends the walk, and none after an ordinary day", () => {
    expect(lines(exercised(true))).toContain("Hard exercise can bring a low until tomorrow. Measure before you sleep.");
    expect(lines(exercised(false))).not.toContain("exercise");
  });

  it("it stands on the kitchen screen from the evening until the night is over, and not at noon", () => {
    const t = exercised(true).send({ do: "finish" });
    expect(evening(t)).toBe("");
    t.pass(5 * HOUR);
    expect(evening(t)).toContain("Hard exercise can bring a low until tomorrow.");
    t.pass(11 * HOUR);
    expect(evening(t)).toContain("Hard exercise");
    t.pass(2 * HOUR);
    expect(evening(t)).toBe("");
    t.pass(12 * HOUR);
    expect(evening(t), "the evening after is more than a day away").toBe("");
  });

  it("a clock in doubt does not take it away", () => {
    const t = exercised(true).send({ do: "finish" });
    t.restart(30 * HOUR);
    expect(evening(t)).toContain("Hard exercise");
  });

  it("changes no dose beyond what the card's own field says", () => {
    const told = (hard: boolean) =>
      walk(bring(bring(odileAlone(), "plate").send({ do: "exercise", hard }, { do: "meal is ready" }), "pen")).told;
    expect(told(true)?.units).toBe(told(false)?.units);
    expect(me(exercised(true)).card?.card.afterExercise).toBe("food part only");
  });
});

describe("a reading at bedtime", () => {
  it.each([
    [99, true],
    [100, false],
    [180, false],
  ])("of %d mg/dL is near low for the night: %s", (value, near) => {
    expect(nearLowForNight(mg(value))).toBe(near);
  });

  it("of 5.5 mmol/L is, of 5.6 is not: in the unit it was read in", () => {
    expect(nearLowForNight({ value: 5.5, unit: "mmol/L" })).toBe(true);
    expect(nearLowForNight({ value: 5.6, unit: "mmol/L" })).toBe(false);
  });

  it("is cautioned about at the end of the walk and on the kitchen screen, all night", () => {
    const t = readingAt(10, "92");
    expect(lines(t)).toContain("92 is near low for the night. Ask your clinic about a snack. Keep quick sugar by the bed.");
    t.send({ do: "finish" });
    expect(evening(t)).toBe("92 is near low for the night. Keep quick sugar by the bed.");
    t.pass(6 * HOUR);
    expect(evening(t)).toContain("92");
    t.pass(2 * HOUR);
    expect(evening(t)).toBe("");
  });

  it("is no matter at noon, and a later better one takes its place", () => {
    expect(lines(readingAt(0, "92"))).not.toContain("night");
    const t = readingAt(10, "92").send({ do: "finish" });
    t.send({ do: "open reading", person: "odile" }, { do: "already washed" }).number("reading", "130").send({ do: "finish" });
    expect(evening(t)).toBe("");
  });
});
