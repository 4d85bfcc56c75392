// The hours of a household: when no reminder sounds, and when somebody is there to hear a call.
import type { Household } from "#events/person.ts";
import { isBetween } from "./local.ts";

/** Our choice, no source: a night's sleep. A keeper may type others. */
export const USUAL_QUIET = { from: "22:00", until: "06:00" } as const;

/**
 * Is this minute of the day inside the quiet hours? Only reminders keep them: a meal bell belongs to insulin that is in, and a low to glucose that
 * falls on, at any hour (almost half of all lows happen asleep: patient pages on lows at night).
 */
export function isQuietHour(household: Household | null, minuteOfDay: number): boolean {
  const { from, until } = household?.quietHours ?? USUAL_QUIET;
  return isBetween(minuteOfDay, from, until);
}

/** Can somebody in the house hear a call now? minuteOfDay null: the clock is in doubt, and then nobody is counted on. Not known counts as nobody. */
export function isHeard(household: Household | null, minuteOfDay: number | null): boolean {
  const hearer = household?.hearer;
  switch (hearer?.who) {
    case "always":
      return true;
    case "between":
      return minuteOfDay !== null && isBetween(minuteOfDay, hearer.from, hearer.until);
    default:
      return false;
  }
}
