/** Rules of thumb. They never set a dose: they say when a typed-in card looks unlike the person's daily total. */
import Fraction from "fraction.js";
import { figure } from "./exact.ts";
import type { Figure, GlucoseUnit } from "./shapes.ts";

/** 500 (450 for regular) / daily total: grams per unit. */
export function gramsByThumb(dailyTotal: Figure, rule: "500" | "450" = "500"): Fraction {
  return new Fraction(rule).div(figure(dailyTotal));
}

/** 1800 (1700; 1500 for regular) / daily total in mg/dL, 100 / daily total in mmol/L. */
export function dropByThumb(dailyTotal: Figure, rule: "1800" | "1700" | "1500" | "100"): Fraction {
  return new Fraction(rule).div(figure(dailyTotal));
}

/** Grams per unit outside 3 to 50 are asked about. */
export function oddGrams(gramsPerUnit: Figure): boolean {
  const grams = figure(gramsPerUnit);
  return grams.lt(3) || grams.gt(50);
}

/** A drop per unit outside 10 to 200 mg/dL (0.6 to 11 mmol/L) is asked about. */
export function oddDrop(perUnit: Figure, unit: GlucoseUnit): boolean {
  const drop = figure(perUnit);
  return unit === "mg/dL" ? drop.lt(10) || drop.gt(200) : drop.lt("0.6") || drop.gt(11);
}

/** Half to twice the rule of thumb passes. */
export function unlikeThumb(written: Figure, thumb: Fraction): boolean {
  const value = figure(written);
  return value.lt(thumb.div(2)) || value.gt(thumb.mul(2));
}

/** Below 20 typed as mg/dL or above 33.3 typed as mmol/L is almost surely the other unit; 20 to 33.3 fits both and is asked. */
export function unitOf(value: Figure, unit: GlucoseUnit): "fits" | "ask" | "the other unit" {
  const typed = figure(value);
  if (typed.gte(20) && typed.lte("33.3")) return "ask";
  if (unit === "mg/dL") return typed.lt(20) ? "the other unit" : "fits";
  return typed.gt("33.3") ? "the other unit" : "fits";
}
