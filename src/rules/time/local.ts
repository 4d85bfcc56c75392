// Calendar days and clock times of a place, by whole-number arithmetic: no Date, no time-zone database.
// Days are counted from civil dates by the well-known era method for the proleptic Gregorian calendar (years begin in March, eras of 400 years);
// written from memory, no source at hand.
import type { ClockTime, Instant, LocalDate } from "#events/quantity.ts";
import { MINUTE } from "#events/quantity.ts";

export interface LocalParts {
  readonly date: LocalDate;
  /** 0 to 1439. */
  readonly minuteOfDay: number;
  /** 0 is Sunday. */
  readonly weekday: number;
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

const DAYS_IN_ERA = 146_097;
/** From 0000-03-01 to 1970-01-01. */
const DAYS_BEFORE_1970 = 719_468;
const MINUTES_A_DAY = 1440;

function dayNumber(year: number, month: number, day: number): number {
  const fromMarch = month <= 2 ? year - 1 : year;
  const era = Math.floor(fromMarch / 400);
  const yearOfEra = fromMarch - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_IN_ERA + dayOfEra - DAYS_BEFORE_1970;
}

function civil(days: number): { year: number; month: number; day: number } {
  const shifted = days + DAYS_BEFORE_1970;
  const era = Math.floor(shifted / DAYS_IN_ERA);
  const dayOfEra = shifted - era * DAYS_IN_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1,
  };
}

const two = (n: number): string => String(n).padStart(2, "0");

function spell(days: number): LocalDate {
  const { year, month, day } = civil(days);
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;
}

/** Throws RangeError (a defect) for a text that is not yyyy-mm-dd: the schema localDate has let it in or out before. */
function read(date: LocalDate): number {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (!found) throw new RangeError(`Not a date: ${date}`);
  return dayNumber(Number(found[1]), Number(found[2]), Number(found[3]));
}

/** What the kitchen clock shows at an instant. offsetMinutes is east of UTC, as in a stamp. */
export function localParts(wall: Instant, offsetMinutes: number): LocalParts {
  const minutes = Math.floor(wall / MINUTE + offsetMinutes);
  const days = Math.floor(minutes / MINUTES_A_DAY);
  const minuteOfDay = minutes - days * MINUTES_A_DAY;
  // 1970-01-01 was a Thursday.
  const weekday = (((days + 4) % 7) + 7) % 7;
  return {
    date: spell(days),
    minuteOfDay,
    weekday,
    ...civil(days),
    hour: Math.floor(minuteOfDay / 60),
    minute: minuteOfDay % 60,
  };
}

/** n may be negative. */
export const addDays = (date: LocalDate, n: number): LocalDate => spell(read(date) + n);

/** Calendar days from one to the other; negative when `to` is earlier. Never hours divided by 24: a day may have 23 or 25. */
export const daysBetween = (from: LocalDate, to: LocalDate): number => read(to) - read(from);

/** Below 0 when a is the earlier day. */
export const compareDates = (a: LocalDate, b: LocalDate): number => Math.sign(read(a) - read(b));

/** "2026-02-30" has the right shape and is no day. */
export const isRealDate = (date: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(date) && spell(read(date)) === date;

/** "21:30" as 1290. */
export function minuteOf(time: ClockTime): number {
  const [hour = "", minute = ""] = time.split(":");
  return Number(hour) * 60 + Number(minute);
}

/** From is inside, until is not; the span may cross midnight. From equal to until is the whole day. */
export function isBetween(minuteOfDay: number, from: ClockTime, until: ClockTime): boolean {
  const [start, end] = [minuteOf(from), minuteOf(until)];
  return start < end ? minuteOfDay >= start && minuteOfDay < end : minuteOfDay >= start || minuteOfDay < end;
}

/** Of two minutes of the day, round the clock: 23:00 and 01:00 are two hours apart. */
export function minutesApart(a: number, b: number): number {
  const apart = Math.abs(a - b);
  return Math.min(apart, MINUTES_A_DAY - apart);
}
