// How many spots fit, by published formulas: the measure that the lattice is held against. Lengths in any one unit.

const ROUNDING = 1e-9;
const along = (length: number, d: number): number => (length < 0 ? 0 : Math.floor(length / d + ROUNDING) + 1);

export const squareGrid = (width: number, height: number, d: number): number => along(width, d) * along(height, d);

/** Rows √3/2 d apart, every second one shifted by half of d. */
export const staggeredRows = (width: number, height: number, d: number): number => {
  const rows = along(height, (d * Math.sqrt(3)) / 2);
  return Math.ceil(rows / 2) * along(width, d) + Math.floor(rows / 2) * along(width - d / 2, d);
};

/** No more points than this lie d apart in a convex area: 2A/(√3 d²) + P/(2d) + 1 (a theorem of 1961, from memory). */
export const mostSpots = (area: number, perimeter: number, d: number): number =>
  Math.floor((2 * area) / (Math.sqrt(3) * d * d) + perimeter / (2 * d) + 1 + ROUNDING);
