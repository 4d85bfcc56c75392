import { afterEach, describe, expect, it, vi } from "vitest";
import { findBrowser } from "../../browser/find.ts";

afterEach(() => vi.unstubAllEnvs());

describe("looking for a browser", () => {
  it("takes the one that CHROMIUM_PATH names", async () => {
    vi.stubEnv("CHROMIUM_PATH", process.execPath);
    expect(await findBrowser()).toBe(process.execPath);
  });
  it("does not go past a CHROMIUM_PATH that names nothing", async () => {
    vi.stubEnv("CHROMIUM_PATH", "/nowhere/chromium");
    await expect(findBrowser()).rejects.toThrow("No browser at CHROMIUM_PATH (/nowhere/chromium)");
  });
});
