import { describe, expect, it } from "vitest";
import type { Intent } from "#events/intent.ts";
import type { Refusal } from "#walk/refusal.ts";
import { FIXED, PAD_BUTTON } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import { plateWords } from "#words/en/plate.ts";
import { sayRefusal } from "#words/en/refusals.ts";
import { bench } from "./kit/bench.ts";
import { finger, named, voice } from "./kit/hands.ts";
import { answer, give, LUNCH, type Meal, typesOf, walkMeal, walkOf } from "./kit/meal.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();
const HENK: Meal = { person: "henk", meal: "lunch", reading: "6.4", plate: { grams: "40" } };

const press = (t: Tablet, name: string) => finger(t).press({ shown: name, said: [] });
const typed = (t: Tablet) => t.page.getByLabel(FIXED.numberIs).locator(".pad-number").innerText();

async function type(t: Tablet, text: string): Promise<void> {
  for (const mark of text) await press(t, mark);
  await press(t, FIXED.ok);
  await t.stored(`near miss for "${text}"`);
}

async function clear(t: Tablet): Promise<void> {
  for (let tries = 0; tries < 8 && (await typed(t)) !== ""; tries++) await press(t, FIXED.delete);
}

/** All three parts stand on the screen; what does not fit is one press on More away. */
async function showsRefusal(t: Tablet, refusal: Refusal): Promise<void> {
  const { got, wrong, todo } = sayRefusal(refusal);
  const words = (await t.words()).replace(/\s+/g, " ");
  for (const part of [got, wrong, todo]) expect(words).toContain(part);
}

/** Types each wrong number: three plain sentences come, the digits stay, the walk stands where it stood and a slip was written down. */
async function refuses(t: Tablet, wrongs: readonly [string, Refusal][]): Promise<void> {
  for (const [text, refusal] of wrongs) {
    const before = walkOf(t);
    const seq = t.lastSeq;
    await type(t, text);
    await showsRefusal(t, refusal);
    expect(await typed(t)).toBe(text);
    expect(new Set(typesOf(t.eventsAfter(seq)))).toEqual(new Set(["near miss"]));
    expect({ ...walkOf(t), slips: 0, touchedAt: null }).toEqual({ ...before, slips: 0, touchedAt: null });
    await clear(t);
  }
}

const reading = (why: Extract<Refusal, { no: "reading" }>["why"], text: string, unit: "mg/dL" | "mmol/L"): Refusal => ({
  no: "reading",
  why,
  text,
  unit,
});
const inHand = (t: Tablet, intent: Intent) => named(t, labelOf(intent, t.state).shown);

describe("a wrong number", () => {
  it("is refused at the reading in mg/dL, and the right one is taken afterwards", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "reading");
    await press(t, PAD_BUTTON.reading);
    await refuses(t, [
      ["", reading("empty", "", "mg/dL")],
      ["0", reading("zero", "0", "mg/dL")],
      ["1800", reading("too high", "1800", "mg/dL")],
      ["5", reading("fits only the other unit", "5", "mg/dL")],
    ]);
    // The pad of this person has no point: 5.5 cannot be typed.
    expect(await named(t, ".").count()).toBe(0);
    for (const mark of "13") await press(t, mark);
    await press(t, FIXED.help);
    await press(t, FIXED.back);
    // Help over a half-typed number loses nothing.
    expect(await t.page.locator(".pad-number").innerText()).toBe("13");
    await press(t, "2");
    await press(t, FIXED.ok);
    await t.stored("132");
    await walkMeal(t, finger(t), LUNCH, "ready", "read back");
    expect(walkOf(t).reading?.glucose).toEqual({ value: 132, unit: "mg/dL" });
  });

  it("is refused at the reading in mmol/L", async () => {
    const t = await open();
    await walkMeal(t, finger(t), HENK, "reading");
    await press(t, PAD_BUTTON.reading);
    await refuses(t, [
      ["110", reading("fits only the other unit", "110", "mmol/L")],
      ["0", reading("zero", "0", "mmol/L")],
      ["1800", reading("too high", "1800", "mmol/L")],
      ["6.45", reading("too many decimals", "6.45", "mmol/L")],
    ]);
  });

  it("that fits both units is asked about, and the other unit is never taken", async () => {
    const t = await open();
    await walkMeal(t, finger(t), { ...LUNCH, reading: "25" }, "read back");
    expect(await inHand(t, { do: "agree number" }).count()).toBe(0);
    await answer(t, finger(t), { do: "choose unit", unit: "mmol/L" });
    await showsRefusal(t, { no: "wrong unit", unit: "mg/dL" });
    expect(walkOf(t).draft).toBeNull();
    await give(t, finger(t), "reading", "25");
    await answer(t, finger(t), { do: "choose unit", unit: "mg/dL" });
    await inHand(t, { do: "agree number" }).waitFor();
  });

  it("that is a word stays a word: HI is tested again, LO goes to sugar", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "reading");
    await answer(t, finger(t), { do: "read word", word: "HI", via: "touch" });
    expect(await t.words()).toContain("HI means very high. It is not a number.");
    await answer(t, finger(t), { do: "change number" });
    await answer(t, finger(t), { do: "read word", word: "LO", via: "touch" });
    expect(walkOf(t).low?.because).toBe("meter word");
    expect(await t.words()).toContain("sugar");
  });

  it("is refused at the plate, where ten times too much is a slip", async () => {
    const t = await open();
    await walkMeal(t, finger(t), HENK, "plate");
    await press(t, plateWords.typeGrams);
    await refuses(t, [
      ["", { no: "grams", why: "empty", text: "" }],
      ["0", { no: "grams", why: "zero", text: "0" }],
      ["1800", { no: "grams", why: "too many", text: "1800" }],
    ]);
  });

  it("is refused at the dial, and one that is not the card's never reaches the needle", async () => {
    const t = await open();
    await walkMeal(t, finger(t), LUNCH, "dial");
    await press(t, PAD_BUTTON.dial);
    await refuses(t, [
      ["", { no: "units", why: "empty", text: "" }],
      ["1800", { no: "units", why: "too many", text: "1800" }],
      ["3.5", { no: "units", why: "off the pen's step", text: "3.5" }],
    ]);
    await press(t, "7");
    await press(t, FIXED.ok);
    await t.stored("7");
    await answer(t, finger(t), { do: "agree number" });
    const { heading, got, wrong, todo } = sayRefusal({ no: "dial is not the card", dialled: 7, told: 4 } as Refusal);
    for (const part of [heading, got, wrong, todo]) expect((await t.words()).replace(/\s+/g, " ")).toContain(part);
    expect(walkOf(t).dial).toBeNull();
  });

  it("is refused when it is heard: two numbers in one breath, and one in the other unit", async () => {
    const t = await open({ voice: "speaks and listens" });
    await walkMeal(t, voice(t), LUNCH, "reading");
    const says = (phrase: string) => voice(t).press({ shown: "", said: [phrase] });
    await says("one fifty, um, fifteen");
    await t.run(4000);
    expect((await t.words()).replace(/\s+/g, " ")).toContain("I heard 150 and 15.");
    await t.readOn();
    expect(walkOf(t).draft).toBeNull();
    await says("five point five");
    await t.stored("near miss");
    await showsRefusal(t, reading("fits only the other unit", "5.5", "mg/dL"));
    await says("one hundred thirty two");
    await t.stored("132");
    expect(walkOf(t).draft?.text).toBe("132");
  });
});
