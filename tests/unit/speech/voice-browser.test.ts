import { beforeEach, describe, expect, it } from "vitest";
import type { Sentence, SpokenResult } from "#speech/ports.ts";
import { BrowserVoice, hungAfterMs, pickVoice } from "#speech/voice-browser.ts";
import { FakeSynthesiser, localVoice, remoteVoice } from "./fake-synthesiser.ts";
import { FakeTimers } from "./fake-timers.ts";

const wash: Sentence = { text: "Wash your hands.", lang: "en-GB" };
let engine: FakeSynthesiser;
let timers: FakeTimers;
let voice: BrowserVoice;
let result: SpokenResult | null;

beforeEach(async () => {
  engine = new FakeSynthesiser();
  engine.voices = [localVoice("en-GB")];
  timers = new FakeTimers();
  voice = new BrowserVoice(engine.with(timers));
  result = null;
  await timers.advance(10);
});

async function say(s: Sentence = wash): Promise<void> {
  void voice.speak(s).then((r) => {
    result = r;
  });
  await timers.advance(0);
}

describe("the browser's voice", () => {
  it("says the sentence and tells when it ended", async () => {
    await say();
    engine.last().fire("start");
    await timers.advance(800);
    expect(result).toBeNull();
    engine.last().fire("end");
    await timers.advance(0);
    expect(result).toEqual({ how: "ended" });
    expect(voice.health()).toBe("works");
    await timers.advance(60_000);
    expect(engine.calls.filter((c) => c === "cancel")).toHaveLength(1);
  });

  it("falls silent at the start and when the page is left", () => {
    expect(engine.calls).toEqual(["cancel"]);
    engine.leave();
    expect(engine.calls).toEqual(["cancel", "cancel"]);
  });

  it("uses a voice of the device only, in the language, and never one elsewhere", async () => {
    expect(pickVoice([remoteVoice("en-GB"), localVoice("fr-FR"), localVoice("en_GB")], "en-GB")?.lang).toBe("en_GB");
    expect(pickVoice([localVoice("en-US", true), localVoice("en-GB")], "en-GB")?.lang).toBe("en-GB");
    expect(pickVoice([localVoice("en-AU")], "en-GB")?.lang).toBe("en-AU");
    expect(pickVoice([remoteVoice("en-GB"), localVoice("es-ES")], "en-GB")).toBeNull();
    engine.voices = [remoteVoice("en-GB")];
    await say();
    await timers.advance(2100);
    expect(result).toMatchObject({ how: "failed" });
    expect(engine.said).toEqual([]);
  });

  it("sets rate and loudness on each sentence", async () => {
    voice.setRate(165);
    voice.setVolume(3);
    await say();
    expect(engine.last()).toMatchObject({ lang: "en-GB", rate: 1 });
    expect(engine.last().volume).toBeCloseTo(10 ** (-12 / 20), 5);
    voice.setRate(900);
    await say();
    expect(engine.last().rate).toBeCloseTo(190 / 165, 5);
  });
});

describe("when voices come late", () => {
  it("waits for them, but not above 2 s, and looks again at the next sentence", async () => {
    engine.voices = [];
    await say();
    await timers.advance(1900);
    expect(result).toBeNull();
    await timers.advance(200);
    expect(result).toMatchObject({ how: "failed" });
    expect(voice.health()).toBe("no voice");
    result = null;
    await say();
    expect(result).toMatchObject({ how: "failed" });
    engine.voices = [localVoice("en-GB")];
    await say();
    engine.last().fire("start");
    engine.last().fire("end");
    expect(voice.health()).toBe("works");
  });

  it("speaks as soon as they are there", async () => {
    engine.voices = [];
    await say();
    engine.voices = [localVoice("en-GB")];
    await timers.advance(150);
    expect(engine.last().text).toBe("Wash your hands.");
  });
});

describe("a synthesiser that hangs", () => {
  it("is given up when it does not start within 1.5 s", async () => {
    await say();
    await timers.advance(1499);
    expect(result).toBeNull();
    await timers.advance(1);
    expect(result).toMatchObject({ how: "failed", why: "it did not start within 1.5 s" });
    expect(engine.calls.at(-1)).toBe("cancel");
    expect(voice.health()).toBe("failed");
  });

  it("is given up when it started and does not end in one and a half times its length and 2 s", async () => {
    await say();
    engine.last().fire("start");
    await timers.advance(hungAfterMs(wash.text, 145) - 1);
    expect(result).toBeNull();
    await timers.advance(1);
    expect(result).toMatchObject({ how: "failed", why: "it did not end in time" });
    expect(engine.calls.at(-1)).toBe("cancel");
  });

  it("is not believed when it ends without having started", async () => {
    await say();
    engine.last().fire("end");
    await timers.advance(0);
    expect(result).toMatchObject({ how: "failed" });
  });

  it("tells why it failed, and its late events change nothing", async () => {
    await say();
    const first = engine.last();
    first.fire("error", "not-allowed");
    await timers.advance(0);
    expect(result).toEqual({ how: "failed", why: "not-allowed" });
    result = null;
    await say();
    first.fire("start");
    first.fire("end");
    await timers.advance(1500);
    expect(result).toMatchObject({ how: "failed", why: "it did not start within 1.5 s" });
  });
});

describe("stopping", () => {
  it("settles the sentence as stopped at once, also while voices are awaited", async () => {
    await say();
    engine.last().fire("start");
    voice.stop();
    await timers.advance(0);
    expect(result).toEqual({ how: "stopped" });
    engine.voices = [];
    const fresh = new BrowserVoice(engine.with(timers));
    const waiting = fresh.speak(wash);
    fresh.stop();
    expect(await waiting).toEqual({ how: "stopped" });
    const before = engine.said.length;
    engine.voices = [localVoice("en-GB")];
    await timers.advance(5000);
    expect(engine.said).toHaveLength(before);
  });

  it("leaves a tick between a cancel and the next sentence", async () => {
    await say();
    engine.last().fire("start");
    void voice.speak({ text: "Dry them.", lang: "en-GB" });
    expect(engine.calls.at(-1)).toBe("cancel");
    await timers.advance(0);
    expect(result).toEqual({ how: "stopped" });
    expect(engine.calls.at(-1)).toBe("speak Dry them.");
  });
});
