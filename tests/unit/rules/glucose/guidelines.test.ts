// What three guidelines teach about lows, and where the tool stands among them. Sources: rules/glucose/guidelines.ts.
import { describe, expect, it } from "vitest";
import { DEFAULTS } from "#rules/card/care.ts";
import { classify } from "#rules/glucose/classify.ts";
import { LOW_GUIDELINES, snackAfterMinutes } from "#rules/glucose/guidelines.ts";
import { GUARDS } from "#walk/guards.ts";
import { MOST_ROUNDS } from "#walk/steps/low.ts";

const of = (by: string) => {
  const found = LOW_GUIDELINES.find((g) => g.by === by);
  if (!found) throw new Error(`no guideline of ${by}`);
  return found;
};

describe("published guidelines on lows", () => {
  it("disagree on 3.9 mmol/L: low in the UK and Canada, not by the ADA (facts O06, O07)", () => {
    const g = { value: 3.9, unit: "mmol/L" } as const;
    expect(classify(g, of("ADA").low["mmol/L"])).toBe("not low");
    expect(classify(g, of("UK").low["mmol/L"])).toBe("low");
    expect(classify(g, of("Canada").low["mmol/L"])).toBe("low");
    expect(classify({ value: 4, unit: "mmol/L" }, of("UK").low["mmol/L"])).toBe("not low");
  });

  it("disagree on 70 and 71 mg/dL", () => {
    expect(classify({ value: 69, unit: "mg/dL" }, of("ADA").low["mg/dL"])).toBe("low");
    expect(classify({ value: 70, unit: "mg/dL" }, of("ADA").low["mg/dL"])).toBe("not low");
    expect(classify({ value: 71, unit: "mg/dL" }, of("UK").low["mg/dL"])).toBe("low");
  });

  it("all count as low, without a card, what the tool does not count as good in mmol/L", () => {
    for (let tenths = 20; tenths <= 60; tenths++) {
      const g = { value: tenths / 10, unit: "mmol/L" } as const;
      if (LOW_GUIDELINES.some(({ low }) => classify(g, low["mmol/L"]) === "low")) expect(GUARDS.isLow(g, null), `${g.value}`).toBe(true);
    }
  });

  it("hold the named defaults for sugar and the wait between their least and most", () => {
    for (const g of LOW_GUIDELINES) {
      expect(DEFAULTS.treatGrams).toBeGreaterThanOrEqual(g.treatGrams[0]);
      expect(DEFAULTS.treatGrams).toBeLessThanOrEqual(g.treatGrams[1]);
      expect(DEFAULTS.recheckMinutes).toBeGreaterThanOrEqual(g.recheckMinutes[0]);
      expect(DEFAULTS.recheckMinutes).toBeLessThanOrEqual(g.recheckMinutes[1]);
    }
  });

  it("name no more treatments before the call than the tool waits for", () => {
    expect(MOST_ROUNDS).toBe(Math.min(...LOW_GUIDELINES.flatMap(({ treatments }) => treatments ?? [])));
  });

  it("give a snack always in the UK, and before a meal more than an hour off in the US (facts O13)", () => {
    expect(snackAfterMinutes("UK")).toBe(0);
    expect(snackAfterMinutes("US")).toBe(60);
  });
});
