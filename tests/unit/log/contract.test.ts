// One contract, two logs: on disk (against an IndexedDB in memory) and in memory.
import "fake-indexeddb/auto";
import { afterEach, describe, expect, it } from "vitest";
import { sealRow } from "#log/chain.ts";
import { openLog } from "#log/dexie-log.ts";
import type { KeptLog } from "#log/kept-log.ts";
import { memoryLog } from "#log/memory-log.ts";
import { putRaw } from "./raw-database.ts";
import { chain, endOfRows, MINUTE, START, unsealed } from "./sample-rows.ts";

interface Bench {
  log: KeptLog;
  /** A second hand on the same log, where the kind of log has one. */
  second: KeptLog;
  damage(seq: number, raw: unknown): Promise<void>;
}

let count = 0;
const open: KeptLog[] = [];
const benches: [string, () => Promise<Bench>][] = [
  [
    "the log on disk",
    async () => {
      count += 1;
      const name = `contract-${count}`;
      const [log, second] = [await openLog(name), await openLog(name)];
      open.push(log, second);
      return { log, second, damage: (seq, raw) => putRaw(name, { seq, row: raw }) };
    },
  ],
  [
    "the log in memory",
    async () => {
      const log = memoryLog();
      return { log, second: log, damage: async (seq, raw) => log.damage(seq, raw) };
    },
  ],
];
afterEach(() => {
  for (const log of open.splice(0)) log.close();
});

const seqs = (rows: readonly { seq: number }[]) => rows.map((row) => row.seq);

