/** `npm run measure -- NAME [args]`: prints the measure's table and then, as the last line, its figures as one JSON object. */
import { readdir, readFile } from "node:fs/promises";
import { type Measure, table } from "./measured.ts";

const folder = new URL(".", import.meta.url);

/** A measure is any file here that exports `measure`; helpers beside it do not. */
async function measureNames(): Promise<string[]> {
  const files = (await readdir(folder)).filter((file) => file.endsWith(".ts") && file !== "run.ts").sort();
  const offered = await Promise.all(
    files.map(async (file) => /^export (?:async )?(?:function|const) measure\b/m.test(await readFile(new URL(file, folder), "utf8"))),
  );
  return files.filter((_, index) => offered[index]).map((file) => file.replace(/\.ts$/, ""));
}

const [name, ...args] = process.argv.slice(2);
const names = await measureNames();
if (name === undefined || !names.includes(name)) {
  console.error(`${name === undefined ? "Name a measure" : `No measure is called ${name}`}: npm run measure -- NAME [args]`);
  console.error(`Measures: ${names.join(", ")}`);
  process.exit(1);
}

const { measure }: Measure = await import(new URL(`${name}.ts`, folder).href);
const { rows, figures } = await measure(args);
if (rows.length > 0) console.log(table(rows));
console.log(JSON.stringify({ measure: name, ...figures }));
