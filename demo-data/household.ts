// The demo household: two invented people, their invented cards and pens. Nothing here belongs to anybody.
// The numbers are believable, not prescribed: see "Demo household" in DEVELOPERS.md.
import type { DoseCard } from "#events/card.ts";
import type { Pen } from "#events/pen.ts";
import type { Household, Person } from "#events/person.ts";
import { units } from "#events/quantity.ts";

export const demoHousehold: Household = {
  kind: "demo",
  emergencyNumber: "911",
  country: "US",
  quietHours: { from: "22:30", until: "06:30" },
  // Ines comes home in the evening.
  hearer: { who: "between", from: "17:00", until: "08:00" },
};

/** Ines looks after both. Her PIN opens the demo's drawer to everybody; its hash is by devices/pin.ts. */
export const DEMO_PIN = "2580";
export const demoKeeper = {
  id: "ines",
  name: "Ines",
  pin: {
    salt: "0b2fd9cb65bd133aa051e2bffc8475b4",
    hash: "203ad2e0ae2daa17d19b3795ef39a811f50365b4c9ba172be0b982a38caa0f0e",
    rounds: 600000,
  },
};

export const marta: Person = {
  id: "marta",
  name: "Marta",
  shape: "circle",
  language: "en-US",
  glucoseUnit: "mg/dL",
  dialBy: "reads",
  helperOnly: false,
  sayFirst: false,
  usualBand: { low: 80, high: 260 },
  usualMeals: [],
  mealHours: [
    { meal: "breakfast", from: "07:00", until: "09:30" },
    { meal: "lunch", from: "11:45", until: "14:30" },
    { meal: "dinner", from: "17:15", until: "19:30" },
  ],
  readingTimes: ["22:00"],
  body: { bellyWidthMm: 360, bellyHeightMm: 220, thighLengthMm: 390, armLengthMm: 360, fingerMm: 17, handMm: 79 },
  leftOutRegions: ["buttock"],
};

