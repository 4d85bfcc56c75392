// The log on disk, and the only place that knows Dexie. Rows are added, never changed and never removed.
import { type DBCore, type DBCoreMutateRequest, Dexie, type Table } from "dexie";
import type { AppendResult, Checkpoint } from "#events/log-port.ts";
import type { RawRow } from "./chain.ts";
import { endOf, type KeptLog, type KeptRow, mustBeSound, mustFollowOn, placeOf, refusal, within } from "./kept-log.ts";
import { readRow, wallOf } from "./read-row.ts";

/** A row in the table: the stored row untouched, beside it what the indexes need. */
interface RowEntry {
  seq: number;
  id: string;
  /** Copy of the row's wall time; of a row without one, the time of the row before. */
  wall: number;
  row: unknown;
}
type StoredCheckpoint = Checkpoint & { key: "fold" };

export type LostWhy = "closed by the browser" | "wanted by another window";

export interface DexieLog extends KeptLog {
  readonly name: string;
  /** Called once when the connection is lost; afterwards every append is refused. Open the log again to go on. */
  onLost(callback: (why: LostWhy) => void): void;
}

/**
 * Opens (or makes) the log of that name. Rejects when the browser gives no storage.
 * Strict durability: a commit is reported only after the disk was asked to keep it (the default since Chromium 121 is
 * "relaxed", which a pulled plug can undo).
 */
export async function openLog(name: string): Promise<DexieLog> {
  const db = new Dexie(name, { chromeTransactionDurability: "strict", autoOpen: false, cache: "disabled" });
  db.version(1).stores({ rows: "seq, &id, wall", checkpoints: "key" });
  db.use({ stack: "dbcore", name: "rows are only added", create: onlyAdd });
  const rows: Table<RowEntry, number> = db.table("rows");
  const checkpoints: Table<StoredCheckpoint, string> = db.table("checkpoints");

  const listeners: ((why: LostWhy) => void)[] = [];
  let open = true;
  const lose = (why: LostWhy) => {
    if (!open) return;
    open = false;
    db.close();
    for (const tell of listeners) tell(why);
  };
  db.on("versionchange", () => lose("wanted by another window"));
  db.on("close", () => lose("closed by the browser"));
  await db.open();

  const lastKept = async () => kept(await rows.orderBy("seq").last());

  const store = async (fresh: readonly RawRow[]): Promise<AppendResult> => {
    if (!open) return { ok: false, why: "not stored", detail: "the log is closed" };
    try {
      // Resolves only when the transaction is complete. The check and the writing are one transaction, and transactions
      // that write to one table run one after another, in all windows: so there is no moment for a second writer.
      return await db.transaction("rw", rows, async (): Promise<AppendResult> => {
        const last = await rows.orderBy("seq").last();
        const refused = refusal(endOf(kept(last)), fresh);
        if (refused !== null) return refused;
        let wall = last?.wall ?? 0;
        const entries = fresh.map((row): RowEntry => {
          wall = wallOf(row) ?? wall;
          return { seq: placeOf(row).seq, id: placeOf(row).id, wall, row };
        });
        await rows.bulkAdd(entries);
        return { ok: true };
      });
    } catch (error) {
      // Quota, a twice-used id, an aborted transaction, a lost connection: all or nothing. If the connection broke during
      // the commit, the rows may be there after all: the next append then meets "another writer" and reads on.
      return { ok: false, why: "not stored", detail: error instanceof Error ? `${error.name}: ${error.message}` : String(error) };
    }
  };
  const page = async (after: number, limit: number): Promise<KeptRow[]> =>
    (await rows.where("seq").above(after).limit(limit).toArray()).map(({ seq, row }) => ({ seq, raw: row }));

  return {
    name,
    async append(fresh) {
      mustBeSound(fresh);
      return store(fresh.map((row) => ({ ...row })));
    },
    async appendKept(fresh) {
      mustFollowOn(fresh);
      return store(fresh);
    },
    last: async () => endOf(await lastKept()),
    readAfter: async (after, limit) => (await page(after, limit)).map(({ seq, raw }) => readRow(seq, raw)),
    readKept: page,
    async readBetween(from, to) {
      const seqs = (await rows.where("wall").between(from, to, true, false).primaryKeys()).sort((a, b) => a - b);
      const [first, last] = [seqs.at(0), seqs.at(-1)];
      if (first === undefined || last === undefined) return [];
      // By number, not by the index: a damaged row may be missing there, and it must not be missing here.
      const between = await rows.where("seq").between(first, last, true, true).toArray();
      return within(
        between.map(({ seq, row }) => readRow(seq, row)),
        from,
        to,
      );
    },
    async loadCheckpoint() {
      const found: unknown = await checkpoints.get("fold");
      const end = endOf(await lastKept());
      return isCheckpoint(found) && found.seq <= end.seq ? { seq: found.seq, foldVersion: found.foldVersion, state: found.state } : null;
    },
    async saveCheckpoint({ seq, foldVersion, state }) {
      // It only saves time at the next start. A full disk is told by the next append, which matters.
      await checkpoints.put({ key: "fold", seq, foldVersion, state }).catch(() => undefined);
    },
    close() {
      open = false;
      db.close();
    },
    onLost(callback) {
      listeners.push(callback);
    },
  };
}

/** Removes a whole log. For demonstration households only; anything else throws (a defect). */
export async function deleteLog(name: string): Promise<void> {
  if (!name.startsWith("tablebell-demo")) throw new Error(`"${name}" is not a demonstration log and is never deleted`);
  await Dexie.delete(name);
}

/** Lets nothing but additions through to the rows, whoever asks (promise 9). */
function onlyAdd(core: DBCore): DBCore {
  return {
    ...core,
    table(name) {
      const table = core.table(name);
      if (name !== "rows") return table;
      return {
        ...table,
        mutate(request: DBCoreMutateRequest) {
          if (request.type === "add") return table.mutate(request);
          return Promise.reject(new Error(`Rows of the log are only added, never ${request.type}`));
        },
      };
    },
  };
}

function kept(entry: RowEntry | undefined): KeptRow | undefined {
  return entry === undefined ? undefined : { seq: entry.seq, raw: entry.row };
}

function isCheckpoint(found: unknown): found is Checkpoint {
  if (typeof found !== "object" || found === null) return false;
  return (
    "seq" in found && typeof found.seq === "number" && "foldVersion" in found && typeof found.foldVersion === "number" && "state" in found
  );
}
