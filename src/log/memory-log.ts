// A log that lives in memory: for tests and for the explorer of the promises. Same contract as the one on disk.
import type { Checkpoint, LogRow } from "#events/log-port.ts";
import type { RawRow } from "./chain.ts";
import { endOf, type KeptLog, type KeptRow, mustBeSound, mustFollowOn, placeOf, refusal, within } from "./kept-log.ts";
import { readRow } from "./read-row.ts";

export interface MemoryLog extends KeptLog {
  /** Puts a raw value where a row lies or would lie, past all checks. For tests of damage only. */
  damage(seq: number, raw: unknown): void;
}

export function memoryLog(): MemoryLog {
  const rows: KeptRow[] = [];
  const ids = new Set<string>();
  let checkpoint: Checkpoint | null = null;
  let closed = false;

  const store = (fresh: readonly RawRow[]) => {
    if (closed) return { ok: false, why: "not stored", detail: "the log is closed" } as const;
    const refused = refusal(endOf(rows.at(-1)), fresh);
    if (refused !== null) return refused;
    const freshIds = new Set(fresh.map((row) => placeOf(row).id));
    const twice = freshIds.size < fresh.length || [...freshIds].some((id) => ids.has(id));
    if (twice) return { ok: false, why: "not stored", detail: "a row with this id is already stored" } as const;
    for (const id of freshIds) ids.add(id);
    rows.push(...fresh.map((raw) => ({ seq: placeOf(raw).seq, raw: structuredClone(raw) })));
    return { ok: true } as const;
  };
  const kept = (after: number, limit: number) =>
    rows
      .filter((row) => row.seq > after)
      .slice(0, limit)
      .map(({ seq, raw }) => ({ seq, raw: structuredClone(raw) }));
  const read = ({ seq, raw }: KeptRow): LogRow => readRow(seq, raw);

  return {
    async append(fresh) {
      mustBeSound(fresh);
      return store(fresh.map((row) => ({ ...row })));
    },
    async appendKept(fresh) {
      mustFollowOn(fresh);
      return store(fresh);
    },
    last: async () => endOf(rows.at(-1)),
    readAfter: async (after, limit) => kept(after, limit).map(read),
    readBetween: async (from, to) => within(kept(0, Number.POSITIVE_INFINITY).map(read), from, to),
    readKept: async (after, limit) => kept(after, limit),
    async loadCheckpoint() {
      const usable = checkpoint !== null && checkpoint.seq <= endOf(rows.at(-1)).seq;
      return usable ? structuredClone(checkpoint) : null;
    },
    async saveCheckpoint(fresh) {
      checkpoint = structuredClone(fresh);
    },
    close() {
      closed = true;
    },
    damage(seq, raw) {
      const at = rows.findIndex((row) => row.seq >= seq);
      if (at < 0) rows.push({ seq, raw });
      else rows.splice(at, rows[at]?.seq === seq ? 1 : 0, { seq, raw });
    },
  };
}
