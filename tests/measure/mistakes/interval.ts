/** The 95 % interval of a share (Wilson 1927), both ends from 0 to 1. */
export function interval(hits: number, of: number): [number, number] {
  if (of === 0) return [0, 1];
  const z = 1.959964;
  const p = hits / of;
  const middle = (p + (z * z) / (2 * of)) / (1 + (z * z) / of);
  const half = (z / (1 + (z * z) / of)) * Math.sqrt((p * (1 - p)) / of + (z * z) / (4 * of * of));
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}
