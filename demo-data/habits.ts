// How each of the two lives: mealtimes, readings, and how fast the hands are. Invented people, believable figures.
//
// Readings before a meal follow a log-normal distribution per person and meal: glucose is never negative and its high side is the longer one
// (the same reason for which the risk index of the 1990s papers takes a logarithm first).
// Spread: Marta's 0.24 is a coefficient of variation near 24 %, Henk's 0.31 near 32 %; up to 36 % counts as stable (consensus of 2017 to 2019).
// Medians: Marta near the upper end of 90 to 150 mg/dL before meals, the goal for older people with several illnesses (ADA 2024, table 13.1);
// Henk in mmol/L a little higher, so that his correction is seen at work. Figures themselves: invented, no source.
// Lows are not left to this distribution: story.ts places them, so that their number is what the page says. Draws outside least to most are drawn anew.
import type { GlucoseUnit } from "#events/quantity.ts";
import type { Via } from "#events/told.ts";
import type { Chance } from "./chance.ts";
import { henk, marta } from "./household.ts";

export const MEALS = ["breakfast", "lunch", "dinner"] as const;
export type DailyMeal = (typeof MEALS)[number];

export interface Habits {
  person: string;
  unit: GlucoseUnit;
  /** Minute of the day at which the walk is begun; standard deviation below. */
  begins: Record<DailyMeal, number>;
  median: Record<DailyMeal, number>;
  spread: number;
  /** Readings that are no low and not beyond what this person has seen. */
  least: number;
  most: number;
  low: readonly [number, number];
  recovered: readonly [number, number];
  /** A reading of the other unit, as typed by mistake. */
  otherUnit: string;
  /** 1: about four minutes from the tap to the needle. */
  pace: number;
  /** Minutes from the needle to the first bite on an ordinary day; the card allows 15 and 10. */
  bite: readonly [number, number];
  /** Share of readings that are spoken, and that are spoken by the helper. */
  spoken: number;
  alreadyWashed: number;
  wiped: number;
}

/** Minutes. Own figure, no source. */
const BEGIN_DEVIATION = 9;

export const HABITS: readonly Habits[] = [
  {
    person: marta.id,
    unit: marta.glucoseUnit,
    begins: { breakfast: 470, lunch: 730, dinner: 1075 },
    median: { breakfast: 143, lunch: 149, dinner: 160 },
    spread: 0.24,
    least: 79,
    most: 330,
    low: [55, 69],
    recovered: [84, 118],
    otherUnit: "8.2",
    pace: 1.1,
    bite: [6, 12],
    spoken: 0.3,
    alreadyWashed: 0.35,
    wiped: 0.7,
  },
  {
    person: henk.id,
    unit: henk.glucoseUnit,
    begins: { breakfast: 500, lunch: 760, dinner: 1105 },
    median: { breakfast: 7.6, lunch: 8.1, dinner: 8.7 },
    spread: 0.31,
    least: 4.4,
    most: 17.5,
    low: [3.1, 3.9],
    recovered: [4.7, 6.6],
    otherUnit: "148",
    pace: 0.9,
    bite: [1, 6],
    spoken: 0.15,
    alreadyWashed: 0.5,
    wiped: 0.5,
  },
];

export const inUnit = (habits: Habits, value: number): string => (habits.unit === "mg/dL" ? value.toFixed(0) : value.toFixed(1));

export const within = (habits: Habits, [least, most]: readonly [number, number], chance: Chance): string =>
  inUnit(habits, chance.between(least, most));

/** A reading before this meal, no low, as the meter shows it. */
export function readingBefore(habits: Habits, meal: DailyMeal, chance: Chance): string {
  for (;;) {
    const value = habits.median[meal] * Math.exp(habits.spread * chance.bell());
    if (value >= habits.least && value <= habits.most) return inUnit(habits, value);
  }
}

export const beginMinute = (habits: Habits, meal: DailyMeal, chance: Chance): number =>
  habits.begins[meal] + BEGIN_DEVIATION * chance.bell();

export const viaOf = (habits: Habits, chance: Chance): Via => (chance.happens(habits.spoken) ? "voice" : "touch");
