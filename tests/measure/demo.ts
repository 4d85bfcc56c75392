import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, preview } from "vite";
import { launch } from "../browser/launch.ts";
import type { Measured } from "./measured.ts";

/** How long the demo household's first start takes in the browser: made, then stored. Milliseconds, each start in a fresh store. Argument: number of starts. */
export async function measure([starts = "5"]: readonly string[] = []): Promise<Measured> {
  const outDir = await mkdtemp(join(tmpdir(), "tablebell-demo-"));
  await build({ logLevel: "warn", build: { outDir, emptyOutDir: true } });
  const server = await preview({ build: { outDir }, preview: { port: 0 } });
  const browser = await launch();
  try {
    const rows = [];
    for (let i = 0; i < Number(starts); i++) {
      const context = await browser.newContext();
      const page = await context.newPage();
      await page.goto(server.resolvedUrls?.local[0] ?? "");
      await page.waitForFunction(() => performance.getEntriesByName("demo filled").length > 0);
      const [made = 0, filled = 0] = await page.evaluate(() =>
        ["demo made", "demo filled"].map((name) => Math.round(performance.getEntriesByName(name)[0]?.duration ?? 0)),
      );
      rows.push({ "made ms": made, "made and stored ms": filled });
      await context.close();
    }
    const filled = rows.map((row) => row["made and stored ms"]).sort((a, b) => a - b);
    return { rows, figures: { leastMs: filled[0], medianMs: filled[Math.floor(filled.length / 2)] } };
  } finally {
    await browser.close();
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  }
}
