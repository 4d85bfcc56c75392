// A number that is not heard well, on the glass: which of two, one digit at a time, and then the pad. Said and shown in the same words.
import { describe, expect, it } from "vitest";
import { ASKING } from "#words/en/asking.ts";
import { FIXED } from "#words/en/fixed.ts";
import { bench } from "./kit/bench.ts";
import { finger, named, voice } from "./kit/hands.ts";
import { answer, LUNCH, walkMeal, walkOf } from "./kit/meal.ts";
import { screenFaults } from "./kit/screen-faults.ts";
import { LANDSCAPE, PORTRAIT, type Tablet, type Wanted } from "./kit/tablet.ts";

const open = bench();
const say = (t: Tablet, text: string) => voice(t).press({ shown: "", said: [text] });

async function atReading(more: Partial<Wanted> = {}): Promise<Tablet> {
  const t = await open({ voice: "speaks and listens", ...more });
  await walkMeal(t, finger(t), LUNCH, "reading");
  return t;
}

/** Says it, and lets the tablet speak to its end. */
async function talk(t: Tablet, text: string): Promise<void> {
  await say(t, text);
  await t.run(4000);
}

const LOOKS: readonly [string, Partial<Wanted>][] = [
  ["landscape", { viewport: LANDSCAPE }],
  ["portrait", { viewport: PORTRAIT }],
  ["landscape, twice the text, dark", { viewport: LANDSCAPE, prefs: { k: 2, theme: "dark" } }],
  ["portrait, twice the text, dark", { viewport: PORTRAIT, prefs: { k: 2, theme: "dark" } }],
];

describe("a number that was not heard well", () => {
  it.each(LOOKS)("is asked for on screens that keep the rules and the sizes: %s", async (name, look) => {
    const t = await atReading(look);
    const faults: Record<string, string[]> = {};
    const see = async (screen: string) => {
      const found = await screenFaults(t);
      if (found.length > 0) faults[screen] = found;
      if (process.env.SHOTS) await t.page.screenshot({ path: `${process.env.SHOTS}/${screen}-${name}.png`.replace(/[ ,]+/g, "-") });
    };
    await talk(t, "one hundred thirteen");
    expect(await t.words()).toContain("One one three, or one three zero?");
    await see("which");
    await talk(t, "neither");
    await see("first digit");
    await talk(t, "one");
    await talk(t, "one");
    expect(await t.words()).toContain("One, one.");
    await see("next digit");
    await talk(t, "three");
    await talk(t, "no");
    await named(t, FIXED.ok).waitFor();
    await see("pad");
    expect(faults).toEqual({});
    const unseen = (await t.said()).filter(({ shown }) => shown === false).map(({ text }) => text);
    expect(unseen).toEqual([]);
    expect(walkOf(t).reading).toBeNull();
  });

  it("is given by a finger at every turn, too", async () => {
    const t = await atReading();
    await talk(t, "one hundred thirteen");
    await finger(t).press({ shown: "130", said: [] });
    await t.stored("130");
    expect(walkOf(t).draft).toMatchObject({ text: "130", via: "voice" });
    await answer(t, finger(t), { do: "change number" });
    await finger(t).press({ shown: ASKING.keys, said: [] });
    for (const key of ["1", "3", "2", FIXED.ok]) await finger(t).press({ shown: key, said: [] });
    await t.stored("132");
    expect(walkOf(t).draft).toMatchObject({ text: "132", via: "touch" });
  });

  it("goes back to the question from every one of its screens", async () => {
    const t = await atReading();
    await talk(t, "one hundred thirteen");
    await finger(t).press({ shown: FIXED.back, said: [] });
    expect(await t.words()).not.toContain(ASKING.neither);
    await talk(t, "one hundred thirteen");
    await talk(t, "no");
    await talk(t, "go back");
    expect(await t.words()).not.toContain(ASKING.first);
    await talk(t, "one hundred thirty two");
    expect(walkOf(t).draft ?? (await t.stored("132"))).toBeTruthy();
  });
});

describe("the voice itself", () => {
  it("is made slower at any step, keeps it, and says the question again", async () => {
    const t = await atReading();
    await t.run(6000);
    const before = (await t.said()).length;
    await talk(t, "slower");
    const after = (await t.said()).slice(before).map(({ text }) => text);
    expect(after).toHaveLength(1);
    expect(await t.words()).toContain(after[0]);
    expect(await t.page.evaluate(() => JSON.parse(localStorage.getItem("tablebell preferences") ?? "{}").rate)).toBe(135);
  });
});
