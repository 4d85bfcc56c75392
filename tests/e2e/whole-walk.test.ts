import { describe, expect, it } from "vitest";
import { verifyChain } from "#log/chain.ts";
import { bench } from "./kit/bench.ts";
import { finger, type Hand, keys, voice } from "./kit/hands.ts";
import { LUNCH, type Meal, typesOf, walkMeal } from "./kit/meal.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();

/** Bread and soup from the list: two finds, two portions, one total. */
const FOODS: Meal = {
  person: "henk",
  meal: "lunch",
  reading: "6.4",
  plate: {
    foods: [
      { id: "bread-white", portions: 2 },
      { id: "apple", portions: 1 },
    ],
  },
};
const GRAMS: Meal = { ...FOODS, plate: { grams: "40" } };

const SKELETON = {
  before: [
    "walk opened",
    "clock agreed",
    "taken answered",
    "wait began",
    "hands washed",
    "number given",
    "reading taken",
    "exercise answered",
  ],
  ready: ["food is ready", "dose told", "dose heard"],
  pen: ["pen picked", "insulin looked at", "needle fitted", "pen primed"],
  skin: ["spot offered", "spot chosen", "skin cleaned", "wait began", "skin dry"],
  needle: ["inject opened", "button pressed down", "wait began", "wait ended"],
  after: ["pen put away", "eating", "walk ended"],
};

/** Every step's own event, in order. A dial heard by voice needs its digits twice. */
function expected(meal: Meal, how: Hand["how"]): string[] {
  const plate = !meal.plate
    ? ["plate agreed"]
    : "grams" in meal.plate
      ? ["number given", "plate agreed"]
      : [...meal.plate.foods.map(() => "food put on the plate"), "number given", "plate agreed"];
  const dial = how === "voice" ? ["number given", "digits asked again", "number given", "dose dialled"] : ["number given", "dose dialled"];
  const { before, ready, pen, skin, needle, after } = SKELETON;
  // Nought has a button of its own; said, it is a number that is read back.
  const left = how === "voice" ? ["number given"] : [];
  return [...before, ...plate, ...ready, ...pen, ...dial, ...skin, ...needle, ...left, "injected", ...after];
}

const walks: readonly [string, Meal, "silent" | "speaks and listens", (t: Tablet) => Hand, number][] = [
  ["Marta by touch alone", LUNCH, "silent", finger, 4],
  ["Henk by touch alone, with a plate of foods", FOODS, "silent", finger, 4.5],
  ["Marta by keys alone, with Tab", LUNCH, "silent", (t) => keys(t, "Tab"), 4],
  ["Henk by keys alone, with the arrows", FOODS, "silent", (t) => keys(t, "arrows"), 4.5],
  ["Marta by voice", LUNCH, "speaks and listens", voice, 4],
  ["Henk by voice, with foods named aloud", FOODS, "speaks and listens", voice, 4.5],
  ["Henk by voice, with grams", GRAMS, "speaks and listens", voice, 4],
];

describe("a whole meal walk in the browser", () => {
  it.each(walks)("is walked by %s, and every step is in the book", async (_name, meal, speaks, handOf, dose) => {
    const tablet = await open({ voice: speaks });
    const from = tablet.lastSeq;
    const hand = handOf(tablet);
    await walkMeal(tablet, hand, meal);

    const events = tablet.eventsAfter(from);
    expect(typesOf(events)).toEqual(expected(meal, hand.how));
    expect(events.find((event) => event.type === "injected")).toMatchObject({ units: dose, left: 0, certain: true });
    expect(events.at(-1)).toEqual({ type: "walk ended", how: "whole walk" });
    const ways = events.flatMap((event) => (event.type === "number given" ? [event.via] : []));
    // The total of a plate of foods is no number that anybody gave.
    const given = meal.plate && "foods" in meal.plate ? ways.toSpliced(1, 1) : ways;
    expect(new Set(given)).toEqual(new Set([hand.how === "voice" ? "voice" : "touch"]));
    expect(verifyChain(tablet.rows)).toEqual({ ok: true, count: tablet.rows.length });
    expect(tablet.complaints).toEqual([]);
  });

  it("is walked after ninety days of other walks, and the whole chain still holds", async () => {
    const tablet = await open({ past: "none" });
    const from = tablet.lastSeq;
    expect(from).toBeGreaterThan(10_000);
    await walkMeal(tablet, finger(tablet), LUNCH);
    const types = typesOf(tablet.eventsAfter(from));
    const steps = expected(LUNCH, "touch").filter((type) => type !== "spot offered");
    expect(types.filter((type) => steps.includes(type))).toEqual(steps);
    expect(verifyChain(tablet.rows)).toEqual({ ok: true, count: tablet.rows.length });
  });

  // Each on a fresh page: after two sayings that fit nothing the tablet waits by touch, and would not hear a third.
  it.each(["marta", "circle marta", "henk", "who is it marta"])("never takes the person from a voice that says %s", async (phrase) => {
    const tablet = await open({ voice: "speaks and listens" });
    const says = voice(tablet);
    await says.press({ shown: "", said: ["start a meal"] });
    await tablet.run(3000);
    await says.press({ shown: "", said: [phrase] });
    await tablet.run(2000);
    await tablet.readOn();
    expect(tablet.state.front).toBeNull();
    expect(await tablet.words()).toContain("Who is it?");
  });
});
