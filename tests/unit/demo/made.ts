import { fillDemo } from "#app/demo.ts";
import { Recorder } from "#app/recorder.ts";
import type { Stored } from "#events/envelope.ts";
import type { HappenedType, Of } from "#events/happened.ts";
import type { Checkpoint, LogPort } from "#events/log-port.ts";
import { HOUR } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
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

export const MOMENTS = {
  "in the morning": at("America/Chicago", Date.UTC(2026, 5, 3, 14, 40), chicago),
  "in the evening": at("America/Chicago", Date.UTC(2026, 5, 4, 1, 15), chicago),
  "on the day summer time came": at("America/Chicago", Date.UTC(2026, 2, 8, 17, 30), chicago),
} as const;

export interface Made extends Moment {
  rows: Stored[];
  state: HouseState;
  checkpointSeq: number;
}

/** A log that only takes down what it is given: log.test.ts checks the rows itself, once. */
function notebook(): LogPort & { rows: Stored[]; saved: Checkpoint | null } {
  return {
    rows: [],
    saved: null,
    async append(rows) {
      this.rows.push(...rows);
      return { ok: true };
    },
    async last() {
      return { seq: this.rows.length, hash: this.rows.at(-1)?.hash ?? "" };
    },
    readAfter: async () => [],
    readBetween: async () => [],
    loadCheckpoint: async () => null,
    async saveCheckpoint(checkpoint) {
      this.saved = checkpoint;
    },
    close() {},
  };
}

export const idAt = (wall: number, n: number): string => `${wall}-${String(n).padStart(6, "0")}`;

const kept = new Map<Moment, Promise<Made>>();

/** Made once a file and moment: it takes a second. */
export function made(moment: Moment): Promise<Made> {
  const before = kept.get(moment) ?? fill(moment);
  kept.set(moment, before);
  return before;
}

/** The demo as the app fills it. Ids count, so that two fillings can be compared. */
async function fill({ now, offsetAt }: Moment): Promise<Made> {
  const log = notebook();
  let n = 0;
  const recorder = await Recorder.open({ log, newId: () => `tablet-${n++}`, appVersion: "0", wordsVersion: "en" });
  const filled = await fillDemo(recorder, { now, offsetAt, idAt });
  if (!filled.ok) throw new Error(JSON.stringify(filled));
  return { now, offsetAt, rows: log.rows, state: recorder.state, checkpointSeq: log.saved?.seq ?? 0 };
}

/** Rows of one kind of event, of one person if named. */
export function of<T extends HappenedType>(rows: readonly Stored[], type: T, person?: string): (Stored & { event: Of<T> })[] {
  return rows.filter((row): row is Stored & { event: Of<T> } => row.event.type === type && (person === undefined || row.person === person));
}

export const nearMisses = (rows: readonly Stored[], what: string, person: string): number =>
  of(rows, "near miss", person).filter((row) => row.event.what === what).length;

export const dayOf = (row: Stored): string => localParts(row.at.wall, row.at.offset).date;
export const CALM = 3 * HOUR;
