import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { homedir } from "node:os";
import { delimiter, join } from "node:path";

const SYSTEM_PATHS = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];
const COMMANDS = ["google-chrome", "google-chrome-stable"];
const DOWNLOADED = ["chrome-linux/chrome", "chrome-linux64/chrome", "chrome-mac/Chromium.app/Contents/MacOS/Chromium"];

/**
 * The path of a Chromium to test with: CHROMIUM_PATH, then the system's own, then one that Playwright downloaded, then Debian's package if we may install it.
 * Throws one sentence with all that was tried. The tests in a browser are never left out in silence.
 */
export async function findBrowser(): Promise<string> {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(`No browser at CHROMIUM_PATH (${named}): correct it, or unset it to search the usual places.`);
  }
  const places = [...SYSTEM_PATHS, ...onPath(), ...(await downloaded())];
  const found = places.find((place) => existsSync(place));
  if (found) return found;
  const why = installFromDebian();
  if (why === undefined && existsSync("/usr/bin/chromium")) return "/usr/bin/chromium";
  throw new Error(
    `No browser for the tests. Tried CHROMIUM_PATH (not set), ${SYSTEM_PATHS.join(", ")}, ${COMMANDS.join(" and ")} on the PATH, ` +
      `${downloadFolder()} and apt-get (${why ?? "it left no /usr/bin/chromium"}). ` +
      "Install Chromium, run `npx playwright-core install chromium`, or set CHROMIUM_PATH.",
  );
}

function onPath(): string[] {
  const folders = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  return COMMANDS.flatMap((command) => folders.map((folder) => join(folder, command)));
}

function downloadFolder(): string {
  const cache = process.platform === "darwin" ? "Library/Caches" : ".cache";
  return process.env.PLAYWRIGHT_BROWSERS_PATH ?? join(homedir(), cache, "ms-playwright");
}

async function downloaded(): Promise<string[]> {
  const folder = downloadFolder();
  const names = existsSync(folder) ? await readdir(folder) : [];
  return names.filter((name) => /^chromium-\d+$/.test(name)).flatMap((name) => DOWNLOADED.map((rest) => join(folder, name, rest)));
}

/** Installs Debian's Chromium; answers why it could not, or nothing when it did. */
function installFromDebian(): string | undefined {
  if (process.getuid?.() !== 0) return "not run as root";
  if (!existsSync("/etc/debian_version") || !existsSync("/usr/bin/apt-get")) return "not a Debian system";
  console.error("No browser found: installing Debian's chromium for the tests.");
  for (const step of [["update"], ["install", "-y", "--no-install-recommends", "chromium", "fonts-dejavu-core"]]) {
    // Its chatter goes to standard error: the last line of standard output belongs to the count.
    const { status } = spawnSync("apt-get", step, {
      stdio: ["ignore", 2, 2],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
    if (status !== 0) return `apt-get ${step[0]} ended with ${status ?? "a signal"}`;
  }
  return undefined;
}
