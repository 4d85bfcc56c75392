// What the scripts of the first load are made of.
import { gzipSync } from "node:zlib";
import { minify, type Rolldown } from "vite";

export type Chunk = Rolldown.OutputChunk;

/** These files, the scripts they import without being asked, and the styles of all of them. */
export function withImports(chunks: readonly Chunk[], files: readonly string[]): Set<string> {
  const found = new Set<string>();
  const follow = (file: string) => {
    if (found.has(file)) return;
    found.add(file);
    const chunk = chunks.find(({ fileName }) => fileName === file);
    for (const next of [...(chunk?.imports ?? []), ...(chunk?.viteMetadata?.importedCss ?? [])]) follow(next);
  };
  files.forEach(follow);
  return found;
}

/** Packages, rooms, and the food table, each pressed alone: together they are a little smaller, as they share words. */
export async function partsOf(chunks: readonly Chunk[]): Promise<{ part: string; bytes: number; gzip: number }[]> {
  const code = new Map<string, string>();
  for (const chunk of chunks) {
    for (const [id, { code: own }] of Object.entries(chunk.modules)) {
      if (own) code.set(partOf(id), `${code.get(partOf(id)) ?? ""}\n${own}`);
    }
  }
  const parts = await Promise.all(
    [...code].map(async ([part, text]) => {
      const small = (await minify(`${part}.js`, text, { module: true, compress: { unused: false } })).code;
      return { part, bytes: small.length, gzip: gzipSync(small).length };
    }),
  );
  return parts.sort((a, b) => b.gzip - a.gzip);
}

function partOf(id: string): string {
  const [, npm] = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(id) ?? [];
  if (npm) return npm;
  if (id.endsWith("/rules/food/table.ts")) return "food table";
  const [, room] = /\/(src\/[^/]+|demo-data)\//.exec(id) ?? [];
  return room ?? "what the build adds";
}
