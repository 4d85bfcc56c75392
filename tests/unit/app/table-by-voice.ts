// A desk with a tablet's voice and ear in the test's hands: a whole talk about a number, without a browser.
import { Desk } from "#app/desk.ts";
import { held } from "#app/held.ts";
import { Recorder } from "#app/recorder.ts";
import { walkPart } from "#app/walk-part.ts";
import type { Intent } from "#events/intent.ts";
import { memoryLog } from "#log/memory-log.ts";
import { ScriptedEars } from "#speech/ears-scripted.ts";
import { ListeningVoice } from "#speech/voice-listening.ts";
import type { NewFact } from "#walk/decide.ts";
import { frontPerson } from "#walk/offers.ts";
import { TestClock, testId } from "../../kit/fresh-house.ts";
import { FakeTimers } from "../speech/fake-timers.ts";

export async function tableByVoice(setUp: readonly NewFact[], before: readonly Intent[]) {
  const timers = new FakeTimers();
  const clock = new TestClock();
  const voice = new ListeningVoice();
  const ears = new ScriptedEars();
  const recorder = await Recorder.open({ log: memoryLog(), newId: testId, appVersion: "test", wordsVersion: "test" });
  const part = held(async () => walkPart, timers);
  await part.hold();
  const desk = new Desk({
    recorder,
    now: () => clock.stamp,
    newId: testId,
    speech: { voice, ears, timers },
    ring: async () => {},
    walkPart: part,
    applyPrefs: () => {},
  });
  desk.change({ chose: true, voice: "speaks and listens" });
  await desk.house.keep(setUp);
  desk.close();
  for (const intent of before) await desk.send(intent);
  /** Until the tablet has said all and listens. */
  const settle = async () => {
    await timers.advance(100);
    // Storing takes its own time, which no fake clock counts.
    for (let i = 0; i < 20; i++) await new Promise((done) => setImmediate(done));
    // Short of the first reprompt.
    await timers.advance(5000);
  };
  await settle();
  return {
    desk,
    voice,
    ears,
    settle,
    /** Somebody says it; what the tablet says to that. */
    async say(text: string, ...guesses: string[]): Promise<string[]> {
      const from = voice.said.length;
      if (!ears.say(text, guesses)) throw new Error(`nobody listened to "${text}"`);
      await settle();
      return voice.texts().slice(from);
    },
    /** The same, by an ear that would not swear to it. */
    async mumble(text: string, ...guesses: string[]): Promise<string[]> {
      const from = voice.said.length;
      if (!ears.mumble(text, guesses)) throw new Error(`nobody listened to "${text}"`);
      await settle();
      return voice.texts().slice(from);
    },
    /** So many seconds pass. */
    later(seconds: number): void {
      clock.pass(seconds);
      desk.tick();
    },
    walk: () => frontPerson(desk.state.value)?.walk ?? null,
  };
}
