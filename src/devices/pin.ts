// A keeper's PIN is never kept, only what PBKDF2 makes of it. Four digits can be tried out by a machine in no time, so this
// keeps slips and curious hands away from the cards; it does not keep out somebody who takes the tablet apart.

export interface PinHash {
  /** Hexadecimal, 16 bytes. */
  salt: string;
  /** Hexadecimal, 32 bytes. */
  hash: string;
  rounds: number;
}

export type PinCheck = "right" | "wrong" | "not supported";

/** For PBKDF2 with SHA-256 (OWASP password storage cheat sheet, 2023; from memory). */
export const ROUNDS = 600_000;

type Crypto = Pick<globalThis.Crypto, "getRandomValues" | "subtle">;
/** An address that is not secure has no subtle. */
const ofThisBrowser = (): Crypto | undefined => (globalThis.crypto?.subtle === undefined ? undefined : globalThis.crypto);

const hex = (bytes: Uint8Array): string => [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
const bytesOf = (text: string): Uint8Array<ArrayBuffer> => Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

async function derive(crypto: Crypto, pin: string, salt: Uint8Array<ArrayBuffer>, rounds: number): Promise<Uint8Array> {
  const key = await crypto.subtle.importKey("raw", new TextEncoder().encode(pin), "PBKDF2", false, ["deriveBits"]);
  return new Uint8Array(await crypto.subtle.deriveBits({ name: "PBKDF2", hash: "SHA-256", salt, iterations: rounds }, key, 256));
}

/** A fresh salt each time: two keepers with one PIN have two hashes. */
export async function hashPin(pin: string, crypto = ofThisBrowser(), rounds = ROUNDS): Promise<PinHash | "not supported"> {
  if (crypto === undefined) return "not supported";
  const salt = crypto.getRandomValues(new Uint8Array(16));
  return { salt: hex(salt), hash: hex(await derive(crypto, pin, salt, rounds)), rounds };
}

/** Reads every byte whether or not one before it differed, so that the time taken says nothing. */
export function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  let differing = a.length ^ b.length;
  for (let i = 0; i < Math.max(a.length, b.length); i++) differing |= (a[i] ?? 0) ^ (b[i] ?? 0);
  return differing === 0;
}

export async function checkPin(pin: string, kept: PinHash, crypto = ofThisBrowser()): Promise<PinCheck> {
  if (crypto === undefined) return "not supported";
  const made = await derive(crypto, pin, bytesOf(kept.salt), kept.rounds);
  return sameBytes(made, bytesOf(kept.hash)) ? "right" : "wrong";
}
