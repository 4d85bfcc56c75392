// A background walk and a reading walk can be led by voice: each answer that belongs to them has a phrase whose every word the ear knows.
import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { spokenButtons, spokenOffers } from "#app/spoken-offers.ts";
import { demoPen, type PenName } from "#demo-data/household.ts";
import type { BackgroundDose } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import { backgroundIntents } from "#screens/kitchen/background-screen.tsx";
import { restButtons } from "#screens/kitchen/rest-screen.tsx";
import { lexiconOf, waysToSay } from "#speech/ear/lexicon.ts";
import { readManifest } from "#speech/ear/manifest.ts";
import { foldPhrase } from "#speech/fold.ts";
import { understand } from "#speech/understand.ts";
import { offers } from "#walk/offers.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import { dose, nightCard, open, withNight } from "../../kit/background-walk.ts";
import { me } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const folder = new URL("../../../public/ear/", import.meta.url);
const { phones } = readManifest(JSON.parse(await readFile(new URL("ear.json", folder), "utf8")));
const lexicon = lexiconOf(await readFile(new URL("words.tsv", folder), "utf8"), phones);
const known = (phrase: string): boolean => waysToSay(foldPhrase(phrase), lexicon).length > 0;

/** Answers of this step that no phrase of the ear leads to. */
function unsaid(t: Table): Intent[] {
  const { offers: spoken, meant } = spokenOffers(offers(t.state, t.now), t.state);
  const led = spoken.flatMap((o) => {
    const means = meant.get(o.id);
    return "phrases" in o && o.phrases.some(known) && means?.what === "intent" ? [JSON.stringify(means.intent)] : [];
  });
  return offers(t.state, t.now).flatMap((o) =>
    // Said, the nought in the window is a number, which is read back.
    o.offer === "press" &&
    ["main", "no", "choice"].includes(o.role) &&
    o.intent.do !== "window is at zero" &&
    !led.includes(JSON.stringify(o.intent))
      ? [o.intent]
      : [],
  );
}

const dial = (text: string): Intent => ({ do: "give number", slot: "dial", text, via: "voice", helper: null });
const NIGHT: readonly Intent[] = [
  { do: "already washed" },
  { do: "leave out reading" },
  { do: "heard dose" },
  { do: "pick pen", pen: "odile-night", how: "mark" },
  { do: "pen says", name: "the insulin" },
  { do: "insulin looks", look: "as it should be" },
  { do: "needle fitted" },
  { do: "primed", stream: true },
  dial("14"),
  { do: "agree number" },
  dial("14"),
  { do: "take spot" },
  { do: "skin cleaned", how: "clean without a wipe" },
  { do: "button is down" },
  { do: "wait is over" },
  { do: "window is at zero" },
  { do: "put away" },
];

/** The button that this utterance presses on the screen that asks which dose. */
function pressed(background: readonly BackgroundDose[], said: string): string | null {
  const t = withNight({ ...fixedCard, background: [...background] });
  const buttons = backgroundIntents(me(t)).map((intent) => {
    const { shown, said: also } = labelOf(intent, t.state);
    return { label: shown, also, press: () => undefined };
  });
  const { offers: spoken } = spokenButtons({ buttons });
  const got = understand({ text: said, alternatives: [] }, spoken);
  return got.kind === "offer" ? (buttons[Number(got.id.replace("button ", ""))]?.label ?? got.id) : null;
}

describe("what may be said in a background walk and in a reading walk", () => {
  it("leads through every step of a background walk, the name on the pen and no reading included", () => {
    const t = open(withNight(nightCard));
    for (const intent of NIGHT) {
      if (intent.do === "wait is over") t.pass(10);
      expect([intent.do, unsaid(t)]).toEqual([intent.do, []]);
      t.send(intent);
    }
    expect([t.step(), unsaid(t)]).toEqual(["done", []]);
  });

  it("leads through every step of a reading walk", () => {
    const t = withNight().send({ do: "open reading", person: "odile" });
    expect(unsaid(t)).toEqual([]);
    t.send({ do: "already washed" });
    expect(unsaid(t)).toEqual([]);
    t.number("reading", "120");
    expect([t.step(), unsaid(t)]).toEqual(["done", []]);
  });

  it("begins both from the kitchen", () => {
    const t = withNight();
    const none = () => undefined;
    const { buttons, behind } = restButtons({
      ...{ house: t.state, now: t.now, onIntent: none, onDayBook: none, onHelper: none, onWish: none, onToday: none },
    });
    const all = [...buttons, ...behind];
    for (const label of [FIXED.background, FIXED.reading]) {
      const button = all.find((b) => b.label === label);
      expect([label, [label, ...(button?.also ?? [])].some(known)]).toEqual([label, true]);
    }
  });

  it("is never a word that the ear lacks for a pen of the demo household", () => {
    const pens: PenName[] = ["marta-meal", "marta-night", "henk-meal", "henk-night"];
    expect(pens.map((name) => demoPen(name, 1, "2026-06-01", "2027-06-01").mark).filter((mark) => !known(mark))).toEqual([]);
  });
});

describe("which of two background doses", () => {
  const shown = ["Insulin glargine, 8:00 in the morning", "Insulin glargine, 9:30 in the evening"];
  const apart = [dose("08:00", 10), dose("21:30", 12)];
  const detemir = { ...dose("08:00", 6).insulin, id: "detemir-100", name: "insulin detemir" };

  it.each([
    ["in the morning", shown[0]],
    ["in the evening", shown[1]],
    ["nine thirty in the evening", shown[1]],
    ["insulin glargine", null],
  ])("is told by %s", (said, label) => {
    expect(pressed(apart, said)).toBe(label);
  });

  it("is never chosen by what both are called: the hour, or the insulin, tells them apart", () => {
    const near = [dose("08:00", 10), dose("10:15", 12)];
    expect(pressed(near, "in the morning")).toBeNull();
    expect(pressed(near, "ten fifteen in the morning")).toBe("Insulin glargine, 10:15 in the morning");
    const same = [dose("08:00", 10), dose("08:00", 6, { insulin: detemir })];
    expect(pressed(same, "eight in the morning")).toBeNull();
    expect(pressed(same, "insulin detemir")).toBe("Insulin detemir, 8:00 in the morning");
  });

  it("has a phrase that the ear knows, for every quarter of an hour of the day and the insulin beside it", () => {
    const hours = Array.from(
      { length: 96 },
      (_, i) => `${String(Math.floor(i / 4)).padStart(2, "0")}:${String((i % 4) * 15).padStart(2, "0")}`,
    );
    const lost = hours.filter((at) => {
      const t = withNight({ ...fixedCard, background: [dose(at as "00:00", 10), dose(at as "00:00", 6, { insulin: detemir })] });
      const own = withNight({ ...fixedCard, background: [dose(at as "00:00", 10)] });
      return [t, own].some((table) => backgroundIntents(me(table)).some((intent) => !labelOf(intent, table.state).said.some(known)));
    });
    expect(lost).toEqual([]);
  });
});
