// Which rows of the log belong to a calendar day of the place. Each row knows its own offset: a journey or a change of the clocks moves no row.
import type { LogRow } from "#events/log-port.ts";
import { DAY, HOUR, type LocalDate, MINUTE } from "#events/quantity.ts";
import { daysBetween, localParts } from "#rules/time/local.ts";

/** Offsets go from 12 hours behind UTC to 14 hours ahead of it: a row of the day lies within this of the day as it is here. */
const WIDEST_MS = 26 * HOUR;

/** What to ask the log for: [from, to) in ms since 1970, wide enough for every offset. */
export function spanOf(day: LocalDate, offset: number): { from: number; to: number } {
  const midnight = daysBetween("1970-01-01", day) * DAY - offset * MINUTE;
  return { from: midnight - WIDEST_MS, to: midnight + DAY + WIDEST_MS };
}

/** rows as the log gave them, in order of their number. A row without a readable time belongs to the days of the rows beside it. */
export function rowsOn(rows: readonly LogRow[], day: LocalDate, offset: number): LogRow[] {
  const dates = rows.map((row): LocalDate | null => {
    if (row.readable) return localParts(row.at.wall, row.at.offset).date;
    return row.wall === null ? null : localParts(row.wall, offset).date;
  });
  return rows.filter((_, i) => {
    const date = dates[i] ?? null;
    if (date !== null) return date === day;
    const before = dates.slice(0, i).findLast((one) => one !== null);
    const after = dates.slice(i + 1).find((one) => one !== null);
    return before === day || after === day || (before === undefined && after === undefined);
  });
}
