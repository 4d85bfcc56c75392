// Louder, softer, slower, faster: one step each, until the end of the scale. Pure.
import type { Prefs } from "#devices/prefs.ts";
import { FASTEST_WPM, SLOWEST_WPM } from "#speech/pace.ts";
import type { SpeechMode } from "#speech/turns-shapes.ts";
import { FIXED } from "#words/en/fixed.ts";

export type VoiceAct = "louder" | "softer" | "slower" | "faster";

/** Words a minute; a smaller step is hard to hear (our choice, no source). */
const RATE_STEP = 10;

const UP = { 1: 2, 2: 3, 3: 4, 4: 5, 5: 5 } as const;
const DOWN = { 1: 1, 2: 1, 3: 2, 4: 3, 5: 4 } as const;

/** Who speaks, as the person chose. */
export const MODES: Readonly<Record<Prefs["voice"], SpeechMode>> = {
  "speaks and listens": "app speaks",
  speaks: "app speaks",
  "screen reader": "screen reader",
  silent: "text only",
};

export type VoiceChange = { change: Pick<Prefs, "volume"> | Pick<Prefs, "rate"> } | { end: string };

/** The new preference, or what to say where there is no further step. */
export function voiceChange(act: VoiceAct, { volume, rate }: Pick<Prefs, "volume" | "rate">): VoiceChange {
  switch (act) {
    case "louder":
      return volume === 5 ? { end: FIXED.loudest } : { change: { volume: UP[volume] } };
    case "softer":
      return volume === 1 ? { end: FIXED.softest } : { change: { volume: DOWN[volume] } };
    case "slower":
      return rate <= SLOWEST_WPM ? { end: FIXED.slowest } : { change: { rate: Math.max(SLOWEST_WPM, rate - RATE_STEP) } };
    case "faster":
      return rate >= FASTEST_WPM ? { end: FIXED.fastest } : { change: { rate: Math.min(FASTEST_WPM, rate + RATE_STEP) } };
    default:
      return act satisfies never;
  }
}
