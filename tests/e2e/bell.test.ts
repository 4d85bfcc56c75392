import { describe, expect, it } from "vitest";
import { FIXED } from "#words/en/fixed.ts";
import { WATCH } from "#words/en/insulin-watch.ts";
import { labelOf } from "#words/en/labels.ts";
import { bench } from "./kit/bench.ts";
import type { SpeechGlobal } from "./kit/fake-speech.ts";
import { finger } from "./kit/hands.ts";
import { answer, LUNCH, walkMeal } from "./kit/meal.ts";
import { screenFaults } from "./kit/screen-faults.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();

interface Ring {
  /** Minutes since the insulin went in. */
  minute: number;
  level: "calling" | "insistent" | "loud";
}

/** Rings of this page since the bell was set, told apart by their highest notes (devices/tone-shapes.ts). */
async function rings({ t, from }: Bell): Promise<Ring[]> {
  const tones = await t.page.evaluate(() => (globalThis as SpeechGlobal).fakeSpeech.tones);
  const found: { at: number; hz: number[] }[] = [];
  for (const { at, hz } of tones) {
    const last = found.at(-1);
    if (last && at - last.at < 5000) last.hz.push(hz);
    else found.push({ at, hz: [hz] });
  }
  return found.flatMap(({ at, hz }): Ring[] => {
    const level = hz.includes(880) ? "loud" : hz.includes(784) ? "insistent" : hz.includes(523) ? "calling" : null;
    return level ? [{ minute: (at - from) / 60_000, level }] : [];
  });
}

const between = (all: readonly Ring[], from: number, to: number) => all.filter(({ minute }) => minute >= from && minute < to);
/** Seconds between two rings at most; throws for fewer than two, of which nothing could be said. */
function longestGap(all: readonly Ring[]): number {
  const gaps = all.slice(1).map(({ minute }, place) => 60 * (minute - (all[place]?.minute ?? minute)));
  if (gaps.length === 0) throw new Error(`it rang ${all.length} times: no gap can be told`);
  return Math.max(...gaps);
}

interface Bell {
  t: Tablet;
  /** Since when it counts, ms since 1970. */
  from: number;
}

async function toTheBell(): Promise<Bell> {
  const t = await open();
  await walkMeal(t, finger(t), LUNCH, "eat");
  const bell = t.state.people.marta?.bell;
  if (!bell) throw new Error("no bell was set");
  return { t, from: bell.from.wall };
}

describe("the meal bell", () => {
  it("is quiet for five minutes, calls, grows insistent, and is loud from the fifteenth, for as long as nobody eats", async () => {
    const bell = await toTheBell();
    const { t } = bell;
    await t.run(19 * 60_000);
    const all = await rings(bell);
    expect(between(all, 0, 5)).toEqual([]);
    expect(new Set(between(all, 5, 10).map(({ level }) => level))).toEqual(new Set(["calling"]));
    expect(new Set(between(all, 10, 15).map(({ level }) => level))).toEqual(new Set(["insistent"]));
    expect(new Set(between(all, 15, 19).map(({ level }) => level))).toEqual(new Set(["loud"]));
    expect(all[0]?.minute).toBeLessThan(5.1);
    expect(longestGap(between(all, 5, 10))).toBeLessThanOrEqual(122);
    expect(longestGap(between(all, 10, 15))).toBeLessThanOrEqual(62);
    expect(longestGap(between(all, 15, 19))).toBeLessThanOrEqual(32);
    await t.readOn();
    expect(t.eventsAfter(0)).toContainEqual({ type: "bell not answered", minutes: 0 });
    const words = await t.words();
    for (const line of ["4 units of insulin lispro", "No meal yet", "Bring food or sugar", "911"]) expect(words).toContain(line);
  });

  it("is not lost with the page: started again, it rings at once", async () => {
    const bell = await toTheBell();
    const { t } = bell;
    await t.run(2 * 60_000);
    await t.reload();
    await t.page.touchscreen.tap(640, 400);
    await t.page.waitForTimeout(300);
    await t.run(35_000);
    expect((await rings(bell)).map(({ level }) => level)).toContain("loud");
  });

  it("is ended by I am eating, and by nothing smaller", async () => {
    const bell = await toTheBell();
    const { t } = bell;
    const hand = finger(t);
    const press = (name: string) => hand.press({ shown: name, said: [] });
    await t.run(6 * 60_000);
    await press(FIXED.quiet);
    await press(FIXED.back);
    await press(FIXED.help);
    await press(FIXED.close);
    await press(FIXED.wrong);
    await press(labelOf({ do: "leave" }, t.state).shown);
    await t.stored("leave");
    expect(t.state.front).toBeNull();
    expect(t.state.people.marta?.bell).not.toBeNull();
    const before = (await rings(bell)).length;
    await t.run(12 * 60_000);
    const after = await rings(bell);
    expect(after.length).toBeGreaterThan(before + 8);
    expect(after.at(-1)?.level).toBe("loud");
    expect(await t.words()).toContain("eat now");
    await answer(t, hand, { do: "turn to", person: "marta" });
    await answer(t, hand, { do: "eating" });
    await t.run(3000);
    const ended = (await rings(bell)).length;
    await t.run(5 * 60_000);
    expect((await rings(bell)).length).toBe(ended);
  });

  it("is ended by I cannot eat, which leads to sugar and the watch over a low", async () => {
    const bell = await toTheBell();
    const { t } = bell;
    await t.run(6 * 60_000);
    await answer(t, finger(t), { do: "cannot eat" });
    expect(t.state.people.marta?.bell).toBeNull();
    expect(t.state.people.marta?.walk?.low?.because).toBe("cannot eat");
    expect(await t.words()).toContain("sugar");
    await t.run(3000);
    const ended = (await rings(bell)).length;
    await t.run(4 * 60_000);
    expect((await rings(bell)).length).toBe(ended);
  });
});

