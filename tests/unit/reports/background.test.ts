import { describe, expect, it } from "vitest";
import { dayPage } from "#reports/day.ts";
import { rowsOn } from "#reports/day-rows.ts";
import { localParts } from "#rules/time/local.ts";
import { whole, withNight } from "../../kit/background-walk.ts";
import type { Table } from "../../kit/table.ts";
import { rowsOf } from "./rows.ts";

function today(t: Table): string[] {
  const day = localParts(t.now.wall, t.now.offset).date;
  return dayPage(rowsOn(rowsOf(t.facts), day, t.now.offset), "odile", t.state).lines.map(({ text }) => text);
}

describe("the day book", () => {
  it("names background insulin, says that there was no reading, and asks for no meal", () => {
    expect(today(whole(withNight()))).toEqual([
      "Long-acting insulin, insulin glargine. No reading was given. 14 units, left side of the belly.",
    ]);
  });

  it("names a background insulin that was told later, and mealtime insulin as it always did", () => {
    const t = withNight().send(
      { do: "tell a dose later", person: "odile", units: 14, minutesAgo: 120, insulin: "glargine-100" },
      { do: "tell a dose later", person: "odile", units: null, minutesAgo: null, insulin: "glargine-100" },
      { do: "tell a dose later", person: "odile", units: 6, minutesAgo: 60 },
    );
    expect(today(t)).toEqual([
      "14 units of insulin glargine were taken elsewhere, about 120 minutes earlier.",
      "Insulin glargine, amount not known, was taken elsewhere, at a time not known.",
      "6 units were taken elsewhere, about 60 minutes earlier.",
    ]);
  });

  it("writes a reading by itself, and no insulin beside it", () => {
    const t = withNight().send({ do: "open reading", person: "odile" }, { do: "already washed" });
    t.number("reading", "120").send({ do: "finish" });
    expect(today(t)).toEqual(["A reading. Reading 120 mg/dL."]);
  });
});
