// Rows for the tests of this room: a chain of honest events, one a minute.
import type { Stored, Unhashed } from "#events/envelope.ts";
import { sealRow } from "#log/chain.ts";

export const START = Date.UTC(2026, 2, 1, 8, 0, 0);
export const MINUTE = 60_000;

export function unsealed(seq: number, prev: string, changes: Partial<Unhashed> = {}): Unhashed {
  return {
    id: `row-${String(seq).padStart(6, "0")}`,
    v: 1,
    person: "ada",
    walk: null,
    tablet: "kitchen",
    seq,
    prev,
    at: { wall: START + seq * MINUTE, mono: seq * MINUTE, boot: "boot-1", zone: "Europe/Vienna", offset: 60 },
    app: "0.1.0",
    words: "en-1",
    card: null,
    event: { type: "tablet started" },
    ...changes,
  };
}

/** `count` rows that follow on from `after`. */
export function chain(
  count: number,
  after: { seq: number; hash: string } = { seq: 0, hash: "" },
  changes: Partial<Unhashed> = {},
): Stored[] {
  const rows: Stored[] = [];
  let end = after;
  for (let i = 0; i < count; i += 1) {
    const row = sealRow(unsealed(end.seq + 1, end.hash, changes));
    rows.push(row);
    end = row;
  }
  return rows;
}

export const endOfRows = (rows: readonly Stored[]) => {
  const last = rows.at(-1);
  return last === undefined ? { seq: 0, hash: "" } : { seq: last.seq, hash: last.hash };
};
