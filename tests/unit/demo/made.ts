import { fillDemo } from "#app/demo.ts";
import { Recorder } from "#app/recorder.ts";
import type { Stored } from "#events/envelope.ts";
import type { HappenedType, Of } from "#events/happened.ts";
import { HOUR } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { memoryLog } from "#log/memory-log.ts";
import { localParts } from "#rules/time/local.ts";
import type { HouseState } from "#walk/state.ts";

export interface Moment {
  now: Stamp;
  offsetAt(wall: number): number;
}

const at = (zone: string, wall: number, offsetAt: (wall: number) => number): Moment => ({
  now: { wall, mono: 4200, boot: "today", zone, offset: offsetAt(wall) },
  offsetAt,
});

/** Central time of 2026: summer time from 8 March to 1 November, 2:00 each. */
const chicago = (wall: number) => (wall >= Date.UTC(2026, 2, 8, 8) && wall < Date.UTC(2026, 10, 1, 7) ? -300 : -360);
const london = (wall: number) => (wall >= Date.UTC(2026, 2, 29, 1) && wall < Date.UTC(2026, 9, 25, 1) ? 60 : 0);

export const MOMENTS = {
  "in the morning": at("America/Chicago", Date.UTC(2026, 5, 3, 14, 40), chicago),
  "in the evening": at("America/Chicago", Date.UTC(2026, 5, 4, 1, 15), chicago),
  "on the day summer time came": at("America/Chicago", Date.UTC(2026, 2, 8, 17, 30), chicago),
  "an hour after summer time ended": at("Europe/London", Date.UTC(2026, 9, 25, 2, 5), london),
} as const;

export interface Made extends Moment {
  rows: Stored[];
  state: HouseState;
  checkpointSeq: number;
}

/** The demo as the app fills it, in a log in memory. Ids count, so that two fillings can be compared. */
export async function made({ now, offsetAt }: Moment): Promise<Made> {
  const log = memoryLog();
  let n = 0;
  const recorder = await Recorder.open({ log, newId: () => `tablet-${n++}`, appVersion: "0", wordsVersion: "en" });
  const filled = await fillDemo(recorder, { now, offsetAt, idAt: (wall, i) => `${wall}-${String(i).padStart(6, "0")}` });
  if (!filled.ok) throw new Error(JSON.stringify(filled));
  const rows = (await log.readAfter(0, Number.POSITIVE_INFINITY)).map((row) => {
    if (!row.readable) throw new Error(`row ${row.seq} cannot be read: ${row.why}`);
    const { readable: _readable, ...stored } = row;
    return stored;
  });
  return { now, offsetAt, rows, state: recorder.state, checkpointSeq: (await log.loadCheckpoint())?.seq ?? 0 };
}

/** Rows of one kind of event, of one person if named. */
export function of<T extends HappenedType>(rows: readonly Stored[], type: T, person?: string): (Stored & { event: Of<T> })[] {
  return rows.filter((row): row is Stored & { event: Of<T> } => row.event.type === type && (person === undefined || row.person === person));
}

export const nearMisses = (rows: readonly Stored[], what: string, person: string): number =>
  of(rows, "near miss", person).filter((row) => row.event.what === what).length;

export const dayOf = (row: Stored): string => localParts(row.at.wall, row.at.offset).date;
export const CALM = 3 * HOUR;
