// Do two cards both want to hold on some day? Of two such cards nobody could say which is meant.
import type { DoseCard } from "#events/card.ts";
import { compareDates } from "#rules/time/local.ts";

type Days = Pick<DoseCard, "validFrom" | "validUntil">;

/** "Valid until" still holds on its own day; blank never ends. */
const endsBefore = (a: Days, b: Days): boolean => a.validUntil !== null && compareDates(a.validUntil, b.validFrom) < 0;

export const overlap = (a: Days, b: Days): boolean => !endsBefore(a, b) && !endsBefore(b, a);
