// Insulin is in and no meal came: one good reading ends nothing. It is watched until food was eaten, or until the insulin's main action is over.
import type { Happened } from "#events/happened.ts";
import { HOUR, MINUTE } from "#events/quantity.ts";
import { WATCH_EVERY_MINUTES, watchOf } from "#rules/glucose/watch.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import type { Ctx } from "#walk/context.ts";
import type { Walk } from "#walk/state.ts";

/** Is food still to come, so that "I am eating" is an answer? */
export const missesMeal = (walk: Walk): boolean => walk.low?.because === "cannot eat" && walk.eat !== "eating";

/** Is it still to be watched? Not known how long ago the insulin went in counts as a moment ago (promise 14). */
export function keepsWatch(c: Ctx): boolean {
  const { walk, card, now, sure } = c;
  if (!missesMeal(walk) || !walk.injectOpened) return false;
  const ms = elapsed(walk.injectOpened, now, sure);
  return ms === null || ms < watchOf(card?.insulin.kind).mainHours * HOUR;
}

export const watchAgain: Happened = { type: "wait began", for: "watch", ms: WATCH_EVERY_MINUTES * MINUTE };

/** Good at the last reading, and the next one is not due yet: nobody has to be called for. */
export const isWatched = (walk: Walk): boolean => walk.low !== null && walk.wait?.for === "watch" && !walk.low.callRaised;
