import { describe, expect, it } from "vitest";
import { earTrial, type TrialEars } from "#app/ear-trial.ts";
import { ScriptedEars } from "#speech/ears-scripted.ts";
import { FakeTimers } from "../speech/fake-timers.ts";

class Own extends ScriptedEars {
  how: Awaited<ReturnType<TrialEars["own"]["report"]>> = "ready";
  report = async () => this.how;
  loudness = () => -52;
}
class Browser extends ScriptedEars {
  there: "ready" | "can be fetched" | "not here" = "not here";
  language = async () => this.there;
  install = async () => true;
}

function bench(options: { browser?: ScriptedEars["available"] } = {}) {
  const timers = new FakeTimers();
  const own = new Own();
  const browser = new Browser();
  if (options.browser) browser.available = options.browser;
  const chosen = { listening: true };
  return { timers, own, browser, chosen, trial: earTrial({ own, browser }, () => chosen.listening, timers) };
}

describe("a keeper's try of the ear", () => {
  it("tells which ear would listen: ours, else the browser's own on this tablet, else none, and why", async () => {
    const b = bench();
    expect(await b.trial.state()).toEqual({ ear: "own", own: "ready", language: "not here" });
    b.own.how = "broken";
    expect(await b.trial.state()).toMatchObject({ ear: "browser", own: "broken" });
    b.browser.available = async () => "not on this device";
    expect(await b.trial.state()).toMatchObject({ ear: "none", own: "broken" });
  });

  it("opens nothing where nobody chose to be heard", async () => {
    const b = bench();
    b.chosen.listening = false;
    expect(await b.trial.state()).toMatchObject({ ear: "none", own: "off" });
    expect((await b.trial.listen()).how).toBe("no sound");
    expect([b.own.opened, b.browser.opened]).toEqual([0, 0]);
  });

  it("reports what was heard, whether it was right, how sure, and how loud the room is, and shuts the ear", async () => {
    for (const [say, tried] of [
      [(o: Own) => o.say("one hundred twelve"), { how: "sure", heard: ["one hundred twelve"], right: true }],
      [(o: Own) => o.say("one one two"), { how: "sure", heard: ["one one two"], right: true }],
      [(o: Own) => o.say("two hundred twelve"), { how: "sure", heard: ["two hundred twelve"], right: false }],
      [(o: Own) => o.mumble("one hundred twelve", ["two hundred twelve"]), { how: "not sure", right: true }],
      [(o: Own) => o.trouble("other talk"), { how: "not understood", heard: [], right: false }],
      [(o: Own) => o.trouble("too loud"), { how: "too loud", right: false }],
    ] as const) {
      const b = bench();
      const trying = b.trial.listen();
      await b.timers.advance(100);
      say(b.own);
      expect(await trying).toMatchObject({ ...tried, room: -52 });
      expect(b.own.listening()).toBe(false);
      expect(b.timers.waiting()).toBe(0);
    }
  });

  it("ends by itself after eight seconds, and when the page is left, with the ear shut", async () => {
    const b = bench();
    const first = b.trial.listen();
    await b.timers.advance(8000);
    expect((await first).how).toBe("nothing");
    const second = b.trial.listen();
    await b.timers.advance(100);
    expect(b.own.listening()).toBe(true);
    b.trial.stop();
    expect((await second).how).toBe("nothing");
    expect(b.own.listening()).toBe(false);
  });

  it("tells of no loudness where the browser listens", async () => {
    const b = bench();
    b.own.how = "no microphone";
    const trying = b.trial.listen();
    await b.timers.advance(100);
    b.browser.say("one hundred twelve");
    expect(await trying).toMatchObject({ how: "sure", room: null });
  });
});
