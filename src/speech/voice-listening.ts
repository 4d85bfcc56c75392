// A voice for tests: writes down what it was asked to say and how long that would have taken.
import { DEFAULT_WPM, spokenSeconds } from "./pace.ts";
import type { Sentence, SpokenResult, VoiceHealth, VoicePort, VolumeStep } from "./ports.ts";

export class ListeningVoice implements VoicePort {
  readonly name = "listening";
  readonly said: Sentence[] = [];
  stops = 0;
  wpm = DEFAULT_WPM;
  volume: VolumeStep = 4;
  #waiting: ((result: SpokenResult) => void) | null = null;
  readonly #byHand: boolean;

  /** `byHand`: a sentence lasts until the test calls finish() or fail(); otherwise each ends at once. */
  constructor(options: { byHand?: boolean } = {}) {
    this.#byHand = options.byHand === true;
  }

  speak(s: Sentence): Promise<SpokenResult> {
    this.#settle({ how: "stopped" });
    this.said.push(s);
    if (!this.#byHand) return Promise.resolve({ how: "ended" });
    return new Promise((resolve) => {
      this.#waiting = resolve;
    });
  }

  stop(): void {
    this.stops++;
    this.#settle({ how: "stopped" });
  }

  finish(): void {
    this.#settle({ how: "ended" });
  }

  fail(why: string): void {
    this.#settle({ how: "failed", why });
  }

  speaking(): boolean {
    return this.#waiting !== null;
  }

  texts(): string[] {
    return this.said.map((s) => s.text);
  }

  /** Seconds that everything said so far takes, pauses included, as one run. */
  seconds(wpm: number = this.wpm): number {
    return spokenSeconds(this.texts(), wpm);
  }

  health(): VoiceHealth {
    return "works";
  }

  setRate(wpm: number): void {
    this.wpm = wpm;
  }

  setVolume(step: VolumeStep): void {
    this.volume = step;
  }

  #settle(result: SpokenResult): void {
    const waiting = this.#waiting;
    this.#waiting = null;
    waiting?.(result);
  }
}
