// What each tone is made of. Plain values, no sound here.
// Fundamentals of 500 to 900 Hz and nothing above 2000 Hz: older hearing fades from the top, and a low tone with harmonics woke
// hard-of-hearing sleepers best (520 Hz square wave, fire-protection research). Small loudspeakers are weak low down (from memory), so the
// harmonics carry the tone. Durations and volume are our own starting values.

export type ToneName = "tick" | "note" | "remind" | "soon" | "now";

/** One beat of a tone: a frequency in Hz and its harmonics, from a moment, for a while; both in seconds. */
export interface Beat {
  hz: number;
  start: number;
  seconds: number;
}

export interface ToneShape {
  beats: readonly Beat[];
}

export const ATTACK_SECONDS = 0.01;
export const RELEASE_SECONDS = 0.04;
export const HIGHEST_HZ = 2000;

/** Loudness of the fundamental and its harmonics; they stay within 15 dB of each other and add up to at most 1. */
const PARTIALS = [0.5, 0.3, 0.2];

/** The harmonics of a beat that stay below the ceiling: [Hz, share of the amplitude]. */
export function partialsOf(hz: number): readonly (readonly [number, number])[] {
  return PARTIALS.map((share, i) => [hz * (i + 1), share] as const).filter(([partial]) => partial <= HIGHEST_HZ);
}

/** Beats one after the other, with a gap between. */
function inTurn(hertz: readonly number[], seconds: number, gap: number): Beat[] {
  return hertz.map((hz, i) => ({ hz, start: i * (seconds + gap), seconds }));
}

export const TONES: Readonly<Record<ToneName, ToneShape>> = {
  /** A touch was taken. */
  tick: { beats: inTurn([600], 0.06, 0) },
  /** Something was noted. */
  note: { beats: inTurn([660], 0.25, 0) },
  /** Something is due when it suits. */
  remind: { beats: inTurn([523, 659], 0.25, 0.08) },
  /** Something is due shortly. */
  soon: { beats: inTurn([523, 659, 784], 0.25, 0.08) },
  /** Something is due now. */
  now: { beats: inTurn(Array.from({ length: 5 }, () => [880, 587]).flat(), 0.25, 0.08) },
};

/** Seconds from the first sound to silence. */
export function lengthOf(shape: ToneShape): number {
  return Math.max(0, ...shape.beats.map((b) => b.start + b.seconds + RELEASE_SECONDS));
}

/** Amplitude for a volume step: 5 is full, each step below is 6 dB softer. */
export function gainOf(step: 1 | 2 | 3 | 4 | 5): number {
  return 10 ** ((-6 * (5 - step)) / 20);
}
