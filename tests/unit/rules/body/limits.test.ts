import { describe, expect, it } from "vitest";
import type { NoGo } from "#events/spot.ts";
import { DEFAULT_BODY } from "#rules/body/area.ts";
import { whyNot } from "#rules/body/limits.ts";
import { siteRules } from "#rules/body/site-rules.ts";
import { at, BLANK_CARE, question, rules, used } from "../../../kit/bodies.ts";

const spot = at("belly", "left", 68, 34);
const elsewhere = used(at("thigh", "right", 34, 120), 0);

describe("a spot that was used", () => {
  // O31. 28 days: no spot twice in 4 weeks, New Insulin Delivery Recommendations, Mayo Clin Proc 2016;91:1231.
  // 24 days: 12 days on the left and 12 on the right, handout of the US diabetes educators' association, 2020.
  it("rests 24 days after its use under a 28 day rule and is free under a 24 day rule", () => {
    const uses = [elsewhere, used(spot, 24)];
    expect(whyNot(spot, question({ uses, rules: rules({ restDays: 28 }) }))).toEqual({ why: "still resting", daysAgo: 24, restDays: 28 });
    expect(whyNot(spot, question({ uses, rules: rules({ restDays: 24 }) }))).toBeNull();
  });

  it("is free on the day the rest is over and not a day before", () => {
    expect(whyNot(spot, question({ uses: [elsewhere, used(spot, 27)] }))?.why).toBe("still resting");
    expect(whyNot(spot, question({ uses: [elsewhere, used(spot, 28)] }))).toBeNull();
  });

  it("keeps the skin within one finger at rest too, and not the skin one finger on", () => {
    const finger = DEFAULT_BODY.fingerMm;
    expect(whyNot({ ...spot, outMm: spot.outMm + finger - 1 }, question({ uses: [elsewhere, used(spot, 3)] }))?.why).toBe("still resting");
    expect(whyNot({ ...spot, outMm: spot.outMm + finger }, question({ uses: [elsewhere, used(spot, 3)] }))).toBeNull();
  });

  it("counts its newest use, whatever came before", () => {
    const uses = [elsewhere, used(spot, 5), used(spot, 40)];
    expect(whyNot(spot, question({ uses }))).toEqual({ why: "still resting", daysAgo: 5, restDays: 28 });
  });

  it("never counts as rested when its days are not a number", () => {
    expect(whyNot(spot, question({ uses: [elsewhere, used(spot, Number.NaN)] }))?.why).toBe("still resting");
  });

  it("is free earlier only for the shorter rest that was reported", () => {
    const uses = [elsewhere, used(spot, 20)];
    expect(whyNot(spot, question({ uses, rules: rules({ acceptedRestDays: 20 }) }))).toBeNull();
    expect(whyNot(spot, question({ uses, rules: rules({ acceptedRestDays: 21 }) }))?.why).toBe("still resting");
  });

  it("is not held longer than the card says by a reported rest", () => {
    expect(whyNot(spot, question({ uses: [elsewhere, used(spot, 28)], rules: rules({ acceptedRestDays: 90 }) }))).toBeNull();
  });
});

describe("the distance from the last injection", () => {
  // O32. 1 cm apart: 2016 recommendations as above; one inch, 2.54 cm: teaching. Both are taught, so it is a field.
  it("lets spots 1.0 cm apart pass under 1 cm and turns them down under one inch", () => {
    const last = used(spot, 400);
    const next = { ...spot, outMm: spot.outMm + 10 };
    expect(whyNot(next, question({ uses: [last], rules: rules({ lastSpotMm: 10 }) }))).toBeNull();
    expect(whyNot(next, question({ uses: [last], rules: rules({ lastSpotMm: 25.4 }) }))).toEqual({
      why: "too near the last one",
      leastMm: 25.4,
    });
  });

  it("counts across the middle of the belly", () => {
    const last = used(at("belly", "right", 20, 60), 400);
    expect(whyNot(at("belly", "left", 20, 60), question({ uses: [last] }))?.why).toBe("too near the last one");
    expect(whyNot(at("belly", "left", 31, 60), question({ uses: [last] }))).toBeNull();
  });

  it("is measured from the newest use only", () => {
    const uses = [elsewhere, used({ ...spot, downMm: 51 }, 60)];
    expect(whyNot(spot, question({ uses }))).toBeNull();
  });

  it("never runs from one thigh to the other", () => {
    expect(whyNot(at("thigh", "left", 34, 120), question({ uses: [elsewhere] }))).toBeNull();
  });
});

describe("spots nearer than 1 cm", () => {
  it("are the same skin even where the card's spacing is less", () => {
    const uses = [elsewhere, used(spot, 3)];
    const near = { ...spot, outMm: spot.outMm + 9 };
    expect(whyNot(near, question({ uses, rules: rules({ spacingMm: 4 }) }))?.why).toBe("still resting");
    expect(whyNot({ ...spot, outMm: spot.outMm + 10 }, question({ uses, rules: rules({ spacingMm: 4 }) }))).toBeNull();
  });
});

describe("where no needle goes", () => {
  it("keeps 2 inches from the navel, or what the card says", () => {
    expect(whyNot(at("belly", "left", 34, 34), question())).toEqual({ why: "too near the navel", leastMm: 51 });
    expect(whyNot(at("belly", "left", 51, 0), question())).toBeNull();
    expect(whyNot(at("belly", "left", 34, 34), question({ rules: rules({ navelMm: 40 }) }))).toBeNull();
  });

  it.each(["scar", "mole", "lump", "sore", "other"] as const)(
    "keeps off a %s and 1 cm around it, from either side of the belly",
    (kind) => {
      const mark: NoGo = { id: "m", spot: at("belly", "right", 0, 80), radiusMm: 10, kind };
      expect(whyNot(at("belly", "left", 19, 80), question({ noGo: [mark] }))).toEqual({ why: "on a marked place", id: "m", kind });
      expect(whyNot(at("belly", "left", 20, 80), question({ noGo: [mark] }))).toBeNull();
    },
  );

  it("leaves no spot outside the area", () => {
    expect(whyNot(at("thigh", "left", 0, 79), question())).toEqual({ why: "outside the area" });
    expect(whyNot(at("belly", "left", -60, 0), question())).toEqual({ why: "outside the area" });
    expect(whyNot(at("belly", "left", Number.NaN, 60), question())).toEqual({ why: "outside the area" });
  });

  it("keeps to the region that is kept for the meal", () => {
    expect(whyNot(spot, question({ region: "thigh" }))).toEqual({ why: "another region is kept for this meal", region: "thigh" });
    expect(whyNot(spot, question({ region: "belly" }))).toBeNull();
  });
});

describe("the rules of a card", () => {
  it("are the clinic's own numbers, or 28 days and 2 inches where it left them blank", () => {
    expect(siteRules(BLANK_CARE, DEFAULT_BODY)).toEqual({
      restDays: 28,
      lastSpotMm: 51,
      navelMm: 51,
      spacingMm: 17,
      acceptedRestDays: null,
    });
    expect(siteRules({ restDays: 24, lastSpotMm: 25, navelMm: 40 }, DEFAULT_BODY, 20)).toEqual({
      restDays: 24,
      lastSpotMm: 25,
      navelMm: 40,
      spacingMm: 17,
      acceptedRestDays: 20,
    });
  });
});
