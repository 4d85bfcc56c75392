// Cautions of the day: after hard exercise, and for the night.
import { HOUR } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { BEDTIME } from "#rules/card/correction-limit.ts";
import { EXERCISE_HOURS, nearLowForNight } from "#rules/glucose/cautions.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import { isBetween, localParts } from "#rules/time/local.ts";
import type { ReadingKept } from "./day.ts";
import type { PersonState } from "./state.ts";

/** Our choice, no source: from then on the kitchen screen says again what was told after the walk. */
const EVENING = "17:00";
/** A reading of last night says nothing for this one. */
const SAME_NIGHT_MS = 12 * HOUR;

/** A clock in doubt counts as still inside (promise 14). */
export function afterHardExercise(me: PersonState, now: Stamp, sure: boolean): boolean {
  if (me.day.hardExercise === null) return false;
  const ms = elapsed(me.day.hardExercise, now, sure);
  return ms === null || ms < EXERCISE_HOURS * HOUR;
}

/** The newest reading, where it was taken at bedtime and is near low for the night; null: nothing to be said. */
export function nightReading(me: PersonState, now: Stamp): ReadingKept | null {
  const [reading] = me.day.readings;
  if (!reading?.glucose || !nearLowForNight(reading.glucose)) return null;
  const { from, until } = me.card?.card.bedtime ?? BEDTIME;
  const atBedtime = isBetween(localParts(reading.wall, reading.offset).minuteOfDay, from, until);
  return atBedtime && Math.abs(now.wall - reading.wall) < SAME_NIGHT_MS ? reading : null;
}

/** On the kitchen screen: exercise in the evening and the night after it, a reading for as long as the night lasts. */
export function eveningCautions(me: PersonState, now: Stamp, sure: boolean): { exercise: boolean; reading: ReadingKept | null } {
  const { minuteOfDay } = localParts(now.wall, now.offset);
  const { from, until } = me.card?.card.bedtime ?? BEDTIME;
  return {
    exercise: afterHardExercise(me, now, sure) && (!sure || isBetween(minuteOfDay, EVENING, until)),
    reading: isBetween(minuteOfDay, from, until) ? nightReading(me, now) : null,
  };
}
