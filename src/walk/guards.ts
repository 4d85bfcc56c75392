// The checks that the promises stand on, one function each, so that each can be taken out once and seen to be missed.
import type { DoseCard } from "#events/card.ts";
import { DAY, type Glucose, MINUTE, type Units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { care as careOf } from "#rules/card/care.ts";
import { COULD_STILL_ACT_MINUTES } from "#rules/card/correction-limit.ts";
import { lookUp, type Situation } from "#rules/card/lookup.ts";
import { classify } from "#rules/glucose/classify.ts";
import { whyNotPen } from "#rules/pen/check.ts";
import { elapsed, oldestAge } from "#rules/time/elapsed.ts";
import type { RapidDose } from "./doses.ts";
import type { HouseState, PersonState, Walk } from "./state.ts";
import type { ReadingAnswer } from "./walk-parts.ts";

/** Is a second mealtime dose possible? Doubt counts as possible (promises 10 and 14). */
export type Window =
  | { is: "clear" }
  | { is: "a dose inside"; minutesAgo: number | null; units: Units | null; certain: boolean }
  | { is: "not known" };

/** Our choice, no source: hours are told roughly, so "three hours ago" is taken as two at least. */
const TOLD_ROUGHLY_MINUTES = 60;

/** Minutes that a dose lay back at least when it was told: a time that nobody knows is still not later than the telling. */
const atLeastAgo = (dose: RapidDose): number => Math.max(0, (dose.agoMinutes ?? 0) - (dose.walk === null ? TOLD_ROUGHLY_MINUTES : 0));

function windowOf(house: HouseState, me: PersonState, now: Stamp): Window {
  const sure = house.doubt === null;
  const minutes = me.card?.card.windowMinutes ?? null;
  // Left blank, the card tells no dose; a dose that may still act is said all the same.
  const windowMs = (minutes ?? COULD_STILL_ACT_MINUTES) * MINUTE;
  for (const dose of me.doses) {
    const ms = elapsed(dose.at, now, sure);
    const total = ms === null ? null : ms + atLeastAgo(dose) * MINUTE;
    if (total === null || total < windowMs) {
      return {
        is: "a dose inside",
        minutesAgo: ms === null || dose.agoMinutes === null ? null : Math.floor(ms / MINUTE) + dose.agoMinutes,
        units: dose.units,
        certain: dose.certain,
      };
    }
  }
  if (minutes === null) return { is: "not known" };
  if (!sure || house.clearSince === null || now.wall - house.clearSince < windowMs) return { is: "not known" };
  // A day without any entry: a dose may have been taken elsewhere.
  if (house.last && now.wall - house.last.wall > DAY) return { is: "not known" };
  if (house.unreadable.some((wall) => wall === null || now.wall - wall < windowMs)) return { is: "not known" };
  return { is: "clear" };
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
  if (slot === "reading" || slot === "recheck after low") return outsideUsualBand;
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
  recentDoses,
  possibleDoses,
  readingIsOld,
  isLow,
  lookUp,
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
