/**
 * `npm test`: every test in one run, with a plain count on the last line. Arguments go to Vitest: `npm test -- tests/unit/rules`.
 * Without a browser the other tests still run, and the missing browser counts as one failure.
 */
import { spawn } from "node:child_process";
import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findBrowser } from "./browser/find.ts";
import { countOf, lastLine, type Report } from "./count.ts";

const args = process.argv.slice(2);

/** Whether the tests asked for reach the browser: all of them do, and so does any name that is part of an e2e file's path. */
async function reachesBrowser(): Promise<boolean> {
  const wanted = args.filter((arg) => !arg.startsWith("-"));
  const files = (await readdir("tests/e2e", { recursive: true }).catch(() => [])).filter((name) => name.endsWith(".test.ts"));
  if (files.length === 0) return false;
  return wanted.length === 0 || files.some((name) => wanted.some((part) => join("tests/e2e", name).includes(part.replace(/^\.\//, ""))));
}

async function browserMissing(): Promise<string | undefined> {
  if (!(await reachesBrowser())) return undefined;
  try {
    await findBrowser();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

function vitest(extra: readonly string[]): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ["node_modules/vitest/vitest.mjs", "run", ...args, ...extra], { stdio: "inherit" });
    child.on("error", reject);
    child.on("close", (code) => resolve(code ?? 1));
  });
}

const scratch = await mkdtemp(join(tmpdir(), "tablebell-test-"));
const reportFile = join(scratch, "report.json");
const missing = await browserMissing();
const exitCode = await vitest([
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${reportFile}`,
  ...(missing ? ["--project=unit", "--project=component"] : []),
]);
const report = await readFile(reportFile, "utf8").then(
  (text): Report => JSON.parse(text),
  () => undefined,
);
await rm(scratch, { recursive: true, force: true });

const count = countOf(report, exitCode);
if (missing) {
  console.log(`e2e: NOT RUN. ${missing}`);
  count.failed += 1;
}
console.log(lastLine(count));
process.exitCode = count.failed > 0 ? 1 : 0;
