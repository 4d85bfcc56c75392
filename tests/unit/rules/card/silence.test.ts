import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { lookUp } from "#rules/card/lookup.ts";
import type { Situation } from "#rules/card/told.ts";
import { at, band, bandCard, CARD, cardFor, NOON, ratioCard, said } from "./sample-card.ts";

const KINDS: readonly (readonly [string, DoseCard])[] = [
  ["fixed units", CARD],
  ["bands", bandCard([band(71, 180, 6), band(181, null, 8)], 6)],
  ["a ratio", ratioCard(10, {})],
];

describe.each(KINDS)("a card with %s", (_kind, card) => {
  const whyNot = (change: Partial<Situation>, cardChange: Partial<DoseCard> = {}) => {
    const answer = lookUp({ ...card, ...cardChange }, at(card, 110, 60, change));
    return answer.told ? answer.units : answer.why;
  };

  it("tells 6 units on an ordinary noon", () => {
    expect(whyNot({})).toBe(6);
  });

  it("is silent on a low, without a reading, on a word, and on a reading in the other unit", () => {
    expect(whyNot({ reading: { value: 70, unit: "mg/dL" } })).toBe("reading is low");
    expect(whyNot({ reading: null })).toBe("no reading");
    expect(whyNot({ reading: null, readingWord: "HI" })).toBe("reading is HI");
    expect(whyNot({ reading: null, readingWord: "LO" })).toBe("reading is LO");
    expect(whyNot({ reading: { value: 6.1, unit: "mmol/L" } })).toBe("other unit");
  });

  it("believes the word when a number stands beside it", () => {
    expect(whyNot({ readingWord: "LO" })).toBe("reading is LO");
    expect(whyNot({ readingWord: "HI" })).toBe("reading is HI");
  });

  it("is silent before its first day, after its last day, and on a day that is not known", () => {
    expect(whyNot({ today: "2025-12-31" })).toBe("not valid yet");
    expect(whyNot({ today: "2026-01-01" })).toBe(6);
    expect(whyNot({ today: "2026-06-30" }, { validUntil: "2026-06-30" })).toBe(6);
    expect(whyNot({ today: "2026-07-01" }, { validUntil: "2026-06-30" })).toBe("no longer valid");
    expect(whyNot({ today: null })).toBe("day not known");
  });

  it("is silent for a meal that it does not name", () => {
    expect(whyNot({ meal: "snack" })).toBe("no dose for this meal");
  });

  it("is silent while the largest dose or the window is blank, and names the field", () => {
    expect(lookUp({ ...card, largestDose: null }, at(card, 110, 60))).toEqual({ told: false, why: "blank field", field: "largestDose" });
    expect(lookUp({ ...card, windowMinutes: null }, at(card, 110, 60))).toEqual({
      told: false,
      why: "blank field",
      field: "windowMinutes",
    });
  });

  it("asks after a low and after exercise when the card says so or says nothing", () => {
    expect(whyNot({ afterLow: true }, { afterLow: "ask" })).toBe("after a low: ask");
    expect(lookUp({ ...card, afterLow: null }, at(card, 110, 60, { afterLow: true }))).toMatchObject({ field: "afterLow" });
    expect(whyNot({ hardExercise: true }, { afterExercise: "ask" })).toBe("after exercise: ask");
    expect(lookUp({ ...card, afterExercise: null }, at(card, 110, 60, { hardExercise: true }))).toMatchObject({ field: "afterExercise" });
    // The blanks and questions stop nobody on a day without them.
    expect(whyNot({}, { afterLow: null, afterExercise: null })).toBe(6);
    expect(whyNot({}, { afterLow: "ask", afterExercise: "ask" })).toBe(6);
  });

  it("is silent above the largest dose, and says the dose and the limit; at the limit it tells", () => {
    expect(lookUp({ ...card, largestDose: units(5) }, at(card, 110, 60))).toEqual({
      told: false,
      why: "above the largest dose",
      units: 6,
      limit: 5,
    });
    expect(whyNot({}, { largestDose: units(6) })).toBe(6);
  });

  it("goes on after the review date and says so each time", () => {
    const onTheDay = lookUp({ ...card, reviewBy: "2026-03-01" }, at(card, 110, 60));
    const dayAfter = lookUp({ ...card, reviewBy: "2026-02-28" }, at(card, 110, 60));
    expect(onTheDay).toMatchObject({ told: true, cautions: [] });
    expect(dayAfter).toMatchObject({ told: true, units: 6, cautions: [{ caution: "review date has passed", reviewBy: "2026-02-28" }] });
  });

  it("says that the card has advice of its own at and above its high, not below", () => {
    const high = { high: { value: 110, advice: "Test ketones." } };
    expect(lookUp({ ...card, ...high }, at(card, 110, 60))).toMatchObject({ cautions: [{ caution: "card has advice for this reading" }] });
    expect(lookUp({ ...card, ...high }, at(card, 109, 60))).toMatchObject({ cautions: [] });
  });

  it("lets a low be known before everything else that is wrong", () => {
    const change = { reading: { value: 60, unit: "mg/dL" }, today: null, meal: "snack", afterLow: true } as const;
    expect(whyNot(change, { largestDose: null, afterLow: "ask" })).toBe("reading is low");
  });

  it("keeps its timing, but eats first after a low where it says so", () => {
    const eatFirst: Partial<DoseCard> = { afterLow: "inject after eating" };
    expect(lookUp({ ...card, ...eatFirst }, at(card, 110, 60, { afterLow: true }))).toMatchObject({ units: 6, timing: "after eating" });
    expect(lookUp({ ...card, ...eatFirst }, at(card, 110, 60))).toMatchObject({ timing: "before eating" });
    expect(lookUp({ ...card, afterLow: "as usual" }, at(card, 110, 60, { afterLow: true }))).toMatchObject({ timing: "before eating" });
  });
});

describe("a printed dose that the pen cannot dial", () => {
  it("is never rounded: 5 units on a pen with steps of 2, half a unit on a whole one", () => {
    const two: Partial<DoseCard> = { rounding: { step: "2", direction: "nearest, half up" } };
    expect(lookUp(cardFor({ kind: "fixed units", units: units(5) }, two), NOON)).toEqual({
      told: false,
      why: "off the pen's step",
      units: 5,
      step: 2,
    });
    expect(said(bandCard([band(71, 180, 4.5)], 4.5), 110)).toBe("off the pen's step");
    expect(said(bandCard([band(71, 180, 4.5)], 4, { rounding: { step: "0.5", direction: "down" } }), 110)).toBe(4.5);
  });

  it("stops only the dose that it is part of: another row, or a food-only row that is not used, does not matter", () => {
    const card = bandCard([band(71, 180, 4), band(181, null, 7.5)], 3.5);
    expect(said(card, 110)).toBe(4);
    expect(said(card, 110, null, { minuteOfDay: 22 * 60 })).toBe("off the pen's step");
    expect(said(card, 200)).toBe("off the pen's step");
  });
});

describe("a meal by ratio", () => {
  it("is silent while the carbohydrate is not known, even when a correction could be worked out", () => {
    expect(said(ratioCard(10, {}), 250)).toBe("carbohydrate not known");
  });

  it("leaves a card without a correction at the food part", () => {
    expect(said(ratioCard(10, null), 300, 60)).toBe(6);
  });
});
