// What speaking and hearing look like from outside: every voice and every ear stands behind these.
import type { SpokenLanguage } from "#words/numbers.ts";
import type { Hearing } from "./ear/answers.ts";
import type { Trouble } from "./room.ts";

export type { Hearing };

/** One sentence to be said aloud in one breath, at most 12 words, so that no engine can cut it off half way. */
export interface Sentence {
  text: string;
  lang: SpokenLanguage;
}

/** How a sentence came out. "failed" always says why; a sentence never stays without a result. */
export interface SpokenResult {
  how: "ended" | "stopped" | "failed";
  why?: string;
  /** Failed since its time has not come, still loading or before a touch: it is asked again at the next sentence. */
  notYet?: true;
}

/** Loudness in five steps of 6 dB, 5 the loudest. */
export type VolumeStep = 1 | 2 | 3 | 4 | 5;

export type VoiceHealth = "untried" | "works" | "no voice" | "failed";

export interface VoicePort {
  readonly name: string;
  /** Says one sentence; always settles, by its own watchdog if need be, and never rejects. A new sentence stops the last. */
  speak(s: Sentence): Promise<SpokenResult>;
  /** Silent at once; the sentence being said settles as "stopped". */
  stop(): void;
  health(): VoiceHealth;
  /** Words per minute, 110 to 190. */
  setRate(wpm: number): void;
  setVolume(step: VolumeStep): void;
}

/** What an ear understood of one utterance, best guess first. It is never more than a suggestion. */
export interface Heard {
  text: string;
  alternatives: string[];
  /** The ear would not swear to it: it may lead to a question, never to an act. */
  unsure?: true;
}

export interface EarsPort {
  readonly name: string;
  /** Whether this ear can hear without sending sound anywhere. */
  available(): Promise<"on the device" | "not on this device" | "not allowed">;
  /**
   * Opens the ear for these phrases (or, for an ear that can use it, for all that is known of the answers); calls back for each utterance until
   * paused, and for what is in the way, where the ear can tell. Listening again replaces the phrases. Resolves to false where no sound is to be had
   * after all, as from a microphone that is refused when it is asked for.
   */
  listen(vocabulary: readonly string[], onHeard: (h: Heard) => void, hearing?: Hearing, onTrouble?: (t: Trouble) => void): Promise<boolean>;
  pause(): void;
}

/** The passing of time, injected so that tests decide when 8 seconds are over. */
export interface Timers {
  /** Runs the action once after so many ms; the returned function cancels it. */
  after(ms: number, action: () => void): () => void;
}
