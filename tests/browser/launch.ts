import { type Browser, chromium } from "playwright-core";
import { findBrowser } from "./find.ts";

const FLAGS = [
  "--disable-gpu",
  // The browser makes no calls of its own: they would fail in a closed network and blur "no network call is made".
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-quic",
  "--disable-sync",
  "--no-first-run",
  // A tap has always come before on a real tablet; a test need not act it out each time.
  "--autoplay-policy=no-user-gesture-required",
];

async function startup(extra: readonly string[]) {
  // Chromium refuses its sandbox to root; everybody else keeps it.
  const root = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  return { executablePath: await findBrowser(), args: [...FLAGS, ...root, ...extra] };
}

/** A fresh headless browser. The caller closes it. */
export async function launch(extra: readonly string[] = []): Promise<Browser> {
  return chromium.launch(await startup(extra));
}
