// Background insulin by the clock: the printed units, at its hour. It is never blocked by a missing reading, and a low is treated first (promise 1).
import type { BackgroundDose, DoseCard } from "#events/card.ts";
import type { Units } from "#events/quantity.ts";
import { classify } from "#rules/glucose/classify.ts";
import { whyNotInForce } from "./silence.ts";
import type { Silence, Situation } from "./told.ts";

type BackgroundSilence = Extract<
  Silence["why"],
  "reading is LO" | "reading is low" | "day not known" | "not valid yet" | "no longer valid" | "blank field"
>;

export type BackgroundTold =
  | { readonly told: true; readonly units: Units; readonly dose: BackgroundDose; readonly withoutReading: boolean }
  | { readonly told: false; readonly why: BackgroundSilence };

/** A reading in the other unit is no reading here: it cannot be held against the card's low. */
function isLow(card: DoseCard, s: Pick<Situation, "reading">): boolean {
  return s.reading !== null && s.reading.unit === card.glucoseUnit && classify(s.reading, card.low) === "low";
}

/** HI is no reason to leave background insulin out. A blank window means "stop and ask": a second dose could not be known. */
export function lookUpBackground(
  card: DoseCard,
  dose: BackgroundDose,
  s: Pick<Situation, "today" | "reading" | "readingWord">,
): BackgroundTold {
  if (s.readingWord === "LO") return { told: false, why: "reading is LO" };
  if (isLow(card, s)) return { told: false, why: "reading is low" };
  const outOfForce = whyNotInForce(card, s);
  if (outOfForce) return { told: false, why: outOfForce.why };
  if (dose.windowMinutes === null) return { told: false, why: "blank field" };
  return { told: true, units: dose.units, dose, withoutReading: s.reading === null && s.readingWord === null };
}
