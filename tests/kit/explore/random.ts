// Chance with a seed (mulberry32, a public-domain generator, from memory): the same seed makes the same run.
export interface Chance {
  /** From 0 up to, not with, n. */
  below(n: number): number;
  pick<T>(from: readonly T[]): T;
}

export function chance(seed: number): Chance {
  let a = seed >>> 0;
  const next = () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = a;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  const below = (n: number) => Math.floor(next() * n);
  return {
    below,
    pick: (from) => {
      const found = from[below(from.length)];
      if (found === undefined) throw new RangeError("nothing to pick from");
      return found;
    },
  };
}
