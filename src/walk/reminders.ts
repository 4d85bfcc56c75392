// Reminders: one call where a meal's usual hours, or the hour of a background dose, have passed and nothing is in the book. A question, never a push to a dose.
import type { Happened } from "#events/happened.ts";
import type { Reminder, ReminderAnswer } from "#events/happened-reminder.ts";
import type { Intent } from "#events/intent.ts";
import { HOUR, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import { isQuietHour, USUAL_QUIET } from "#rules/time/house-hours.ts";
import { localParts, minuteOf } from "#rules/time/local.ts";
import { type Offer, press } from "./context.ts";
import type { CalledReminder } from "./day.ts";
import { type Due, dueToday } from "./due.ts";
import { sameReminder } from "./fold-day.ts";
import type { HouseState, PersonState } from "./state.ts";

/** Our choice, no source: a call that could not come for so long (a walk was open, the tablet was off) does not come any more. */
const CALL_WITHIN_MINUTES = 120;
/** Our choice, no source: two calls are so far apart at least, so that each is heard to its end. */
const BETWEEN_CALLS_MS = 2 * MINUTE;
/** Our choice, no source: a walk that was left is taken up again within so long, or it keeps no reminder waiting. */
const LEFT_WALK_MS = 2 * HOUR;

/** Has anybody been set up whom the tablet could remind? */
const mayRemind = (house: HouseState): boolean =>
  Object.values(house.people).some(({ person, card }) => (person.mealHours ?? []).length > 0 || (card?.card.background ?? []).length > 0);

/** Something that comes first is going on: a walk in front, a bell, a low. */
const houseIsBusy = (house: HouseState): boolean =>
  house.front !== null || Object.values(house.people).some(({ bell, walk }) => bell !== null || walk?.low);

function inWalk({ walk }: PersonState, now: Stamp): boolean {
  if (!walk) return false;
  const since = elapsed(walk.touchedAt, now, true);
  return !walk.left || walk.injectOpened !== null || since === null || since < LEFT_WALK_MS;
}

/** Our choice, no source: room for a call before the quiet hours, so that a walk in front does not swallow it. */
const BEFORE_QUIET_MINUTES = 15;

/**
 * The minute of the day at which silence about this is worth a call. A background dose shortly before the quiet hours is called for before they begin;
 * one inside them, never: a keeper who wants that call lets the quiet hours begin later.
 */
function callMinute(house: HouseState, due: Due): number {
  const quietFrom = minuteOf((house.household?.quietHours ?? USUAL_QUIET).from);
  const soon = due.what.of === "background" && quietFrom > due.from && quietFrom - BEFORE_QUIET_MINUTES < due.until;
  return soon ? Math.max(due.from, quietFrom - BEFORE_QUIET_MINUTES) : due.until;
}

const asReminder = ({ what }: Due): Reminder | null => {
  if (what.of === "meal") return what;
  return what.of === "background" ? { of: "background", at: what.at, insulinId: what.insulinId } : null;
};

const calledFor = (me: PersonState, reminder: Reminder, day: string): CalledReminder | undefined =>
  me.day.called.find((c) => c.day === day && sameReminder(c.reminder, reminder));

interface ReminderFact {
  person: string;
  walk: null;
  event: Extract<Happened, { type: "reminder called" }>;
}

/** The call that is due at this moment, or none. A clock in doubt calls for nothing, and what was called once stays called. */
export function reminderFacts(house: HouseState, now: Stamp): ReminderFact[] {
  if (house.doubt !== null || houseIsBusy(house)) return [];
  const { date: day, minuteOfDay } = localParts(now.wall, now.offset);
  if (isQuietHour(house.household, minuteOfDay)) return [];
  const people = Object.values(house.people);
  const lately = people.some((p) => p.day.called.some((c) => (elapsed(c.at, now, true) ?? BETWEEN_CALLS_MS) < BETWEEN_CALLS_MS));
  if (lately) return [];
  for (const me of people) {
    if (inWalk(me, now)) continue;
    for (const due of dueToday(me, now)) {
      const reminder = asReminder(due);
      const from = callMinute(house, due);
      const silent = due.state === "passed" || due.state === "now";
      if (!reminder || !silent || minuteOfDay < from || minuteOfDay >= from + CALL_WITHIN_MINUTES) continue;
      if (!calledFor(me, reminder, day)) return [{ person: me.person.id, walk: null, event: { type: "reminder called", day, reminder } }];
    }
  }
  return [];
}

/** The call whose question still stands on the kitchen screen: of today, with nothing in the book since, until the next meal's hours begin. */
export function standingReminder(me: PersonState, now: Stamp): CalledReminder | null {
  const { date } = localParts(now.wall, now.offset);
  const list = dueToday(me, now);
  const newest = me.day.called.find((c) => c.day === date);
  if (!newest || (newest.answer !== null && newest.answer !== "later")) return null;
  const due = list.find((d) => d.what.of !== "reading" && sameReminder(newest.reminder, d.what));
  if (due?.state !== "passed" && due?.state !== "now") return null;
  const overtaken = list.some((d) => d.what.of === "meal" && d.from > due.from && d.state !== "to come");
  return overtaken ? null : newest;
}

const ANSWERS: Readonly<Record<Reminder["of"], readonly ReminderAnswer[]>> = {
  meal: ["eaten elsewhere", "not eating", "later"],
  // Whether it was taken is told as a dose, by the walk or as taken away from home, and by no other answer.
  background: ["later"],
};

/** Without a walk nobody asks for day and time; where calls wait for that, the kitchen screen does. */
export const asksClock = (house: HouseState): boolean => house.doubt !== null && house.front === null && mayRemind(house);

export const clockOffers = (house: HouseState): Offer[] =>
  asksClock(house) ? [press("main", { do: "agree clock" }), press("no", { do: "doubt clock" })] : [];

export function reminderOffers(me: PersonState, now: Stamp): Offer[] {
  const standing = standingReminder(me, now);
  if (!standing) return [];
  const { reminder, day, answer: before } = standing;
  return ANSWERS[reminder.of]
    .filter((answer) => answer !== before)
    .map((answer) => press("choice", { do: "answer reminder", person: me.person.id, day, reminder, answer }));
}

export const reminderAnswered = (intent: Extract<Intent, { do: "answer reminder" }>): Happened => ({
  type: "reminder answered",
  day: intent.day,
  reminder: intent.reminder,
  answer: intent.answer,
});
