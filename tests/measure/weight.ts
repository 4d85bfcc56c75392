import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join, relative, sep } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "vite";
import type { Measured } from "./measured.ts";

type Weighed = { path: string; bytes: number; gzip: number; first: boolean };

/**
 * How much a tablet fetches: scripts and styles of the first screen (fonts apart), and everything kept for use without a network.
 * Sizes are gzip at Node's default level; kB = 1000 bytes.
 */
export async function measure(): Promise<Measured> {
  const folder = await mkdtemp(join(tmpdir(), "tablebell-weight-"));
  try {
    await build({ logLevel: "warn", build: { outDir: folder, emptyOutDir: true } });
    const first = await firstLoad(folder);
    const files = await weigh(folder, first);
    const sum = (some: readonly Weighed[]) => kB(some.reduce((total, file) => total + file.gzip, 0));
    return {
      rows: files.map((file) => ({
        file: file.path,
        kB: kB(file.bytes),
        "gzip kB": kB(file.gzip),
        "first load": file.first ? "yes" : "",
      })),
      figures: { firstLoadGzipKB: sum(files.filter((file) => file.first)), totalGzipKB: sum(files) },
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function weigh(folder: string, first: ReadonlySet<string>): Promise<Weighed[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const weighed = await Promise.all(
    paths.map(async (path) => {
      const content = await readFile(path);
      return {
        path: relative(folder, path).split(sep).join("/"),
        bytes: content.length,
        gzip: gzipSync(content).length,
        first: first.has(path),
      };
    }),
  );
  return weighed.sort((a, b) => b.gzip - a.gzip);
}

/** The scripts and styles that index.html names, and what those import without being asked. */
async function firstLoad(folder: string): Promise<Set<string>> {
  const page = await readFile(join(folder, "index.html"), "utf8");
  const named = [...page.matchAll(/(?:src|href)="([^"]+\.(?:js|css))"/g)].map((match) => join(folder, match[1] ?? ""));
  const found = new Set<string>();
  for (const next of named) await follow(next, found);
  if (found.size === 0) throw new Error("index.html names no script: the first load cannot be measured.");
  return found;
}

async function follow(path: string, found: Set<string>): Promise<void> {
  if (found.has(path)) return;
  found.add(path);
  if (!path.endsWith(".js")) return;
  const script = await readFile(path, "utf8");
  for (const match of script.matchAll(/\b(?:import|export)\s*(?:[\w*{}\s,$]+?\bfrom\s*)?"(\.[^"]+\.js)"/g)) {
    await follow(join(dirname(path), match[1] ?? ""), found);
  }
}

function kB(bytes: number): number {
  return Math.round(bytes / 100) / 10;
}
