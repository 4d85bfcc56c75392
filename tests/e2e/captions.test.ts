import { describe, expect, it } from "vitest";
import { FIXED } from "#words/en/fixed.ts";
import { bench } from "./kit/bench.ts";
import type { SpeechGlobal } from "./kit/fake-speech.ts";
import { finger, voice } from "./kit/hands.ts";
import { answer, LUNCH, type Meal, walkMeal } from "./kit/meal.ts";
import { PORTRAIT, SENTENCE_MS, type Tablet } from "./kit/tablet.ts";

const open = bench();
const FOODS: Meal = { person: "henk", meal: "lunch", reading: "6.4", plate: { foods: [{ id: "bread-white", portions: 2 }] } };

/** Sentences that were spoken to the end, or nearly, without standing on the glass meanwhile. */
const unseen = async (t: Tablet) => (await t.said()).filter(({ shown }) => shown === false).map(({ text }) => text);

/** Runs time until the voice has begun a sentence. */
async function speaking(t: Tablet): Promise<void> {
  for (let tries = 0; tries < 100; tries++) {
    if (await t.page.evaluate(() => (globalThis as SpeechGlobal).fakeSpeech.speaking())) return;
    await t.run(50);
  }
  throw new Error("the tablet says nothing");
}

describe("what is spoken", () => {
  it.each([
    ["at the usual size", {}, LUNCH],
    ["at the largest size", { k: 2 as const }, LUNCH],
    ["with a plate of foods", { k: 1.4 as const }, FOODS],
  ])("stands on the screen in the same words, %s, from the first screen to the last", async (_size, prefs, meal) => {
    const t = await open({ voice: "speaks and listens", prefs });
    await walkMeal(t, voice(t), meal);
    const said = await t.said();
    expect(said.length).toBeGreaterThan(30);
    expect(await unseen(t)).toEqual([]);
    // The hold is counted aloud, and every count is shown.
    expect(said.map(({ text }) => text)).toEqual(expect.arrayContaining(["1", "5", "10"]));
  });

  it("stands on the screen upright too, with reprompts, refusals, help and what is wrong", async () => {
    const t = await open({ voice: "speaks and listens", viewport: PORTRAIT });
    await walkMeal(t, finger(t), LUNCH, "read back");
    // Nobody answers: the question comes shorter, then the buttons by name.
    await t.run(30_000);
    const press = (name: string) => finger(t).press({ shown: name, said: [] });
    await press(FIXED.help);
    await t.run(8000);
    await press(FIXED.back);
    await press(FIXED.wrong);
    await t.run(8000);
    await press(FIXED.back);
    await answer(t, finger(t), { do: "change number" });
    await voice(t).press({ shown: "", said: ["five point five"] });
    await t.run(6000);
    expect((await t.said()).map(({ text }) => text)).toContain("I got 5.5.");
    expect(await unseen(t)).toEqual([]);
  });

  it("stops at once when the glass is touched, or a key pressed", async () => {
    const t = await open({ voice: "speaks" });
    await walkMeal(t, finger(t), LUNCH, "pen");
    await speaking(t);
    await t.page.touchscreen.tap(640, 260);
    expect(await t.page.evaluate(() => (globalThis as SpeechGlobal).fakeSpeech.speaking())).toBe(false);
    const before = (await t.said()).length;
    await t.run(5000);
    expect((await t.said()).length).toBe(before);
    await answer(t, finger(t), { do: "back" });
    await speaking(t);
    await t.page.keyboard.press("Shift");
    expect(await t.page.evaluate(() => (globalThis as SpeechGlobal).fakeSpeech.speaking())).toBe(false);
  });

  it("comes again on Again, and not at all after Quiet until Go on", async () => {
    const t = await open({ voice: "speaks" });
    await walkMeal(t, finger(t), LUNCH, "pen");
    const press = (name: string) => finger(t).press({ shown: name, said: [] });
    await t.run(5000);
    const first = (await t.said()).length;
    await press(FIXED.again);
    await t.run(5000);
    const again = (await t.said()).length;
    expect(again).toBeGreaterThan(first);
    await press(FIXED.quiet);
    await walkMeal(t, finger(t), LUNCH, "look", "pen");
    await t.run(5000);
    expect((await t.said()).length).toBe(again);
    await press(FIXED.goOn);
    await t.run(5000);
    expect((await t.said()).length).toBeGreaterThan(again);
    expect(SENTENCE_MS).toBeLessThan(1000);
  });
});

describe("a tablet that must not talk", () => {
  it.each(["silent", "screen reader"] as const)("never uses the voice on a whole walk in '%s'", async (mode) => {
    const t = await open({ voice: mode });
    await walkMeal(t, finger(t), LUNCH, "eat");
    await t.run(16 * 60_000);
    await answer(t, finger(t), { do: "eating" });
    expect(await t.said()).toEqual([]);
  });

  it("tells a screen reader each screen once, and puts the focus on its heading", async () => {
    const t = await open({ voice: "screen reader" });
    await walkMeal(t, finger(t), LUNCH, "exercise");
    await t.run(500);
    expect(await t.page.getByRole("status").innerText()).toContain("Hard exercise");
    expect(await t.page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
  });

  it("says nothing before somebody chose who speaks", async () => {
    const t = await open({ voice: "speaks and listens", prefs: { chose: false } });
    await t.run(5000);
    expect(await t.said()).toEqual([]);
    expect(await t.words()).toContain(FIXED.voiceMode);
  });
});
