// Typed grams per unit and glucose per unit, against what clinics use and, if the units of a whole day were given, against the rules of thumb.
import type { CorrectionRule, DoseCard, MealName, MealRule } from "#events/card.ts";
import { classify } from "#rules/glucose/classify.ts";
import { compare, type Exact, exact, over, times, toNumber } from "#rules/glucose/exact.ts";
import type { Alarm } from "./alarm.ts";
import { type ThumbKind, thumbGlucosePerUnit, thumbGramsPerUnit } from "./rule-of-thumb.ts";

export interface DayOfInsulin {
  /** Units of a usual day, long-acting included. */
  readonly unitsADay: number;
  readonly kind: ThumbKind;
}

/** Wide on purpose (derived): UCSF teaching text has 6 to 30 g or more, and 30 to 100 mg/dL or more, per unit. */
const GRAMS_PER_UNIT = { least: 3, most: 50 };
const GLUCOSE_PER_UNIT = { "mg/dL": { least: 10, most: 200 }, "mmol/L": { least: 0.6, most: 11 } } as const;

/** The published exchange lists; the tablet asks for servings of this size. */
const GRAMS_PER_SERVING = 15;

const outside = (value: number, span: { least: number; most: number }): boolean => value < span.least || value > span.most;

/** Outside half to double the rule of thumb. */
function farFrom(typed: Exact, usual: Exact): boolean {
  return compare(typed, over(usual, exact(2))) < 0 || compare(typed, times(usual, exact(2))) > 0;
}

const forShow = (usual: Exact): number => Math.round(toNumber(usual) * 10) / 10;

/** The food of a rule that counts grams or servings. Servings: grams that one unit covers follow from both of its numbers. */
export function foodAlarms(meal: MealName, rule: Extract<MealRule, { kind: "ratio" | "servings" }>, day: DayOfInsulin | null): Alarm[] {
  const perUnit = rule.kind === "ratio" ? exact(rule.gramsPerUnit) : over(exact(rule.gramsPerServing), exact(rule.unitsPerServing));
  const gramsPerUnit = forShow(perUnit);
  const alarms: Alarm[] = [];
  if (rule.kind === "servings" && rule.gramsPerServing !== GRAMS_PER_SERVING)
    alarms.push({ alarm: "grams per serving unusual", meal, grams: rule.gramsPerServing });
  if (outside(toNumber(perUnit), GRAMS_PER_UNIT)) alarms.push({ alarm: "grams per unit unusual", meal, gramsPerUnit });
  if (day) {
    const usual = thumbGramsPerUnit(day.unitsADay);
    if (farFrom(perUnit, usual))
      alarms.push({ alarm: "grams per unit far from the rule of thumb", meal, gramsPerUnit, usual: forShow(usual) });
  }
  return alarms;
}

export function correctionAlarms(meal: MealName, { perUnit, target }: CorrectionRule, card: DoseCard, day: DayOfInsulin | null): Alarm[] {
  const alarms: Alarm[] = [];
  if (outside(perUnit, GLUCOSE_PER_UNIT[card.glucoseUnit])) alarms.push({ alarm: "glucose per unit unusual", meal, perUnit });
  if (day) {
    const usual = thumbGlucosePerUnit(day.unitsADay, card.glucoseUnit, day.kind);
    if (farFrom(exact(perUnit), usual))
      alarms.push({ alarm: "glucose per unit far from the rule of thumb", meal, perUnit, usual: forShow(usual) });
  }
  if (target.low > target.high) alarms.push({ alarm: "target is upside down", meal, low: target.low, high: target.high });
  if (classify({ value: target.low, unit: card.glucoseUnit }, card.low) === "low")
    alarms.push({ alarm: "target is low", meal, target: target.low });
  return alarms;
}
