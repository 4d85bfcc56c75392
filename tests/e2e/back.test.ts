import { describe, expect, it } from "vitest";
import { TODAY } from "#words/en/due.ts";
import { FIXED } from "#words/en/fixed.ts";
import { plateWords } from "#words/en/plate.ts";
import { bench } from "./kit/bench.ts";
import { finger, named, voice } from "./kit/hands.ts";
import { LUNCH, type Meal, walkMeal } from "./kit/meal.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();
const HENK: Meal = { person: "henk", meal: "lunch", reading: "6.4", plate: { grams: "40" } };
const press = (t: Tablet, name: string) => finger(t).press({ shown: name, said: [] });
const sees = (t: Tablet, name: string) => named(t, name).waitFor({ timeout: 5000 });

/** The two ways to go back without touching Back. */
const BACKS: readonly [string, (t: Tablet) => Promise<void>][] = [
  ["said", (t) => voice(t).press({ shown: FIXED.back, said: ["back"] })],
  [
    "pressed as Escape",
    async (t) => {
      await t.settle();
      await t.page.keyboard.press("Escape");
    },
  ],
];

describe.each(BACKS)("Back, %s,", (_how, back) => {
  it("goes from each small screen of the kitchen to where it was opened", async () => {
    const t = await open({ voice: "speaks and listens" });
    await press(t, FIXED.didI);
    await press(t, "● Marta");
    await press(t, FIXED.later);
    await back(t);
    await sees(t, FIXED.later);
    await press(t, FIXED.help);
    await press(t, FIXED.voiceMode);
    await back(t);
    await sees(t, FIXED.close);
    await back(t);
    await sees(t, FIXED.later);
    await press(t, FIXED.wrong);
    await back(t);
    await sees(t, FIXED.later);
    await back(t);
    await sees(t, "● Marta");
    await back(t);
    await sees(t, FIXED.meal);
  });

  it("leaves the walk under a small screen as it is", async () => {
    const t = await open({ voice: "speaks and listens" });
    await walkMeal(t, finger(t), HENK, "plate");
    const seq = t.lastSeq;
    await press(t, plateWords.byKind);
    await back(t);
    await sees(t, plateWords.byLetter);
    await press(t, FIXED.help);
    await back(t);
    await sees(t, plateWords.byLetter);
    await press(t, FIXED.wrong);
    await back(t);
    await sees(t, plateWords.byLetter);
    await t.readOn();
    expect(t.lastSeq).toBe(seq);
  });

  it("goes from the body chart to the day, and from the day to the kitchen", async () => {
    const t = await open({ voice: "speaks and listens" });
    await press(t, TODAY.title);
    await press(t, FIXED.dayBook);
    await press(t, "Body chart");
    await back(t);
    await sees(t, "Body chart");
    await back(t);
    await sees(t, TODAY.right);
    await back(t);
    await sees(t, FIXED.meal);
  });
});

describe("a walk", () => {
  it("still goes back one step when its own Back is said", async () => {
    const t = await open({ voice: "speaks and listens" });
    await walkMeal(t, finger(t), LUNCH, "exercise");
    await voice(t).press({ shown: FIXED.back, said: ["back"] });
    await t.stored("back");
    expect(t.rows.at(-1)).toMatchObject({ event: { type: "went back" } });
  });
});
