// What the app needs of a log. src/log keeps it with Dexie; tests may use a log in memory. Both pass one contract suite.
import type { Stored } from "./envelope.ts";

/** A row that could not be read: kept as it is, shown, and taken as possibly a dose (promise 10). */
export interface Unreadable {
  readable: false;
  seq: number;
  raw: unknown;
  /** Wall time if one could be made out. */
  wall: number | null;
  why: string;
}
export type LogRow = (Stored & { readable: true }) | Unreadable;

export type AppendResult =
  | { ok: true }
  /** Somebody else wrote first: read on from expectedSeq and decide again. */
  | { ok: false; why: "another writer"; lastSeq: number }
  /** The disk refused. Nothing was stored. */
  | { ok: false; why: "not stored"; detail: string };

export interface Checkpoint {
  seq: number;
  /** Version of the fold that made it; a checkpoint of another version is not used. */
  foldVersion: number;
  state: unknown;
}

export interface LogPort {
  /** Stores all rows or none, durably. rows[0].seq must be lastSeq + 1. Resolves only after the transaction is complete. */
  append(rows: readonly Stored[]): Promise<AppendResult>;
  /** Sequence number and hash of the last row; seq 0 and "" for an empty log. */
  last(): Promise<{ seq: number; hash: string }>;
  /** Rows with seq > after, in order, at most limit. */
  readAfter(after: number, limit: number): Promise<LogRow[]>;
  /** Rows whose wall time lies in [from, to), in order of seq. */
  readBetween(from: number, to: number): Promise<LogRow[]>;
  loadCheckpoint(): Promise<Checkpoint | null>;
  saveCheckpoint(checkpoint: Checkpoint): Promise<void>;
  close(): void;
}
