// What the turn-taking is given and what it tells.
import type { EarsPort, Heard, Hearing, Sentence, Timers, VoicePort } from "./ports.ts";
import type { Trouble } from "./room.ts";

/** "screen reader": another voice speaks, ours never does and the ear stays shut. "text only": nothing is spoken, the ear may listen. */
export type SpeechMode = "app speaks" | "screen reader" | "text only";

export interface SpokenScreen {
  /** The same key is the same screen: it is not said again. */
  key: string;
  sentences: Sentence[];
  /** First reprompt: the same, shorter. */
  short: Sentence[];
  /** Second reprompt: the buttons by name. */
  names: Sentence[];
  vocabulary: string[];
  /** The same answers as an ear can score them, with the range of the number. */
  hearing?: Hearing;
  /** Nothing is spoken, as while dialling; the ear listens. */
  silent: boolean;
  /** Waits for hands, not for an answer (washing, putting away): the ear stays open and nobody is reprompted. */
  unhurried?: boolean;
  /** By hand only: the ear stays shut. */
  deaf?: boolean;
}

export type Passage = "sentences" | "short" | "names" | "urgent";
/** The sentence being said, for the caption to show and mark. */
export interface SayingNow {
  of: Passage;
  index: number;
  sentence: Sentence;
}

export interface TurnsWith {
  voice: VoicePort;
  /** null where nobody switched listening on. */
  ears: EarsPort | null;
  timers: Timers;
  /** Said once when listening is given up for the rest of the walk. */
  earOff: Sentence;
  /** Said once on a screen where the room is in the way. */
  inTheWay(trouble: Trouble): readonly Sentence[];
  onSentence(now: SayingNow | null): void;
  onListening(open: boolean): void;
  /** What is in the way of the ear on this screen; null again once it is not. */
  onRoom(trouble: Trouble | null): void;
  /** Whether what was heard fits the screen. "turned away" takes the next rung at once. */
  onHeard(h: Heard): "taken" | "turned away";
}
