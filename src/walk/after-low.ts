// Is this a meal after a low? The low may have been treated in a walk of its own, in the kitchen.
import { MINUTE } from "#events/quantity.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import type { Ctx } from "./context.ts";

/**
 * The card has a line for after a low and no word on how long that is. Leaflets give a snack where the next meal is further off than half an hour
 * to two hours (leaflets after Diabetes Canada and the ADA on older adults): the longest of them, since a meal within it belongs to the low.
 */
const AFTER_LOW_MINUTES = 120;

/** Not known how long ago counts as a moment ago (promise 14). */
export function isAfterLow(c: Ctx): boolean {
  if (c.walk.afterLow) return true;
  if (c.me.lastLow === null) return false;
  const ms = elapsed(c.me.lastLow, c.now, c.sure);
  return ms === null || ms < AFTER_LOW_MINUTES * MINUTE;
}
