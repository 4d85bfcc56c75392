import { describe, expect, it } from "vitest";
import { checkPin, hashPin, ROUNDS, sameBytes } from "#devices/pin.ts";

const few = 1000;
const hashed = async (pin: string) => {
  const made = await hashPin(pin, globalThis.crypto, few);
  if (made === "not supported") throw new Error("no crypto here");
  return made;
};

describe("a keeper's PIN", () => {
  it("opens with the same digits and with no others", async () => {
    const kept = await hashed("2580");
    expect(await checkPin("2580", kept)).toBe("right");
    expect(await checkPin("2581", kept)).toBe("wrong");
    expect(await checkPin("258", kept)).toBe("wrong");
    expect(await checkPin("", kept)).toBe("wrong");
  });

  it("is salted, so that two keepers with one PIN have two hashes", async () => {
    const [a, b] = [await hashed("2580"), await hashed("2580")];
    expect(a.salt).toMatch(/^[0-9a-f]{32}$/);
    expect(a.hash).toMatch(/^[0-9a-f]{64}$/);
    expect(a.salt).not.toBe(b.salt);
    expect(a.hash).not.toBe(b.hash);
    expect(JSON.stringify(a)).not.toContain("2580");
  });

  it("agrees with the published test value of PBKDF2 with SHA-256", async () => {
    // RFC 7914, section 11: P="passwd", S="salt", c=1; the first 32 of 64 bytes are the first block.
    const kept = { salt: "73616c74", rounds: 1, hash: "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc" };
    expect(await checkPin("passwd", kept)).toBe("right");
  });

  it("takes six hundred thousand rounds", () => {
    expect(ROUNDS).toBe(600_000);
  });

  it("says so where the address is not secure, and is then never right", async () => {
    // undefined would stand for the crypto of this machine.
    const bare: typeof globalThis.crypto | undefined = undefined;
    const saved = Object.getOwnPropertyDescriptor(globalThis, "crypto");
    Object.defineProperty(globalThis, "crypto", { value: bare, configurable: true });
    try {
      expect(await hashPin("2580")).toBe("not supported");
      expect(await checkPin("2580", { salt: "00", hash: "00", rounds: 1 })).toBe("not supported");
    } finally {
      if (saved) Object.defineProperty(globalThis, "crypto", saved);
    }
  });

  it("compares all bytes and lengths", () => {
    const bytes = (...list: number[]) => Uint8Array.from(list);
    expect(sameBytes(bytes(1, 2, 3), bytes(1, 2, 3))).toBe(true);
    expect(sameBytes(bytes(1, 2, 3), bytes(1, 2, 4))).toBe(false);
    expect(sameBytes(bytes(0, 2, 3), bytes(1, 2, 3))).toBe(false);
    expect(sameBytes(bytes(1, 2), bytes(1, 2, 0))).toBe(false);
    expect(sameBytes(bytes(), bytes(0))).toBe(false);
  });
});