export const henk: Person = {
  id: "henk",
  name: "Henk",
  shape: "square",
  language: "en-GB",
  glucoseUnit: "mmol/L",
  dialBy: "reads",
  helperOnly: false,
  sayFirst: false,
  usualBand: { low: 4.5, high: 14 },
  usualMeals: [
    { name: "toast and egg", meal: "breakfast", grams: 30 },
    { name: "soup and bread", meal: "lunch", grams: 45 },
    { name: "potatoes and beans", meal: "dinner", grams: 60 },
  ],
  mealHours: [
    { meal: "breakfast", from: "07:30", until: "10:00" },
    { meal: "lunch", from: "12:00", until: "15:00" },
    { meal: "dinner", from: "17:45", until: "20:00" },
  ],
  body: { bellyWidthMm: 380, bellyHeightMm: 230, thighLengthMm: 420, armLengthMm: 380, fingerMm: 19, handMm: 88 },
  leftOutRegions: [],
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

const shared = {
  carbohydrate: "total",
  spacingMinutes: 240,
  windowMinutes: 150,
  onBoard: { model: "not used" },
  bedtime: { from: "21:30", until: "05:00", correction: false },
  afterExercise: "food part only",
  afterLow: "food part only",
  telephonedDose: "anyone",
  regions: null,
  care: blankCare,
} as const;

const advice: DoseCard["advice"] = {
  tooMuch: null,
  wrongInsulin: null,
  mealSkipped: null,
  missed: "Do not take it later. Measure before the next meal.",
  partDose: "Do not add to it. Measure again in 2 hours.",
  cannotEat: "Take 15 grams of sugar and measure every hour for 4 hours.",
  halfEaten: "Measure in 1 hour. Keep sugar within reach.",
  ill: "Measure every 4 hours. Never stop the long-acting insulin. Call us.",
};

const sickDay: DoseCard["sickDay"] = {
  rules: ["Measure your glucose every 4 hours.", "Drink a glass of water each hour.", "Eat toast or soup if you can."],
  callWhen: "Call us if food comes up for 4 hours.",
};

/** Validity is set around the day the demo is opened, so that the card is in force. */
export interface CardDays {
  validFrom: string;
  reviewBy: string;
  validUntil: string;
}

export const martaCard = (days: CardDays): DoseCard => ({
  ...shared,
  ...days,
  person: "marta",
  insulin: { id: "lispro-100", name: "insulin lispro", unitsPerMl: 100, kind: "rapid analogue" },
  glucoseUnit: "mg/dL",
  meals: {
    breakfast: bands(5),
    lunch: bands(4),
    dinner: bands(6),
    snack: null,
  },
  rounding: { step: "1", direction: "nearest, half up" },
  largestDose: units(14),
  low: { value: 70, counts: "at or below" },
  high: { value: 300, advice: "Drink water. Call us if it is above 300 two times in a row." },
  ketones: {
    test: "urine words",
    from: null,
    whenIll: true,
    lines: [
      { from: 0, says: "Test again in 4 hours.", call: "no" },
      { from: 2, says: "Drink a glass of water each hour.", call: "clinic" },
      { from: 4, says: null, call: "emergency" },
    ],
  },
  sickDay,
  timing: { when: "before eating", earliestMinutes: 5, latestMinutes: 15 },
  advice,
  clinic: { name: "Linden Street Clinic", phone: "555 0123" },
});

/** Her card of the first month: one unit more for breakfast. */
export function martaFirstCard(days: CardDays): DoseCard {
  const now = martaCard(days);
  return { ...now, meals: { ...now.meals, breakfast: bands(6) } };
}

/** Rows of 50 mg/dL above 150, two units a row: an invented table in the shape clinics print. */
function bands(food: number) {
  return {
    kind: "bands" as const,
    edges: "up to the next" as const,
    foodOnly: units(food),
    bands: [
      { from: 71, to: 150, units: units(food), call: false },
      { from: 151, to: 200, units: units(food + 1), call: false },
      { from: 201, to: 250, units: units(food + 2), call: false },
      { from: 251, to: 300, units: units(food + 3), call: false },
      { from: 301, to: 400, units: units(food + 4), call: true },
    ],
  };
}

export const henkCard = (days: CardDays): DoseCard => ({
  ...shared,
  ...days,
  person: "henk",
  insulin: { id: "aspart-100", name: "insulin aspart", unitsPerMl: 100, kind: "rapid analogue" },
  glucoseUnit: "mmol/L",
  meals: { breakfast: ratio(8), lunch: ratio(10), dinner: ratio(10), snack: ratio(12) },
  rounding: { step: "0.5", direction: "down" },
  largestDose: units(16),
  low: { value: 4, counts: "below" },
  high: { value: 15, advice: "Test for ketones. Call us if they are 1.5 or more." },
  ketones: {
    test: "blood",
    from: 15,
    whenIll: true,
    lines: [
      { from: 0, says: "Test again in 4 hours if you are still high.", call: "no" },
      { from: 0.6, says: "Drink a glass of water each hour.", call: "no" },
      { from: 1.5, says: "This needs us today.", call: "clinic" },
      { from: 3, says: null, call: "emergency" },
    ],
  },
  sickDay,
  timing: { when: "with the first bite", earliestMinutes: 0, latestMinutes: 10 },
  advice,
  clinic: { name: "Mill Lane Surgery", phone: "555 0177" },
});

function ratio(gramsPerUnit: number) {
  return {
    kind: "ratio" as const,
    gramsPerUnit,
    correction: { target: { low: 5, high: 7 }, perUnit: 2.5, mode: "linear" as const, mayReduce: false },
    roundParts: "none" as const,
  };
}

const penInUse = { cloudy: false, unitsWhenOpened: 300 } as const;

/** The pens of the house by name, each with a mark for the fingers. In-use days: 28 for lispro, aspart and glargine 100 units/mL, 42 for detemir (leaflets as tabled in J Diabetes Sci Technol). */
export const PENS = {
  "marta-meal": {
    ...penInUse,
    person: "marta",
    insulinId: "lispro-100",
    insulinName: "insulin lispro",
    kind: "mealtime",
    mark: "one rubber band",
    unitsPerClick: "1",
    inUseDays: 28,
  },
  "marta-night": {
    ...penInUse,
    person: "marta",
    insulinId: "glargine-100",
    insulinName: "insulin glargine",
    kind: "long-acting",
    mark: "smooth, no band",
    unitsPerClick: "1",
    inUseDays: 28,
  },
  "henk-meal": {
    ...penInUse,
    person: "henk",
    insulinId: "aspart-100",
    insulinName: "insulin aspart",
    kind: "mealtime",
    mark: "a wooden bead",
    unitsPerClick: "0.5",
    inUseDays: 28,
  },
  "henk-night": {
    ...penInUse,
    person: "henk",
    insulinId: "detemir-100",
    insulinName: "insulin detemir",
    kind: "long-acting",
    mark: "two rubber bands",
    unitsPerClick: "1",
    inUseDays: 42,
  },
} as const satisfies Readonly<Record<string, Omit<Pen, "id" | "openedOn" | "expiresOn">>>;
export type PenName = keyof typeof PENS;

/** The nth pen of that name; openedOn null: still in the refrigerator. */
export const demoPen = (name: PenName, n: number, openedOn: string | null, expiresOn: string): Pen => ({
  ...PENS[name],
  id: `${name}-${n}`,
  openedOn,
  expiresOn,
});
