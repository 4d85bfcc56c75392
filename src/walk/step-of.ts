// Where the shorter walks stand: the first answer that is missing. The meal walk and what every walk shares: stepOf in state.ts.
import type { StepName } from "#events/happened-walk.ts";
import type { Walk } from "./state.ts";

/** Background insulin goes by the clock: no plate and no bell. A reading may be left out, and the meter's word HI stops nothing once it was heard. */
export function backgroundStep(walk: Walk): StepName {
  if (walk.injectOpened) {
    if (!walk.injected) return "inject";
    return walk.putAway ? "done" : "put away";
  }
  if (!walk.taken) return "taken";
  if (!walk.wash) return "wash";
  if (!walk.reading?.glucose && !walk.readingLeftOut) return "reading";
  if (!walk.doseHeard) return "card";
  if (!walk.penCheck.primed) return "pen";
  if (!walk.dial) return "dial";
  if (!walk.place) return "place";
  return walk.skinDry ? "inject" : "skin";
}

export function readingStep(walk: Walk): StepName {
  if (!walk.wash) return "wash";
  return walk.reading?.glucose ? "done" : "reading";
}
