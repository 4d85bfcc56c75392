// Is a reading high: by the card's field, or where it was left blank by a careful default.
import type { DoseCard } from "#events/card.ts";
import type { Glucose } from "#events/quantity.ts";

/** The ADA's sick-day text has ketones looked for above this number. */
export const HIGH_DEFAULT: Readonly<Record<Glucose["unit"], number>> = { "mg/dL": 240, "mmol/L": 13.3 };

/** Whose number it reaches; null: it is not high. A card in another unit says nothing of it. */
export function highBy(card: DoseCard | null, glucose: Glucose | null): "card" | "default" | null {
  if (!glucose || (card && card.glucoseUnit !== glucose.unit)) return null;
  if (card?.high) return glucose.value >= card.high.value ? "card" : null;
  return glucose.value >= HIGH_DEFAULT[glucose.unit] ? "default" : null;
}
