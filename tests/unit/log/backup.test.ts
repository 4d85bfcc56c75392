import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import { exportBackup, importBackup } from "#log/backup.ts";
import { sealRow } from "#log/chain.ts";
import { openLog } from "#log/dexie-log.ts";
import { linesOfFile } from "#log/file-lines.ts";
import { type MemoryLog, memoryLog } from "#log/memory-log.ts";
import { chain, endOfRows, unsealed } from "./sample-rows.ts";

async function textOf(log: MemoryLog, page?: number): Promise<string> {
  let text = "";
  for await (const piece of exportBackup(log, page)) text += piece;
  return text;
}
const opener = (text: string) => () => linesOfFile(new Blob([text]));
async function filled(count: number): Promise<MemoryLog> {
  const log = memoryLog();
  await log.append(chain(count));
  return log;
}
async function everything(log: MemoryLog) {
  return log.readAfter(0, 10_000);
}

describe("a backup", () => {
  it("brings every row back, to the log on disk too", async () => {
    const source = await filled(1200);
    const disk = await openLog("restored");
    expect(await importBackup(opener(await textOf(source)), disk)).toEqual({ ok: true, added: 1200, known: 0 });
    expect(await disk.readAfter(0, 10_000)).toEqual(await everything(source));
    disk.close();
  });

  it("is written a page at a time", async () => {
    const source = await filled(25);
    const asked: number[] = [];
    const watched: MemoryLog = {
      ...source,
      readKept(after, limit) {
        asked.push(limit);
        return source.readKept(after, limit);
      },
    };
    const pieces: string[] = [];
    for await (const piece of exportBackup(watched, 10)) pieces.push(piece);
    expect(asked).toEqual([10, 10, 10, 10]);
    expect(pieces.map((piece) => piece.split("\n").length - 1)).toEqual([1, 10, 10, 5, 1]);
  });

  it("of an empty log is whole too", async () => {
    expect(await importBackup(opener(await textOf(memoryLog())), memoryLog())).toEqual({ ok: true, added: 0, known: 0 });
  });

  it("changes nothing when it is imported twice", async () => {
    const text = await textOf(await filled(5));
    const log = memoryLog();
    await importBackup(opener(text), log);
    const before = await everything(log);
    expect(await importBackup(opener(text), log)).toEqual({ ok: true, added: 0, known: 5 });
    expect(await everything(log)).toEqual(before);
  });

  it("adds only what is missing, and an older one adds nothing", async () => {
    const source = await filled(5);
    const older = await textOf(source);
    const log = memoryLog();
    await importBackup(opener(older), log);
    await source.append(chain(3, await source.last()));
    expect(await importBackup(opener(await textOf(source)), log)).toEqual({ ok: true, added: 3, known: 5 });
    expect(await importBackup(opener(older), log)).toEqual({ ok: true, added: 0, known: 5 });
    expect(await everything(log)).toEqual(await everything(source));
  });

  it("never mixes two logs", async () => {
    const log = memoryLog();
    await log.append(chain(2, undefined, { person: "bea" }));
    const before = await everything(log);
    expect(await importBackup(opener(await textOf(await filled(4))), log)).toEqual({ ok: false, why: "another log" });
    expect(await everything(log)).toEqual(before);
  });

  it("is refused whole when one row was altered", async () => {
    const text = (await textOf(await filled(600))).replace('"row-000550"', '"row-000999"');
    const log = memoryLog();
    expect(await importBackup(opener(text), log)).toEqual({ ok: false, why: "broken chain", seq: 550, fault: "altered" });
    expect(await everything(log)).toEqual([]);
  });

  it("is refused when a line is lost, torn, or comes twice", async () => {
    const lines = (await textOf(await filled(5))).split("\n");
    const attempt = (changed: readonly string[]) => importBackup(opener(changed.join("\n")), memoryLog());
    expect(await attempt(lines.toSpliced(3, 1))).toEqual({ ok: false, why: "broken chain", seq: 4, fault: "gap" });
    expect(await attempt(lines.toSpliced(3, 0, lines[3] ?? ""))).toEqual({ ok: false, why: "broken chain", seq: 3, fault: "order" });
    expect(await attempt(lines.with(3, lines[3]?.slice(0, 40) ?? ""))).toEqual({
      ok: false,
      why: "broken chain",
      seq: 3,
      fault: "unreadable",
    });
  });

  it("is refused when it was cut off, at any line and within the last", async () => {
    const text = await textOf(await filled(4));
    const lines = text.split("\n").filter((line) => line !== "");
    for (let left = 1; left < lines.length; left += 1) {
      const result = await importBackup(opener(lines.slice(0, left).join("\n")), memoryLog());
      expect(result).toEqual({ ok: false, why: "cut off" });
    }
    expect((await importBackup(opener(text.slice(0, -4)), memoryLog())).ok).toBe(false);
    // The last rows gone, the closing line kept: the chain that is left holds, and only the closing line tells.
    expect(await importBackup(opener([...lines.slice(0, 4), lines.at(-1)].join("\n")), memoryLog())).toEqual({ ok: false, why: "cut off" });
    expect(await importBackup(opener(text + lines[4]), memoryLog())).toEqual({ ok: false, why: "cut off" });
  });

  it("is not taken from any other file", async () => {
    for (const text of ["", "hello", "{}", '{"backup":"tablebell log","format":2}', "null"]) {
      expect(await importBackup(opener(text), memoryLog())).toEqual({ ok: false, why: "not a backup" });
    }
  });

  it("carries rows that this version cannot read", async () => {
    const start = chain(1);
    const newer = sealRow(unsealed(2, endOfRows(start).hash, { v: 9 }));
    const source = memoryLog();
    await source.append(start);
    source.damage(2, newer);
    await source.append(chain(1, newer));
    const log = memoryLog();
    expect(await importBackup(opener(await textOf(source)), log)).toEqual({ ok: true, added: 3, known: 0 });
    expect((await everything(log)).map((row) => row.readable)).toEqual([true, false, true]);
    expect((await log.readKept(1, 1))[0]?.raw).toEqual(newer);
  });

  it("of a damaged log is written out, and refused with the number of the damaged row", async () => {
    const source = await filled(3);
    source.damage(2, { half: 1n });
    expect(await importBackup(opener(await textOf(source)), memoryLog())).toEqual({
      ok: false,
      why: "broken chain",
      seq: 2,
      fault: "unreadable",
    });
  });

  it("says how far it came when the disk refuses, and goes on from there the next time", async () => {
    const text = await textOf(await filled(600));
    const log = memoryLog();
    let times = 0;
    const failing: MemoryLog = {
      ...log,
      appendKept: async (rows) => (++times === 2 ? { ok: false, why: "not stored", detail: "no room" } : log.appendKept(rows)),
    };
    const result = await importBackup(opener(text), failing);
    expect(result).toEqual({ ok: false, why: "not stored", added: 250, detail: "no room" });
    expect(await importBackup(opener(text), log)).toEqual({ ok: true, added: 350, known: 250 });
  });

  it("comes through letters beyond ASCII, split anywhere, and other line ends", async () => {
    const source = memoryLog();
    await source.append(chain(3, undefined, { person: "Ädä 😀 \ud83d" }));
    const bytes = new TextEncoder().encode((await textOf(source)).replaceAll("\n", "\r\n"));
    const byteByByte = {
      stream: () =>
        new ReadableStream<Uint8Array<ArrayBuffer>>({
          start(controller) {
            for (const byte of bytes) controller.enqueue(Uint8Array.of(byte));
            controller.close();
          },
        }),
    };
    const log = memoryLog();
    expect(await importBackup(() => linesOfFile(byteByByte), log)).toEqual({ ok: true, added: 3, known: 0 });
    expect(await everything(log)).toEqual(await everything(source));
  });
});