describe("too much insulin", () => {
  it("is called for after ten minutes without a reading, then loud; its words stand on the glass; a reading is one press further", async () => {
    const t = await open({ only: "marta", voice: "speaks" });
    const hand = finger(t);
    const press = (name: string) => hand.press({ shown: name, said: [] });
    await press(FIXED.wrong);
    await press(labelOf({ do: "report", mishap: "too much" }, t.state).shown);
    await t.stored("too much");
    // The ten minutes begin with the mishap, not with the advice that was heard.
    const from = t.state.last?.wall ?? 0;
    await answer(t, hand, { do: "heard mishap advice" });
    expect(t.state.people.marta?.insulinWatch).not.toBeNull();
    await t.run(35 * 60_000);
    const all = await rings({ t, from });
    expect(all[0]).toMatchObject({ level: "insistent" });
    expect(all[0]?.minute).toBeGreaterThanOrEqual(10);
    expect(all[0]?.minute).toBeLessThan(10.2);
    expect(new Set(between(all, 31, 35).map(({ level }) => level))).toEqual(new Set(["loud"]));
    const said = (await t.said()).filter(({ at }) => at > from);
    const calls = said.filter(({ text }) => text === "Marta, measure now. Insulin is still working.");
    expect(calls.length).toBeGreaterThan(5);
    expect(await t.words()).toContain("Marta, measure now.");
    await press(WATCH.button);
    await press(WATCH.measure);
    await t.stored("a reading begun");
    expect(t.state.people.marta?.walk?.kind).toBe("reading");
    expect(t.complaints).toEqual([]);
  });
});

/** The browser of the tests sounds at once; a tablet's waits for a touch after each start. */
function silentUntilTouched(): void {
  globalThis.AudioContext = class extends AudioContext {
    constructor() {
      super();
      void this.suspend();
    }
  };
}

describe("a tablet that may not sound yet", () => {
  it("says so after a start while somebody waits for the bell, until it is touched", async () => {
    const t = await open({ init: silentUntilTouched });
    await walkMeal(t, finger(t), LUNCH, "eat");
    await t.run(1500);
    expect(await t.words()).not.toContain(FIXED.soundOff);
    await t.killAndOpen();
    await t.page.getByText(FIXED.soundOff).waitFor();
    expect(await screenFaults(t)).toEqual([]);
    await t.page.touchscreen.tap(640, 300);
    await t.run(2500);
    expect(await t.words()).not.toContain(FIXED.soundOff);
  });

  it("does not trouble anybody with it who waits for nothing", async () => {
    const t = await open();
    await t.run(2000);
    expect(await t.words()).not.toContain(FIXED.soundOff);
  });
});
