// What stops the card from answering before any arithmetic: promises 1 and 2, and fields the clinic left blank.
import type { DoseCard } from "#events/card.ts";
import type { Glucose } from "#events/quantity.ts";
import { classify } from "#rules/glucose/classify.ts";
import { compareDates } from "#rules/time/local.ts";
import type { Silence, Situation } from "./told.ts";

/** The reading in the card's unit, or why there is none to dose by. Fixed units too are never told on a low, a missing reading or a word. */
export function usableReading(card: DoseCard, s: Situation): Glucose | Silence {
  if (s.readingWord === "LO") return { why: "reading is LO" };
  if (s.readingWord === "HI") return { why: "reading is HI" };
  if (s.reading === null) return { why: "no reading" };
  if (s.reading.unit !== card.glucoseUnit) return { why: "other unit" };
  return classify(s.reading, card.low) === "low" ? { why: "reading is low" } : s.reading;
}

/** "Valid until" still holds on its own day. */
export function whyNotInForce(
  card: DoseCard,
  s: Pick<Situation, "today">,
): Extract<Silence, { why: "day not known" | "not valid yet" | "no longer valid" }> | null {
  if (s.today === null) return { why: "day not known" };
  if (compareDates(s.today, card.validFrom) < 0) return { why: "not valid yet", from: card.validFrom };
  if (card.validUntil !== null && compareDates(s.today, card.validUntil) > 0) return { why: "no longer valid", until: card.validUntil };
  return null;
}

/** Blank means "stop and ask the clinic". After a low and after exercise only when that is how it is today. */
export function whyAsk(card: DoseCard, s: Situation): Silence | null {
  if (card.windowMinutes === null) return { why: "blank field", field: "windowMinutes" };
  if (s.afterLow && card.afterLow === null) return { why: "blank field", field: "afterLow" };
  if (s.afterLow && card.afterLow === "ask") return { why: "after a low: ask" };
  if (s.hardExercise && card.afterExercise === null) return { why: "blank field", field: "afterExercise" };
  if (s.hardExercise && card.afterExercise === "ask") return { why: "after exercise: ask" };
  return null;
}
