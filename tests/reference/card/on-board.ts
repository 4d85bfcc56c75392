/** What is left of earlier doses, by the four published curves; t in minutes, never before the dose. */
import Fraction from "fraction.js";
import { falling, figure, halved, ZERO } from "./exact.ts";
import type { Curve, Earlier } from "./shapes.ts";

const ONE = new Fraction(1);

/** The share of a dose still to act `t` minutes after it. */
export function left(curve: Curve, t: Fraction): Fraction {
  switch (curve.by) {
    case "linear": {
      const lasts = figure(curve.lasts);
      return t.gte(lasts) ? ZERO : ONE.sub(t.div(lasts));
    }
    case "one compartment":
      return halved(t.div(figure(curve.half)));
    case "two compartments": {
      const x = t.div(figure(curve.tau));
      return x.add(1).mul(falling(x));
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

/** A doubtful dose counts at its worst: the most units it can have been, as lately as it can have been. */
export function onBoard(curve: Curve, earlier: readonly Earlier[]): Fraction {
  return earlier.reduce((sum, dose) => sum.add(figure(dose.units.most).mul(left(curve, figure(dose.minutesAgo.least)))), ZERO);
}

/** Minutes since the last rapid dose, at its worst; null where there was none. A dose of nothing is no dose. */
export function sinceLast(earlier: readonly Earlier[]): Fraction | null {
  const times = earlier.filter((dose) => figure(dose.units.most).gt(ZERO)).map((dose) => figure(dose.minutesAgo.least));
  return times.reduce<Fraction | null>((least, time) => (least === null || time.lt(least) ? time : least), null);
}
