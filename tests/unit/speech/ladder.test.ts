import { describe, expect, it } from "vitest";
import { climbed, earGivenUp, freshPatience, nextRung, onNextScreen } from "#speech/ladder.ts";
import { screen, table } from "./turns-table.ts";

describe("when nobody answers", () => {
  it("repeats shorter after 8 s, names the buttons after 12 s more, then waits by touch without limit", async () => {
    const t = table();
    t.turns.present(screen("reading", { sentences: [] }));
    await t.timers.advance(300 + 7999);
    expect(t.voice.said).toEqual([]);
    await t.timers.advance(1);
    expect(t.voice.texts()).toEqual(["reading short?"]);
    expect(t.marks).toContain("short 0");
    await t.timers.advance(300);
    expect(t.ears.listening()).toBe(true);
    await t.timers.advance(11_999);
    expect(t.voice.said).toHaveLength(1);
    await t.timers.advance(1);
    expect(t.voice.texts()).toEqual(["reading short?", "reading names."]);
    expect(t.ears.listening()).toBe(false);
    await t.timers.advance(24 * 3_600_000);
    expect(t.voice.said).toHaveLength(2);
    expect(t.ears.listening()).toBe(false);
    expect(t.timers.waiting()).toBe(0);
  });

  it("starts the wait anew on a touch or a taken answer", async () => {
    const t = table();
    t.turns.present(screen("reading", { sentences: [] }));
    await t.timers.advance(8000);
    t.turns.touch();
    await t.timers.advance(7999);
    expect(t.voice.said).toEqual([]);
    t.ears.say("louder");
    await t.timers.advance(700 + 7999);
    expect(t.voice.said).toEqual([]);
    await t.timers.advance(1);
    expect(t.voice.said).toHaveLength(1);
  });

  it("never reprompts a third time, not even after Again", async () => {
    const t = table();
    t.turns.present(screen("reading", { sentences: [] }));
    await t.timers.advance(60_000);
    t.turns.again();
    await t.timers.advance(60_000);
    expect(t.voice.texts()).toEqual(["reading short?", "reading names."]);
    expect(t.ears.listening()).toBe(false);
  });

  it("leaves an unhurried screen alone, ear open", async () => {
    const t = table();
    t.answers.fit = "turned away";
    t.turns.present(screen("wash", { sentences: [], unhurried: true }));
    await t.timers.advance(600_000);
    t.ears.say("lovely weather");
    expect(t.voice.said).toEqual([]);
    expect(t.ears.listening()).toBe(true);
  });

  it("gives the ear up for the rest of the walk after two such screens, says so once, and listens again in the next walk", async () => {
    const t = table();
    for (const key of ["one", "two", "three"]) {
      t.turns.present(screen(key, { sentences: [] }));
      await t.timers.advance(60_000);
    }
    expect(t.voice.texts()).toEqual(["one short?", "one names.", "two short?", "two names.", "Use the buttons now."]);
    expect(t.ears.listening()).toBe(false);
    t.turns.newWalk();
    t.turns.present(screen("four", { sentences: [] }));
    await t.timers.advance(300);
    expect(t.ears.listening()).toBe(true);
  });

  it("counts only screens that went to the last rung", () => {
    let p = freshPatience;
    for (let i = 0; i < 10; i++) p = onNextScreen(climbed(p));
    expect(earGivenUp(p)).toBe(false);
    for (let i = 0; i < 2; i++) p = onNextScreen(climbed(climbed(p)));
    expect(earGivenUp(p)).toBe(true);
    expect(nextRung(p)).toBeNull();
    expect(climbed(p)).toEqual(p);
  });
});
