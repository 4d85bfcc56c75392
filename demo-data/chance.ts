// Chance that comes out the same every time: a seeded stream of numbers, so that the demo of one day is one demo.
// The mixing is the widely copied 32-bit generator "mulberry32", the seed a 32-bit FNV-1a of a text; both written from memory, no source at hand.
// Good enough to scatter kitchen times, good for nothing that must not be guessed.

export class Chance {
  private state: number;

  /** The same text gives the same stream. A text for each act keeps one act's draws from shifting the next one's. */
  constructor(seed: string) {
    let hash = 0x811c9dc5;
    for (let i = 0; i < seed.length; i++) hash = Math.imul(hash ^ seed.charCodeAt(i), 0x01000193);
    this.state = hash | 0;
  }

  /** 0 to below 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x1_0000_0000;
  }

  between(least: number, most: number): number {
    return least + this.next() * (most - least);
  }

  /** A whole number, both ends included. */
  whole(least: number, most: number): number {
    return Math.floor(this.between(least, most + 1));
  }

  happens(share: number): boolean {
    return this.next() < share;
  }

  /** Mean 0, standard deviation 1, never beyond 6: twelve uniform draws added. */
  bell(): number {
    let sum = -6;
    for (let i = 0; i < 12; i++) sum += this.next();
    return sum;
  }
}
