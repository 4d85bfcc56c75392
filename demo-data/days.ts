// The ninety days before now on the kitchen clock: day 0 is the first, the last is the day of now.
import { DAY, type LocalDate, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { addDays, localParts } from "#rules/time/local.ts";

export const DAYS = 90;
export const TODAY = DAYS - 1;

export interface Place {
  now: Stamp;
  /** Minutes east of UTC of the tablet's zone at an instant: summer time may have come in the ninety days. */
  offsetAt(wall: number): number;
}

export interface Days {
  date(day: number): LocalDate;
  /** The instant at which the kitchen clock shows this minute of that day. */
  wall(day: number, minuteOfDay: number): number;
}

export function daysBefore({ now, offsetAt }: Place): Days {
  const local = now.wall + now.offset * MINUTE;
  const midnight = local - (((local % DAY) + DAY) % DAY);
  const today = localParts(now.wall, now.offset).date;
  return {
    date: (day) => addDays(today, day - TODAY),
    wall(day, minuteOfDay) {
      const shown = midnight + (day - TODAY) * DAY + minuteOfDay * MINUTE;
      // The offset at a first guess, then at the better one: right but for the hour that summer time skips or repeats at night.
      const guess = shown - offsetAt(shown - now.offset * MINUTE) * MINUTE;
      return shown - offsetAt(guess) * MINUTE;
    },
  };
}
