import "fake-indexeddb/auto";
import { Dexie } from "dexie";
import { afterEach, describe, expect, it, vi } from "vitest";
import { type DexieLog, deleteLog, openLog } from "#log/dexie-log.ts";
import { chain, endOfRows } from "./sample-rows.ts";

const open: DexieLog[] = [];
async function opened(name: string): Promise<DexieLog> {
  const log = await openLog(name);
  open.push(log);
  return log;
}
/** Every transaction begun from now on, by connections opened from now on (Dexie keeps the function it finds at opening). */
function watchTransactions(seen: (transaction: IDBTransaction) => void = () => undefined): IDBTransaction[] {
  const begun: IDBTransaction[] = [];
  const begin = IDBDatabase.prototype.transaction;
  vi.spyOn(IDBDatabase.prototype, "transaction").mockImplementation(function (this: IDBDatabase, ...args) {
    const transaction = begin.apply(this, args);
    begun.push(transaction);
    seen(transaction);
    return transaction;
  });
  return begun;
}
afterEach(() => {
  vi.restoreAllMocks();
  for (const log of open.splice(0)) log.close();
});

describe("the log on disk", () => {
  it("asks the disk to keep every commit: strict durability for every writing transaction", async () => {
    const begun = watchTransactions();
    const log = await opened("strict");
    const before = begun.length;
    await log.append(chain(1));
    await log.saveCheckpoint({ seq: 1, foldVersion: 1, state: {} });
    const writing = begun.slice(before).filter((transaction) => transaction.mode === "readwrite");
    expect(writing.map((transaction) => transaction.durability)).toEqual(["strict", "strict"]);
  });

  it("answers only after the transaction is complete", async () => {
    const order: string[] = [];
    watchTransactions((transaction) => {
      if (transaction.mode === "readwrite") transaction.addEventListener("complete", () => order.push("complete"));
    });
    const log = await opened("complete");
    await log.append(chain(1));
    order.push("answered");
    expect(order).toEqual(["complete", "answered"]);
  });

  it("is still there after it was closed and opened again", async () => {
    const rows = chain(3);
    const first = await openLog("again");
    await first.append(rows);
    first.close();
    const second = await opened("again");
    expect(await second.last()).toEqual(endOfRows(rows));
  });

  it("says not stored, with the reason, when the disk is full", async () => {
    const log = await opened("full");
    vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(() => {
      throw new DOMException("no room", "QuotaExceededError");
    });
    expect(await log.append(chain(1))).toMatchObject({
      ok: false,
      why: "not stored",
      detail: expect.stringContaining("QuotaExceededError"),
    });
    await expect(log.saveCheckpoint({ seq: 0, foldVersion: 1, state: {} })).resolves.toBeUndefined();
    vi.restoreAllMocks();
    expect(await log.last()).toEqual({ seq: 0, hash: "" });
  });

  it("says not stored when the transaction is broken off after the rows went in", async () => {
    const log = await opened("aborted");
    const add = IDBObjectStore.prototype.add;
    vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(function (this: IDBObjectStore, ...args) {
      const request = add.apply(this, args);
      request.addEventListener("success", () => this.transaction.abort());
      return request;
    });
    expect(await log.append(chain(2))).toMatchObject({ ok: false, why: "not stored" });
    vi.restoreAllMocks();
    expect(await log.last()).toEqual({ seq: 0, hash: "" });
  });

  it("lets nothing through that changes or removes a row", async () => {
    // The guard sits beneath every way in, so it is tried with a table of the very connection the log uses.
    const databases: Dexie[] = [];
    const openDexie = Dexie.prototype.open;
    vi.spyOn(Dexie.prototype, "open").mockImplementation(function (this: Dexie) {
      databases.push(this);
      return openDexie.call(this);
    });
    const log = await opened("guarded");
    const rows = chain(2);
    await log.append(rows);
    const table = databases[0]?.table("rows");
    if (table === undefined) throw new Error("no table");
    const entry: unknown = await table.get(1);
    await expect(table.put(entry)).rejects.toThrow("only added, never put");
    await expect(table.bulkPut([entry])).rejects.toThrow("only added");
    await expect(table.update(1, { wall: 0 })).rejects.toThrow("only added");
    await expect(table.toCollection().modify({ wall: 0 })).rejects.toThrow("only added");
    await expect(table.delete(1)).rejects.toThrow("only added, never delete");
    await expect(table.bulkDelete([1])).rejects.toThrow("only added");
    await expect(table.where("seq").above(0).delete()).rejects.toThrow("only added");
    await expect(table.clear()).rejects.toThrow("only added, never deleteRange");
    expect(await log.readAfter(0, 10)).toEqual(rows.map((row) => ({ ...row, readable: true })));
  });

  it("tells once that it is lost when another window wants a newer log, and stores nothing more", async () => {
    vi.spyOn(console, "warn").mockImplementation(() => undefined);
    const log = await opened("newer");
    const lost: string[] = [];
    log.onLost((why) => lost.push(why));
    await new Promise<void>((resolve, reject) => {
      const request = indexedDB.open("newer", 999);
      request.onsuccess = () => {
        request.result.close();
        resolve();
      };
      request.onerror = () => reject(request.error);
    });
    expect(lost).toEqual(["wanted by another window"]);
    expect(await log.append(chain(1))).toMatchObject({ ok: false, why: "not stored" });
  });

  it("tells that it is lost when the browser closes it", async () => {
    const begun = watchTransactions();
    const log = await opened("closed");
    const lost: string[] = [];
    log.onLost((why) => lost.push(why));
    const connection = begun.at(-1)?.db;
    connection?.onclose?.(new Event("close"));
    expect(lost).toEqual(["closed by the browser"]);
    expect(await log.append(chain(1))).toMatchObject({ ok: false, why: "not stored" });
  });

  it("does not call its own closing a loss", async () => {
    const log = await opened("own");
    const lost: string[] = [];
    log.onLost((why) => lost.push(why));
    log.close();
    expect(lost).toEqual([]);
  });

  it("rejects when there is no storage", async () => {
    vi.spyOn(indexedDB, "open").mockImplementation(() => {
      throw new DOMException("denied", "SecurityError");
    });
    await expect(openLog("denied")).rejects.toThrow();
  });

  it("deletes demonstration logs and no other", async () => {
    for (const name of ["tablebell-demo-1", "tablebell-home"]) {
      const log = await openLog(name);
      await log.append(chain(1));
      log.close();
    }
    await deleteLog("tablebell-demo-1");
    await expect(deleteLog("tablebell-home")).rejects.toThrow("never deleted");
    await expect(deleteLog("")).rejects.toThrow("never deleted");
    expect((await (await opened("tablebell-demo-1")).last()).seq).toBe(0);
    expect((await (await opened("tablebell-home")).last()).seq).toBe(1);
  });
});
