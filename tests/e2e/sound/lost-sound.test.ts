// Ear and voice are lost in every way we know of: each walk goes on by what is left, with every sentence on the glass.
import { describe, expect, it } from "vitest";
import type { Happened } from "#events/happened.ts";
import { spokenSeconds } from "#speech/pace.ts";
import { hungAfterMs } from "#speech/voice-browser.ts";
import { GUARDS } from "#walk/guards.ts";
import { FIXED, IN_THE_WAY } from "#words/en/fixed.ts";
import { sayWalk } from "#words/en/steps.ts";
import { answerAloud } from "../kit/aloud.ts";
import { bench } from "../kit/bench.ts";
import { finger } from "../kit/hands.ts";
import { answer, LUNCH, STOPS, type Stop, walkMeal } from "../kit/meal.ts";
import { counts, overheard, played, workerIs } from "../kit/sound.ts";
import type { SoundGlobal } from "../kit/sound-in-page.ts";
import type { Tablet, Wanted } from "../kit/tablet.ts";

const open = bench();
const RATE = 190;
/** No sentence of these steps asks for the time. */
const NOW = { wall: 0, mono: 0, boot: "", zone: "", offset: 0 };
const tablet = (wanted: Wanted): Promise<Tablet> => open({ voice: "speaks and listens", prefs: { rate: RATE }, sound: {}, ...wanted });

const captions = (t: Tablet): Promise<string[]> =>
  t.page.locator(".caption").evaluateAll((all) => all.map((one) => (one.textContent ?? "").replace(/\s+/g, " ")));

/** By touch, screen after screen, until the dose is told; what is to be said stands on every one of them. */
async function toTheDose(t: Tablet, from: Stop = "clock"): Promise<void> {
  if (from === "clock") await walkMeal(t, finger(t), LUNCH, "clock");
  for (const stop of STOPS.slice(STOPS.indexOf(from), STOPS.indexOf("card"))) {
    await walkMeal(t, finger(t), LUNCH, STOPS[STOPS.indexOf(stop) + 1], stop);
    await expect.poll(() => captions(t)).toEqual(sayWalk(t.state, NOW, GUARDS)?.lines);
  }
  expect((await captions(t)).join(" ")).toContain("your card says 4 units.");
  expect(t.complaints).toEqual([]);
}

/** The dose was said to its end. */
const doseIsSaid = (t: Tablet) => overheard(t, "the dose", ({ caption, to }) => caption.includes("your card says 4 units") && to !== null);

/** Whether the log has such a row by now. */
const has = (t: Tablet, type: Happened["type"]) => async () => {
  await t.readOn();
  return t.eventsAfter(0).some((event) => event.type === type);
};

describe("a tablet that cannot hear", () => {
  const DEAF: readonly [string, "ready" | "broken", Wanted][] = [
    ["the microphone was refused before", "ready", { options: { permissions: [] } }],
    ["the microphone is refused when it is asked for", "ready", { sound: { microphone: "refused" } }],
    ["a file of the ear is not there", "broken", { broken: { file: /ear-a\.bin$/, how: "missing" } }],
    ["a file of the ear is torn", "broken", { broken: { file: /ear-b\.bin$/, how: "torn" } }],
  ];
  it.each(DEAF)("tells the dose by touch, speaks, and never says that it listens, where %s", async (_how, ear, wanted) => {
    const t = await tablet(wanted);
    await workerIs(t, "voice/", "ready");
    await workerIs(t, "ear/", ear);
    await toTheDose(t);
    await doseIsSaid(t);
    await t.page.waitForTimeout(1000);
    expect((await counts(t)).listenings).toBe(0);
  });
});

