// How much of a correction the card leaves: promises 4 and 14. The food part is never asked about here.
import type { DoseCard } from "#events/card.ts";
import { type Exact, ZERO } from "#rules/glucose/exact.ts";
import { isBetween } from "#rules/time/local.ts";
import { mayCorrect } from "./insulin-kind.ts";
import { onBoard } from "./on-board.ts";
import type { BlankField, NoCorrectionBecause, RecentDose, Situation } from "./told.ts";

export type CorrectionLimit =
  | { readonly leaves: "none"; readonly because: readonly NoCorrectionBecause[]; readonly byDefault: boolean }
  | { readonly leaves: "all but"; readonly onBoard: Exact }
  | { readonly leaves: "ask"; readonly blank: BlankField };

/** Blank bedtime: avoid rapid-acting insulin at bedtime in older adults (ADA Standards, section 13, simplification figure). The hours are ours, no source. */
export const BEDTIME = { from: "21:00", until: "05:00", correction: false };

/**
 * A blank field matters only while an earlier dose could still act. 12 hours is the longest printed for mealtime insulin (regular human insulin,
 * 8 to 12 h, a review of 2009); rapid analogues end within 6.
 */
export const COULD_STILL_ACT_MINUTES = 12 * 60;

const couldStillAct = (dose: RecentDose): boolean => dose.minutesAgo === null || dose.minutesAgo < COULD_STILL_ACT_MINUTES;

function atBedtime(card: DoseCard, s: Situation): boolean {
  const night = card.bedtime ?? BEDTIME;
  return !night.correction && s.minuteOfDay !== null && isBetween(s.minuteOfDay, night.from, night.until);
}

/** The card's own timing, or "after eating" where the card says so after a low. */
export const timingOf = (card: DoseCard, s: Situation): DoseCard["timing"]["when"] =>
  s.afterLow && card.afterLow === "inject after eating" ? "after eating" : card.timing.when;

/** At the very minute that the spacing names a correction is free again. */
function insideSpacing(card: DoseCard, s: Situation): boolean {
  const spacing = card.spacingMinutes;
  return spacing !== null && s.recent.some((dose) => dose.minutesAgo === null || dose.minutesAgo < spacing);
}

/**
 * Asked only when there is a correction above 0. What leaves it off for certain comes before what the card left blank:
 * at bedtime no correction is told, and then a blank spacing stops nobody from eating.
 */
export function limitOf(card: DoseCard, s: Situation): CorrectionLimit {
  const because: NoCorrectionBecause[] = [];
  // A doubtful clock counts as bedtime and as inside the spacing, whatever the card says of either.
  if (s.minuteOfDay === null) because.push("clock doubtful");
  // By the time the insulin goes in, the glucose is another one: only the food is still known.
  if (s.eatenFirst || timingOf(card, s) === "after eating") because.push("eaten first");
  if (s.afterLow && card.afterLow === "food part only") because.push("after a low");
  if (s.hardExercise && card.afterExercise === "food part only") because.push("after exercise");
  if (insideSpacing(card, s)) because.push("spacing");
  if (!mayCorrect(card)) because.push("this insulin");
  const bedtime = atBedtime(card, s);
  if (bedtime) because.push("bedtime");
  if (because.length > 0) return { leaves: "none", because, byDefault: bedtime && card.bedtime === null };

  const acting = s.recent.some(couldStillAct);
  if (card.spacingMinutes === null && acting) return { leaves: "ask", blank: "spacingMinutes" };
  if (card.onBoard === null) return acting ? { leaves: "ask", blank: "onBoard" } : { leaves: "all but", onBoard: ZERO };
  const acts = onBoard(card.onBoard, s.recent);
  if (acts === "not known") return { leaves: "none", because: ["insulin on board"], byDefault: false };
  return { leaves: "all but", onBoard: acts };
}
