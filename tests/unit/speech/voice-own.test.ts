import { describe, expect, it } from "vitest";
import type { Sentence } from "#speech/ports.ts";
import type { Answer, Ask } from "#speech/voice/worker-shapes.ts";
import { OwnVoice, type Player, type SynthWorker } from "#speech/voice-own.ts";
import { FakeTimers, settle } from "./fake-timers.ts";

const dial: Sentence = { text: "Turn the dial to 15 units.", lang: "en-US" };
const sound = (seconds: number) => ({ samples: new Int16Array(16_000 * seconds), sampleRate: 16_000, made: 16_000 * seconds });

function bench(options: { muted?: boolean } = {}) {
  const timers = new FakeTimers();
  const asked: Ask[] = [];
  const played: { loudness: number; stopped: boolean; end: () => void }[] = [];
  const play: Player = (_, loudness) => {
    if (options.muted) return undefined;
    let end = (): void => {};
    const over = new Promise<void>((resolve) => {
      end = resolve;
    });
    const one = { loudness, stopped: false, end };
    played.push(one);
    return {
      over,
      stop() {
        one.stopped = true;
      },
    };
  };
  const voice = new OwnVoice(play, timers);
  let tell: (a: Answer) => void = () => {};
  const worker: SynthWorker = {
    post(m) {
      if ("id" in m) asked.push(m);
    },
    onAnswer(listener) {
      tell = listener;
    },
  };
  const open = () => voice.open(worker, "http://127.0.0.1/voice/");
  return { timers, asked, played, voice, open, tell: (a: Answer) => tell(a) };
}

async function speaking(b: ReturnType<typeof bench>) {
  b.open();
  b.tell({ ready: true });
  const result = b.voice.speak(dial);
  await settle();
  return result;
}
const last = (b: ReturnType<typeof bench>): Ask => b.asked.at(-1) ?? { id: -1, text: "", pace: 0 };

describe("the shipped voice, as a port", () => {
  it("asks for the sentence in words, plays it, and ends when the sound has ended", async () => {
    const b = bench();
    b.open();
    b.tell({ ready: true });
    b.voice.setVolume(5);
    const result = b.voice.speak(dial);
    await settle();
    expect(last(b).text).toBe("Turn the dial to fifteen units.");
    b.tell({ id: last(b).id, ...sound(2.4) });
    await settle();
    expect(b.played.map((p) => p.loudness)).toEqual([1]);
    b.played[0]?.end();
    expect(await result).toEqual({ how: "ended" });
    expect(b.voice.health()).toBe("works");
    expect(b.timers.waiting()).toBe(0);
  });

  it("hands the sentence on at once while it is loading, and where no sound is possible before a touch", async () => {
    expect(await bench().voice.speak(dial)).toEqual({ how: "failed", why: "still loading", notYet: true });
    const b = bench({ muted: true });
    b.open();
    b.tell({ ready: true });
    const result = b.voice.speak(dial);
    await settle();
    b.tell({ id: last(b).id, ...sound(2.4) });
    expect(await result).toMatchObject({ how: "failed", why: expect.stringContaining("touch") });
  });

  it("is no voice when its file is missing or torn, also in the middle of a sentence", async () => {
    const b = bench();
    b.open();
    b.tell({ ready: true });
    const result = b.voice.speak(dial);
    await settle();
    b.tell({ broken: "the worker stopped" });
    expect(await result).toMatchObject({ how: "failed" });
    expect(await b.voice.speak(dial)).toMatchObject({ how: "failed", why: expect.stringContaining("missing or torn") });
  });

  it("never plays a sound of which a part was lost on the way, be it the last hundredth", async () => {
    const b = bench();
    b.open();
    b.tell({ ready: true });
    for (const share of [0.99, 0.8, 0.5]) {
      const result = b.voice.speak(dial);
      await settle();
      const whole = sound(2);
      b.tell({ id: last(b).id, ...whole, samples: whole.samples.slice(0, whole.samples.length * share) });
      expect(await result).toMatchObject({ how: "failed", why: expect.stringContaining("missing") });
    }
    expect(b.played).toEqual([]);
  });

  it("never plays a sound that is too short to hold every word", async () => {
    const b = bench();
    b.open();
    b.tell({ ready: true });
    const result = b.voice.speak(dial);
    await settle();
    b.tell({ id: last(b).id, ...sound(0.6) });
    expect(await result).toMatchObject({ how: "failed", why: expect.stringContaining("too short") });
    expect(b.played).toEqual([]);
  });

  it("does not wait for ever: neither for the sound to be made nor for it to end", async () => {
    const unmade = bench();
    unmade.open();
    unmade.tell({ ready: true });
    const first = unmade.voice.speak(dial);
    await unmade.timers.advance(3000);
    expect(await first).toMatchObject({ how: "failed", why: expect.stringContaining("too long") });
    const endless = bench();
    endless.open();
    endless.tell({ ready: true });
    const second = endless.voice.speak(dial);
    await settle();
    endless.tell({ id: last(endless).id, ...sound(2.4) });
    await endless.timers.advance(2400 + 1500);
    expect(await second).toMatchObject({ how: "failed", why: expect.stringContaining("did not end") });
    expect(endless.played[0]?.stopped).toBe(true);
  });

  it("is silent at once when stopped, before and during the sound", async () => {
    const b = bench();
    const before = speaking(b);
    await settle();
    b.voice.stop();
    expect(await before).toEqual({ how: "stopped" });
    const during = b.voice.speak(dial);
    await settle();
    b.tell({ id: last(b).id, ...sound(2.4) });
    await settle();
    b.voice.stop();
    expect(await during).toEqual({ how: "stopped" });
    expect(b.played[0]?.stopped).toBe(true);
  });
});
