import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import type { Region } from "#events/spot.ts";
import { DEFAULT_BODY } from "#rules/body/area.ts";
import { dayLoads } from "#rules/body/day-load.ts";
import { sayLoad } from "#words/en/drawer/body.ts";
import { BODIES } from "../../../kit/bodies.ts";
import { fixedCard } from "../../../kit/people.ts";

const threeMeals: DoseCard = { ...fixedCard, regions: null, meals: { ...fixedCard.meals, snack: null } };
const meals = (Object.keys(threeMeals.meals) as (keyof DoseCard["meals"])[]).filter((meal) => threeMeals.meals[meal] !== null);
const only = (region: Region): Region[] => (["belly", "thigh", "arm", "buttock"] as const).filter((one) => one !== region);

describe("what fits on a body at the injections of a card", () => {
  it("is one load for all parts where no meal keeps one, at the meals that have a dose", () => {
    const [load, ...others] = dayLoads(threeMeals, DEFAULT_BODY, [], []);
    expect(others).toEqual([]);
    expect(load).toMatchObject({ region: null, injectionsADay: meals.length, askedDays: 28 });
    expect(load?.restDays).toBe(Math.floor((load?.spots ?? 0) / meals.length));
    expect(load?.restDays).toBeGreaterThanOrEqual(28);
  });

  it("is less with every mark and every part that is left out, and never more than the whole", () => {
    const scar = { id: "s", spot: { region: "belly", side: "left", outMm: 85, downMm: 0 }, radiusMm: 30, kind: "scar" } as const;
    const spots = (...q: [Parameters<typeof dayLoads>[2], Region[]]) => dayLoads(threeMeals, DEFAULT_BODY, ...q)[0]?.spots ?? 0;
    expect(spots([scar], [])).toBeLessThan(spots([], []));
    const each = (["belly", "thigh", "arm", "buttock"] as const).map((region) => spots([], only(region)));
    expect(each.reduce((sum, n) => sum + n, 0)).toBe(spots([], []));
  });

  it("is a load for each part that is kept, with its own meals a day", () => {
    const kept = { ...threeMeals, regions: { breakfast: "belly", lunch: "belly", dinner: "thigh" } } as DoseCard;
    const loads = dayLoads(kept, DEFAULT_BODY, [], []);
    expect(loads.map(({ region, injectionsADay }) => [region, injectionsADay])).toEqual(
      meals.includes("dinner")
        ? [
            ["belly", 2],
            ["thigh", 1],
          ]
        : [["belly", 2]],
    );
    const [belly] = loads;
    expect(belly?.spots).toBe(dayLoads(threeMeals, DEFAULT_BODY, [], only("belly"))[0]?.spots);
  });

  it("is told honestly where the rest of the card does not fit: the small arms alone", () => {
    const all = { ...threeMeals, meals: { ...threeMeals.meals, snack: threeMeals.meals.breakfast } };
    const [load] = dayLoads(all, BODIES.small ?? DEFAULT_BODY, [], only("arm"));
    if (!load) throw new Error("no load");
    expect(load.restDays).toBeLessThan(28);
    expect(sayLoad(load).at(-1)).toBe("The 28 days of the card do not fit. Ask the clinic.");
    expect(sayLoad(load)[1]).toContain(`can rest ${load.restDays} days`);
  });

  it("is nothing without a dose, and no place without a part", () => {
    const none = { breakfast: null, lunch: null, dinner: null, snack: null };
    expect(dayLoads({ ...threeMeals, meals: none }, DEFAULT_BODY, [], [])).toEqual([]);
    const [load] = dayLoads(threeMeals, DEFAULT_BODY, [], ["belly", "thigh", "arm", "buttock"]);
    expect(load && sayLoad(load)).toEqual(["No place fits.", "Ask the clinic which part to use."]);
  });

  it("says sentences of at most twelve words", () => {
    for (const load of dayLoads({ ...threeMeals, regions: { breakfast: "buttock" } } as DoseCard, DEFAULT_BODY, [], []))
      for (const line of sayLoad(load))
        for (const sentence of line.split(". ")) expect(sentence.split(" ").length, sentence).toBeLessThanOrEqual(12);
  });
});
