// Insulin into the state of a person: mealtime and background each into its own list, by the walk it was injected in.
import type { Of } from "#events/happened.ts";
import { DAY, MINUTE, type Units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import type { BackgroundTaken, RapidDose } from "./doses.ts";
import { doseAskedAgain } from "./fold-card.ts";
import type { PersonState } from "./state.ts";

/** Doses older than this play no part in any rule: no window, spacing or on-board field may reach further back. */
export const DOSES_KEPT_MS = 2 * DAY;
/** Spots are kept well past the longest rest a card can ask for. */
const USES_KEPT_MS = 200 * DAY;
/** Our choice, no source: the longest window of a background dose is that of one a week. */
const BACKGROUND_KEPT_MS = 9 * DAY;

interface Dosed {
  walk: string | null;
  at: Stamp;
}

/** Old doses are let go by clocks that are sure of their age, and by no other (promise 14). */
const newestFirst = <D extends Dosed>(dose: D, others: readonly D[], keptMs: number, sure: boolean): D[] => [
  dose,
  ...others.filter((d) => (d.walk === null || d.walk !== dose.walk) && (elapsed(d.at, dose.at, sure) ?? 0) < keptMs),
];

const withRapid = (person: PersonState, dose: RapidDose, sure: boolean): PersonState => ({
  ...person,
  doses: newestFirst(dose, person.doses, DOSES_KEPT_MS, sure),
});

const withBackground = (person: PersonState, dose: BackgroundTaken, sure: boolean): PersonState => ({
  ...person,
  backgroundDoses: newestFirst(dose, person.backgroundDoses, BACKGROUND_KEPT_MS, sure),
});

/** Of the walk that is open: a background walk names its insulin, every other one is for a meal. */
function withWalksDose(person: PersonState, dose: Omit<RapidDose, "meal">, sure: boolean): PersonState {
  const opened = person.walk?.background;
  return opened
    ? withBackground(person, { ...dose, insulinId: opened.insulinId, insulinName: opened.insulinName, dose: opened.at }, sure)
    : withRapid(person, { ...dose, meal: person.walk?.meal ?? null }, sure);
}

const penUsed = (person: PersonState, id: string | null, units: number): PersonState => ({
  ...person,
  pens: person.pens.map((p) => (p.pen.id === id ? { ...p, used: p.used + units } : p)),
});

export const withPriming = (person: PersonState): PersonState =>
  penUsed(person, person.walk?.penCheck.pen ?? null, person.card?.card.care.primeUnits ?? 2);

/** A walk in progress looks again at "taken already?", and asks the card again: spacing and insulin on board have changed. */
export function withToldLater(person: PersonState, event: Of<"dose told later">, at: Stamp, sure: boolean): PersonState {
  const { walk } = person;
  const asked = { ...person, walk: walk && !walk.injectOpened ? { ...doseAskedAgain(walk), taken: null } : walk };
  const dose = { walk: null, at, agoMinutes: event.minutesAgo, units: event.units as Units | null, certain: false };
  return event.insulin
    ? withBackground(asked, { ...dose, insulinId: event.insulin.id, insulinName: event.insulin.name, dose: null }, sure)
    : withRapid(asked, { ...dose, meal: null }, sure);
}

/** From the opening on it counts as taken, until somebody says that the needle did not go in. */
export function withNeedleOpened(person: PersonState, walkId: string | null, at: Stamp, sure: boolean): PersonState {
  const { walk, card } = person;
  if (!walk || walkId === null) return person;
  const timing = card?.card.timing;
  const dosed = withWalksDose(person, { walk: walkId, at, agoMinutes: 0, units: walk.dial?.units ?? null, certain: false }, sure);
  const uses = walk.place ? [{ spot: walk.place, at: at.wall }, ...person.uses.filter((u) => at.wall - u.at < USES_KEPT_MS)] : person.uses;
  // Background insulin needs no meal, and whatever bell there is goes on.
  if (walk.background) return { ...dosed, uses };
  const bell = {
    walk: walkId,
    from: at,
    earliestMs: (timing?.earliestMinutes ?? 0) * MINUTE,
    latestMs: (timing?.latestMinutes ?? 15) * MINUTE,
    unansweredMinutes: -1,
  };
  return { ...dosed, uses, bell: walk.eatenFirst ? null : bell };
}

export function withInjected(person: PersonState, event: Of<"injected">, walkId: string | null, at: Stamp, sure: boolean): PersonState {
  if (walkId === null) return person;
  const known = { walk: walkId, at, agoMinutes: 0, units: event.units, certain: event.certain };
  // Not known how much: the pen may have given all that was dialled.
  return penUsed(withWalksDose(person, known, sure), event.pen, event.units ?? person.walk?.dial?.units ?? 0);
}

export function withoutNeedle(person: PersonState, walkId: string | null): PersonState {
  if (walkId === null) return person;
  return {
    ...person,
    doses: person.doses.filter((d) => d.walk !== walkId),
    backgroundDoses: person.backgroundDoses.filter((d) => d.walk !== walkId),
    bell: person.bell?.walk === walkId ? null : person.bell,
    uses: person.uses.slice(1),
  };
}
