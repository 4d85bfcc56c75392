import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { launch } from "../browser/launch.ts";

const baseUrl = inject("baseUrl");
let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());

/** A fresh page in a fresh store, with everything the browser complained about. */
async function opened(): Promise<{ page: Page; complaints: string[]; asked: string[] }> {
  const page = await (await browser.newContext()).newPage();
  const complaints: string[] = [];
  const asked: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(baseUrl);
  return { page, complaints, asked };
}

/** Waits until the app has drawn something itself; what stands there for a browser without scripts does not count. */
const drawn = (page: Page) => page.locator("#app > :not(noscript)").first().waitFor();

/** Waits until the tablet holds the whole app and the page is served from it. */
const keptOnTablet = (page: Page) =>
  page.waitForFunction(async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller !== null);

describe("the built app", () => {
  it("opens with words on the screen and nothing to complain about", async () => {
    const { page, complaints } = await opened();
    await drawn(page);
    expect(await page.title()).toBe("Tablebell");
    expect((await page.locator("#app").innerText()).trim()).not.toBe("");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("asks nobody but its own address for anything", async () => {
    const { page, asked } = await opened();
    await keptOnTablet(page);
    expect(asked.length).toBeGreaterThan(1);
    expect(asked.filter((url) => !url.startsWith(baseUrl) && !url.startsWith("blob:") && !url.startsWith("data:"))).toEqual([]);
    await page.context().close();
  });

  it("runs no script that the page rules did not allow", async () => {
    const { page } = await opened();
    const slipped = await page.evaluate(async () => {
      const script = document.createElement("script");
      script.textContent = "window.name = 'slipped'";
      document.head.append(script);
      const elsewhere = await fetch("http://127.0.0.1:9/").then(
        () => "reached",
        () => "refused",
      );
      return [window.name, elsewhere];
    });
    expect(slipped).toEqual(["", "refused"]);
    await page.context().close();
  });

  it("forbids framing, and gives the microphone to its own page alone", async () => {
    const { headers } = await fetch(baseUrl);
    expect(headers.get("content-security-policy")).toContain("frame-ancestors 'none'");
    // The voice is WebAssembly; nothing else that is called unsafe is allowed.
    expect(headers.get("content-security-policy")?.replace("'wasm-unsafe-eval'", "")).not.toContain("unsafe");
    expect(headers.get("permissions-policy")).toContain("microphone=(self)");
  });

  it("carries its page rules in the page, for a host that sends no headers", async () => {
    const page = await (await fetch(baseUrl)).text();
    expect(page).toContain("default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'");
    expect(page.replace("'wasm-unsafe-eval'", "")).not.toContain("unsafe");
  });

  it("opens again with no network, by its plain address and by any way in that carries a note", async () => {
    const { page } = await opened();
    await keptOnTablet(page);
    await page.context().setOffline(true);
    for (const address of [baseUrl, `${baseUrl}?from=home`, `${baseUrl}index.html`]) {
      await page.goto(address);
      await drawn(page);
    }
    await page.context().close();
  });
});
