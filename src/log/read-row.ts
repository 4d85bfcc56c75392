// From a raw row of the store to a row the app can use, or to an unreadable one that is kept, shown and counted as possibly a dose.
import { canonical } from "#events/canonical.ts";
import { SHAPES, stored } from "#events/envelope.ts";
import type { LogRow, Unreadable } from "#events/log-port.ts";
import { hashHolds, isRaw, type RawRow } from "./chain.ts";

/** lifts[v] turns a row of shape v into one of shape v + 1. The stored row itself is never rewritten. */
export type Lifts = Readonly<Record<number, (raw: RawRow) => RawRow>>;
/** Shape 1 is the first one, so there is nothing to lift yet. */
export const LIFTS: Lifts = {};

/**
 * Checks hash and shape. A row of an older shape is lifted; it keeps its own v, hash and prev, because these speak of what
 * is stored. A newer shape, an unknown event, or a field this version does not know makes the row unreadable: its meaning
 * could be a dose. seq is the key under which the row was found. Never throws.
 */
export function readRow(seq: number, raw: unknown, lifts: Lifts = LIFTS): LogRow {
  const unreadable = (why: string): Unreadable => ({ readable: false, seq, raw, wall: wallOf(raw), why });
  if (!isRaw(raw)) return unreadable("not a row");
  if (!hashHolds(raw)) return unreadable("the hash does not match: altered or damaged");
  if (raw.seq !== seq) return unreadable("stored in the place of another row");
  const version = raw.v;
  if (typeof version !== "number") return unreadable("no version");
  if (version > SHAPES) return unreadable(`written by a newer version, shape ${version}`);
  const lifted = lift(raw, version, lifts);
  if (lifted === null) return unreadable(`no way to lift shape ${version}`);
  const read = stored.safeParse(lifted);
  if (!read.success) return unreadable(`not a known shape: ${firstIssue(read.error.issues)}`);
  if (canonical(read.data) !== canonical(lifted)) return unreadable("holds a field that this version does not know");
  return { ...read.data, readable: true };
}

/** Wall time of a raw row, ms since 1970, if one can be made out. Of an altered row it is only what is written there. */
export function wallOf(raw: unknown): number | null {
  if (!isRaw(raw) || !isRaw(raw.at)) return null;
  const wall = raw.at.wall;
  return typeof wall === "number" && Number.isFinite(wall) ? wall : null;
}

function lift(raw: RawRow, version: number, lifts: Lifts): RawRow | null {
  let row = raw;
  for (let v = version; v < SHAPES; v += 1) {
    const step = lifts[v];
    if (step === undefined) return null;
    try {
      row = step(row);
    } catch {
      return null;
    }
  }
  return row === raw ? raw : { ...row, seq: raw.seq, v: raw.v, hash: raw.hash, prev: raw.prev };
}

function firstIssue(issues: readonly { path: readonly PropertyKey[]; message: string }[]): string {
  const first = issues[0];
  return first === undefined ? "unknown" : `${first.path.map(String).join(".")} ${first.message}`;
}
