/** What the last run of the mutation tester left, read and summed; the run itself is slow and is started on its own. */
import { readFile } from "node:fs/promises";

export const REPORT = new URL("../../../.cache/mutation/mutation.json", import.meta.url);

const FOUND = ["Killed", "Timeout"];
const MISSED = ["Survived", "NoCoverage"];

const isBag = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;
const listOf = (value: unknown): unknown[] => (Array.isArray(value) ? value : []);

/** Per cent of the planted changes that some test found, to one digit; null where the report holds none. Those that do not compile do not count. */
export function scoreOf(report: unknown): number | null {
  const files = isBag(report) && isBag(report.files) ? Object.values(report.files) : [];
  const all = files
    .flatMap((file) => (isBag(file) ? listOf(file.mutants) : []))
    .map((mutant) => (isBag(mutant) ? String(mutant.status) : ""));
  const count = (of: readonly string[]) => all.filter((status) => of.includes(status)).length;
  const counted = count(FOUND) + count(MISSED);
  return counted === 0 ? null : Math.round((1000 * count(FOUND)) / counted) / 10;
}

/** null where no run has left a report. */
export async function mutationScore(): Promise<number | null> {
  const text = await readFile(REPORT, "utf8").catch(() => null);
  return text === null ? null : scoreOf(JSON.parse(text));
}
