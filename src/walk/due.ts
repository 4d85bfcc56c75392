// What is due today, from the card, the person's usual hours and the book. It shows and reminds; no dose is told or freed by it.
import type { MealName } from "#events/card.ts";
import type { ReminderAnswer } from "#events/happened-reminder.ts";
import { type ClockTime, type LocalDate, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { whyNotInForce } from "#rules/card/silence.ts";
import { isBetween, localParts, minuteOf } from "#rules/time/local.ts";
import type { Moment } from "./day.ts";
import { sameReminder } from "./fold-day.ts";
import { backgroundDosesOf } from "./insulin.ts";
import type { PersonState } from "./state.ts";

export type DueWhat =
  | { of: "meal"; meal: MealName }
  | { of: "background"; at: ClockTime; insulinId: string; insulinName: string }
  | { of: "reading"; at: ClockTime };

export interface Due {
  what: DueWhat;
  /** Minutes of the day; "now" from the one until the other. */
  from: number;
  until: number;
  /** "in the book": something there speaks for it. "passed": its time is over, and nothing does. */
  state: "in the book" | "to come" | "now" | "passed" | Exclude<ReminderAnswer, "later">;
}

/** Our choice, no source: so long after its hour a background dose is still "now"; then nothing in the book is worth a word. */
export const BACKGROUND_MINUTES = 30;
/** Our choice, no source: a reading taken so long before or after its hour is that one. */
const READING_EARLY = 60;
const READING_LATE = 120;
/** Of an hour that comes once a day the nearest one is so near at most. */
const HALF_A_DAY = 12 * 60;
/** Our choice, no source: an injection so many minutes nearer than this is the one of that hour; half of twelve hours, the closest that two a day stand. */
const DOSE_NEAR = 6 * 60;

const partsOf = ({ wall, offset }: Moment) => localParts(wall, offset);

/** A meal walk of that meal today, or anything about a meal inside its hours: who was at the tablet then is not asked again. */
function mealInBook(me: PersonState, meal: MealName, from: ClockTime, until: ClockTime, today: LocalDate): boolean {
  return me.day.meals.some((entry) => {
    const { date, minuteOfDay } = partsOf(entry);
    return date === today && (entry.meal === meal || isBetween(minuteOfDay, from, until));
  });
}

/** Does that injection belong to the hour it is due at, today, or to the same hour of the day before or after? By midnight the calendar cannot tell. */
function doseInBook(me: PersonState, insulinId: string, at: ClockTime, onceADay: boolean, now: Stamp): boolean {
  const { date, minuteOfDay } = localParts(now.wall, now.offset);
  const dueWall = now.wall - (minuteOfDay - minuteOf(at)) * MINUTE;
  return me.backgroundDoses.some((dose) => {
    if (dose.insulinId !== insulinId) return false;
    // One whose time nobody knows counts for its day of telling: a reminder must never lead to a second one.
    if (dose.agoMinutes === null) return partsOf(dose.at).date === date;
    const apart = Math.abs(dose.at.wall - dose.agoMinutes * MINUTE - dueWall);
    return apart < (onceADay || dose.dose === at ? HALF_A_DAY : DOSE_NEAR) * MINUTE;
  });
}

function answerOf(me: PersonState, what: DueWhat, today: LocalDate): Exclude<ReminderAnswer, "later"> | null {
  if (what.of === "reading") return null;
  const called = me.day.called.find((c) => c.day === today && sameReminder(c.reminder, what));
  return called?.answer && called.answer !== "later" ? called.answer : null;
}

/** Everything of this calendar day, in the order of the clock. By the clock as it shows: whoever calls for something looks at its doubt first. */
export function dueToday(me: PersonState, now: Stamp): Due[] {
  const { date: today, minuteOfDay } = localParts(now.wall, now.offset);
  const due = (what: DueWhat, from: number, until: number, inBook: boolean): Due => {
    const answer = answerOf(me, what, today);
    const byClock = minuteOfDay < from ? "to come" : minuteOfDay < until ? "now" : "passed";
    return { what, from, until, state: inBook ? "in the book" : (answer ?? byClock) };
  };
  const meals = (me.person.mealHours ?? []).map(({ meal, from, until }) =>
    due({ of: "meal", meal }, minuteOf(from), minuteOf(until), mealInBook(me, meal, from, until, today)),
  );
  const card = me.card && whyNotInForce(me.card.card, { today }) === null ? me.card.card : null;
  const hours = backgroundDosesOf(card);
  const background = hours.map(({ insulin, at }) =>
    due(
      { of: "background", at, insulinId: insulin.id, insulinName: insulin.name },
      minuteOf(at),
      minuteOf(at) + BACKGROUND_MINUTES,
      doseInBook(me, insulin.id, at, hours.filter((d) => d.insulin.id === insulin.id).length === 1, now),
    ),
  );
  const readings = (me.person.readingTimes ?? []).map((at) => {
    const hour = minuteOf(at);
    const taken = me.day.readings.some((reading) => {
      const { date, minuteOfDay: minute } = partsOf(reading);
      return date === today && minute >= hour - READING_EARLY && minute < hour + READING_LATE;
    });
    return due({ of: "reading", at }, hour, hour + READING_LATE, taken);
  });
  return [...meals, ...background, ...readings].toSorted((a, b) => a.from - b.from);
}

/** What is on now, or else the next to come today; null: nothing more today. */
export const dueNext = (list: readonly Due[]): Due | null =>
  list.find(({ state }) => state === "now") ?? list.find(({ state }) => state === "to come") ?? null;
