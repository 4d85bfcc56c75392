// Chance that nobody can foresee.

/** Bytes from the browser's own source; it is there on addresses that are not secure too. */
export const chanceBytes = (n: number): number[] => [...globalThis.crypto.getRandomValues(new Uint8Array(n))];
