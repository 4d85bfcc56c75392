// A keeper's PIN: which ones may be chosen, and how long to wait after wrong tries. Hashing is for devices/pin.ts.

export type PinRefused = "empty" | "not digits" | "too short" | "too long" | "easily guessed" | "not the same";

const SHORTEST = 4;
const LONGEST = 8;

/** 1111, 1234 and 8765: among the first that anybody tries (NIST SP 800-63B asks to refuse commonly used secrets; from memory). */
function easilyGuessed(pin: string): boolean {
  const steps = new Set([...pin].slice(1).map((digit, i) => Number(digit) - Number(pin[i])));
  const [only] = steps;
  return steps.size === 1 && only !== undefined && Math.abs(only) <= 1;
}

/** null: may be chosen. */
export function whyNotPin(pin: string, again: string): PinRefused | null {
  if (pin === "") return "empty";
  if (!/^\d+$/.test(pin)) return "not digits";
  if (pin.length < SHORTEST) return "too short";
  if (pin.length > LONGEST) return "too long";
  if (easilyGuessed(pin)) return "easily guessed";
  return pin === again ? null : "not the same";
}

/** Kept on this tablet, for all keepers together, so that it outlives a reload. */
export interface PinTries {
  /** Wrong tries in a row. */
  wrong: number;
  /** Wall time of the last one, ms since 1970. */
  at: number;
}

export const NO_TRIES: PinTries = { wrong: 0, at: 0 };

/** Two slips of a finger cost nothing. Then half a minute, doubled each time, an hour at most. Own choice. */
const FREE = 3;
const FIRST_MS = 30_000;
const MOST_MS = 3_600_000;

const delayOf = (wrong: number): number => (wrong < FREE ? 0 : Math.min(MOST_MS, FIRST_MS * 2 ** (wrong - FREE)));

/** Milliseconds until the next try; 0: now. A clock set back starts the wait anew and can neither end nor stretch it: see settled. */
export const pinWait = (tries: PinTries, wall: number): number =>
  Math.max(0, Math.min(delayOf(tries.wrong), tries.at + delayOf(tries.wrong) - wall));

/** With a last try in the future the clock was set back: the wait then counts from now. */
export const settled = (tries: PinTries, wall: number): PinTries => (tries.at > wall ? { ...tries, at: wall } : tries);

export const afterWrong = (tries: PinTries, wall: number): PinTries => ({ wrong: tries.wrong + 1, at: wall });
