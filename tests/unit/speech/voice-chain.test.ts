import { describe, expect, it } from "vitest";
import type { Sentence, SpokenResult } from "#speech/ports.ts";
import { voiceChain } from "#speech/voice-chain.ts";
import { ListeningVoice } from "#speech/voice-listening.ts";
import { textVoice } from "#speech/voice-text.ts";
import { FakeTimers, settle } from "./fake-timers.ts";

const dial: Sentence = { text: "Dial 6 units.", lang: "en-US" };

function twoVoices() {
  const timers = new FakeTimers();
  const first = new ListeningVoice({ byHand: true });
  const second = new ListeningVoice({ byHand: true });
  const spoke: string[] = [];
  const chain = voiceChain([first, second], timers, (name, s) => spoke.push(`${name}: ${s.text}`));
  return { timers, first, second, chain, spoke };
}

describe("a chain of voices", () => {
  it("speaks with the first that works and says which one spoke", async () => {
    const { first, second, chain, spoke } = twoVoices();
    const said = chain.speak(dial);
    first.finish();
    expect(await said).toEqual({ how: "ended" });
    expect(second.said).toEqual([]);
    expect(chain.spokeLast()).toBe("listening");
    expect(spoke).toEqual(["listening: Dial 6 units."]);
  });

  it("hands a failed sentence on at once and whole", async () => {
    const { first, second, chain } = twoVoices();
    const said = chain.speak(dial);
    first.fail("it did not start");
    await settle();
    expect(second.texts()).toEqual(["Dial 6 units."]);
    second.finish();
    expect(await said).toEqual({ how: "ended" });
  });

  it("asks a voice again at the next sentence that was only still loading", async () => {
    const timers = new FakeTimers();
    const results: SpokenResult[] = [{ how: "failed", why: "still loading", notYet: true }, { how: "ended" }];
    const loading = Object.assign(new ListeningVoice({ byHand: true }), {
      speak: async () => results.shift() ?? { how: "ended" as const },
    });
    const spoke: string[] = [];
    const chain = voiceChain([loading, textVoice(timers)], timers, (name) => spoke.push(name));
    const first = chain.speak(dial);
    await settle();
    chain.stop();
    await first;
    expect(await chain.speak(dial)).toEqual({ how: "ended" });
    expect(spoke).toEqual(["listening"]);
  });

  it("passes a failed voice over for half a minute, then gives it another chance", async () => {
    const { timers, first, second, chain } = twoVoices();
    const said = chain.speak(dial);
    first.fail("no voice");
    await settle();
    second.finish();
    await said;
    void chain.speak(dial);
    expect([first.said.length, second.said.length]).toEqual([1, 2]);
    second.finish();
    await timers.advance(30_000);
    void chain.speak(dial);
    expect([first.said.length, second.said.length]).toEqual([2, 2]);
  });

  it("does not hand on a sentence that was stopped", async () => {
    const { first, second, chain } = twoVoices();
    const said = chain.speak(dial);
    chain.stop();
    expect(await said).toEqual({ how: "stopped" });
    expect(first.stops).toBe(1);
    expect(second.said).toEqual([]);
  });

  it("says nothing more when stopped in the moment of handing on", async () => {
    const { first, second, chain } = twoVoices();
    const said = chain.speak(dial);
    first.fail("gone");
    chain.stop();
    expect(await said).toEqual({ how: "stopped" });
    expect(second.said).toEqual([]);
  });

  it("fails only when all failed, and tells why each did", async () => {
    const { first, second, chain } = twoVoices();
    const said = chain.speak(dial);
    first.fail("a");
    await settle();
    second.fail("b");
    expect(await said).toEqual({ how: "failed", why: "listening: a; listening: b" });
    const next = chain.speak(dial);
    first.finish();
    expect(await next).toEqual({ how: "ended" });
  });

  it("passes rate and loudness to every voice", () => {
    const { first, second, chain } = twoVoices();
    chain.setRate(120);
    chain.setVolume(2);
    expect([first.wpm, second.wpm, first.volume, second.volume]).toEqual([120, 120, 2, 2]);
  });
});

describe("the text voice", () => {
  it("gives a sentence the time it takes to read, and always ends", async () => {
    const timers = new FakeTimers();
    const voice = textVoice(timers);
    voice.setRate(120);
    let how = "";
    void voice.speak(dial).then((r) => {
      how = r.how;
    });
    await timers.advance(1499);
    expect(how).toBe("");
    await timers.advance(2);
    expect(how).toBe("ended");
    expect(voice.health()).toBe("works");
  });

  it("stops at once, and a new sentence stops the last", async () => {
    const timers = new FakeTimers();
    const voice = textVoice(timers);
    const first = voice.speak(dial);
    const second = voice.speak(dial);
    expect(await first).toEqual({ how: "stopped" });
    voice.stop();
    expect(await second).toEqual({ how: "stopped" });
    expect(timers.waiting()).toBe(0);
  });
});
