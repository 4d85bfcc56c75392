// Was this background dose taken already? The same promises as for mealtime insulin (10 and 14), by its own doses and its own window.
import type { BackgroundDose, DoseCard } from "#events/card.ts";
import { DAY, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { BackgroundTaken } from "./doses.ts";
import { logVouches, totalAgo, type Window } from "./guards-window.ts";
import type { HouseState, PersonState } from "./state.ts";

/** Left blank, or of an insulin that the card no longer names: no window of a card is longer than a day. */
const LONGEST_MINUTES = 24 * 60;

/** Minutes in which another counts as a second one: those printed for the dose that was taken; the longest of its insulin where nobody knows which. */
function minutesAfter(card: DoseCard, taken: BackgroundTaken): number {
  const same = (card.background ?? []).filter((d) => d.insulin.id === taken.insulinId);
  const printed = same.find((d) => d.at === taken.dose);
  const among = printed ? [printed] : same;
  return among.length === 0 ? LONGEST_MINUTES : Math.max(...among.map((d) => d.windowMinutes ?? LONGEST_MINUTES));
}

/** A dose of another insulin that stands on the card is a dose of its own; one that the card no longer names may have been this one's forerunner. */
const counts = (card: DoseCard, dose: BackgroundDose, taken: BackgroundTaken): boolean =>
  taken.insulinId === dose.insulin.id || !(card.background ?? []).some((d) => d.insulin.id === taken.insulinId);

export function backgroundWindowOf(house: HouseState, me: PersonState, dose: BackgroundDose, now: Stamp): Window {
  const card = me.card?.card;
  if (!card) return { is: "not known" };
  const sure = house.doubt === null;
  for (const taken of me.backgroundDoses.filter((d) => counts(card, dose, d))) {
    const ago = totalAgo(taken, now, sure);
    if (ago.atLeastMs === null || ago.atLeastMs < minutesAfter(card, taken) * MINUTE)
      return { is: "a dose inside", minutesAgo: ago.minutes, units: taken.units, certain: taken.certain };
  }
  const longest = Math.max(
    ...(card.background ?? []).filter((d) => d.insulin.id === dose.insulin.id).map((d) => d.windowMinutes ?? LONGEST_MINUTES),
  );
  if (dose.windowMinutes === null) return { is: "not known" };
  return logVouches(house, Math.min(longest * MINUTE, DAY), now) ? { is: "clear" } : { is: "not known" };
}
