// A kitchen with a real desk and a practice beside it, on logs in memory, with a clock that is moved by hand.
import { Desk } from "#app/desk.ts";
import { held } from "#app/held.ts";
import { Practice } from "#app/practice.ts";
import { Recorder } from "#app/recorder.ts";
import { walkPart } from "#app/walk-part.ts";
import type { Intent } from "#events/intent.ts";
import { memoryLog } from "#log/memory-log.ts";
import { ScriptedEars } from "#speech/ears-scripted.ts";
import { ListeningVoice } from "#speech/voice-listening.ts";
import type { NewFact } from "#walk/decide.ts";
import { frontPerson } from "#walk/offers.ts";
import { stepOf } from "#walk/state.ts";
import { FakeTimers } from "../unit/speech/fake-timers.ts";
import { backgroundOnlyCard } from "./cards.ts";
import { setUp, TestClock, testId } from "./fresh-house.ts";
import { odileNight } from "./people.ts";

export async function practiceTable(facts: readonly NewFact[] = setUp) {
  const timers = new FakeTimers();
  const clock = new TestClock();
  const voice = new ListeningVoice();
  const log = memoryLog();
  const recorder = await Recorder.open({ log, newId: testId, appVersion: "test", wordsVersion: "test" });
  const part = held(async () => walkPart, timers);
  await part.hold();
  const rung: string[] = [];
  const parts = {
    now: () => clock.stamp,
    newId: testId,
    speech: { voice, ears: new ScriptedEars(), timers },
    walkPart: part,
    applyPrefs: () => undefined,
  };
  const real = new Desk({
    ...parts,
    recorder,
    ring: (level) => practice.ring(level),
  });
  const practice = new Practice({ ...parts, real, ring: async (level) => void rung.push(level) });
  real.change({ chose: true, voice: "speaks" });
  await real.house.keep(facts);
  real.close("all");
  const stored = async () => JSON.stringify([await log.readKept(0, 10_000), await log.loadCheckpoint()]);
  /** Second by second, as the page does it. */
  const pass = async (seconds: number) => {
    for (let s = 0; s < seconds; s++) {
      clock.pass(1);
      real.tick();
      practice.tick();
      await timers.advance(1000);
    }
    for (let i = 0; i < 10; i++) await new Promise((done) => setImmediate(done));
  };
  const answer = async (...intents: Intent[]) => {
    for (const intent of intents) {
      const walk = practice.desk.value && frontPerson(practice.desk.value.state.value)?.walk;
      const asked = intent.do === "give number" && intent.text === "DOSE";
      await practice.desk.value?.send(asked ? { ...intent, text: String(walk?.told?.units) } : intent);
    }
  };
  const step = () => {
    const walk = practice.desk.value && frontPerson(practice.desk.value.state.value)?.walk;
    return walk ? stepOf(walk) : null;
  };
  return { real, practice, clock, voice, rung, stored, pass, answer, step };
}

export const number = (slot: "reading" | "dial" | "left in window", text: string): Intent[] => [
  { do: "give number", slot, text, via: "touch", helper: null },
  { do: "agree number" },
];
/** What is answered from the first step to the needle; the dose is the one that was told. */
export const TO_THE_NEEDLE: Intent[] = [
  { do: "already washed" },
  ...number("reading", "120"),
  { do: "exercise", hard: false },
  { do: "meal is ready" },
  { do: "heard dose" },
  { do: "pick pen", pen: "odile-meal", how: "mark" },
  { do: "insulin looks", look: "as it should be" },
  { do: "needle fitted" },
  { do: "primed", stream: true },
  ...number("dial", "DOSE"),
  { do: "take spot" },
  { do: "skin cleaned", how: "clean without a wipe" },
];

/** Odile's house, where her card has this instead of its meals: by default one long-acting dose at 21:30. */
export const byTheClock = (card = backgroundOnlyCard): NewFact[] => [
  ...setUp.map((fact) => (fact.event.type === "card signed" ? { ...fact, event: { ...fact.event, card } } : fact)),
  { person: "odile", walk: null, event: { type: "pen added", pen: odileNight } },
];
/** The same up to the needle, of the long-acting dose and without a reading. */
export const TO_THE_NEEDLE_BY_THE_CLOCK: Intent[] = [
  { do: "already washed" },
  { do: "leave out reading" },
  { do: "heard dose" },
  { do: "pick pen", pen: "odile-night", how: "mark" },
  { do: "pen says", name: "the insulin" },
  { do: "insulin looks", look: "as it should be" },
  { do: "needle fitted" },
  { do: "primed", stream: true },
  ...number("dial", "DOSE"),
  { do: "take spot" },
  { do: "skin cleaned", how: "clean without a wipe" },
];
