// The voice of the browser's own synthesiser, used so that it cannot hang the walk: one sentence at a time, voices of the device only,
// and two watchdogs, because a synthesiser may swallow a sentence without any event (seen: 8 s of nothing after a cold start; `end` may never come).
// pause() and resume() are never used: they hang, or act as cancel, depending on the platform.
import { DEFAULT_WPM, FASTEST_WPM, SLOWEST_WPM, spokenSeconds } from "./pace.ts";
import type { Sentence, SpokenResult, Timers, VoiceHealth, VoicePort, VolumeStep } from "./ports.ts";

/** What is used of the browser's synthesiser, so that a test can stand in for it. */
export interface Synthesiser {
  readonly speaking: boolean;
  readonly pending: boolean;
  getVoices(): readonly EngineVoice[];
  speak(u: Utterance): void;
  cancel(): void;
}
export interface EngineVoice {
  readonly lang: string;
  readonly localService: boolean;
  readonly default: boolean;
}
export interface Utterance {
  lang: string;
  rate: number;
  volume: number;
  voice: EngineVoice | null;
  addEventListener(type: "start" | "end" | "error", listener: (e: { readonly error?: string }) => void): void;
}
export interface BrowserSpeech {
  engine: Synthesiser;
  utterance(text: string): Utterance;
  /** Runs the action when the page is being left. */
  onLeaving(action: () => void): void;
  timers: Timers;
}

/** Engines say about this many words a minute at rate 1 (from memory; one formant engine was measured at 193 by default). */
const ENGINE_WPM = 165;
const VOICES_WAIT_MS = 2000;
const VOICES_LOOK_MS = 100;
const START_WITHIN_MS = 1500;

/** Longest a sentence may take before it counts as hung: half as long again as expected, and 2 s. */
export const hungAfterMs = (text: string, wpm: number): number => spokenSeconds([text], wpm) * 1500 + 2000;

/** A voice of this device for the language, else one of its kin ("en-AU" for "en-GB"); never one that sends the text away. */
export function pickVoice(voices: readonly EngineVoice[], lang: string): EngineVoice | null {
  const tag = (v: EngineVoice): string => v.lang.replace("_", "-").toLowerCase();
  const local = voices.filter((v) => v.localService === true);
  const exact = local.filter((v) => tag(v) === lang.toLowerCase());
  const kin = local.filter((v) => tag(v).split("-")[0] === lang.toLowerCase().split("-")[0]);
  const fit = exact.length > 0 ? exact : kin;
  return fit.find((v) => v.default) ?? fit[0] ?? null;
}

/** The sentence being said; the utterance is kept so that it is not collected half way, which would swallow its `end`. */
type Saying = { utterance: Utterance | null; settle: (result: SpokenResult) => void };

export class BrowserVoice implements VoicePort {
  readonly name = "browser";
  readonly #with: BrowserSpeech;
  #health: VoiceHealth = "untried";
  #wpm = DEFAULT_WPM;
  #step: VolumeStep = 4;
  #waitedForVoices = false;
  #saying: Saying | null = null;
  #justCancelled = false;

  constructor(speech: BrowserSpeech) {
    this.#with = speech;
    // Speech goes on over a reload unless it is cut off at both ends.
    this.#cancel();
    speech.onLeaving(() => {
      this.stop();
      this.#cancel();
    });
  }

  speak(s: Sentence): Promise<SpokenResult> {
    this.stop();
    return new Promise((resolve) => {
      const cancels: (() => void)[] = [];
      const mine: Saying = {
        utterance: null,
        settle: (result) => {
          if (this.#saying !== mine) return;
          this.#saying = null;
          for (const cancel of cancels) cancel();
          resolve(result);
        },
      };
      this.#saying = mine;
      this.#findVoice(s.lang, cancels, (voice) => {
        if (voice === null) {
          this.#health = "no voice";
          mine.settle({ how: "failed", why: `no voice of this device for ${s.lang}` });
        } else this.#say(s, voice, mine, cancels);
      });
    });
  }

  stop(): void {
    const saying = this.#saying;
    if (saying === null) return;
    saying.settle({ how: "stopped" });
    this.#cancel();
  }

  health(): VoiceHealth {
    return this.#health;
  }

  setRate(wpm: number): void {
    this.#wpm = Math.min(FASTEST_WPM, Math.max(SLOWEST_WPM, wpm));
  }

  setVolume(step: VolumeStep): void {
    this.#step = step;
  }

  #cancel(): void {
    this.#with.engine.cancel();
    this.#justCancelled = true;
    this.#with.timers.after(0, () => {
      this.#justCancelled = false;
    });
  }

  /** The list may be empty for seconds after start and `voiceschanged` may never come, so the first time it is looked at again and again for 2 s; later, once. */
  #findVoice(lang: string, cancels: (() => void)[], found: (voice: EngineVoice | null) => void): void {
    const look = (left: number): void => {
      const voice = pickVoice(this.#with.engine.getVoices(), lang);
      if (voice !== null || left <= 0 || this.#waitedForVoices) {
        this.#waitedForVoices = true;
        found(voice);
      } else cancels.push(this.#with.timers.after(VOICES_LOOK_MS, () => look(left - VOICES_LOOK_MS)));
    };
    look(VOICES_WAIT_MS);
  }

  #say(s: Sentence, voice: EngineVoice, mine: Saying, cancels: (() => void)[]): void {
    const { engine, timers } = this.#with;
    const utterance = this.#with.utterance(s.text);
    mine.utterance = utterance;
    utterance.lang = s.lang;
    utterance.voice = voice;
    utterance.rate = this.#wpm / ENGINE_WPM;
    utterance.volume = 10 ** ((-6 * (5 - this.#step)) / 20);

    let started = false;
    const fail = (why: string): void => {
      if (this.#saying !== mine) return;
      this.#health = "failed";
      mine.settle({ how: "failed", why });
      this.#cancel();
    };
    utterance.addEventListener("start", () => {
      started = true;
    });
    utterance.addEventListener("end", () => {
      if (this.#saying !== mine) return;
      if (!started) return fail("it ended without having started");
      this.#health = "works";
      mine.settle({ how: "ended" });
    });
    utterance.addEventListener("error", (e) => fail(e.error ?? "the synthesiser gave no reason"));

    const begin = (): void => {
      try {
        engine.speak(utterance);
      } catch (e) {
        fail(e instanceof Error ? e.message : "the synthesiser threw");
        return;
      }
      cancels.push(timers.after(START_WITHIN_MS, () => (started ? undefined : fail("it did not start within 1.5 s"))));
      cancels.push(timers.after(hungAfterMs(s.text, this.#wpm), () => fail("it did not end in time")));
    };
    // Speaking in the same turn as a cancel drops the sentence on some systems: cancel only if need be, and wait a tick.
    if (engine.speaking || engine.pending) this.#cancel();
    if (this.#justCancelled) cancels.push(timers.after(0, begin));
    else begin();
  }
}

/** The real thing, or null where the browser has no synthesiser. */
export function browserSpeech(page: Window, timers: Timers): BrowserSpeech | null {
  const engine = page.speechSynthesis;
  if (engine === undefined) return null;
  return {
    engine: engine as Synthesiser,
    utterance: (text) => new SpeechSynthesisUtterance(text),
    onLeaving: (action) => page.addEventListener("pagehide", action),
    timers,
  };
}
