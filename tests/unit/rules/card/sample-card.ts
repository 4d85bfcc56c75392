// An invented card and an ordinary noon, for the tests of rules/card. Every test names only what it changes.
import type { Band, CorrectionRule, DoseCard, MealRule } from "#events/card.ts";
import { grams, units } from "#events/quantity.ts";
import { lookUp } from "#rules/card/lookup.ts";
import type { Situation } from "#rules/card/told.ts";

export const CARD: DoseCard = {
  person: "p1",
  insulin: { id: "meal-insulin", name: "insulin lispro", unitsPerMl: 100 },
  glucoseUnit: "mg/dL",
  carbohydrate: "available",
  meals: { breakfast: null, lunch: null, dinner: { kind: "fixed units", units: units(6) }, snack: null },
  rounding: { step: "1", direction: "nearest, half up" },
  largestDose: units(20),
  spacingMinutes: 180,
  windowMinutes: 240,
  onBoard: { model: "not used" },
  bedtime: { from: "21:00", until: "05:00", correction: false },
  afterExercise: "food part only",
  afterLow: "food part only",
  low: { value: 70, counts: "at or below" },
  high: null,
  timing: { when: "before eating", earliestMinutes: 0, latestMinutes: 15 },
  telephonedDose: "never",
  regions: null,
  care: {
    washSeconds: null,
    readingAgeMinutes: null,
    primeUnits: null,
    dryingSeconds: null,
    holdSeconds: null,
    recheckMinutes: null,
    treatGrams: null,
    restDays: null,
    lastSpotMm: null,
    navelMm: null,
    askEatenMinutes: null,
  },
  advice: { tooMuch: null, wrongInsulin: null, missed: null, partDose: null, cannotEat: null, halfEaten: null, ill: null },
  clinic: { name: "The clinic", phone: "555 0100" },
  validFrom: "2026-01-01",
  reviewBy: null,
  validUntil: null,
};

export const NOON: Situation = {
  meal: "dinner",
  reading: { value: 110, unit: "mg/dL" },
  readingWord: null,
  grams: null,
  minuteOfDay: 720,
  today: "2026-03-01",
  recent: [],
  afterLow: false,
  hardExercise: false,
};

export const cardFor = (dinner: MealRule, change: Partial<DoseCard> = {}): DoseCard => ({
  ...CARD,
  ...change,
  meals: { ...CARD.meals, dinner },
});

export const band = (from: number | null, to: number | null, dose: number, call = false): Band => ({ from, to, units: units(dose), call });

export function bandCard(
  bands: Band[],
  foodOnly: number | null,
  change: Partial<DoseCard> & { edges?: "as printed" | "up to the next" } = {},
): DoseCard {
  const { edges = "as printed", ...rest } = change;
  return cardFor({ kind: "bands", bands, edges, foodOnly: foodOnly === null ? null : units(foodOnly) }, rest);
}

type Ratio = Extract<MealRule, { kind: "ratio" }>;

/** Target 120, 50 per unit, linear, nothing taken off below the target, parts not rounded. */
export function ratioCard(
  gramsPerUnit: number,
  correction: Partial<CorrectionRule> | null,
  change: Partial<DoseCard> & { roundParts?: Ratio["roundParts"] } = {},
): DoseCard {
  const { roundParts = "none", ...rest } = change;
  const full: CorrectionRule | null = correction && {
    target: { low: 120, high: 120 },
    perUnit: 50,
    mode: "linear",
    mayReduce: false,
    ...correction,
  };
  return cardFor({ kind: "ratio", gramsPerUnit, correction: full, roundParts }, rest);
}

export const target = (value: number) => ({ low: value, high: value });

export const at = (card: DoseCard, value: number, carbohydrate: number | null = null, change: Partial<Situation> = {}): Situation => ({
  ...NOON,
  reading: { value, unit: card.glucoseUnit },
  grams: carbohydrate === null ? null : grams(carbohydrate),
  ...change,
});

/** The units told, or why the card is silent. */
export function said(card: DoseCard, value: number, carbohydrate: number | null = null, change: Partial<Situation> = {}): number | string {
  const answer = lookUp(card, at(card, value, carbohydrate, change));
  return answer.told ? answer.units : answer.why;
}

/** Food and correction before the last rounding. Fails the test when the card is silent. */
export function parts(
  card: DoseCard,
  value: number,
  carbohydrate: number | null = null,
  change: Partial<Situation> = {},
): [number, number] {
  const answer = lookUp(card, at(card, value, carbohydrate, change));
  if (!answer.told) throw new Error(`Silent: ${answer.why}`);
  return [answer.food, answer.correction];
}
