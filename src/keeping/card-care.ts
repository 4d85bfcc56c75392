// The care fields and the card's own advice, as they were typed. Blank means the named default (rules/card/care.ts).
import type { DoseCard } from "#events/card.ts";
import type { CareField } from "#rules/card/care.ts";
import type { Reader } from "./reader.ts";
import type { NumberSpan } from "./typed.ts";

/** Wide on purpose: a clinic may differ, a slipped digit may not. Own bounds. */
export const CARE_SPANS: Readonly<Record<CareField, NumberSpan>> = {
  washSeconds: { least: 5, most: 120, decimals: 0 },
  readingAgeMinutes: { least: 1, most: 60, decimals: 0 },
  primeUnits: { least: 0, most: 20, decimals: 1 },
  dryingSeconds: { least: 0, most: 120, decimals: 0 },
  holdSeconds: { least: 3, most: 60, decimals: 0 },
  recheckMinutes: { least: 5, most: 60, decimals: 0 },
  treatGrams: { least: 5, most: 60, decimals: 0 },
  restDays: { least: 1, most: 180, decimals: 0 },
  lastSpotMm: { least: 10, most: 200, decimals: 0 },
  navelMm: { least: 10, most: 200, decimals: 0 },
  askEatenMinutes: { least: 5, most: 180, decimals: 0 },
  watchMinutes: { least: 10, most: 120, decimals: 0 },
};

export const CARE_FIELDS: readonly CareField[] = [
  "washSeconds",
  "readingAgeMinutes",
  "primeUnits",
  "dryingSeconds",
  "holdSeconds",
  "recheckMinutes",
  "treatGrams",
  "restDays",
  "lastSpotMm",
  "navelMm",
  "askEatenMinutes",
  "watchMinutes",
];

export type AdviceField = keyof DoseCard["advice"];
export const ADVICE_FIELDS: readonly AdviceField[] = [
  "tooMuch",
  "wrongInsulin",
  "missed",
  "mealSkipped",
  "partDose",
  "cannotEat",
  "halfEaten",
  "ill",
];

/** Longest text of the card's own words. */
export const MOST_TEXT = 600;

export function careOf(r: Reader): DoseCard["care"] {
  const care = (field: CareField) => r.blankOrNumber(`care.${field}`, CARE_SPANS[field]);
  const watchMinutes = care("watchMinutes");
  return {
    washSeconds: care("washSeconds"),
    readingAgeMinutes: care("readingAgeMinutes"),
    primeUnits: care("primeUnits"),
    dryingSeconds: care("dryingSeconds"),
    holdSeconds: care("holdSeconds"),
    recheckMinutes: care("recheckMinutes"),
    treatGrams: care("treatGrams"),
    restDays: care("restDays"),
    lastSpotMm: care("lastSpotMm"),
    navelMm: care("navelMm"),
    askEatenMinutes: care("askEatenMinutes"),
    // Left out where it is blank, as on cards that were signed before it was asked for.
    ...(watchMinutes === null ? {} : { watchMinutes }),
  };
}

export function adviceOf(r: Reader): DoseCard["advice"] {
  const advice = (field: AdviceField) => r.blankOrText(`advice.${field}`, MOST_TEXT);
  return {
    tooMuch: advice("tooMuch"),
    wrongInsulin: advice("wrongInsulin"),
    missed: advice("missed"),
    mealSkipped: advice("mealSkipped"),
    partDose: advice("partDose"),
    cannotEat: advice("cannotEat"),
    halfEaten: advice("halfEaten"),
    ill: advice("ill"),
  };
}
