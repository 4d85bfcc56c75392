// What published guidelines teach about lows, side by side. Where they differ, the card's field or the household's country decides; DEVELOPERS.md prints the table.
// Read through summaries and hospital pages, not in full: ADA Standards of Care section 6 (2018 on) and its leaflet of 2024; JBDS 01, 4th edition 2020, as a hospital
// page quotes it; a Canadian pharmacy leaflet after Diabetes Canada.
import type { DoseCard } from "#events/card.ts";
import type { GlucoseUnit } from "#events/quantity.ts";

interface LowGuideline {
  readonly by: "ADA" | "UK" | "Canada";
  /** What is a low, in each unit as it is printed. The ADA wording of 2017 counted 70 itself. */
  readonly low: Readonly<Record<GlucoseUnit, DoseCard["low"]>>;
  /** Least and most of one treatment. */
  readonly treatGrams: readonly [number, number];
  /** Shortest and longest wait for the new reading. */
  readonly recheckMinutes: readonly [number, number];
  /** Treatments before somebody is called; null: no number is named. */
  readonly treatments: number | null;
  /** A snack afterwards where the next meal is further off than this; 0: always. */
  readonly snackAfterMinutes: number;
  /** Carbohydrate of that snack; null: no number is named. */
  readonly snackGrams: number | null;
}

export const LOW_GUIDELINES: readonly LowGuideline[] = [
  {
    by: "ADA",
    low: { "mg/dL": { value: 70, counts: "below" }, "mmol/L": { value: 3.9, counts: "below" } },
    treatGrams: [15, 20],
    recheckMinutes: [15, 15],
    treatments: null,
    // "Then a snack or meal"; an hour in general teaching, 1 to 2 h for older people.
    snackAfterMinutes: 60,
    snackGrams: null,
  },
  {
    by: "UK",
    low: { "mg/dL": { value: 72, counts: "below" }, "mmol/L": { value: 4, counts: "below" } },
    treatGrams: [15, 20],
    recheckMinutes: [10, 15],
    treatments: 3,
    // 20 g that last, 40 g after glucagon.
    snackAfterMinutes: 0,
    snackGrams: 20,
  },
  {
    by: "Canada",
    // Leaflets there print 3.9 or 4.0.
    low: { "mg/dL": { value: 72, counts: "below" }, "mmol/L": { value: 4, counts: "below" } },
    // 20 g for a severe low of somebody who is awake.
    treatGrams: [15, 20],
    recheckMinutes: [15, 15],
    treatments: null,
    // With protein.
    snackAfterMinutes: 60,
    snackGrams: 15,
  },
];

interface KetoneGuideline {
  readonly by: string;
  /** Ketones are looked for at or above this glucose, as it is printed; null: no number is named. */
  readonly testFrom: { readonly value: number; readonly unit: GlucoseUnit } | null;
  /** At any reading when ill. */
  readonly whenIll: boolean;
  /** mmol/L of blood at which somebody is called; null: "moderate or large" or no number. */
  readonly callAt: number | null;
  /** mmol/L of blood that is an emergency; null: no number is named. */
  readonly emergencyAt: number | null;
  /** Hours of vomiting, or without food kept down, after which somebody is called. */
  readonly vomitingHours: number | null;
}

/** Where they differ the card decides, and a blank card calls the clinic. Read through leaflets and hospital pages, not in full. */
export const KETONE_GUIDELINES: readonly KetoneGuideline[] = [
  // An older flu leaflet: above 250 on two checks; ketones moderate or large.
  { by: "US CDC", testFrom: { value: 250, unit: "mg/dL" }, whenIll: false, callAt: null, emergencyAt: null, vomitingHours: 6 },
  // An older sick-day text.
  { by: "ADA", testFrom: { value: 240, unit: "mg/dL" }, whenIll: true, callAt: null, emergencyAt: null, vomitingHours: 6 },
  // American College of Physicians, 2013: two readings above 250.
  { by: "ACP", testFrom: { value: 250, unit: "mg/dL" }, whenIll: false, callAt: null, emergencyAt: null, vomitingHours: 8 },
  { by: "Canada", testFrom: { value: 14, unit: "mmol/L" }, whenIll: false, callAt: 1.5, emergencyAt: null, vomitingHours: 4 },
  // Forth Valley; Northern Ireland adds: at any sickness, and extra insulin by the plan from 0.6.
  { by: "UK", testFrom: { value: 14, unit: "mmol/L" }, whenIll: true, callAt: 1.5, emergencyAt: null, vomitingHours: null },
  // A children's hospital in Melbourne: every two hours from 1.0, an ambulance from 3.0.
  { by: "Australia", testFrom: null, whenIll: true, callAt: 1, emergencyAt: 3, vomitingHours: null },
];

/** The one that is taught where the household lives. */
export function snackAfterMinutes(country: "US" | "UK"): number {
  const by = country === "UK" ? "UK" : "ADA";
  return LOW_GUIDELINES.find((g) => g.by === by)?.snackAfterMinutes ?? 0;
}
