/** What is left of earlier doses, by the four published curves; t in minutes, never before the dose. */
import Fraction from "fraction.js";
import { falling, figure, halved, nearest, ZERO } from "./exact.ts";
import type { Curve, Earlier, Figure } from "./shapes.ts";

const ONE = new Fraction(1);
const MILLIONTH = new Fraction(1, 1_000_000);

/** The two curves that never end are given to the millionth, so that they do end; the published tables give four digits. */
function toTheMillionth(share: Fraction): Fraction {
  return nearest(share, MILLIONTH);
}

/** The share of a dose still to act `t` minutes after it. */
export function left(curve: Curve, t: Fraction): Fraction {
  switch (curve.by) {
    case "linear": {
      const lasts = figure(curve.lasts);
      return t.gte(lasts) ? ZERO : ONE.sub(t.div(lasts));
    }
    case "one compartment":
      return toTheMillionth(halved(t.div(figure(curve.half))));
    case "two compartments": {
      const x = t.div(figure(curve.tau));
      return toTheMillionth(x.add(1).mul(falling(x)));
    }
    case "triangle": {
      const p = figure(curve.peak);
      const d = figure(curve.lasts);
      if (t.gte(d)) return ZERO;
      if (t.lte(p)) return ONE.sub(t.mul(t).div(p.mul(d)));
      const rest = d.sub(t);
      return rest.mul(rest).div(d.mul(d.sub(p)));
    }
  }
}

const atLeastAgo = (dose: Earlier): Fraction => (dose.minutesAgo === "unknown" ? ZERO : figure(dose.minutesAgo.least));

/** A doubtful dose counts at its worst: the most units it can have been, as lately as it can have been, and with no time at all as just now. */
export function onBoard(curve: Curve, earlier: readonly Earlier[]): Fraction | "unknown" {
  let sum = ZERO;
  for (const dose of earlier) {
    const share = left(curve, atLeastAgo(dose));
    if (share.equals(ZERO)) continue;
    if (dose.units.most === "unknown") return "unknown";
    sum = sum.add(figure(dose.units.most).mul(share));
  }
  return sum;
}

/** Twelve hours are the longest that any review gives mealtime insulin (regular human, 8 to 12 h): later, a blank about it is no question. */
export function mayStillAct(earlier: readonly Earlier[]): boolean {
  return earlier.some((dose) => atLeastAgo(dose).lt(12 * 60));
}

/** Whether some dose is nearer than the gap: at exactly the gap it is not. A time that is not known frees nothing, however short the gap. */
export function isInside(gap: Figure, earlier: readonly Earlier[]): boolean {
  return earlier.some((dose) => dose.minutesAgo === "unknown" || atLeastAgo(dose).lt(figure(gap)));
}
