// Where the correction is left off: promises 4 and 14, and mistakes 9, 25 and 28.
import { describe, expect, it } from "vitest";
import { HOUR, MINUTE, units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { lookUp } from "#rules/card/lookup.ts";
import type { RecentDose, Situation } from "#rules/card/told.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import { at, band, bandCard, CARD, NOON, parts, ratioCard, said } from "./sample-card.ts";

const RATIO = ratioCard(10, {});
const BANDS = bandCard([band(71, 180, 6), band(181, null, 9)], 6);
const dose = (minutesAgo: number | null, given: number | null = 6): RecentDose => ({
  minutesAgo,
  units: given === null ? null : units(given),
});
const recently = (...recent: RecentDose[]): Partial<Situation> => ({ recent });
const whys = (card: typeof CARD, s: Partial<Situation>) => {
  const answer = lookUp(card, at(card, 220, 60, s));
  return answer.told ? answer.why : answer.why;
};

describe("inside the spacing", () => {
  it("no correction is told, and at the very minute it is: 08:00 with 3 hours, asked at 10:59 and 11:00", () => {
    expect([179, 180].map((m) => said(RATIO, 220, 60, recently(dose(m))))).toEqual([6, 8]);
  });

  it("elapsed minutes count, not the clock on the wall: the same over the night the clocks change", () => {
    const eight: Stamp = { wall: Date.UTC(2026, 2, 28, 23, 30), mono: 0, boot: "a", zone: "Europe/Berlin", offset: 60 };
    const asked = (minutes: number): Stamp => ({ ...eight, boot: "b", wall: eight.wall + minutes * MINUTE, offset: 120 });
    const ago = [179, 180].map((m) => (elapsed(eight, asked(m), true) ?? 0) / MINUTE);
    expect((asked(180).wall + 120 * MINUTE - (eight.wall + 60 * MINUTE)) / HOUR).toBe(4);
    expect(ago.map((m) => said(RATIO, 220, 60, recently(dose(m))))).toEqual([6, 8]);
  });

  it("counts a dose of unknown time as just now, and any dose of the list", () => {
    expect(said(RATIO, 220, 60, recently(dose(null)))).toBe(6);
    expect(said(RATIO, 220, 60, recently(dose(400), dose(100)))).toBe(6);
    expect(said(RATIO, 220, 60, recently(dose(-20)))).toBe(6);
  });

  it("leaves the food part alone, and says why the correction is missing", () => {
    expect(parts(RATIO, 220, 60, recently(dose(30)))).toEqual([6, 0]);
    expect(whys(RATIO, recently(dose(30)))).toEqual([
      { reason: "food", units: 6, grams: 60 },
      { reason: "no correction", because: "spacing" },
    ]);
  });

  it("tells the food-only row of a band table, and nothing where that is blank", () => {
    expect(said(BANDS, 220, null, recently(dose(30)))).toBe(6);
    expect(lookUp(BANDS, at(BANDS, 220, null, recently(dose(30))))).toMatchObject({ rows: ["dinner food-only"], food: 6, correction: 0 });
    expect(said(bandCard([band(71, 180, 6), band(181, null, 9)], null), 220, null, recently(dose(30)))).toBe("no food-only row");
    expect(said(bandCard([band(71, 180, 6)], null), 110, null, recently(dose(30)))).toBe("no food-only row");
  });

  it("tells nothing from a hole, though a food-only row is there", () => {
    expect(said(BANDS, 180.5, null, recently(dose(30)))).toBe("hole between bands");
  });

  it("keeps a row that is below the food part: leaving it off would tell more than the card", () => {
    const card = bandCard([band(71, 100, 4), band(101, null, 9)], 6);
    expect(parts(card, 90, null, recently(dose(30)))).toEqual([6, -2]);
    expect(said(card, 90, null, recently(dose(30)))).toBe(4);
  });

  it("keeps what the card takes off below the target, for the same reason", () => {
    const card = ratioCard(10, { mayReduce: true });
    expect(parts(card, 95, 60, recently(dose(30)))).toEqual([6, -0.5]);
    expect(parts(card, 95, 60, { afterLow: true, minuteOfDay: null })).toEqual([6, -0.5]);
  });

  it("does not touch fixed units: they hold no correction", () => {
    expect(
      lookUp(CARD, at(CARD, 220, null, { ...recently(dose(1, null)), minuteOfDay: null, hardExercise: true, afterLow: true })),
    ).toMatchObject({
      units: 6,
      rows: ["dinner fixed units"],
      why: [{ reason: "fixed for the meal", units: 6 }],
    });
  });

  it("says nothing of a correction that would be none", () => {
    expect(lookUp(RATIO, at(RATIO, 110, 60, recently(dose(30))))).toMatchObject({
      units: 6,
      why: [{ reason: "food", units: 6, grams: 60 }],
    });
  });
});

describe("a blank spacing", () => {
  const card = { ...RATIO, spacingMinutes: null };
  const asks = { told: false, why: "blank field", field: "spacingMinutes" };

  it("stops when there is a correction and a dose that could still act", () => {
    expect(lookUp(card, at(card, 220, 60, recently(dose(719))))).toEqual(asks);
    expect(lookUp(card, at(card, 220, 60, recently(dose(null))))).toEqual(asks);
  });

  it("stops nobody without a correction, without a dose, or 12 hours later (source: regular insulin acts 8 to 12 h, review of 2009)", () => {
    expect(said(card, 110, 60, recently(dose(30)))).toBe(6);
    expect(said(card, 220, 60)).toBe(8);
    expect(said(card, 220, 60, recently(dose(720)))).toBe(8);
  });

  it("does not matter where the correction is left off anyway", () => {
    expect(said(card, 220, 60, { ...recently(dose(30)), minuteOfDay: 22 * 60 })).toBe(6);
    expect(said({ ...CARD, spacingMinutes: null }, 220, null, recently(dose(30)))).toBe(6);
  });
});

describe("at bedtime", () => {
  const told = (card: typeof CARD, hour: number, minute = 0) => said(card, 220, 60, { minuteOfDay: hour * 60 + minute });

  it("no correction is told between the card's times", () => {
    expect([told(RATIO, 20, 59), told(RATIO, 21), told(RATIO, 4, 59), told(RATIO, 5)]).toEqual([8, 6, 6, 8]);
  });

  it("a blank means 21:00 to 05:00, and the default is named (source: ADA older-adult simplification figure)", () => {
    const card = { ...RATIO, bedtime: null };
    expect([told(card, 20, 59), told(card, 21), told(card, 4, 59), told(card, 5)]).toEqual([8, 6, 6, 8]);
    expect(lookUp(card, at(card, 220, 60, { minuteOfDay: 1380 }))).toMatchObject({
      why: [{ reason: "food" }, { reason: "no correction", because: "bedtime" }],
      cautions: [{ caution: "default used", field: "bedtime" }],
    });
    expect(lookUp(card, at(card, 220, 60))).toMatchObject({ cautions: [] });
    expect(lookUp(RATIO, at(RATIO, 220, 60, { minuteOfDay: 1380 }))).toMatchObject({ cautions: [] });
  });

  it("a correction is told where the card allows it", () => {
    expect(told({ ...RATIO, bedtime: { from: "21:00", until: "05:00", correction: true } }, 23)).toBe(8);
  });
});

describe("a doubtful clock", () => {
  it("counts as bedtime and inside the spacing, whatever the card says of either", () => {
    const open = { ...RATIO, bedtime: { from: "21:00", until: "05:00", correction: true }, spacingMinutes: 0 };
    expect(said(open, 220, 60)).toBe(8);
    expect(said(open, 220, 60, { minuteOfDay: null })).toBe(6);
    expect(whys(open, { minuteOfDay: null })).toEqual([
      { reason: "food", units: 6, grams: 60 },
      { reason: "no correction", because: "clock doubtful" },
    ]);
  });
});

describe("after a low and after hard exercise", () => {
  it("the food part only is told where the card says so", () => {
    for (const change of [{ afterLow: true }, { hardExercise: true }]) {
      expect(said(RATIO, 220, 60, change)).toBe(6);
      expect(said(BANDS, 220, null, change)).toBe(6);
    }
    expect(whys(RATIO, { hardExercise: true, afterLow: true }).slice(1)).toEqual([
      { reason: "no correction", because: "after a low" },
      { reason: "no correction", because: "after exercise" },
    ]);
  });

  it("the whole dose is told where the card says as usual, and the food part where the meal is eaten first", () => {
    const usual = { ...RATIO, afterLow: "as usual", afterExercise: "as usual" } as const;
    expect(said(usual, 220, 60, { afterLow: true, hardExercise: true })).toBe(8);
    expect(said({ ...RATIO, afterLow: "inject after eating" }, 220, 60, { afterLow: true })).toBe(6);
  });
});

describe("a reading below the target", () => {
  const card = ratioCard(10, { mayReduce: true });

  it("takes units off where the card allows it, and says so", () => {
    expect(lookUp(card, at(card, 95, 60))).toMatchObject({
      why: [
        { reason: "food", units: 6 },
        { reason: "reading is below target", units: 0.5 },
      ],
      cautions: [{ caution: "below target, reduced" }],
    });
  });

  it("never takes the dose below 0", () => {
    expect(said(card, 71, 2)).toBe(0);
    expect(parts(card, 71, 2)).toEqual([0.2, -0.98]);
  });

  it("counts from the nearer end of a target range, and not inside it", () => {
    const range = ratioCard(10, { target: { low: 100, high: 140 }, mayReduce: true });
    expect([95, 100, 120, 140, 150].map((g) => parts(range, g, 60)[1])).toEqual([-0.1, 0, 0, 0, 0.2]);
  });

  it("is counted in whole steps towards less insulin: no source, the careful way", () => {
    const by = (mode: "nearest" | "down" | "each started step") => parts(ratioCard(10, { mayReduce: true, perUnit: 20, mode }), 90, 60)[1];
    // 30 below at 20 a unit is one step and a half.
    expect([by("nearest"), by("down"), by("each started step")]).toEqual([-2, -2, -2]);
    expect(parts(ratioCard(10, { mayReduce: true, perUnit: 20, mode: "nearest" }), 95, 60)[1]).toBe(-1);
  });
});

describe("an ordinary noon", () => {
  it("changes nothing: the whole dose with both reasons", () => {
    expect(lookUp(RATIO, { ...NOON, ...at(RATIO, 220, 60) })).toEqual({
      told: true,
      units: 8,
      food: 6,
      correction: 2,
      rows: ["dinner 10 g per unit", "dinner correction"],
      why: [
        { reason: "food", units: 6, grams: 60 },
        { reason: "reading is high", units: 2 },
      ],
      cautions: [],
      timing: "before eating",
    });
  });
});
