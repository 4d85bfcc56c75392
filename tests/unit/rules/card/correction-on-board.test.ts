// How insulin on board makes a correction smaller: promise 4, mistake 9.
import { describe, expect, it } from "vitest";
import { units } from "#events/quantity.ts";
import { lookUp } from "#rules/card/lookup.ts";
import type { RecentDose, Situation } from "#rules/card/told.ts";
import { at, band, bandCard, parts, ratioCard, said } from "./sample-card.ts";

const RATIO = ratioCard(10, {});
const BANDS = bandCard([band(71, 180, 6), band(181, null, 9)], 6);
const dose = (minutesAgo: number | null, given: number | null = 6): RecentDose => ({
  minutesAgo,
  units: given === null ? null : units(given),
});
const recently = (...recent: RecentDose[]): Partial<Situation> => ({ recent });

describe("insulin on board", () => {
  // 6 units, 2 hours ago, linear over 4 hours: 3 units still count. Spacing is over.
  const counted = { ...RATIO, onBoard: { model: "linear", hours: 4 }, spacingMinutes: 60 } as const;

  it("takes its units off the correction, never below 0 and never off the food", () => {
    expect(parts(counted, 320, 60, recently(dose(120)))).toEqual([6, 1]);
    expect(parts(counted, 220, 60, recently(dose(120)))).toEqual([6, 0]);
    expect(parts(counted, 320, 60, recently(dose(120, 60)))).toEqual([6, 0]);
    expect(parts(counted, 320, 60, recently(dose(240)))).toEqual([6, 4]);
  });

  it("says what it took, or that nothing was left", () => {
    const some = lookUp(counted, at(counted, 320, 60, recently(dose(120))));
    const none = lookUp(counted, at(counted, 220, 60, recently(dose(120))));
    expect(some).toMatchObject({
      units: 7,
      why: [{ reason: "food" }, { reason: "insulin on board", units: 3 }, { reason: "reading is high", units: 1 }],
      rows: ["dinner 10 g per unit", "dinner correction"],
    });
    expect(none).toMatchObject({
      units: 6,
      why: [{ reason: "food" }, { reason: "no correction", because: "insulin on board" }],
      rows: ["dinner 10 g per unit"],
    });
  });

  it("takes off the correction as the card rounded it, so that no rounding gives it back", () => {
    const card = ratioCard(
      10,
      { mode: "each started step" },
      { onBoard: { model: "linear", hours: 4 }, spacingMinutes: 60, roundParts: "whole" },
    );
    // 100 above at 50 is 2 units; 0.5 on board leaves 1.5, not 2.
    expect(parts(card, 220, 60, recently(dose(210, 4)))).toEqual([6, 1.5]);
  });

  it("of an unknown size leaves no correction at all", () => {
    expect(said(counted, 320, 60, recently(dose(120, null)))).toBe(6);
    expect(said(counted, 320, 60, recently(dose(240, null)))).toBe(10);
  });

  it("takes off a band only what the band has above its food-only row", () => {
    const card = { ...BANDS, onBoard: { model: "linear", hours: 4 }, spacingMinutes: 60 } as const;
    expect(said(card, 220, null, recently(dose(180)))).toBe(8);
    expect(said(card, 220, null, recently(dose(60)))).toBe(6);
    expect(lookUp(card, at(card, 220, null, recently(dose(180))))).toMatchObject({
      rows: ["dinner band from 181", "dinner food-only"],
      correction: 1.5,
    });
    const blank = bandCard([band(71, null, 9)], null, { onBoard: card.onBoard, spacingMinutes: 60 });
    expect(said(blank, 220, null, recently(dose(180)))).toBe("no food-only row");
    expect(said(blank, 220, null, recently(dose(240)))).toBe(9);
  });

  it("never rounds a printed row or a food-only row that it is taken from", () => {
    const rule = { onBoard: { model: "linear", hours: 4 }, spacingMinutes: 60 } as const;
    const by = (row: number, foodOnly: number) => bandCard([band(71, 180, 6), band(181, null, row)], foodOnly, rule);
    expect(said(by(9.5, 6), 220, null, recently(dose(180)))).toBe("off the pen's step");
    expect(said(by(9, 5.5), 220, null, recently(dose(180)))).toBe("off the pen's step");
    expect(said(by(9, 5.5), 220, null, recently(dose(60)))).toBe("off the pen's step");
    // Nothing is left of the correction: the row itself is not used.
    expect(said(by(9.5, 6), 220, null, recently(dose(60)))).toBe(6);
    expect(said(by(9.5, 6), 220, null, recently(dose(240)))).toBe("off the pen's step");
  });

  it("has no caution of its own, taking some or all", () => {
    const card = { ...RATIO, onBoard: { model: "linear", hours: 4 }, spacingMinutes: 60 } as const;
    for (const value of [220, 320]) expect(lookUp(card, at(card, value, 60, recently(dose(120))))).toMatchObject({ cautions: [] });
  });

  it("stops and asks where the card is blank, only with a correction and a dose that could still act", () => {
    const card = { ...RATIO, onBoard: null };
    expect(lookUp(card, at(card, 220, 60, recently(dose(200))))).toEqual({ told: false, why: "blank field", field: "onBoard" });
    expect(said(card, 220, 60, recently(dose(30)))).toBe(6);
    expect([said(card, 110, 60, recently(dose(200))), said(card, 220, 60), said(card, 220, 60, recently(dose(720)))]).toEqual([6, 8, 8]);
  });

  it("takes off nothing where the card says that it is not used", () => {
    expect(said(RATIO, 220, 60, recently(dose(200, 20)))).toBe(8);
  });
});
