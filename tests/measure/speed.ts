import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, preview } from "vite";
import { FIXED } from "#words/en/fixed.ts";
import { launch } from "../browser/launch.ts";
import { finger } from "../e2e/kit/hands.ts";
import { LUNCH, walkMeal } from "../e2e/kit/meal.ts";
import { openTablet, type Tablet } from "../e2e/kit/tablet.ts";
import type { Measured } from "./measured.ts";

/** A cheap tablet is about this many times slower than the computer that measures (our assumption; set by the browser's own throttle). */
const CPU_SLOWDOWN = 4;
const OPENINGS = 5;

/**
 * How long a person waits, ms, in a real browser with its processor slowed down: from the lift of a finger to the next step on the glass, over a whole
 * walk, and from opening the address to the first sentence, with the ninety days of the demo in the log.
 */
export async function measure(): Promise<Measured> {
  const outDir = await mkdtemp(join(tmpdir(), "tablebell-speed-"));
  await build({ logLevel: "warn", build: { outDir, emptyOutDir: true } });
  const server = await preview({ preview: { port: 0 }, build: { outDir } });
  const baseUrl = server.resolvedUrls?.local[0];
  if (!baseUrl) throw new Error("The preview server started without an address.");
  const browser = await launch();
  try {
    const tablet = await openTablet(browser, baseUrl, { past: "none", offline: true, init: watch });
    await tablet.page.waitForFunction(async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller !== null);
    const openings = await opened(tablet);
    const taps = await walked(tablet);
    const row = (what: string, all: readonly number[]) => ({
      what,
      samples: all.length,
      "median ms": round(median(all)),
      "slowest ms": round(Math.max(...all)),
    });
    return {
      rows: [row("tap to the next step", taps), row("opening to the first sentence", openings)],
      figures: {
        tapToNextStepMsMedian: round(median(taps)),
        openToFirstSentenceMs: round(median(openings)),
        cpuSlowdown: CPU_SLOWDOWN,
      },
    };
  } finally {
    await browser.close();
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  }
}

/** What the page notes about itself, on its own real clock. */
type Watched = typeof globalThis & { watched: { taps: number[]; first: number | null } };

/** In the page, before the app: notes each lift of a finger until the words of the main part have changed and were painted. */
function watch(): void {
  const now = performance.now.bind(performance);
  const frame = requestAnimationFrame;
  const watched = { taps: [] as number[], first: null as number | null };
  Object.assign(globalThis, { watched });
  let lifted: number | null = null;
  let before = "";
  const words = () => document.querySelector("main")?.textContent ?? "";
  addEventListener(
    "pointerup",
    () => {
      lifted = now();
      before = words();
    },
    true,
  );
  new MutationObserver(() => {
    const after = words();
    if (watched.first === null && after !== "") frame(() => (watched.first ??= now()));
    if (lifted === null || after === before) return;
    const since = lifted;
    lifted = null;
    frame(() => watched.taps.push(now() - since));
  }).observe(document, { subtree: true, childList: true, characterData: true });
}

async function slowDown(tablet: Tablet, rate: number): Promise<void> {
  const session = await tablet.context.newCDPSession(tablet.page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}

/** Opens the app again and again, as after the first day. */
async function opened(tablet: Tablet): Promise<number[]> {
  const all: number[] = [];
  await slowDown(tablet, CPU_SLOWDOWN);
  for (let n = 0; n < OPENINGS; n++) {
    await tablet.page.reload();
    await tablet.page.getByRole("button", { name: FIXED.meal, exact: true }).waitFor();
    const first = await tablet.page.evaluate(() => (globalThis as Watched).watched.first);
    if (first !== null) all.push(first);
  }
  return all;
}

/** One whole walk by touch. */
async function walked(tablet: Tablet): Promise<number[]> {
  await tablet.readOn();
  await walkMeal(tablet, finger(tablet), LUNCH);
  return tablet.page.evaluate(() => (globalThis as Watched).watched.taps);
}

function median(all: readonly number[]): number {
  if (all.length === 0) throw new Error("Nothing was measured.");
  const sorted = all.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? (sorted[middle] ?? 0) : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
}

const round = (ms: number): number => Math.round(ms);
