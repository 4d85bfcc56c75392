/** The chance of at most `wrong` of `n`, each with chance p. */
function atMost(wrong: number, n: number, p: number): number {
  let term = (1 - p) ** n;
  let sum = term;
  for (let k = 1; k <= wrong; k++) {
    term *= ((n - k + 1) / k) * (p / (1 - p));
    sum += term;
  }
  return sum;
}

/** One-sided 95 % upper bound of a share by Clopper and Pearson: the share at which so few would be seen only one time in twenty. 0 of n gives about 3/n. */
export function upper95(wrong: number, n: number): number {
  if (n === 0 || wrong >= n) return 1;
  let low = wrong / n;
  let high = 1;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (atMost(wrong, n, middle) > 0.05) low = middle;
    else high = middle;
  }
  return high;
}

/** The value below which this share of them lies. */
export function percentile(all: readonly number[], share: number): number {
  if (all.length === 0) throw new Error("Nothing was measured.");
  const sorted = all.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}
