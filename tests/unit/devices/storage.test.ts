import { describe, expect, it } from "vitest";
import { isSecure } from "#devices/secure.ts";
import { askToPersist, estimate, persisted } from "#devices/storage.ts";

const failing = async (): Promise<never> => {
  throw new TypeError("no");
};

describe("the tablet's storage", () => {
  it("passes on what the browser says", async () => {
    const storage = { persisted: async () => false, persist: async () => true, estimate: async () => ({ usage: 5, quota: 100 }) };
    expect(await persisted(storage)).toBe(false);
    expect(await askToPersist(storage)).toBe(true);
    expect(await estimate(storage)).toEqual({ usedBytes: 5, quotaBytes: 100 });
  });

  it.each([
    ["has no such thing", undefined],
    ["has only part of it", {}],
    ["fails", { persisted: failing, persist: failing, estimate: failing }],
    ["tells nothing", { estimate: async () => ({}) }],
  ])("says that it does not know where the browser %s", async (_case, storage) => {
    expect([await persisted(storage), await askToPersist(storage), await estimate(storage)]).toEqual([null, null, null]);
  });
});

describe("a secure address", () => {
  it("is one only when the browser says so", () => {
    expect(isSecure({ isSecureContext: true })).toBe(true);
    expect(isSecure({ isSecureContext: false })).toBe(false);
    expect(isSecure({})).toBe(false);
  });
});
