// A kettle in the way of the ear, by real sound: said and shown once, no nag, and the walk goes on by voice as soon as it is quiet.
import { describe, expect, it } from "vitest";
import { IN_THE_WAY } from "#words/en/fixed.ts";
import { bench } from "../kit/bench.ts";
import { finger } from "../kit/hands.ts";
import { LUNCH, walkMeal, walkOf } from "../kit/meal.ts";
import { screenFaults } from "../kit/screen-faults.ts";
import { played, sayInto, workerIs } from "../kit/sound.ts";
import type { SoundGlobal } from "../kit/sound-in-page.ts";
import { LANDSCAPE, PORTRAIT, type Tablet, type Wanted } from "../kit/tablet.ts";

const open = bench();
const [TOO_LOUD, PRESS] = IN_THE_WAY["too loud"];

/** So many seconds of hiss, as a kettle at full boil beside the tablet, into the microphone; does not wait for its end. */
const kettle = (t: Tablet, seconds: number): Promise<void> =>
  t.page.evaluate((s) => {
    const samples = new Int16Array(s * 16_000).map(() => (Math.random() - 0.5) * 40_000);
    let text = "";
    for (const byte of new Uint8Array(samples.buffer)) text += String.fromCharCode(byte);
    void (globalThis as SoundGlobal).sound.say(btoa(text));
  }, seconds);

const LOOKS: readonly [string, Partial<Wanted>][] = [
  ["landscape", { viewport: LANDSCAPE }],
  ["portrait, twice the text, dark", { viewport: PORTRAIT, prefs: { rate: 190, k: 2, theme: "dark" } }],
];

describe("a kettle beside the tablet", () => {
  it.each(LOOKS)(
    "is told once, on a screen that keeps the rules and the sizes, and afterwards the answer is heard: %s",
    async (name, look) => {
      const t = await open({ voice: "speaks and listens", prefs: { rate: 190 }, sound: {}, ...look });
      await workerIs(t, "ear/", "ready");
      await workerIs(t, "voice/", "ready");
      await walkMeal(t, finger(t), LUNCH, "reading");
      await t.page.getByText("I am listening.").first().waitFor({ timeout: 20_000 });
      await kettle(t, 14);
      await t.page.getByText(TOO_LOUD).first().waitFor({ timeout: 12_000 });
      await t.page.getByText(PRESS).first().waitFor({ timeout: 12_000 });
      // Said, and then the first of it stays, in no more room than "I am listening."
      await t.page.getByText(PRESS).first().waitFor({ state: "detached", timeout: 12_000 });
      await t.page.getByText(TOO_LOUD).first().waitFor({ timeout: 12_000 });
      if (process.env.SHOTS) await t.page.screenshot({ path: `${process.env.SHOTS}/loud-${name.replace(/[ ,]+/g, "-")}.png` });
      expect(await screenFaults(t)).toEqual([]);
      await t.page.waitForTimeout(9000);
      expect((await played(t)).filter(({ caption }) => caption === TOO_LOUD)).toHaveLength(1);
      for (let go = 0; go < 3 && walkOf(t).draft === null; go++) {
        await sayInto(t, "one three two", go);
        await t.page.waitForTimeout(3000);
        await t.readOn();
      }
      expect(walkOf(t).draft).toMatchObject({ text: "132", via: "voice" });
      expect(await t.page.getByText(TOO_LOUD).count()).toBe(0);
    },
  );
});
