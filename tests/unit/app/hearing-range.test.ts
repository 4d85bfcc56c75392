// Which numbers the ear takes at each question: all that the walk's own check allows, units to what most pens for home use dial (our choice, no
// source). Outside of them it takes none, and the walk would refuse them too.
import { describe, expect, it } from "vitest";
import { rangeOf } from "#app/hearing.ts";
import type { NumberSlot } from "#events/told.ts";
import { checkGrams } from "#rules/food/grams.ts";
import { checkKetones } from "#rules/glucose/ketones.ts";
import { checkReading } from "#rules/glucose/reading.ts";
import { checkUnits } from "#rules/pen/units.ts";
import { within } from "#speech/range.ts";
import { odileAlone } from "../../kit/explore/at-table.ts";

const at = (unit: "mg/dL" | "mmol/L") => odileAlone({}, { glucoseUnit: unit }).send({ do: "open reading", person: "odile" }).state;
const takes = (slot: NumberSlot, unit: "mg/dL" | "mmol/L" = "mg/dL") => {
  const range = rangeOf(slot, at(unit));
  return (value: number) => within(value, range);
};
/** Every tenth from 0 to 999. */
const TENTHS = Array.from({ length: 9991 }, (_, i) => i / 10);
const GLUCOSE: readonly NumberSlot[] = ["reading", "recheck", "recheck after low", "reading when ill"];
const UNITS: readonly NumberSlot[] = ["own number", "telephoned number", "dial", "left in window"];

describe("a number that the ear takes", () => {
  it.each(GLUCOSE)("is one that a meter shows, of either unit: %s", (slot) => {
    for (const unit of ["mg/dL", "mmol/L"] as const) {
      const heard = takes(slot, unit);
      const shown = TENTHS.filter((n) => checkReading(String(n), unit).ok === true);
      expect(shown.filter((n) => !heard(n))).toEqual([]);
      expect([0, 0.9, 600.5, 601, 999].filter(heard)).toEqual([]);
    }
    expect([4.5, 14.2].filter(takes(slot, "mg/dL"))).toEqual([]);
    expect([33.4, 40.2, 120.5].filter(takes(slot, "mmol/L"))).toEqual([]);
  });

  it("is one that a ketone meter shows, 0 to 8", () => {
    const heard = takes("ketones");
    expect(TENTHS.filter(heard)).toEqual(TENTHS.filter((n) => checkKetones(String(n)).ok));
    expect(TENTHS.filter(heard)).toHaveLength(81);
  });

  it("is as many grams as a plate may hold, in whole grams", () => {
    const heard = takes("grams");
    for (const n of TENTHS) if (heard(n)) expect(n === 0 || checkGrams(String(n), null).ok !== false, String(n)).toBe(true);
    expect([1, 15, 101, 400].map(heard)).toEqual([true, true, true, true]);
    expect([401, 450, 999, 40.5].filter(heard)).toEqual([]);
    expect(checkGrams("401", null).ok).toBe(false);
  });

  it.each(UNITS)("is units of a pen to 80, in halves, and an empty window: %s", (slot) => {
    const heard = takes(slot);
    expect(TENTHS.filter(heard)).toEqual(TENTHS.filter((n) => n <= 80 && checkUnits(String(n), "0.5").ok));
    expect(heard(0) && heard(80) && !heard(80.5) && !heard(0.3)).toBe(true);
  });
});