describe("an ear that dies while it listens", () => {
  it("is told at once, and the dose is told by touch", async () => {
    const t = await tablet({});
    await workerIs(t, "ear/", "ready");
    await workerIs(t, "voice/", "ready");
    await walkMeal(t, finger(t), LUNCH, "reading");
    await t.page.getByText(FIXED.listening).first().waitFor({ timeout: 20_000 });
    await t.page.evaluate(() => (globalThis as SoundGlobal).sound.kill("ear/", "with an error"));
    const [gone] = IN_THE_WAY.deaf;
    await t.page.getByText(gone).first().waitFor({ timeout: 5000 });
    await overheard(t, gone, ({ caption }) => caption === gone);
    const { listenings } = await counts(t);
    await toTheDose(t, "reading");
    expect((await counts(t)).listenings).toBe(listenings);
  });
});

describe("a tablet without a voice", () => {
  const MUTE: readonly [string, Wanted][] = [
    ["not there", { broken: { file: /voice\.wasm$/, how: "missing" } }],
    ["torn", { broken: { file: /voice\.wasm$/, how: "changed" } }],
  ];
  it.each(MUTE)("shows every sentence, says so, and listens, where the browser has none and its file is %s", async (_how, wanted) => {
    const t = await tablet(wanted);
    await workerIs(t, "voice/", "broken");
    await workerIs(t, "ear/", "ready");
    await t.page.getByText(FIXED.noVoice).first().waitFor({ timeout: 20_000 });
    await toTheDose(t);
    // The sentence has its time, as if it were spoken, and then the person's turn comes.
    await t.page.locator(".caption[data-current=yes]").first().waitFor();
    await answerAloud(t, ["go on", "next", "i understand"], has(t, "dose heard"));
    expect(await played(t)).toEqual([]);
  });
});

describe("a voice that dies in mid-sentence", () => {
  it("is followed at once by the next voice with the whole sentence, where the browser's starts and never ends", async () => {
    const t = await tablet({ sound: { voice: "hangs" } });
    await workerIs(t, "voice/", "ready");
    await walkMeal(t, finger(t), LUNCH, "wash");
    const [sentence = ""] = sayWalk(t.state, NOW, GUARDS)?.lines ?? [];
    const own = await overheard(t, sentence, ({ caption }) => caption === sentence);
    const { toBrowserVoice } = await counts(t);
    const hung = toBrowserVoice.at(-1);
    expect(hung).toMatchObject({ text: sentence, cancelled: true });
    const waited = own.from - (hung?.from ?? 0);
    expect(waited).toBeGreaterThan(hungAfterMs(sentence, RATE) - 100);
    expect(waited).toBeLessThan(hungAfterMs(sentence, RATE) + 1500);
    // The dead voice is not waited for again: the next sentence is the other's from the start.
    await answer(t, finger(t), { do: "already washed" });
    await overheard(t, "Measure your glucose", ({ caption }) => caption.includes("Measure your glucose"));
    expect((await counts(t)).toBrowserVoice).toHaveLength(toBrowserVoice.length);
    await toTheDose(t, "reading");
  });

  it.each(["silently", "with an error"] as const)(
    "leaves the sentence on the glass for its time, where the voice's worker dies %s",
    async (how) => {
      const t = await tablet({});
      await workerIs(t, "ear/", "ready");
      await workerIs(t, "voice/", "ready");
      await walkMeal(t, finger(t), LUNCH, "wash");
      await overheard(t, "Wash your hands", ({ caption }) => caption.includes("Wash your hands"));
      const before = (await played(t)).length;
      await t.page.evaluate((way) => (globalThis as SoundGlobal).sound.kill("voice/", way), how);
      await answer(t, finger(t), { do: "already washed" });
      const marked = t.page.locator(".caption[data-current=yes]").first();
      await marked.waitFor();
      const from = Date.now();
      await marked.waitFor({ state: "detached" });
      // Without a word it is waited for as long as making a sentence may take; then the sentence stands as long as it would be spoken.
      const sentence = sayWalk(t.state, NOW, GUARDS)?.lines ?? [];
      expect(Date.now() - from).toBeGreaterThan((how === "silently" ? 3000 : 0) + spokenSeconds(sentence, RATE) * 1000 - 500);
      await answerAloud(t, ["one three two", "one hundred thirty two"], has(t, "number given"));
      await toTheDose(t, "read back");
      expect(await played(t)).toHaveLength(before);
    },
  );
});
