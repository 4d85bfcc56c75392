// The tests' own account of reminders: what was called on which day, and for which meals a walk was opened.
import type { MealName } from "#events/card.ts";
import type { Of } from "#events/happened.ts";
import type { Stamp } from "#events/stamp.ts";

/** Minutes since midnight, and the day counted from 1970, by the kitchen clock. */
export function clockOf(at: Stamp): { day: number; minute: number } {
  const minutes = Math.floor(at.wall / 60_000) + at.offset;
  return { day: Math.floor(minutes / 1440), minute: minutes - Math.floor(minutes / 1440) * 1440 };
}

export const minuteIn = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));

export interface MealOpened {
  meal: MealName;
  day: number;
  minute: number;
}

export const mealOn = (meal: MealName | null, at: Stamp): MealOpened[] => (meal ? [{ meal, ...clockOf(at) }] : []);

export const callOf = ({ day, reminder }: Of<"reminder called">): string =>
  `${day} ${reminder.of === "meal" ? reminder.meal : `${reminder.insulinId} ${reminder.at}`}`;
