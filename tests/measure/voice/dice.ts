/** A number from 0 to 2^32 - 1 that depends on every letter of the name (FNV-1a, then mixed). */
export function hash(name: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) h = Math.imul(h ^ name.charCodeAt(i), 0x01000193);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** Dice that fall the same way each time for the same name. */
export class Dice {
  #state: number;

  constructor(name: string) {
    this.#state = hash(name) | 1;
  }

  /** From 0 up to, not including, 1. */
  roll(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  between(from: number, to: number): number {
    return from + (to - from) * this.roll();
  }

  /** A whole number, both ends included. */
  whole(from: number, to: number): number {
    return from + Math.floor(this.roll() * (to - from + 1));
  }

  pick<T>(all: readonly T[]): T {
    const one = all[Math.floor(this.roll() * all.length)];
    if (one === undefined) throw new Error("Nothing to pick from.");
    return one;
  }

  /** Roughly normal, mean 0, deviation 1. */
  normal(): number {
    return Math.sqrt(-2 * Math.log(1 - this.roll())) * Math.cos(2 * Math.PI * this.roll());
  }
}
