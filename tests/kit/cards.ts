// One invented card of every kind, beside those of people.ts. Odile's, in mg/dL.
import type { Band, CorrectionRule, DoseCard, MealRule } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { fixedCard } from "./people.ts";

const dinnerAt = (breakfast: MealRule): DoseCard => ({ ...fixedCard, meals: { ...fixedCard.meals, breakfast } });
const correction: CorrectionRule = { target: { low: 120, high: 120 }, perUnit: 50, mode: "linear", mayReduce: false };
const band = (from: number | null, to: number | null, n: number, call = false): Band => ({ from, to, units: units(n), call });
const some = (...n: number[]) => n.map(units);

/** Units by glucose and by the size of the meal. */
export const gridCard = dinnerAt({
  kind: "grid",
  columns: [
    { from: 0, to: 30 },
    { from: 31, to: 60 },
    { from: 61, to: null },
  ],
  columnEdges: "up to the next",
  rows: [
    { from: 71, to: 150, units: some(2, 4, 6), call: false },
    { from: 151, to: 250, units: some(3, 5, 7), call: false },
    { from: 251, to: null, units: some(4, 6, 8), call: true },
  ],
  edges: "up to the next",
  foodOnly: some(2, 4, 6),
});
/** 1.5 units for each serving of 15 g (facts E9: also written so), and a correction. */
export const servingsCard = dinnerAt({
  kind: "servings",
  unitsPerServing: 1.5,
  gramsPerServing: 15,
  count: "exactly",
  correction,
  roundParts: "none",
});
/** The same units each time, and a correction by a target. */
export const fixedPlusCard = dinnerAt({ kind: "fixed units", units: units(6), correction, roundParts: "none" });
/** The same units each time, and a table of corrections beside it (facts E10: 2 above 250, 4 above 350). */
export const fixedTableCard = dinnerAt({
  kind: "fixed units",
  units: units(6),
  table: { bands: [band(null, 250, 0), band(251, 350, 2), band(351, null, 4, true)], edges: "up to the next" },
});
export const correctionOnlyCard = dinnerAt({ kind: "correction only", correction, roundParts: "none" });
/** Cloudy, tied to the meal, never a correction. */
export const premixedCard: DoseCard = {
  ...fixedCard,
  insulin: { id: "human-mix-30-70-100", name: "human mix 30/70", unitsPerMl: 100, kind: "premixed" },
  timing: { when: "before eating", earliestMinutes: 15, latestMinutes: 30 },
};
/** No meal has a dose; a long-acting insulin at bedtime. */
export const backgroundOnlyCard: DoseCard = {
  ...fixedCard,
  meals: { breakfast: null, lunch: null, dinner: null, snack: null },
  background: [
    {
      insulin: { id: "glargine-100", name: "insulin glargine", unitsPerMl: 100, kind: "long-acting" },
      units: units(14),
      at: "21:30",
      windowMinutes: 1080,
    },
  ],
};

/** Ketones of blood at the numbers of hospital pages: 0.6, 1.5 and 3.0 (facts, section 3), with sick-day rules. */
export const ketoneCard: DoseCard = {
  ...fixedCard,
  ketones: {
    test: "blood",
    from: 250,
    whenIll: true,
    lines: [
      { from: 0, says: "No ketones. Measure again in 4 hours.", call: "no" },
      { from: 0.6, says: "Drink a glass of water each hour.", call: "no" },
      { from: 1.5, says: "This needs us today.", call: "clinic" },
      { from: 3, says: null, call: "emergency" },
    ],
  },
  sickDay: {
    rules: ["Drink a glass of water each hour.", "Measure every 4 hours.", "Do not exercise."],
    callWhen: "Call if food comes up for 4 hours.",
  },
};
/** A strip whose lowest fields the card says nothing about, for a reading alone. */
export const stripCard: DoseCard = {
  ...fixedCard,
  high: null,
  ketones: {
    test: "urine words",
    from: 240,
    whenIll: false,
    lines: [
      { from: 2, says: "Drink more water.", call: "no" },
      { from: 3, says: null, call: "clinic" },
    ],
  },
};
/** A strip with plus signs, on ill days alone. */
export const plusCard: DoseCard = {
  ...fixedCard,
  care: { ...fixedCard.care, watchMinutes: 45 },
  ketones: { test: "urine plus signs", from: null, whenIll: true, lines: [{ from: 2, says: "Ring the ward.", call: "clinic" }] },
};

export const EVERY_KIND: readonly (readonly [string, DoseCard])[] = [
  ["a grid", gridCard],
  ["servings", servingsCard],
  ["fixed units and a correction", fixedPlusCard],
  ["fixed units and a table of corrections", fixedTableCard],
  ["a correction only", correctionOnlyCard],
  ["premixed insulin", premixedCard],
  ["background insulin only", backgroundOnlyCard],
  ["ketones of blood and sick-day rules", ketoneCard],
  ["a ketone strip with words", stripCard],
  ["a ketone strip with plus signs", plusCard],
];
