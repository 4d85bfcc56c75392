// What was said, found out from the sound: what came out of the loudspeaker is recognised again and put beside the caption and the log.
import { describe, expect, it } from "vitest";
import { DEFAULT_WPM } from "#speech/pace.ts";
import { speakable } from "#speech/voice/speakable.ts";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { inWords } from "#words/numbers.ts";
import { bench } from "../kit/bench.ts";
import { finger } from "../kit/hands.ts";
import { answer, LUNCH, STOPS, type Stop, walkMeal } from "../kit/meal.ts";
import { numberHeard } from "../kit/said.ts";
import { counts, given, type Overheard, overheard, played, recorded, voiceOfTests, workerIs } from "../kit/sound.ts";
import type { Tablet } from "../kit/tablet.ts";

const open = bench();
const NOW = { wall: 0, mono: 0, boot: "", zone: "", offset: 0 };

/** The sentence was said to its end. */
const said = (t: Tablet, sentence = "nothing") =>
  overheard(t, sentence, ({ caption, to, cut }) => caption === sentence && to !== null && !cut);

/** As heard from the loudspeaker, in words. */
const heard = async (t: Tablet, sound: Overheard): Promise<string | null> => numberHeard(await recorded(t, sound.place), sound.caption);

const inOwnWords = (text: string) => inWords(text, "en-US").replace(/-/g, " ");

describe("a number that is told", () => {
  it.each([
    ["132", "4"],
    ["255", "7"],
  ])("after a reading of %s is the same in the log, in the caption and in the sound: %s units", { retry: 2 }, async (reading, units) => {
    const t = await open({ voice: "speaks", sound: { record: true } });
    await workerIs(t, "voice/", "ready");
    await walkMeal(t, finger(t), { ...LUNCH, reading }, "card");
    const told = t.eventsAfter(0).find((event) => event.type === "dose told");
    expect(told).toMatchObject({ told: { units: Number(units) } });

    // The sentence is made from nothing but the rows of the log.
    const lines = sayWalk(t.state, NOW, GUARDS)?.lines ?? [];
    expect(lines[0]).toBe(`Marta. Lunch: your card says ${units} units.`);
    const dose = await said(t, lines[0]);
    expect(await heard(t, dose)).toBe(inOwnWords(units));
    // And the app handed the loudspeaker every sample of the whole sentence.
    const whole = (await voiceOfTests())(speakable(dose.caption, "en-US"), DEFAULT_WPM / 190);
    expect(Buffer.from((await given(t, dose.place)).buffer).equals(Buffer.from(whole.samples.buffer))).toBe(true);

    await walkMeal(t, finger(t), LUNCH, "dial", "card");
    expect(await heard(t, await said(t, `Dial ${units} units.`))).toBe(inOwnWords(units));
  });

  it.each([0.9, 0.6])("is never spoken with a part missing: of a sound torn at %s nothing is played", async (share) => {
    const t = await open({ voice: "speaks", sound: { share } });
    await workerIs(t, "voice/", "ready");
    await walkMeal(t, finger(t), LUNCH, "card");
    const [dose = ""] = sayWalk(t.state, NOW, GUARDS)?.lines ?? [];
    await t.page.locator(".caption[data-current=yes]", { hasText: dose }).waitFor();
    // The next sentence is marked once this one has had its time.
    await t.page.locator(".caption[data-current=yes]", { hasNotText: dose }).waitFor();
    expect(await played(t)).toEqual([]);
  });
});

describe("a tablet that must not talk", () => {
  const STEPS: readonly Stop[] = ["reading", "read back", "exercise", "ready", "card", "pen", "look", "needle", "prime"];

  it.each([
    ["screen reader", true],
    ["silent", false],
  ] as const)("in the mode '%s' plays nothing over many steps, and tells a screen reader each of them: %s", async (voice, tells) => {
    const t = await open({ voice, sound: { voice: "hangs" } });
    await walkMeal(t, finger(t), LUNCH, "wash");
    await answer(t, finger(t), { do: "already washed" });
    for (const stop of STEPS) {
      await walkMeal(t, finger(t), LUNCH, STOPS[STOPS.indexOf(stop) + 1], stop);
      const lines = sayWalk(t.state, NOW, GUARDS)?.lines.join(" ");
      await expect.poll(() => t.page.getByRole("status").innerText()).toBe(tells ? lines : "");
      await t.page.waitForTimeout(300);
    }
    await t.page.waitForTimeout(2000);
    const { toBrowserVoice, tones, listenings } = await counts(t);
    expect([await played(t), toBrowserVoice, tones, listenings]).toEqual([[], [], 0, 0]);
  });
});
