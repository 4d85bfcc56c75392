// Facts of a low into the low.
import type { WaitFor } from "#events/happened-walk.ts";
import type { Walk } from "./state.ts";
import type { Low, ReadingAnswer } from "./walk-parts.ts";

/** reading: the last one of the walk, which may be what it began with. */
export const lowBegun = (reading: ReadingAnswer | null, because: Low["because"]): Low => ({
  because,
  rounds: [],
  readings: reading ? [{ glucose: reading.glucose, word: reading.word }] : [],
  due: "treat",
  callRaised: false,
  cannotSwallow: false,
  noMeter: false,
  helpSteps: 0,
});

export function readingInLow(low: Low, glucose: Low["readings"][number]["glucose"], word: "HI" | "LO" | null): Low {
  return { ...low, due: "treat", noMeter: false, readings: [...low.readings, { glucose, word }] };
}

/** A good reading while a meal is still missing: whoever was called for has nothing more to be called for. */
export function lowInWait(low: Low, waits: WaitFor): Low {
  if (waits === "recheck") return { ...low, due: "recheck" };
  return waits === "watch" ? { ...low, due: "recheck", callRaised: false, cannotSwallow: false, helpSteps: 0 } : low;
}

/** Sugar that came up helps nobody: the wait for it is over, and sugar is due again. A watch after a good reading goes on. */
export const sugarCameUp = (walk: Walk): Walk =>
  walk.low && walk.wait?.for === "recheck" ? { ...walk, wait: null, waitDone: null, low: { ...walk.low, due: "treat" } } : walk;
