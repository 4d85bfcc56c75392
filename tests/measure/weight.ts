import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, relative, sep } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "vite";
import type { Measured } from "./measured.ts";
import { type Chunk, partsOf, withImports } from "./weight-parts.ts";

type Need = "first press" | "walk" | "";
type Weighed = { path: string; bytes: number; gzip: number; need: Need };

/**
 * How much a tablet fetches: the scripts and styles without which the first press on the kitchen screen cannot be answered (fonts apart), and
 * everything kept for use without a network. A tablet that is opened for the first time makes its demo household before that screen stands, so
 * the script that makes it counts. tests/e2e/offline.test.ts proves the list: nothing else is let through there.
 * Sizes are gzip at Node's default level; kB = 1000 bytes.
 */
export async function measure(): Promise<Measured> {
  const folder = await mkdtemp(join(tmpdir(), "tablebell-weight-"));
  try {
    const built = await build({ logLevel: "warn", build: { outDir: folder, emptyOutDir: true } });
    const outputs = "output" in built ? [built] : Array.isArray(built) ? built : [];
    const chunks = outputs.flatMap(({ output }) => output.filter((made) => made.type === "chunk"));
    const page = await namedByPage(folder);
    const opened = withImports(chunks, page);
    const first = new Set([...opened, ...withImports(chunks, [scriptOf(chunks, "/src/app/demo.ts")])]);
    const walk = withImports(chunks, [scriptOf(chunks, "/src/app/walk-part.ts"), scriptOf(chunks, "/src/screens/first/stop-screens.tsx")]);
    const files = await weigh(folder, (path) => (first.has(path) ? "first press" : walk.has(path) ? "walk" : ""));
    const sum = (...needs: Need[]) => kB(files.filter(({ need }) => needs.includes(need)).reduce((total, { gzip }) => total + gzip, 0));
    const parts = await partsOf(chunks.filter(({ fileName }) => first.has(fileName)));
    return {
      rows: [
        ...files.map(({ path, bytes, gzip, need }) => ({ file: path, kB: kB(bytes), "gzip kB": kB(gzip), "needed before": need })),
        ...parts.map(({ part, bytes, gzip }) => ({
          file: `  of the first: ${part}`,
          kB: kB(bytes),
          "gzip kB": kB(gzip),
          "needed before": "",
        })),
      ],
      figures: {
        firstLoadGzipKB: sum("first press"),
        withoutMakingDemoGzipKB: kB(files.reduce((total, { path, gzip }) => total + (opened.has(path) ? gzip : 0), 0)),
        beforeWalkGzipKB: sum("first press", "walk"),
        totalGzipKB: sum("first press", "walk", ""),
      },
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function weigh(folder: string, needOf: (path: string) => Need): Promise<Weighed[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const weighed = await Promise.all(
    paths.map(async (full) => {
      const content = await readFile(full);
      const path = relative(folder, full).split(sep).join("/");
      return { path, bytes: content.length, gzip: gzipSync(content).length, need: needOf(path) };
    }),
  );
  return weighed.sort((a, b) => b.gzip - a.gzip);
}

/** The scripts and styles that index.html names. */
async function namedByPage(folder: string): Promise<string[]> {
  const page = await readFile(join(folder, "index.html"), "utf8");
  const named = [...page.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map((match) => match[1] ?? "");
  if (!named.some((path) => path.endsWith(".js"))) throw new Error("index.html names no script: the first load cannot be measured.");
  return named;
}

function scriptOf(chunks: readonly Chunk[], source: string): string {
  const found = chunks.find(({ facadeModuleId }) => facadeModuleId?.endsWith(source));
  if (!found) throw new Error(`${source} has no script of its own: what the first press needs must be thought over again.`);
  return found.fileName;
}

function kB(bytes: number): number {
  return Math.round(bytes / 100) / 10;
}
