// What is due, in words: the next thing on the kitchen screen, and today's list.
import type { Stamp } from "#events/stamp.ts";
import { type Due, dueNext, dueToday } from "#walk/due.ts";
import { asksClock } from "#walk/reminders.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { clock, timeOfDay } from "./when.ts";

const onDay = (minuteOfDay: number) => ({ wall: minuteOfDay * 60_000, offset: 0 });
/** "9:30 in the evening", "12:30". */
const hour = (minuteOfDay: number): string => timeOfDay(onDay(minuteOfDay));
const figures = (minuteOfDay: number): string => clock(onDay(minuteOfDay));

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

/** A meal has hours, and its name tells the half of the day; the others have one hour, which is said in full. */
function sayWhen({ what, from, until, state }: Due): string {
  if (what.of !== "meal") return `at ${hour(from)}`;
  return state === "now" ? `until ${figures(until)}` : `from ${figures(from)}`;
}

function sayState(due: Due): string {
  switch (due.state) {
    case "in the book":
      return "in the book";
    case "to come":
      return sayWhen(due);
    case "now":
      return `now, ${sayWhen(due)}`;
    case "passed":
      return "not in the book";
    case "eaten elsewhere":
      return "eaten somewhere else";
    case "not eating":
      return "not this time";
  }
}

/** In a house of two each line names its person. */
const whose = (house: HouseState, me: PersonState): string => (Object.keys(house.people).length > 1 ? `${me.person.name}, ` : "");

const sayOne = (next: Due): string => (next.state === "now" ? `now: ${nameOf(next)}` : `next: ${nameOf(next)}, ${sayWhen(next)}`);

/**
 * One line for the house: what is on now, or comes next; the names where it is not for all.
 * Shown all day; said when asked for and never of itself: that a meal is near is no alarm.
 */
export function sayNext(house: HouseState, now: Stamp): string[] {
  const all = Object.values(house.people).flatMap((me) => {
    const next = dueNext(dueToday(me, now));
    return next ? [{ name: me.person.name, next }] : [];
  });
  const rank = ({ next }: { next: Due }): number => (next.state === "now" ? 0 : next.from);
  const [first] = all.toSorted((a, b) => rank(a) - rank(b));
  if (!first) return [];
  const line = capital(sayOne(first.next));
  const same = all.filter(({ next }) => sayOne(next) === sayOne(first.next));
  if (same.length === Object.keys(house.people).length) return [`${line}.`];
  return [`${line}, for ${same.map(({ name }) => name).join(" and ")}.`];
}

/** Today's list takes the place of the day book, which is behind it, wherever something is on that list. */
export const hasDue = (house: HouseState, now: Stamp): boolean =>
  asksClock(house) || Object.values(house.people).some((me) => dueToday(me, now).length > 0);

export const TODAY = {
  title: "Today",
  nothing: "Nothing is set up for today.",
  askClock: "Clock right? Press Today.",
  clockWrong: "A keeper sets this tablet's clock.",
  right: "Yes, it is right",
  wrong: "No, it is wrong",
} as const;

/** In doubt the list goes by a clock that may be wrong, and says so. */
export function sayToday(house: HouseState, now: Stamp): string[] {
  const lines = Object.values(house.people).flatMap((me) =>
    dueToday(me, now).map((due) => {
      const name = whose(house, me);
      return `${name}${name === "" ? capital(nameOf(due)) : nameOf(due)}: ${sayState(due)}.`;
    }),
  );
  return lines.length > 0 ? lines : [TODAY.nothing];
}

/** A clock that nobody has agreed to calls for nothing, and that is said where calls are set up. */
export const sayClockDoubt = (house: HouseState): string[] => {
  if (!asksClock(house)) return [];
  return house.doubt === "the person said no" ? [TODAY.clockWrong] : [TODAY.askClock];
};
