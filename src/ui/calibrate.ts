// Finding the length of a millimetre by eye: the outline is made wider or narrower until a bank card covers it.
// Steps start coarse and halve at each change of direction, so that few presses reach a fine match.

/** A bank card: ISO/IEC 7810, size ID-1. */
export const cardMm = { width: 85.6, height: 54 };

export interface Fit {
  /** CSS pixels in one millimetre. */
  mmPx: number;
  /** The next step, as a share of the width. */
  step: number;
  last: "wider" | "narrower" | null;
}

const coarse = 0.04;
const fine = 0.0025;
/** Wider than any tablet we know of; keeps the buttons on the glass. */
const least = 2.5;
const most = 16;

export function startFit(mmPx: number): Fit {
  return { mmPx: clamp(mmPx), step: coarse, last: null };
}

export function nextFit(fit: Fit, way: "wider" | "narrower"): Fit {
  const turned = fit.last !== null && fit.last !== way;
  const step = turned ? Math.max(fine, fit.step / 2) : fit.step;
  const factor = way === "wider" ? 1 + step : 1 / (1 + step);
  return { mmPx: clamp(fit.mmPx * factor), step, last: way };
}

function clamp(mmPx: number): number {
  return Math.min(most, Math.max(least, mmPx));
}
