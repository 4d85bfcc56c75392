// Who speaks: the app, a screen reader, nobody. Chosen before anything talks, changed from every screen of the person by keys alone or by voice, and never two at once.
import { describe, expect, it } from "vitest";
import type { Prefs } from "#devices/prefs.ts";
import { FIXED } from "#words/en/fixed.ts";
import { bench } from "./kit/bench.ts";
import type { SpeechGlobal } from "./kit/fake-speech.ts";
import { finger, keys, voice } from "./kit/hands.ts";
import { LUNCH, type Stop, walkMeal } from "./kit/meal.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();
const byKeys = (t: Tablet, name: string) => keys(t, "Tab").press({ shown: name, said: [] });
const byVoice = (t: Tablet, said: string) => voice(t).press({ shown: "", said: [said] });
const kept = (t: Tablet): Promise<Prefs["voice"]> =>
  t.page.evaluate(() => JSON.parse(localStorage.getItem("tablebell preferences") ?? "{}").voice);
const speaks = (t: Tablet) => t.page.evaluate(() => (globalThis as SpeechGlobal).fakeSpeech.speaking());
const listens = (t: Tablet) => t.page.evaluate(() => (globalThis as SpeechGlobal).fakeSpeech.listening());
/** What a screen reader would say of its own accord. */
const told = async (t: Tablet) => (await t.page.locator(".for-ears[role]").allInnerTexts()).join(" ").trim();

const WHERE: readonly (readonly [string, Stop | null])[] = [
  ["the kitchen", null],
  ["the reading", "reading"],
  ["a read-back", "read back"],
  ["the dial", "dial"],
  ["the needle", "window"],
  ["the bell", "eat"],
];

describe("who speaks", () => {
  it("is asked first of all, by keys too, with nothing said, nothing listening and nothing told before", async () => {
    const t = await open({ voice: "speaks and listens", prefs: { chose: false } });
    await t.run(5000);
    expect([await t.said(), await listens(t), await told(t)]).toEqual([[], false, ""]);
    await byKeys(t, FIXED.readerSpeaks);
    expect(await kept(t)).toBe("screen reader");
    await t.run(5000);
    expect([await t.said(), await listens(t)]).toEqual([[], false]);
  });

  it.each(WHERE)(
    "is changed by keys alone from %s: our voice falls silent, and the screen reader is told; and back",
    async (_where, stop) => {
      const t = await open({ voice: "speaks" });
      if (stop !== null) await walkMeal(t, finger(t), LUNCH, stop);
      await t.run(4000);
      // The kitchen rests in silence.
      if (stop !== null) expect((await t.said()).length).toBeGreaterThan(0);
      expect(await told(t)).toBe("");
      await byKeys(t, FIXED.help);
      await byKeys(t, FIXED.voiceMode);
      await byKeys(t, FIXED.readerSpeaks);
      expect(await kept(t)).toBe("screen reader");
      const before = (await t.said()).length;
      await byKeys(t, FIXED.close);
      await t.run(4000);
      expect(await speaks(t)).toBe(false);
      expect((await t.said()).length).toBe(before);
      if (stop !== null) expect(await told(t)).not.toBe("");
      await byKeys(t, FIXED.help);
      await byKeys(t, FIXED.voiceMode);
      await byKeys(t, FIXED.textOnly);
      await byKeys(t, FIXED.close);
      await t.run(4000);
      expect([await kept(t), await told(t), (await t.said()).length, await listens(t)]).toEqual(["silent", "", before, false]);
    },
  );

  it("is asked for by voice at any step, too", async () => {
    const t = await open({ voice: "speaks and listens" });
    await walkMeal(t, finger(t), LUNCH, "reading");
    await byVoice(t, "who speaks");
    await t.page.getByRole("button", { name: FIXED.textOnly }).waitFor();
    await byVoice(t, "my screen reader speaks");
    await t.run(2000);
    expect([await kept(t), await listens(t)]).toEqual(["screen reader", false]);
  });
});
