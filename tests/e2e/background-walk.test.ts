import { describe, expect, it } from "vitest";
import { verifyChain } from "#log/chain.ts";
import { AT_ONE, GLARGINE, openBackground, signed, takeThePen, toThePen, walkBackground, walkReading } from "./kit/background.ts";
import { bench } from "./kit/bench.ts";
import { type Hand, keys, voice } from "./kit/hands.ts";
import { answer, LUNCH, penInUse, typesOf, walkMeal } from "./kit/meal.ts";
import { remember } from "./kit/more-log.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();

const BEGUN = ["walk opened", "clock agreed"];
const WASHED = ["wait began", "hands washed"];
const READ = ["number given", "reading taken"];
const AFTER = ["insulin looked at", "needle fitted", "pen primed"];
const NEEDLE = ["spot offered", "spot chosen", "skin cleaned", "wait began", "skin dry", "inject opened", "button pressed down"];

/** Every step's own event, in order. A dial heard by voice needs its digits twice, and nought said is a number that is read back. */
function expected(how: Hand["how"], reading: string | null): string[] {
  const glucose = reading === null ? ["reading left out"] : READ;
  const dial = how === "voice" ? ["number given", "digits asked again", "number given", "dose dialled"] : ["number given", "dose dialled"];
  const left = how === "voice" ? ["number given"] : [];
  return [
    ...[...BEGUN, "taken answered", ...WASHED, ...glucose, "dose told", "dose heard", "pen picked", "pen name read", ...AFTER, ...dial],
    ...[...NEEDLE, "wait began", "wait ended", ...left, "injected", "pen put away", "walk ended"],
  ];
}

async function isWhole(t: Tablet, from: number, how: Hand["how"]): Promise<void> {
  const events = t.eventsAfter(from);
  expect(events.at(-1)).toEqual({ type: "walk ended", how: "whole walk" });
  const ways = events.flatMap((event) => (event.type === "number given" ? [event.via] : []));
  expect(new Set(ways)).toEqual(new Set([how === "voice" ? "voice" : "touch"]));
  expect(verifyChain(t.rows)).toEqual({ ok: true, count: t.rows.length });
  // A spoken sentence is always shown too.
  expect((await t.said()).filter(({ shown, cut }) => !cut && shown === false)).toEqual([]);
  expect(t.complaints).toEqual([]);
}

describe("a whole background walk in the browser", () => {
  const walks: readonly [string, (t: Tablet) => Hand, "silent" | "speaks and listens", string | null][] = [
    ["by keys alone, with Tab", (t) => keys(t, "Tab"), "silent", null],
    ["by keys alone, with the arrows", (t) => keys(t, "arrows"), "silent", "132"],
    ["by voice, with no reading", voice, "speaks and listens", null],
    ["by voice, with a reading", voice, "speaks and listens", "132"],
  ];
  it.each(walks)("is walked %s, and every step is in the book", async (_name, handOf, speaks, reading) => {
    const t = await open({ only: "marta", voice: speaks });
    await remember(t, [signed([AT_ONE])]);
    const from = t.lastSeq;
    const hand = handOf(t);
    await openBackground(t, hand);
    await walkBackground(t, hand, reading);
    const events = t.eventsAfter(from);
    expect(typesOf(events)).toEqual(expected(hand.how, reading));
    expect(events[0]).toMatchObject({ kind: "background", background: { at: "13:00", insulinId: GLARGINE.id } });
    expect(events.find((event) => event.type === "injected")).toMatchObject({ units: 14, left: 0, certain: true });
    expect(t.state.people.marta).toMatchObject({ doses: [], bell: null, walk: null, backgroundDoses: [{ units: 14, certain: true }] });
    await isWhole(t, from, hand.how);
  });

  it("is led by voice to the dose of the hour that was said, past the wrong pen and a wrong name", async () => {
    const t = await open({ only: "marta", voice: "speaks and listens" });
    await remember(t, [signed([AT_ONE, { ...AT_ONE, at: "07:15" }])]);
    const from = t.lastSeq;
    const says = voice(t);
    await openBackground(t, says, { shown: "", said: ["in the afternoon"] });
    await toThePen(t, says, null);
    await answer(t, says, { do: "pick pen", pen: penInUse(t, "marta"), how: "mark" });
    expect(await t.words()).toContain("Stop. This pen holds insulin lispro.");
    const night = t.state.people.marta?.pens.find((p) => p.pen.kind === "long-acting")?.pen.id ?? "";
    await answer(t, says, { do: "pick pen", pen: night, how: "mark" });
    await answer(t, says, { do: "pen says", name: "another" });
    expect(await t.words()).toContain("Stop. The pen shows another name.");
    await takeThePen(t, says);
    await walkMeal(t, says, LUNCH, "eat", "look");
    await answer(t, says, { do: "finish" });
    const events = t.eventsAfter(from);
    expect(events[0]).toMatchObject({ type: "walk opened", background: { at: "13:00" } });
    expect(events.flatMap((event) => (event.type === "near miss" ? [event.what] : []))).toEqual([
      "not background insulin",
      "another name on the pen",
    ]);
    await isWhole(t, from, "voice");
  });
});

describe("a whole reading walk in the browser", () => {
  it("is walked by voice, and every step is in the book", async () => {
    const t = await open({ only: "marta", voice: "speaks and listens" });
    const from = t.lastSeq;
    await walkReading(t, voice(t));
    const events = t.eventsAfter(from);
    expect(typesOf(events)).toEqual([...BEGUN, ...WASHED, ...READ, "walk ended"]);
    expect(events[0]).toMatchObject({ kind: "reading", meal: null });
    expect(t.state.people.marta).toMatchObject({ walk: null, doses: [], backgroundDoses: [] });
    await isWhole(t, from, "voice");
  });
});
