// What a reminder depends on, for the state key. Nothing for a person without meal hours: the house of every other exploration is quiet all day.
// Kept apart: per meal and background dose of today where its hours stand, whether a call for it was stored and how it was answered; quiet hours or not;
// the minute of the day, since their exploration moves in half hours; a left walk just now or longer ago.
// Taken as one: other days, the exact minute of a call.
import type { Stamp } from "#events/stamp.ts";
import { isQuietHour } from "#rules/time/house-hours.ts";
import { localParts } from "#rules/time/local.ts";
import { type Due, dueToday } from "#walk/due.ts";
import type { HouseState, PersonState } from "#walk/state.ts";

export function reminderKey(house: HouseState, me: PersonState, now: Stamp): unknown {
  const { date, minuteOfDay } = localParts(now.wall, now.offset);
  // A background dose whose hour lies in the quiet hours is never called for.
  const calls = ({ what, from }: Due): boolean => what.of === "meal" || (what.of === "background" && !isQuietHour(house.household, from));
  const due = dueToday(me, now).filter(calls);
  if (due.length === 0) return "";
  const called = me.day.called
    .filter((c) => c.day === date)
    .map((c) => [c.reminder.of === "meal" ? c.reminder.meal : c.reminder.at, c.answer]);
  const age = me.walk?.left ? Math.min(4, Math.floor((now.wall - me.walk.touchedAt.wall) / 1_800_000)) : "";
  return [due.map(({ state }) => state), called, isQuietHour(house.household, minuteOfDay), me.person.mealHours ? [minuteOfDay, age] : ""];
}
