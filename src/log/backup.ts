// A backup is a text file: a first line that says what it is, one stored row a line, a last line that says it is whole.
// Rows go out as they lie in the store, so that a row this version cannot read survives a move all the same.
import { CHAIN_START, type ChainEnd, type ChainFault, faultAfter, isRaw, linkOf, type RawRow } from "./chain.ts";
import type { KeptLog, KeptRow } from "./kept-log.ts";

const FIRST = { backup: "tablebell log", format: 1 };
const PAGE = 250;

export type ImportResult =
  /** known: rows that were there already. */
  | { ok: true; added: number; known: number }
  /** Nothing was stored. */
  | { ok: false; why: "not a backup" | "cut off" | "another log" }
  | { ok: false; why: "broken chain"; seq: number; fault: ChainFault }
  /** The disk refused, or somebody else wrote meanwhile. Import again: what was added is then known. */
  | { ok: false; why: "not stored"; added: number; detail: string };

/** Lines of the file, from the start at every call: they are read twice, so that all is checked before anything is stored. */
export type OpenLines = () => AsyncIterable<string> | Iterable<string>;

/** The whole log as text in pieces of whole lines, never more than a page of it in memory. */
export async function* exportBackup(log: KeptLog, page: number = PAGE): AsyncGenerator<string> {
  yield line(FIRST);
  let end = CHAIN_START;
  let rows = 0;
  for (;;) {
    const kept: readonly KeptRow[] = await log.readKept(end.seq, page);
    const last = kept.at(-1);
    if (last === undefined) break;
    yield kept.map(({ raw }) => line(raw)).join("");
    rows += kept.length;
    end = { seq: last.seq, hash: linkOf(last.raw) };
  }
  yield line({ end: true, rows, hash: end.hash });
}

/**
 * Puts the rows of a backup into a log that is empty or holds a beginning (or the whole) of the same rows.
 * Rows that are there already are passed over by their id and hash, so importing twice changes nothing.
 */
export async function importBackup(open: OpenLines, log: KeptLog): Promise<ImportResult> {
  const known = await log.last();
  const refused = await check(open, log, known);
  if (refused !== null) return refused;

  let added = 0;
  let seen = 0;
  let page: RawRow[] = [];
  const store = async () => {
    const result = await log.appendKept(page);
    if (result.ok) added += page.length;
    page = [];
    return result.ok ? null : result.why === "not stored" ? result.detail : `row ${result.lastSeq + 1} was written by somebody else`;
  };
  for await (const row of rowsOf(open())) {
    seen += 1;
    if (seen > known.seq && isRaw(row)) page.push(row);
    const trouble = page.length >= PAGE ? await store() : null;
    if (trouble !== null) return { ok: false, why: "not stored", added, detail: trouble };
  }
  const trouble = await store();
  if (trouble !== null) return { ok: false, why: "not stored", added, detail: trouble };
  return { ok: true, added, known: seen - added };
}

/** Null when the file is whole, its chain holds, and it agrees with every row the log has. */
async function check(open: OpenLines, log: KeptLog, known: ChainEnd): Promise<ImportResult | null> {
  const first = await firstOf(open());
  if (!isRaw(first) || first.backup !== FIRST.backup || first.format !== FIRST.format) return { ok: false, why: "not a backup" };
  let end = CHAIN_START;
  let ours: KeptRow[] = [];
  let closing: RawRow | null = null;
  for await (const row of parsed(open())) {
    if (closing !== null) return { ok: false, why: "cut off" };
    if (isRaw(row) && row.backup === FIRST.backup) continue;
    if (isEnd(row)) {
      closing = row;
      continue;
    }
    const seq = isRaw(row) && typeof row.seq === "number" ? row.seq : end.seq + 1;
    const fault = faultAfter(end, seq, row);
    if (fault !== null) return { ok: false, why: "broken chain", seq, fault };
    if (seq <= known.seq) {
      if (ours.length === 0) ours = await log.readKept(seq - 1, PAGE);
      const own = ours.shift();
      if (own?.seq !== seq || linkOf(own.raw) !== linkOf(row)) return { ok: false, why: "another log" };
    }
    end = { seq, hash: linkOf(row) };
  }
  // Rows cut off at the end leave a chain that holds, so the last line must vouch for them.
  return closing !== null && closing.rows === end.seq && closing.hash === end.hash ? null : { ok: false, why: "cut off" };
}

const BROKEN = Symbol("a line that is not JSON");

async function* parsed(lines: AsyncIterable<string> | Iterable<string>): AsyncGenerator<unknown> {
  for await (const text of lines) {
    if (text.trim() === "") continue;
    try {
      yield JSON.parse(text);
    } catch {
      yield BROKEN;
    }
  }
}

async function* rowsOf(lines: AsyncIterable<string> | Iterable<string>): AsyncGenerator<unknown> {
  for await (const row of parsed(lines)) {
    if (!isEnd(row) && !(isRaw(row) && row.backup === FIRST.backup)) yield row;
  }
}

async function firstOf(lines: AsyncIterable<string> | Iterable<string>): Promise<unknown> {
  for await (const row of parsed(lines)) return row;
  return BROKEN;
}

function isEnd(row: unknown): row is RawRow {
  return isRaw(row) && row.end === true && row.seq === undefined;
}

function line(value: unknown): string {
  try {
    return `${JSON.stringify(value) ?? "null"}\n`;
  } catch {
    // Remains that JSON cannot carry: the importing side will name this row as unreadable.
    return "null\n";
  }
}
