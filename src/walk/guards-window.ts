// What both windows ask: how long ago a dose was at least, and whether the log can vouch that there was none.
import { DAY, MINUTE, type Units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import type { RapidDose } from "./doses.ts";
import type { HouseState } from "./state.ts";

/** Is a second dose possible? Doubt counts as possible (promises 10 and 14). */
export type Window =
  | { is: "clear" }
  | { is: "a dose inside"; minutesAgo: number | null; units: Units | null; certain: boolean }
  | { is: "not known" };

type Timed = Pick<RapidDose, "walk" | "at" | "agoMinutes">;

/** Our choice, no source: hours are told roughly, so "three hours ago" is taken as two at least. */
const TOLD_ROUGHLY_MINUTES = 60;

/** Minutes that a dose lay back at least when it was told: a time that nobody knows is still not later than the telling. */
export const atLeastAgo = (dose: Timed): number => Math.max(0, (dose.agoMinutes ?? 0) - (dose.walk === null ? TOLD_ROUGHLY_MINUTES : 0));

/** atLeastMs: null, and minutes: null, where the clocks cannot say; minutes as they were told. */
export function totalAgo(dose: Timed, now: Stamp, sure: boolean): { atLeastMs: number | null; minutes: number | null } {
  const ms = elapsed(dose.at, now, sure);
  return {
    atLeastMs: ms === null ? null : ms + atLeastAgo(dose) * MINUTE,
    minutes: ms === null || dose.agoMinutes === null ? null : Math.floor(ms / MINUTE) + dose.agoMinutes,
  };
}

/** Has this tablet been recording for the whole window, with every row readable? */
export function logVouches(house: HouseState, windowMs: number, now: Stamp): boolean {
  if (house.doubt !== null || house.clearSince === null || now.wall - house.clearSince < windowMs) return false;
  // A day without any entry: a dose may have been taken elsewhere.
  if (house.last && now.wall - house.last.wall > DAY) return false;
  return !house.unreadable.some((wall) => wall === null || now.wall - wall < windowMs);
}
