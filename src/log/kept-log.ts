// What this room's two logs can do beyond the port: hand out and take rows as they lie there, for a backup.
// A backup must carry rows that this version cannot read, so it may not go through the readable form.
import { canonical } from "#events/canonical.ts";
import { SHAPES, type Stored, stored } from "#events/envelope.ts";
import type { AppendResult, LogPort, LogRow } from "#events/log-port.ts";
import { type ChainEnd, faultAfter, linkOf, type RawRow } from "./chain.ts";

export interface KeptRow {
  seq: number;
  raw: unknown;
}

export interface KeptLog extends LogPort {
  /** Rows with seq > after as they are stored, in order, at most limit. */
  readKept(after: number, limit: number): Promise<KeptRow[]>;
  /** Like append, for rows of any shape whose hashes hold and follow on. */
  appendKept(rows: readonly RawRow[]): Promise<AppendResult>;
}

/** Throws (a defect) unless every row has this version's shape, nothing beyond it, and the rows follow on from each other. */
export function mustBeSound(rows: readonly Stored[]): void {
  for (const row of rows) {
    if (row.v !== SHAPES) throw new Error(`Row ${row.seq} is not of shape ${SHAPES}`);
    const read = stored.safeParse(row);
    if (!read.success) throw new Error(`Row ${row.seq} has a wrong shape: ${JSON.stringify(read.error.issues)}`);
    if (canonical(read.data) !== canonical(row)) throw new Error(`Row ${row.seq} holds a field that its shape does not know`);
  }
  mustFollowOn(rows.map((row) => ({ ...row })));
}

/** Throws (a defect) unless every row's hash holds and the rows follow on from each other. */
export function mustFollowOn(rows: readonly RawRow[]): void {
  const first = rows[0];
  if (first === undefined) return;
  const { seq, prev } = placeOf(first);
  let end: ChainEnd = { seq: seq - 1, hash: prev };
  for (const row of rows) {
    const here = placeOf(row).seq;
    const fault = faultAfter(end, here, row);
    if (fault !== null) throw new Error(`Row ${here} does not belong there: ${fault}`);
    end = { seq: here, hash: linkOf(row) };
  }
}

/** Place of a row that already passed one of the checks above. */
export function placeOf(row: RawRow): { seq: number; prev: string; id: string } {
  const { seq, prev, id } = row;
  if (typeof seq !== "number" || !Number.isInteger(seq) || seq < 1 || typeof prev !== "string" || typeof id !== "string") {
    throw new Error("A row needs a sequence number, an id and the hash of the row before");
  }
  return { seq, prev, id };
}

/** Null when these rows follow on from the end of the log; otherwise somebody else wrote first. */
export function refusal(end: ChainEnd, rows: readonly RawRow[]): AppendResult | null {
  const first = rows[0];
  if (first === undefined) return { ok: true };
  const { seq, prev } = placeOf(first);
  if (seq === end.seq + 1 && prev === end.hash) return null;
  return { ok: false, why: "another writer", lastSeq: end.seq };
}

export function endOf(last: KeptRow | undefined): ChainEnd {
  return last === undefined ? { seq: 0, hash: "" } : { seq: last.seq, hash: linkOf(last.raw) };
}

/**
 * Those of the rows (in order of seq) that lie in [from, to), and between the first and the last of them also rows
 * without a readable time: such a row may well belong there.
 */
export function within(rows: readonly LogRow[], from: number, to: number): LogRow[] {
  const inside = (row: LogRow) => {
    const wall = row.readable ? row.at.wall : row.wall;
    return wall !== null && wall >= from && wall < to;
  };
  const first = rows.findIndex(inside);
  const last = rows.findLastIndex(inside);
  return first < 0 ? [] : rows.slice(first, last + 1).filter((row) => inside(row) || (!row.readable && row.wall === null));
}