describe.each(benches)("%s", (_name, bench) => {
  it("is empty at first and says so", async () => {
    const { log } = await bench();
    expect(await log.last()).toEqual({ seq: 0, hash: "" });
    expect(await log.readAfter(0, 10)).toEqual([]);
    expect(await log.readBetween(0, START * 2)).toEqual([]);
    expect(await log.loadCheckpoint()).toBeNull();
    expect(await log.append([])).toEqual({ ok: true });
  });

  it("gives back exactly what was stored, in order", async () => {
    const { log, second } = await bench();
    const rows = chain(5);
    expect(await log.append(rows.slice(0, 2))).toEqual({ ok: true });
    expect(await log.append(rows.slice(2))).toEqual({ ok: true });
    expect(await second.readAfter(0, 10)).toEqual(rows.map((row) => ({ ...row, readable: true })));
    expect(await second.last()).toEqual(endOfRows(rows));
  });

  it("pages: after a number, never more than the limit", async () => {
    const { log } = await bench();
    await log.append(chain(7));
    expect(seqs(await log.readAfter(0, 3))).toEqual([1, 2, 3]);
    expect(seqs(await log.readAfter(3, 3))).toEqual([4, 5, 6]);
    expect(seqs(await log.readAfter(6, 3))).toEqual([7]);
    expect(await log.readAfter(7, 3)).toEqual([]);
  });

  it("refuses the second of two writers and tells where to read on", async () => {
    const { log, second } = await bench();
    const start = chain(2);
    await log.append(start);
    const [one, other] = [chain(2, endOfRows(start)), chain(1, endOfRows(start), { id: "other-writer", person: "bea" })];
    const results = await Promise.all([log.append(one), second.append(other)]);
    expect(results.filter((result) => result.ok)).toHaveLength(1);
    const last = await log.last();
    expect(results.find((result) => !result.ok)).toEqual({ ok: false, why: "another writer", lastSeq: last.seq });
    expect((await log.readAfter(2, 10)).length).toBe(last.seq - 2);
  });

  it("refuses a row that would leave a gap, and one that names another row before it", async () => {
    const { log } = await bench();
    await log.append(chain(2));
    expect(await log.append(chain(1, { seq: 3, hash: "x" }))).toEqual({ ok: false, why: "another writer", lastSeq: 2 });
    expect(await log.append(chain(1, { seq: 2, hash: "x" }))).toEqual({ ok: false, why: "another writer", lastSeq: 2 });
    expect((await log.last()).seq).toBe(2);
  });

  it("stores all rows or none", async () => {
    const { log } = await bench();
    const start = chain(1);
    await log.append(start);
    const good = chain(1, endOfRows(start));
    const twice = chain(1, endOfRows(good), { id: start[0]?.id ?? "" });
    expect(await log.append([...good, ...twice])).toMatchObject({ ok: false, why: "not stored" });
    expect(seqs(await log.readAfter(0, 10))).toEqual([1]);
    expect(await log.append(good)).toEqual({ ok: true });
  });

  it("takes a wrong hash, a wrong shape and a broken run of rows for a defect and stores nothing", async () => {
    const { log } = await bench();
    const [one, two, three] = chain(3);
    if (one === undefined || two === undefined || three === undefined) throw new Error("no rows");
    await expect(log.append([{ ...one, hash: "0" }])).rejects.toThrow("altered");
    await expect(log.append([{ ...one, person: "bea" }])).rejects.toThrow("altered");
    await expect(log.append([one, three])).rejects.toThrow("gap");
    await expect(log.append([two, one])).rejects.toThrow("order");
    await expect(log.append([sealRow(unsealed(1, "", { v: 2 }))])).rejects.toThrow("shape");
    await expect(log.append([sealRow(unsealed(1, "", { id: "short" }))])).rejects.toThrow("shape");
    const unknownField = { ...unsealed(1, ""), mood: "good" };
    await expect(log.append([sealRow(unknownField)])).rejects.toThrow("field");
    expect((await log.last()).seq).toBe(0);
  });

  it("finds rows by wall time: the start belongs, the end does not", async () => {
    const { log } = await bench();
    await log.append(chain(6));
    expect(seqs(await log.readBetween(START + 2 * MINUTE, START + 4 * MINUTE))).toEqual([2, 3]);
    expect(seqs(await log.readBetween(START + 6 * MINUTE, START + 7 * MINUTE))).toEqual([6]);
    expect(await log.readBetween(START + 7 * MINUTE, START + 9 * MINUTE)).toEqual([]);
    expect(await log.readBetween(START + 4 * MINUTE, START + 2 * MINUTE)).toEqual([]);
  });

  it("finds rows of a day also when the clock had jumped in between, in the order they were stored", async () => {
    const { log } = await bench();
    const rows = chain(2);
    const at = (seq: number, wall: number) => ({ ...unsealed(seq, "").at, wall });
    const jumped = sealRow(unsealed(3, endOfRows(rows).hash, { at: at(3, 0) }));
    const back = sealRow(unsealed(4, jumped.hash, { at: at(4, START) }));
    await log.append([...rows, jumped, back]);
    expect(seqs(await log.readBetween(START, START + 10 * MINUTE))).toEqual([1, 2, 4]);
    expect(seqs(await log.readBetween(0, MINUTE))).toEqual([3]);
  });

  it("keeps a broken row in its place, shows it, and goes on behind it", async () => {
    const { log, damage } = await bench();
    const rows = chain(5);
    await log.append(rows);
    await damage(3, { remains: "of a row" });
    await damage(4, { ...rows[3], person: "bea" });
    const read = await log.readAfter(0, 10);
    expect(read.map((row) => row.readable)).toEqual([true, true, false, false, true]);
    expect(read[2]).toMatchObject({ seq: 3, raw: { remains: "of a row" }, wall: null });
    expect(read[3]).toMatchObject({ seq: 4, raw: { person: "bea" }, wall: START + 4 * MINUTE });
    expect(await log.append(chain(1, await log.last()))).toEqual({ ok: true });
  });

  it("does not lose a row without a time from the hours around it", async () => {
    const { log, damage } = await bench();
    await log.append(chain(5));
    await damage(3, "scrap");
    expect(seqs(await log.readBetween(START + 2 * MINUTE, START + 5 * MINUTE))).toEqual([2, 3, 4]);
    expect(seqs(await log.readBetween(START + 4 * MINUTE, START + 9 * MINUTE))).toEqual([4, 5]);
  });

  it("can be written on when the very last row is broken", async () => {
    const { log, damage } = await bench();
    await log.append(chain(2));
    await damage(3, "scrap");
    const last = await log.last();
    expect(last).toEqual({ seq: 3, hash: expect.stringMatching(/^[0-9a-f]{64}$/) });
    expect(await log.append(chain(1, last))).toEqual({ ok: true });
    expect((await log.last()).seq).toBe(4);
  });

  it("keeps one checkpoint, the latest", async () => {
    const { log, second } = await bench();
    await log.append(chain(2));
    await log.saveCheckpoint({ seq: 1, foldVersion: 3, state: { a: 1 } });
    await log.saveCheckpoint({ seq: 2, foldVersion: 4, state: { a: [2, null] } });
    expect(await second.loadCheckpoint()).toEqual({ seq: 2, foldVersion: 4, state: { a: [2, null] } });
  });

  it("gives no checkpoint that speaks of rows which are not there", async () => {
    const { log } = await bench();
    await log.append(chain(2));
    await log.saveCheckpoint({ seq: 3, foldVersion: 1, state: {} });
    expect(await log.loadCheckpoint()).toBeNull();
  });

  it("hands out copies: changing them changes nothing stored", async () => {
    const { log } = await bench();
    const rows = chain(1);
    await log.append(rows);
    const [read] = await log.readAfter(0, 1);
    if (read?.readable) read.at.wall = 0;
    if (rows[0]) rows[0].at.wall = 0;
    expect((await log.readAfter(0, 1))[0]).toMatchObject({ readable: true, at: { wall: START + MINUTE } });
  });

  it("says not stored once it is closed", async () => {
    const { log } = await bench();
    log.close();
    expect(await log.append(chain(1))).toEqual({ ok: false, why: "not stored", detail: "the log is closed" });
  });
});
