// One fact into what the book knows of a person's last days.
import type { Happened } from "#events/happened.ts";
import type { Reminder } from "#events/happened-reminder.ts";
import { MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { PersonDay } from "./day.ts";

/** Far more than two days hold: four meals, six readings and as many calls a day. */
const KEPT = 30;

const first = <T>(entry: T, before: readonly T[]): T[] => [entry, ...before].slice(0, KEPT);

export const sameReminder = (a: Reminder, b: Reminder): boolean =>
  a.of === "meal" ? b.of === "meal" && a.meal === b.meal : b.of === "background" && a.at === b.at && a.insulinId === b.insulinId;

export function foldDay(day: PersonDay, event: Happened, at: Stamp): PersonDay {
  const { wall, offset } = at;
  switch (event.type) {
    case "walk opened":
      return event.meal ? { ...day, meals: first({ meal: event.meal, wall, offset }, day.meals) } : day;
    case "dose told later": {
      // Background insulin says nothing of a meal. A time that nobody knows counts as the telling: a call too few, never one too many.
      const told = { meal: null, wall: wall - (event.minutesAgo ?? 0) * MINUTE, offset };
      return event.insulin ? day : { ...day, meals: first(told, day.meals) };
    }
    case "reading taken":
      return { ...day, readings: first({ glucose: event.glucose, word: null, wall, offset }, day.readings) };
    case "meter word read":
      return { ...day, readings: first({ glucose: null, word: event.word, wall, offset }, day.readings) };
    case "exercise answered":
      return event.hard ? { ...day, hardExercise: at } : day;
    case "reminder called":
      return { ...day, called: first({ reminder: event.reminder, day: event.day, at, answer: null }, day.called) };
    case "reminder answered":
      return {
        ...day,
        called: day.called.map((c) =>
          c.day === event.day && sameReminder(c.reminder, event.reminder) ? { ...c, answer: event.answer } : c,
        ),
      };
    default:
      return day;
  }
}
