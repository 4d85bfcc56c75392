import { describe, expect, it } from "vitest";
import type { BackgroundDose, DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { lookUpBackground } from "#rules/card/background.ts";
import { INSULIN } from "#rules/card/insulin-kind.ts";
import { CARD } from "./sample-card.ts";

const NIGHT: BackgroundDose = {
  insulin: { id: "glargine-100", name: "insulin glargine", unitsPerMl: 100, kind: "long-acting" },
  units: units(14),
  at: "21:30",
  windowMinutes: 1080,
};
const EVENING = { today: "2026-03-01", reading: { value: 110, unit: "mg/dL" }, readingWord: null } as const;
const ask = (
  change: Partial<Parameters<typeof lookUpBackground>[2]> = {},
  card: Partial<DoseCard> = {},
  dose: Partial<BackgroundDose> = {},
) => lookUpBackground({ ...CARD, ...card }, { ...NIGHT, ...dose }, { ...EVENING, ...change });

describe("a background dose", () => {
  it("is the printed units", () => {
    expect(ask()).toEqual({ told: true, units: 14, dose: NIGHT, withoutReading: false });
  });

  it("is never blocked by a missing reading, by HI, or by a reading in the other unit: that is said", () => {
    expect(ask({ reading: null })).toMatchObject({ told: true, withoutReading: true });
    expect(ask({ reading: null, readingWord: "HI" })).toMatchObject({ told: true, withoutReading: false });
    expect(ask({ reading: { value: 5, unit: "mmol/L" } })).toMatchObject({ told: true, withoutReading: false });
  });

  it("waits for a low to be treated", () => {
    expect(ask({ reading: { value: 70, unit: "mg/dL" } })).toEqual({ told: false, why: "reading is low" });
    expect(ask({ reading: { value: 71, unit: "mg/dL" } })).toMatchObject({ told: true });
    expect(ask({ readingWord: "LO" })).toEqual({ told: false, why: "reading is LO" });
  });

  it("needs a card in force", () => {
    expect(ask({ today: "2025-12-31" })).toEqual({ told: false, why: "not valid yet" });
    expect(ask({}, { validUntil: "2026-02-28" })).toEqual({ told: false, why: "no longer valid" });
    expect(ask({ today: null })).toEqual({ told: false, why: "day not known" });
  });

  it("asks the clinic where the card does not say how long it counts", () => {
    expect(ask({}, {}, { windowMinutes: null })).toEqual({ told: false, why: "blank field" });
  });
});

describe("the kind of an insulin", () => {
  it("says what follows from it (facts of the trade; times: reviews of 2009 and 2018)", () => {
    const flags = (kind: keyof typeof INSULIN) => {
      const { needsFood, isCloudy, mayCorrect, mayBeTakenInLow, usualLatestMinutes } = INSULIN[kind];
      return [needsFood, isCloudy, mayCorrect, mayBeTakenInLow, usualLatestMinutes];
    };
    expect(flags("rapid analogue")).toEqual([true, false, true, false, 20]);
    expect(flags("regular")).toEqual([true, false, true, false, 45]);
    expect(flags("premixed")).toEqual([true, true, false, false, 45]);
    expect(flags("intermediate")).toEqual([false, true, false, true, null]);
    expect(flags("long-acting")).toEqual([false, false, false, true, null]);
  });
});
