// How much of an earlier dose still counts, by the published curve that the card names.
// The curves differ by up to a quarter of a dose at two hours, so none is used unless the card says which.
import type { OnBoardRule } from "#events/card.ts";
import type { Units } from "#events/quantity.ts";
import { type Exact, exact, minus, ONE, over, plus, times, ZERO } from "#rules/glucose/exact.ts";

const nothing = (): Exact => ZERO;

/** 1 - t/D: "one third per hour" for 3 hours, hospital teaching quoted in 1999. */
function linear(hours: number): (t: Exact) => Exact {
  const end = times(exact(hours), exact(60));
  return (t) => (isBefore(t, end) ? minus(ONE, over(t, end)) : ZERO);
}

/**
 * (1 + t/tau) e^(-t/tau): a depot of two compartments, Physiol Meas 2004;25:905, tau 55 min there.
 * The only curve without an exact value: taken to the millionth, so that it is the same on every tablet.
 */
function twoCompartments(minutes: number): (t: Exact) => Exact {
  return (t) => {
    const x = Number(t.top) / Number(t.bottom) / minutes;
    return over(exact(Math.round((1 + x) * Math.exp(-x) * 1e6)), exact(1e6));
  };
}

/** Action that rises in a straight line to a peak and falls in a straight line to the end: the algebra of a triangle of area 1. */
function triangle(peakMinutes: number, endMinutes: number): (t: Exact) => Exact {
  const [peak, end] = [exact(peakMinutes), exact(endMinutes)];
  return (t) => {
    if (!isBefore(t, end)) return ZERO;
    if (!isBefore(peak, t)) return peak.top === 0n ? ONE : minus(ONE, over(times(t, t), times(peak, end)));
    const rest = minus(end, t);
    return over(times(rest, rest), times(end, minus(end, peak)));
  };
}

const isBefore = (a: Exact, b: Exact): boolean => minus(a, b).top < 0n;

function curve(rule: OnBoardRule): (t: Exact) => Exact {
  switch (rule.model) {
    case "not used":
      return nothing;
    case "linear":
      return linear(rule.hours);
    case "two compartments":
      return twoCompartments(rule.minutes);
    case "triangle":
      return triangle(rule.peakMinutes, rule.endMinutes);
  }
}

/** From 1 (all of it) to 0. null, or a time in the future, counts as given just now. */
export function fractionLeft(rule: OnBoardRule, minutesAgo: number | null): Exact {
  const since = minutesAgo === null || minutesAgo < 0 ? ZERO : exact(minutesAgo);
  return curve(rule)(since);
}

/** Units on board of all these doses, or "not known" when one of unknown size still counts. */
export function onBoard(
  rule: OnBoardRule,
  doses: readonly { readonly minutesAgo: number | null; readonly units: Units | null }[],
): Exact | "not known" {
  let sum = ZERO;
  for (const dose of doses) {
    const left = fractionLeft(rule, dose.minutesAgo);
    if (left.top === 0n) continue;
    if (dose.units === null) return "not known";
    sum = plus(sum, times(exact(dose.units), left));
  }
  return sum;
}
