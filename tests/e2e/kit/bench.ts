// One browser for a test file, and a fresh tablet for each test: a clock that one test moved must not be another's.
import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, inject } from "vitest";
import { launch } from "../../browser/launch.ts";
import { openTablet, type Tablet, type Wanted } from "./tablet.ts";

/** Called once at the top of a file; what it returns opens a tablet, which is closed after the test. */
export function bench(): (wanted?: Wanted) => Promise<Tablet> {
  const baseUrl = inject("baseUrl");
  let browser: Browser | undefined;
  const open: Tablet[] = [];
  beforeAll(async () => {
    browser = await launch();
  });
  afterEach(() => Promise.all(open.splice(0).map((tablet) => tablet.close())));
  afterAll(() => browser?.close());
  return async (wanted) => {
    if (!browser) throw new Error("the browser was not started");
    const tablet = await openTablet(browser, baseUrl, wanted);
    open.push(tablet);
    return tablet;
  };
}
