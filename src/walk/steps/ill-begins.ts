// When an ill day, or the look for ketones, begins.
import type { Happened } from "#events/happened.ts";
import type { IllBecause } from "#events/happened-ill.ts";
import type { Glucose } from "#events/quantity.ts";
import { ketonesDue } from "#rules/glucose/ketones.ts";
import type { Ctx } from "#walk/context.ts";

export const illBegins = (because: IllBecause): Happened[] => [{ type: "ill began", because }];

/** A reading for which the card wants ketones looked for, in whatever walk it was taken. */
export function afterHigh(c: Ctx, glucose: Glucose): Happened[] {
  const rule = c.card?.glucoseUnit === glucose.unit ? c.card.ketones : undefined;
  return ketonesDue(rule, { glucose, word: null }, false) && !c.walk.ill ? illBegins("high reading") : [];
}
