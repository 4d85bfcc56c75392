// Days and times of day in words.
import type { Stamp } from "#events/stamp.ts";
import { localParts } from "#rules/time/local.ts";

const DAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"] as const;
const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

export type When = Pick<Stamp, "wall" | "offset">;

/** "12:05 in the afternoon". */
export function timeOfDay(at: When): string {
  const { hour, minute } = localParts(at.wall, at.offset);
  const part = hour < 4 ? "at night" : hour < 12 ? "in the morning" : hour < 18 ? "in the afternoon" : "in the evening";
  const h = hour % 12 === 0 ? 12 : hour % 12;
  return `${h}:${String(minute).padStart(2, "0")} ${part}`;
}

/** "12:05". For the clock on the kitchen screen. */
export function clock(at: When): string {
  const { hour, minute } = localParts(at.wall, at.offset);
  return `${hour % 12 === 0 ? 12 : hour % 12}:${String(minute).padStart(2, "0")}`;
}

export function dayName(at: When): string {
  return DAYS[localParts(at.wall, at.offset).weekday] ?? "";
}

/** "Wednesday, 3 June". */
export function dayAndMonth(at: When): string {
  const { day, month } = localParts(at.wall, at.offset);
  return `${dayName(at)}, ${day} ${MONTHS[month - 1] ?? ""}`;
}

/** "today", "yesterday, Tuesday" or "on Monday": never a bare date. */
export function whichDay(at: When, now: When): string {
  const midnight = (w: When) => Math.floor((w.wall + w.offset * 60_000) / 86_400_000);
  const days = midnight(now) - midnight(at);
  if (days === 0) return "today";
  return days === 1 ? `yesterday, ${dayName(at)}` : `on ${dayName(at)}`;
}

/** "on 3 June 2026" of a calendar day "2026-06-03". */
export function dateInWords(date: string): string {
  const [year, month, day] = date.split("-").map(Number);
  return `${day} ${MONTHS[(month ?? 1) - 1] ?? ""} ${year}`;
}
