// Typed text into values: numbers, dates, times. A text that could mean two things is refused, never guessed.
import type { ClockTime, LocalDate } from "#events/quantity.ts";
import { isRealDate } from "#rules/time/local.ts";
import type { ProblemWhy } from "./problem.ts";

export type Typed<T> = { ok: true; value: T } | ({ ok: false } & ProblemWhy);

const no = <T>(why: ProblemWhy): Typed<T> => ({ ok: false, ...why });

export interface NumberSpan {
  least: number;
  most: number;
  decimals: number;
}

/** Digits with a point or a comma before decimals. No thousands, no signs, no exponents. */
export function readNumber(text: string, { least, most, decimals }: NumberSpan): Typed<number> {
  const typed = text.trim();
  if (typed === "") return no({ why: "empty" });
  const found = /^(\d{1,6})(?:[.,](\d+))?$/.exec(typed);
  if (!found) return no({ why: "not a number" });
  const after = (found[2] ?? "").replace(/0+$/, "");
  if (after.length > decimals) return no({ why: "too many decimals", most: decimals });
  const value = Number(`${found[1]}.${after === "" ? "0" : after}`);
  if (value < least) return no({ why: "too small", least });
  return value > most ? no({ why: "too large", most }) : { ok: true, value };
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const FULL = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

function monthOf(word: string): number {
  const name = word.toLowerCase().replace(/\.$/, "");
  const short = name === "sept" ? "sep" : name;
  return Math.max(MONTHS.indexOf(short), FULL.indexOf(short)) + 1;
}

function spell(year: string, month: number, day: string): Typed<LocalDate> {
  const date = `${year}-${String(month).padStart(2, "0")}-${day.padStart(2, "0")}`;
  return month > 0 && isRealDate(date) ? { ok: true, value: date } : no({ why: "not a date" });
}

/** "3 June 2026", "June 3, 2026" or "2026-06-03". Figures alone in another order could be two days. */
export function readDate(text: string): Typed<LocalDate> {
  const typed = text.trim().replaceAll(/\s+/g, " ");
  if (typed === "") return no({ why: "empty" });
  if (/^\d{1,2}[/. -]\d{1,2}[/. -]\d{2,4}$/.test(typed)) return no({ why: "two dates" });
  const iso = /^(\d{4})-(\d{2})-(\d{2})$/.exec(typed);
  if (iso) return spell(iso[1] ?? "", Number(iso[2]), iso[3] ?? "");
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)? ([A-Za-z]+\.?),? (\d{4})$/.exec(typed);
  if (dayFirst) return spell(dayFirst[3] ?? "", monthOf(dayFirst[2] ?? ""), dayFirst[1] ?? "");
  const monthFirst = /^([A-Za-z]+\.?) (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/.exec(typed);
  if (monthFirst) return spell(monthFirst[3] ?? "", monthOf(monthFirst[1] ?? ""), monthFirst[2] ?? "");
  return no({ why: "not a date" });
}

/** "21:30", "9:30 pm" or "9 pm". "9:30" alone is half past nine in the morning only with a leading zero: it could be either. */
export function readTime(text: string): Typed<ClockTime> {
  const typed = text.trim().toLowerCase();
  if (typed === "") return no({ why: "empty" });
  const found = /^(\d{1,2})(?::(\d{2}))?\s*(am|pm|a\.m\.|p\.m\.)?$/.exec(typed);
  if (!found) return no({ why: "not a time" });
  const [, hours = "", minutes, half] = found;
  const minute = Number(minutes ?? "0");
  let hour = Number(hours);
  if (half) {
    if (hour < 1 || hour > 12) return no({ why: "not a time" });
    hour = (hour % 12) + (half.startsWith("p") ? 12 : 0);
  } else if (minutes === undefined || (hours.length < 2 && hour !== 0)) return no({ why: "not a time" });
  if (hour > 23 || minute > 59) return no({ why: "not a time" });
  return { ok: true, value: `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}` };
}

/** Digits with spaces, dashes, dots, brackets or a plus in front: 2 to 20 characters, at least two digits. */
export function readPhone(text: string): Typed<string> {
  const typed = text.trim();
  if (typed === "") return no({ why: "empty" });
  const looks = /^\+?[\d ().-]{2,20}$/.test(typed) && typed.replaceAll(/\D/g, "").length >= 2;
  return looks && typed.length <= 20 ? { ok: true, value: typed } : no({ why: "not a telephone number" });
}
