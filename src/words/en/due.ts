// What is due, in words: the next thing on the kitchen screen, and today's list.
import type { Stamp } from "#events/stamp.ts";
import { type Due, dueNext, dueToday } from "#walk/due.ts";
import { asksClock } from "#walk/reminders.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { dayAndMonth, timeOfDay } from "./when.ts";

/** "12:30 in the afternoon" of a minute of the day. */
const hour = (minuteOfDay: number): string => timeOfDay({ wall: minuteOfDay * 60_000, offset: 0 });

function nameOf({ what }: Due): string {
  switch (what.of) {
    case "meal":
      return what.meal;
    case "background":
      return what.insulinName;
    case "reading":
      return "a reading";
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A meal has hours, the others have one hour. */
function sayState(due: Due): string {
  const at = due.what.of === "meal" ? "from" : "at";
  switch (due.state) {
    case "in the book":
      return "it is in the book";
    case "to come":
      return `${at} ${hour(due.from)}`;
    case "now":
      return due.what.of === "meal" ? `now, until ${hour(due.until)}` : `now, at ${hour(due.from)}`;
    case "passed":
      return "nothing is in the book";
    case "eaten elsewhere":
      return "eaten somewhere else";
    case "not eating":
      return "not this time";
  }
}

/** In a house of two each line names its person. */
const whose = (house: HouseState, me: PersonState): string => (Object.keys(house.people).length > 1 ? `${me.person.name}, ` : "");

/** Shown all day; said when asked for and never of itself: that a meal is near is no alarm. */
export function sayNext(house: HouseState, now: Stamp): string[] {
  return Object.values(house.people).flatMap((me) => {
    const next = dueNext(dueToday(me, now));
    if (!next) return [];
    const line =
      next.state === "now"
        ? `now: ${nameOf(next)}.`
        : `next: ${nameOf(next)}, ${next.what.of === "meal" ? "from" : "at"} ${hour(next.from)}.`;
    const name = whose(house, me);
    return [name === "" ? capital(line) : `${name}${line}`];
  });
}

/** Today's list takes the place of the day book, which is behind it, wherever something is on that list. */
export const hasDue = (house: HouseState, now: Stamp): boolean =>
  asksClock(house) || Object.values(house.people).some((me) => dueToday(me, now).length > 0);

export const TODAY = {
  title: "Today",
  nothing: "Nothing is set up for today.",
  askClock: "Is the clock right? Press Today.",
  clockWrong: "A keeper sets this tablet's clock.",
  right: "Yes, it is right",
  wrong: "No, it is wrong",
} as const;

/** In doubt the list goes by a clock that may be wrong, and says so. */
export function sayToday(house: HouseState, now: Stamp): string[] {
  const lines = Object.values(house.people).flatMap((me) =>
    dueToday(me, now).map((due) => `${whose(house, me)}${capital(nameOf(due))}: ${sayState(due)}.`),
  );
  return [dayAndMonth(now).concat("."), ...(lines.length > 0 ? lines : [TODAY.nothing])];
}

/** A clock that nobody has agreed to calls for nothing, and that is said where calls are set up. */
export const sayClockDoubt = (house: HouseState): string[] => {
  if (!asksClock(house)) return [];
  return house.doubt === "the person said no" ? [TODAY.clockWrong] : [TODAY.askClock];
};
