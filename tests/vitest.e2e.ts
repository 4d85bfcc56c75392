import { build, preview } from "vite";
import type { TestProject } from "vitest/node";
import { findBrowser } from "./browser/find.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built app is served, with a slash at the end. */
    baseUrl: string;
  }
}

/** Builds the app once, serves it on a free port and tells every test where; a missing browser stops here, before the build. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  await findBrowser();
  await build({ logLevel: "warn" });
  const server = await preview({ preview: { port: 0 } });
  const baseUrl = server.resolvedUrls?.local[0];
  if (!baseUrl) throw new Error("The preview server started without an address.");
  project.provide("baseUrl", baseUrl);
  return () => server.close();
}
