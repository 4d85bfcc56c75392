// When an ill day, or the look for ketones, begins.
import type { Happened } from "#events/happened.ts";
import type { IllBecause } from "#events/happened-ill.ts";
import type { Glucose } from "#events/quantity.ts";
import { highBy } from "#rules/glucose/high.ts";
import { ketonesDue } from "#rules/glucose/ketones.ts";
import type { Ctx } from "#walk/context.ts";

export const illBegins = (because: IllBecause): Happened[] => [{ type: "ill began", because }];

/** A meal walk says the card's words for a high reading at the plate, and its dose answers it; walks without one say them here, or the default. */
const saysHere = ({ walk, card }: Ctx, glucose: Glucose): boolean => walk.kind !== "meal" && highBy(card, glucose) !== null;

/** A reading for which the card wants ketones looked for, or has words, in whatever walk it was taken. */
export function afterHigh(c: Ctx, glucose: Glucose): Happened[] {
  if (c.walk.ill || (c.card && c.card.glucoseUnit !== glucose.unit)) return [];
  return ketonesDue(c.card?.ketones, { glucose, word: null }, false) || saysHere(c, glucose) ? illBegins("high reading") : [];
}
