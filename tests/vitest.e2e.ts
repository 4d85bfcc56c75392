import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, preview } from "vite";
import type { TestProject } from "vitest/node";
import { findBrowser } from "./browser/find.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built app is served, with a slash at the end. */
    baseUrl: string;
  }
}

/**
 * Builds the app once, serves it on a free port and tells every test where; a missing browser stops here, before the build.
 * The build has a folder of its own: one that runs beside it, `npm start` for instance, would take the files away under the tests.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  await findBrowser();
  const outDir = await mkdtemp(join(tmpdir(), "tablebell-e2e-"));
  await build({ logLevel: "warn", build: { outDir, emptyOutDir: true } });
  const server = await preview({ preview: { port: 0 }, build: { outDir } });
  const baseUrl = server.resolvedUrls?.local[0];
  if (!baseUrl) throw new Error("The preview server started without an address.");
  project.provide("baseUrl", baseUrl);
  return async () => {
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  };
}
