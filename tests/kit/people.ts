// Invented people and cards for tests. The numbers of the cards come from published teaching where a test says so.
import type { DoseCard } from "#events/card.ts";
import type { Pen } from "#events/pen.ts";
import type { Person } from "#events/person.ts";
import { units } from "#events/quantity.ts";

const body = { bellyWidthMm: 340, bellyHeightMm: 200, thighLengthMm: 400, armLengthMm: 370, fingerMm: 18, handMm: 82 };

export const odile: Person = {
  id: "odile",
  name: "Odile",
  shape: "circle",
  language: "en-US",
  glucoseUnit: "mg/dL",
  dialBy: "reads",
  helperOnly: false,
  sayFirst: false,
  usualBand: { low: 80, high: 250 },
  usualMeals: [{ name: "porridge", meal: "breakfast", grams: 40 }],
  body,
  leftOutRegions: [],
};
export const bram: Person = {
  ...odile,
  id: "bram",
  name: "Bram",
  shape: "square",
  language: "en-GB",
  glucoseUnit: "mmol/L",
  usualBand: { low: 4.5, high: 14 },
  usualMeals: [{ name: "toast and egg", meal: "breakfast", grams: 30 }],
};

const blankCare: DoseCard["care"] = {
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
};
const blankAdvice: DoseCard["advice"] = {
  tooMuch: null,
  wrongInsulin: null,
  missed: null,
  mealSkipped: null,
  partDose: null,
  cannotEat: null,
  halfEaten: null,
  ill: null,
};

export const fixedCard: DoseCard = {
  person: "odile",
  insulin: { id: "lispro-100", name: "insulin lispro", unitsPerMl: 100, kind: "rapid analogue" },
  glucoseUnit: "mg/dL",
  carbohydrate: "total",
  meals: {
    breakfast: { kind: "fixed units", units: units(6) },
    lunch: { kind: "fixed units", units: units(5) },
    dinner: { kind: "fixed units", units: units(8) },
    snack: null,
  },
  rounding: { step: "1", direction: "nearest, half up" },
  largestDose: units(20),
  spacingMinutes: 240,
  windowMinutes: 180,
  onBoard: { model: "not used" },
  bedtime: { from: "21:00", until: "05:00", correction: false },
  afterExercise: "food part only",
  afterLow: "food part only",
  low: { value: 70, counts: "at or below" },
  high: { value: 300, advice: "Drink water. Call us if it stays this high for 4 hours." },
  timing: { when: "before eating", earliestMinutes: 5, latestMinutes: 15 },
  telephonedDose: "anyone",
  regions: null,
  care: blankCare,
  advice: blankAdvice,
  clinic: { name: "Harbour Clinic", phone: "555 0142" },
  validFrom: "2026-01-01",
  reviewBy: "2027-01-01",
  validUntil: "2027-06-01",
};

/** Bands of 40 mg/dL from 141, as the inpatient scale of 2017 prints them (facts E11), food part 4. */
export const bandsCard: DoseCard = {
  ...fixedCard,
  meals: {
    ...fixedCard.meals,
    breakfast: {
      kind: "bands",
      edges: "as printed",
      foodOnly: units(4),
      bands: [
        { from: 71, to: 140, units: units(4), call: false },
        { from: 141, to: 180, units: units(6), call: false },
        { from: 181, to: 220, units: units(8), call: false },
        { from: 221, to: 400, units: units(10), call: false },
      ],
    },
  },
};

export const ratioCard: DoseCard = {
  ...fixedCard,
  person: "bram",
  glucoseUnit: "mmol/L",
  carbohydrate: "available",
  low: { value: 4, counts: "below" },
  high: { value: 15, advice: "Test for ketones. Call us if they are 1.5 or more." },
  meals: {
    breakfast: {
      kind: "ratio",
      gramsPerUnit: 10,
      correction: { target: { low: 6, high: 6 }, perUnit: 2.5, mode: "linear", mayReduce: false },
      roundParts: "none",
    },
    lunch: {
      kind: "ratio",
      gramsPerUnit: 12,
      correction: { target: { low: 6, high: 6 }, perUnit: 2.5, mode: "linear", mayReduce: false },
      roundParts: "none",
    },
    dinner: {
      kind: "ratio",
      gramsPerUnit: 10,
      correction: { target: { low: 6, high: 6 }, perUnit: 2.5, mode: "linear", mayReduce: false },
      roundParts: "none",
    },
    snack: null,
  },
  rounding: { step: "0.5", direction: "nearest, half up" },
};

const pen = (over: Partial<Pen>): Pen => ({
  id: "odile-meal",
  person: "odile",
  insulinId: "lispro-100",
  insulinName: "insulin lispro",
  kind: "mealtime",
  cloudy: false,
  mark: "one rubber band",
  unitsPerClick: "1",
  unitsWhenOpened: 300,
  openedOn: "2026-06-01",
  inUseDays: 28,
  expiresOn: "2027-03-31",
  ...over,
});
export const odilePen = pen({});
export const odileNight = pen({
  id: "odile-night",
  insulinId: "glargine-100",
  insulinName: "insulin glargine",
  kind: "long-acting",
  mark: "no band",
});
export const bramPen = pen({ id: "bram-meal", person: "bram", mark: "a wooden bead", unitsPerClick: "0.5" });
