// The checks that the promises stand on, one function each, so that each can be taken out once and seen to be missed.
import type { DoseCard } from "#events/card.ts";
import { type Glucose, MINUTE, type Units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { lookUpBackground } from "#rules/card/background.ts";
import { care as careOf } from "#rules/card/care.ts";
import { COULD_STILL_ACT_MINUTES } from "#rules/card/correction-limit.ts";
import { lookUp, type Situation } from "#rules/card/lookup.ts";
import { classify } from "#rules/glucose/classify.ts";
import { whyNotPen } from "#rules/pen/check.ts";
import { elapsed, oldestAge } from "#rules/time/elapsed.ts";
import { backgroundWindowOf } from "./background-window.ts";
import { atLeastAgo, logVouches, totalAgo, type Window } from "./guards-window.ts";
import type { HouseState, PersonState, Walk } from "./state.ts";
import type { ReadingAnswer } from "./walk-parts.ts";

function windowOf(house: HouseState, me: PersonState, now: Stamp): Window {
  const minutes = me.card?.card.windowMinutes ?? null;
  // Left blank, the card tells no dose; a dose that may still act is said all the same.
  const windowMs = (minutes ?? COULD_STILL_ACT_MINUTES) * MINUTE;
  for (const dose of me.doses) {
    const ago = totalAgo(dose, now, house.doubt === null);
    if (ago.atLeastMs === null || ago.atLeastMs < windowMs)
      return { is: "a dose inside", minutesAgo: ago.minutes, units: dose.units, certain: dose.certain };
  }
  return minutes !== null && logVouches(house, windowMs, now) ? { is: "clear" } : { is: "not known" };
}

function recentDoses(me: PersonState, now: Stamp, sure: boolean): Situation["recent"] {
  return me.doses.map((dose) => {
    const ms = elapsed(dose.at, now, sure);
    const minutesAgo = ms === null ? null : Math.floor(ms / MINUTE) + atLeastAgo(dose);
    return { minutesAgo, units: dose.units };
  });
}

/** Rows nobody could read and a clock in doubt count as a dose just now, of unknown size. */
function possibleDoses(house: HouseState, now: Stamp): Situation["recent"] {
  const DAY_BACK = 24 * 60 * MINUTE;
  const seen = house.unreadable.filter((wall) => wall === null || now.wall - wall < DAY_BACK);
  return seen.map((wall) => ({ minutesAgo: wall === null ? null : Math.max(0, Math.floor((now.wall - wall) / MINUTE)), units: null }));
}

/**
 * Our choice, no source: a meal at table with what goes before and after it. A dose for a meal that was eaten first goes by the reading from
 * before it, since that is the one that the card means; after so long it goes by none.
 */
const EATEN_FIRST_MINUTES = 90;

/** Too old to go by? At its worst: the monotonic clock may have stopped while the tablet slept. Not known counts as old. */
function readingIsOld(reading: ReadingAnswer, card: DoseCard, now: Stamp, sure: boolean, eatenFirst: boolean): boolean {
  const ms = oldestAge(reading.at, now, sure);
  const care = careOf(card, "readingAgeMinutes").value;
  return ms === null || ms > (eatenFirst ? Math.max(EATEN_FIRST_MINUTES, care) : care) * MINUTE;
}

/** Without a card: at or below 70 mg/dL (ADA 2017 wording) or below 4.0 mmol/L (UK), the more careful of each. */
function isLow(glucose: Glucose, card: DoseCard | null): boolean {
  if (card && card.glucoseUnit === glucose.unit) return classify(glucose, card.low) === "low";
  const careful: DoseCard["low"] = glucose.unit === "mg/dL" ? { value: 70, counts: "at or below" } : { value: 4, counts: "below" };
  return classify(glucose, careful) === "low";
}

const dialFits = (dialled: Units, told: Units): boolean => dialled === told;

/** Is this number to be asked for a second time, digit by digit (promise 8)? */
function digitsAgain(slot: string, via: string, outsideUsualBand: boolean): boolean {
  if (slot === "grams" || slot === "servings") return outsideUsualBand;
  if (slot === "reading" || slot === "recheck after low" || slot === "reading when ill") return outsideUsualBand;
  if (slot === "dial") return via === "voice";
  return slot === "telephoned number";
}

/** Nothing may be injected while one of these holds; checked when the step is opened, whatever was checked before. */
function whyNotInject(walk: Walk, told: boolean): "no dose told" | "dial" | "pen" | "spot" | null {
  if (!told) return "no dose told";
  if (!walk.dial || !walk.told || walk.dial.units !== walk.told.units) return "dial";
  if (!walk.penCheck.pen || !walk.penCheck.primed) return "pen";
  if (!walk.place) return "spot";
  return null;
}

export const GUARDS = {
  windowOf,
  backgroundWindowOf,
  recentDoses,
  possibleDoses,
  readingIsOld,
  isLow,
  lookUp,
  lookUpBackground,
  whyNotPen,
  dialFits,
  digitsAgain,
  whyNotInject,
  /** A number given is read back before it is used. */
  readsBack: true,
  /** A mealtime dose is not told twice on "I do not know". */
  unknownEnds: true,
};
export type Guards = typeof GUARDS;
