// The voice that ships with the app: it needs no engine of the tablet and no network. Sound is made in a worker and played here,
// through one gain, with a watchdog on both. Whatever goes wrong, the sentence settles as failed and the next voice says it whole.
import { DEFAULT_WPM, spokenSeconds } from "./pace.ts";
import type { Sentence, SpokenResult, Timers, VoiceHealth, VoicePort, VolumeStep } from "./ports.ts";
import { speakable } from "./voice/speakable.ts";
import type { Answer, Ask } from "./voice/worker-shapes.ts";

/** The worker, as seen from here: a test can stand in for it. An error of the worker itself is told as "broken". */
export interface SynthWorker {
  post(message: Ask | { folder: string }): void;
  onAnswer(listener: (a: Answer) => void): void;
}

/** Plays samples; "over" once they have sounded. Undefined where no sound is possible now. */
export type Player = (
  sound: { samples: Int16Array; sampleRate: number },
  loudness: number,
) => { over: Promise<void>; stop(): void } | undefined;

/** Words a minute of the voice at its own pace (measured over sentences of a walk: 190). */
const OWN_WPM = 190;
/** A sentence must be made within this time; measured: 13 ms of work for a second of speech, 0.2 s for the very first. */
const MADE_WITHIN_MS = 3000;
/** Sound that is shorter than this share of the expected time has lost words: it is not played. */
const WHOLE_SHARE = 0.45;
const PLAYED_LATE_MS = 1500;

const gainOf = (step: VolumeStep): number => 10 ** ((-6 * (5 - step)) / 20);

export class OwnVoice implements VoicePort {
  readonly name = "own";
  #worker: SynthWorker | null = null;
  readonly #play: Player;
  readonly #timers: Timers;
  #health: VoiceHealth = "untried";
  #ready = false;
  #wpm = DEFAULT_WPM;
  #step: VolumeStep = 4;
  #asked = 0;
  #waiting = new Map<number, (a: Answer) => void>();
  #stopNow: (() => void) | null = null;

  constructor(play: Player, timers: Timers) {
    this.#play = play;
    this.#timers = timers;
  }

  /** Fetches the voice through its worker; until it is there, other voices speak. `folder`: the address of its manifest, with a slash at the end. */
  open(worker: SynthWorker, folder: string): void {
    this.#worker = worker;
    worker.onAnswer((a) => this.#hear(a));
    worker.post({ folder });
  }

  async speak(s: Sentence): Promise<SpokenResult> {
    this.stop();
    if (this.#health === "no voice") return { how: "failed", why: "its file is missing or torn" };
    if (!this.#ready) return { how: "failed", why: "still loading", notYet: true };
    let stopped = false;
    const stop = new Promise<"stopped">((resolve) => {
      this.#stopNow = () => {
        stopped = true;
        resolve("stopped");
      };
    });
    const made = await Promise.race([stop, this.#make(s)]);
    if (made === "stopped" || stopped) return { how: "stopped" };
    if (!("samples" in made)) return this.#failed("why" in made ? made.why : "it stopped working");
    // A number with a part missing is another number: nothing of it is played.
    if (made.samples.length !== made.made) return this.#failed("a part of the sound is missing");
    const seconds = made.samples.length / made.sampleRate;
    if (seconds < spokenSeconds([s.text], this.#wpm) * WHOLE_SHARE) return this.#failed("the sound is too short for the sentence");
    const playing = this.#play(made, gainOf(this.#step));
    if (playing === undefined) return { how: "failed", why: "no sound is possible before a touch", notYet: true };
    const late = this.#late(seconds * 1000 + PLAYED_LATE_MS);
    const how = await Promise.race([stop, playing.over.then(() => "over" as const), late.passed]);
    late.cancel();
    if (how !== "over") playing.stop();
    if (how === "stopped") return { how: "stopped" };
    if (how === "late") return this.#failed("the sound did not end");
    this.#health = "works";
    return { how: "ended" };
  }

  stop(): void {
    this.#stopNow?.();
    this.#stopNow = null;
  }

  health(): VoiceHealth {
    return this.#health;
  }

  setRate(wpm: number): void {
    this.#wpm = wpm;
  }

  setVolume(step: VolumeStep): void {
    this.#step = step;
  }

  #failed(why: string): SpokenResult {
    if (this.#health !== "no voice") this.#health = "failed";
    return { how: "failed", why };
  }

  async #make(s: Sentence): Promise<Answer> {
    const id = ++this.#asked;
    const late = this.#late(MADE_WITHIN_MS);
    const answered = new Promise<Answer>((resolve) => this.#waiting.set(id, resolve));
    this.#worker?.post({ id, text: speakable(s.text, s.lang), pace: this.#wpm / OWN_WPM });
    const answer = await Promise.race([answered, late.passed]);
    late.cancel();
    this.#waiting.delete(id);
    return answer === "late" ? { id, why: "making the sound took too long" } : answer;
  }

  #late(ms: number): { passed: Promise<"late">; cancel: () => void } {
    let cancel = (): void => {};
    const passed = new Promise<"late">((resolve) => {
      cancel = this.#timers.after(ms, () => resolve("late"));
    });
    return { passed, cancel: () => cancel() };
  }

  #hear(answer: Answer): void {
    if ("ready" in answer) this.#ready = true;
    else if ("broken" in answer) {
      this.#health = "no voice";
      for (const resolve of this.#waiting.values()) resolve(answer);
    } else this.#waiting.get(answer.id)?.(answer);
  }
}
