// The hash chain: every row carries the hash of the row before it, so a row that was altered, lost or put elsewhere is seen.
// It cannot see rows cut off at the very end: whoever knows the last sequence number must compare it.
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import { canonical } from "#events/canonical.ts";
import { SHAPES, type Stored, type Unhashed } from "#events/envelope.ts";
import type { LogRow } from "#events/log-port.ts";

/** A row as it lies in the store, before anything is known about it. */
export type RawRow = Readonly<Record<string, unknown>>;
export interface ChainEnd {
  seq: number;
  /** Hash of the last row, "" before the first. */
  hash: string;
}
export const CHAIN_START: ChainEnd = { seq: 0, hash: "" };

export type ChainFault = "altered" | "gap" | "order" | "unreadable";
export type ChainCheck = { ok: true; count: number } | { ok: false; seq: number; why: ChainFault };

const utf8 = new TextEncoder();

/** SHA-256 (FIPS 180-4) of a text in UTF-8, as 64 lower-case hexadecimal digits. */
export function sha256Hex(text: string): string {
  return bytesToHex(sha256(utf8.encode(text)));
}

/** Hash of a row: over the canonical form of everything in it, prev included, except the hash itself. */
export function hashRow(row: Unhashed): string {
  return hashRaw({ ...row });
}

/** Same for a row of unknown shape. Throws for values that JSON cannot carry. */
function hashRaw(row: RawRow): string {
  const { hash: _own, readable: _mark, ...content } = row;
  return sha256Hex(canonical(content));
}

export function sealRow(row: Unhashed): Stored {
  return { ...row, hash: hashRow(row) };
}

/** True when the row's hash is the hash of what it holds. Never throws. */
export function hashHolds(row: RawRow): boolean {
  try {
    return row.hash === hashRaw(row);
  } catch {
    return false;
  }
}

export function isRaw(value: unknown): value is RawRow {
  return Object.prototype.toString.call(value) === "[object Object]";
}

/** What the next row must name as prev. A row too broken to carry a hash gets one of its remains, so that the log can go on. */
export function linkOf(raw: unknown): string {
  if (isRaw(raw) && typeof raw.hash === "string" && raw.hash !== "") return raw.hash;
  try {
    return sha256Hex(canonical(raw));
  } catch {
    return sha256Hex("unreadable");
  }
}

/** What is wrong with this row as the one after `end`, or null. */
export function faultAfter(end: ChainEnd, seq: number, raw: unknown): ChainFault | null {
  if (seq <= end.seq) return "order";
  if (seq > end.seq + 1) return "gap";
  if (!isRaw(raw) || typeof raw.hash !== "string") return "unreadable";
  if (raw.seq !== seq || !hashHolds(raw)) return "altered";
  // Its own hash holds, so it or the row before was replaced as a whole.
  return raw.prev === end.hash ? null : "altered";
}

/**
 * Walks along the rows and stops at the first fault. Without `after` the rows must start with the very first one.
 * A row lifted from an older shape was checked against its hash when it was read; here only its place is checked.
 */
export function verifyChain(rows: readonly LogRow[], after: ChainEnd = CHAIN_START): ChainCheck {
  let end = after;
  for (const row of rows) {
    const why = faultOf(end, row);
    if (why !== null) return { ok: false, seq: row.seq, why };
    end = { seq: row.seq, hash: row.readable ? row.hash : linkOf(row.raw) };
  }
  return { ok: true, count: rows.length };
}

function faultOf(end: ChainEnd, row: LogRow): ChainFault | null {
  if (!row.readable) return faultAfter(end, row.seq, row.raw) ?? "unreadable";
  if (row.v === SHAPES) return faultAfter(end, row.seq, { ...row });
  if (row.seq <= end.seq) return "order";
  if (row.seq > end.seq + 1) return "gap";
  return row.prev === end.hash ? null : "altered";
}
