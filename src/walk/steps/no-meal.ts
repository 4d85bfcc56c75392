// Insulin is in and no meal came: one good reading ends nothing. It is watched until food was eaten, or until the insulin's main action is over.
import type { Happened } from "#events/happened.ts";
import { HOUR, MINUTE } from "#events/quantity.ts";
import { watchOf } from "#rules/glucose/watch.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import type { Ctx } from "#walk/context.ts";
import { isBackground } from "#walk/insulin.ts";
import type { Walk } from "#walk/state.ts";
import { careMinutesMs } from "./care-ms.ts";

/** Is food still to come, so that "I am eating" is an answer? */
export const missesMeal = (walk: Walk): boolean => walk.low?.because === "cannot eat" && walk.eat !== "eating";

/** Is it still to be watched? Not known how long ago the insulin went in counts as a moment ago (promise 14). */
export function keepsWatch(c: Ctx): boolean {
  const ms = insulinInMs(c);
  return missesMeal(c.walk) && (ms === "not known" || (ms !== null && ms < watchOf(c.card?.insulin.kind).mainHours * HOUR));
}

/** Milliseconds since the mealtime insulin that misses its meal went in, in this walk or in an earlier one; null: there is none. */
function insulinInMs(c: Ctx): number | "not known" | null {
  const { walk, me, now, sure } = c;
  const [newest] = me.doses;
  const own = isBackground(walk) ? null : walk.injectOpened;
  const from = own ?? newest?.at;
  if (!from) return null;
  const ms = elapsed(from, now, sure);
  return ms === null ? "not known" : ms + (own ? 0 : (newest?.agoMinutes ?? 0) * MINUTE);
}

export const watchAgain = (c: Ctx): Happened => ({ type: "wait began", for: "watch", ms: careMinutesMs(c.card, "watchMinutes") });

/** Good at the last reading, and the next one is not due yet: nobody has to be called for. */
export const isWatched = (walk: Walk): boolean => walk.low !== null && walk.wait?.for === "watch" && !walk.low.callRaised;
