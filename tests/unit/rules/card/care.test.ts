import { describe, expect, it } from "vitest";
import { care, DEFAULTS } from "#rules/card/care.ts";
import { CARD } from "./sample-card.ts";

describe("a care field", () => {
  it("is the named default when the card leaves it blank, and says so", () => {
    expect(care(CARD, "holdSeconds")).toEqual({ value: 10, isDefault: true });
  });

  it("is the card's own number when there is one, 0 included", () => {
    const card = { ...CARD, care: { ...CARD.care, holdSeconds: 6, dryingSeconds: 0 } };
    expect(care(card, "holdSeconds")).toEqual({ value: 6, isDefault: false });
    expect(care(card, "dryingSeconds")).toEqual({ value: 0, isDefault: false });
  });

  it("has the defaults that the facts and common practice name", () => {
    expect(DEFAULTS).toEqual({
      washSeconds: 20,
      readingAgeMinutes: 15,
      primeUnits: 2,
      dryingSeconds: 20,
      holdSeconds: 10,
      recheckMinutes: 15,
      treatGrams: 15,
      restDays: 28,
      lastSpotMm: 51,
      navelMm: 51,
      askEatenMinutes: 20,
      watchMinutes: 30,
    });
  });
});
