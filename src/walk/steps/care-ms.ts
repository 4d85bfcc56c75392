// Care fields of the card as milliseconds, with the named defaults of rules/card/care.ts.
import type { DoseCard } from "#events/card.ts";
import { MINUTE } from "#events/quantity.ts";
import { care, DEFAULTS } from "#rules/card/care.ts";

type CareField = keyof DoseCard["care"];

const value = (card: DoseCard | null, field: CareField): number => (card ? care(card, field).value : DEFAULTS[field]);

export const careMs = (card: DoseCard | null, field: "washSeconds" | "dryingSeconds" | "holdSeconds"): number => value(card, field) * 1000;
export const careMinutesMs = (
  card: DoseCard | null,
  field: "recheckMinutes" | "readingAgeMinutes" | "askEatenMinutes" | "watchMinutes",
): number => value(card, field) * MINUTE;
export const careNumber = value;
