// Facts of an ill day into the walk.
import type { Of } from "#events/happened.ts";
import type { IllBecause } from "#events/happened-ill.ts";
import type { Walk } from "./state.ts";
import { without } from "./voiding.ts";
import type { Ill } from "./walk-parts.ts";

const quiet = { draft: null, wait: null, waitDone: null } as const;

/** Begun twice in one walk, a high reading becomes an ill day: what was measured and heard stays, and danger signs are asked about anew. */
export function illBegun(walk: Walk, because: IllBecause): Walk {
  const before = walk.ill;
  const ill: Ill = before ?? {
    because,
    feelsIll: false,
    danger: null,
    reading: because === "feels ill" || !walk.reading ? null : { glucose: walk.reading.glucose, word: walk.reading.word },
    noMeter: false,
    ketones: null,
    noStrips: false,
    highHeard: false,
    ketonesHeard: false,
    rulesHeard: 0,
    callRaised: false,
  };
  // A watch goes on behind the question about danger signs.
  const wait = walk.low && walk.wait?.for === "watch" ? walk.wait : null;
  return { ...walk, ...quiet, wait, ill: because === "feels ill" ? { ...ill, feelsIll: true, danger: null } : ill };
}

/** A dose told before is asked for again: it was told from another reading. */
const doseVoid = (walk: Walk): Walk => (walk.injectOpened ? walk : without(without(walk, "card"), "dial"));

/** A reading that was taken in it, or in a low that came in between. */
export function readingInIll(walk: Walk, reading: NonNullable<Ill["reading"]>): Walk {
  if (!walk.ill) return walk;
  return doseVoid({ ...walk, ill: { ...walk.ill, reading, noMeter: false } });
}

export function illHeard(walk: Walk, event: Of<"ill advice heard">): Walk {
  if (!walk.ill) return walk;
  switch (event.what) {
    case "high":
      return { ...walk, highHeard: true, ill: { ...walk.ill, highHeard: true } };
    case "ketones":
      return { ...walk, ill: { ...walk.ill, ketonesHeard: true } };
    case "rule":
      return { ...walk, ill: { ...walk.ill, rulesHeard: event.rules } };
  }
}

export const illWith = (walk: Walk, change: Partial<Ill>): Walk =>
  walk.ill ? { ...walk, ...quiet, ill: { ...walk.ill, ...change } } : walk;
