// What is said while insulin that was too much, or the wrong one, is watched: in the kitchen, at the end of a walk, and to whoever comes.
import { HOUR } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { isHeard } from "#rules/time/house-hours.ts";
import { localParts } from "#rules/time/local.ts";
import type { Ctx } from "#walk/context.ts";
import { type InsulinWatch, insulinReadingLateMs, insulinWatchAlert, insulinWatched } from "#walk/insulin-watch.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { timeOfDay } from "./when.ts";

export const WATCH = {
  title: "Keep watch",
  button: "Watch your glucose",
  measure: "Measure now",
  noDoctor: "No",
  yesDoctor: "Yes, a doctor",
} as const;

const what = ({ because }: InsulinWatch): string => (because === "too much" ? "Too much insulin may be in." : "The wrong insulin is in.");

/** By its hour, which stands still: a screen that counts would be said anew each minute. A clock in doubt tells no hour. */
function nextReading(house: HouseState, me: PersonState, now: Stamp): string {
  const { name } = me.person;
  const sure = house.doubt === null;
  const { readAt } = me.insulinWatch ?? {};
  if (!readAt || (insulinReadingLateMs(me, now, sure) ?? 0) >= 0) return `${name}, measure now.`;
  if (!sure) return `${name}, measure again in 1 hour at most.`;
  return `${name}, measure again at ${timeOfDay({ wall: readAt.wall + HOUR, offset: now.offset })}.`;
}

/** What calls or stands in the kitchen. None: nothing is watched. */
export function sayInsulinWatch(house: HouseState, me: PersonState, now: Stamp): string[] {
  const watch = insulinWatched(me, now, house.doubt === null);
  return watch ? [what(watch), nextReading(house, me, now)] : [];
}

/** One sentence, after its tone: to the person, or once nobody answers, to whoever is near. */
export function sayInsulinWatchCall(house: HouseState, me: PersonState, now: Stamp): string {
  const { name } = me.person;
  if (insulinWatchAlert(me, now, house.doubt === null) !== "insulin watch, no answer")
    return `${name}, measure now. Insulin is still working.`;
  const minute = house.doubt === null ? localParts(now.wall, now.offset).minuteOfDay : null;
  if (isHeard(house.household, minute)) return `${name} does not answer. Come and look now.`;
  return `${name}, measure now. The number to call: ${house.household?.emergencyNumber ?? "the emergency number"}.`;
}

/** On its own screen. A clock in doubt cannot say until when. */
export function sayWatchScreen(house: HouseState, me: PersonState, now: Stamp): string[] {
  const sure = house.doubt === null;
  const watch = insulinWatched(me, now, sure);
  if (!watch) return [];
  const until = { wall: watch.at.wall + watch.hours * HOUR, offset: now.offset };
  return [
    ...sayInsulinWatch(house, me, now),
    sure ? `Measure each hour until ${timeOfDay(until)}.` : `Measure each hour, for ${watch.hours} hours.`,
    "Keep sugar near. Do not stay alone.",
    "With a doctor? Press A doctor watches.",
  ];
}

/** Before the watch ends: a press beside "Measure now" may be a slip, and there is no way back. */
export const sayDoctorQuestion = (): string[] => ["Is a doctor with you now?", "Yes ends the tablet's watch."];

export const sayDoctorWatches = (): string[] => ["Saved. A doctor watches you now.", "The tablet asks for no more readings."];

/** At the end of a walk with a reading: a good number ends no watch. */
export function sayStillWatched(c: Ctx): string[] {
  const watch = insulinWatched(c.me, c.now, c.sure);
  return watch ? [what(watch), "Measure again in 1 hour."] : [];
}

/** For whoever comes. */
export function sayWatchToHelper(me: PersonState, now: Stamp, sure: boolean): string[] {
  const watch = insulinWatched(me, now, sure);
  return watch ? [`${what(watch)} Told at ${timeOfDay(watch.at)}.`] : [];
}
