// Care fields of the card: blank means the named default, which the signed sheet prints as a default.
import type { DoseCard } from "#events/card.ts";

export type CareField = keyof DoseCard["care"];

export const DEFAULTS: Readonly<Record<CareField, number>> = {
  /** Common practice, no source. Why wash at all: fruit on the fingers doubled readings and more (Diabetes Care 2011, fruit-peeling study). */
  washSeconds: 20,
  /** Our choice, no source: glucose moves too fast for an older reading to decide a dose. */
  readingAgeMinutes: 15,
  /** 2 units into the air before each injection (quoted in J Diabetes Sci Technol 2010). */
  primeUnits: 2,
  /** Common practice, no source. Teaching after the WHO lets a 30 s wipe dry for 30 s; others say "dry completely". */
  dryingSeconds: 20,
  /** At least 10 s (3 mL pen dribble study, Practical Diabetes 2000); some leaflets say 5 or 6 s. */
  holdSeconds: 10,
  /** 15 g, then 15 min, then a new reading (ADA 2024 leaflet; Canadian and UK leaflets 10 to 15 min). */
  recheckMinutes: 15,
  /** 15 g (ADA 2024 leaflet); UK 15 to 20 g (JBDS 01, 2020). */
  treatGrams: 15,
  /** No spot twice in 4 weeks (New Insulin Delivery Recommendations, Mayo Clin Proc 2016, from summaries). */
  restDays: 28,
  /** 2 inches: common practice, no source. Published values go from 1 cm to one inch. */
  lastSpotMm: 51,
  /** 2 inches or "a fist", the widest of the published distances (1 cm, 2.5 cm, 5 cm). */
  navelMm: 51,
  /** Our choice, no source. */
  askEatenMinutes: 20,
  /** Our choice, no source: at the peak of mealtime insulin an hour is long enough for a low to come and be slept through. */
  watchMinutes: 30,
};

/** The card's own number, or the default and that it is one. */
export function care(card: DoseCard, field: CareField): { readonly value: number; readonly isDefault: boolean } {
  const own = card.care[field] ?? null;
  return own === null ? { value: DEFAULTS[field], isDefault: true } : { value: own, isDefault: false };
}
