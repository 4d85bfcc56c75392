// Alarms on a typed card. They ask and never block: a clinic may have its reasons. What may not be signed at all is decided in keeping/.
import { canonical } from "#events/canonical.ts";
import type { CorrectionTable, DoseCard, MealName, MealRule } from "#events/card.ts";
import type { Units } from "#events/quantity.ts";
import { exact, isMultipleOf } from "#rules/glucose/exact.ts";
import { PLAUSIBLE } from "#rules/glucose/reading.ts";
import { compareDates } from "#rules/time/local.ts";
import type { Alarm } from "./alarm.ts";
import type { Span } from "./band-row.ts";
import { insulinAlarms } from "./plausible-insulin.ts";
import { ketoneAlarms } from "./plausible-ketones.ts";
import { correctionAlarms, type DayOfInsulin, foodAlarms } from "./plausible-ratio.ts";
import { gridAlarms, rowAlarms } from "./plausible-rows.ts";

type Meal = readonly [MealName, MealRule];

function mealsOf(card: DoseCard): Meal[] {
  const { breakfast, lunch, dinner, snack } = card.meals;
  const all: readonly (readonly [MealName, MealRule | null])[] = [
    ["breakfast", breakfast],
    ["lunch", lunch],
    ["dinner", dinner],
    ["snack", snack],
  ];
  return all.flatMap(([meal, rule]) => (rule ? [[meal, rule] as const] : []));
}

/** Units printed for a meal. */
function printedUnits(rule: MealRule): Units[] {
  switch (rule.kind) {
    case "bands":
      return [...rule.bands.map((row) => row.units), ...(rule.foodOnly === null ? [] : [rule.foodOnly])];
    case "grid":
      return [...rule.rows.flatMap((row) => row.units), ...(rule.foodOnly ?? [])];
    case "fixed units":
      return [rule.units, ...unitsOfTable(rule)];
    case "correction only":
      return unitsOfTable(rule);
    // The sum is rounded, so a table beside a ratio may hold any number.
    case "ratio":
    case "servings":
      return [];
  }
}

const unitsOfTable = (rule: { readonly table?: CorrectionTable | undefined }): Units[] => rule.table?.bands.map((row) => row.units) ?? [];

function unitsAlarms(card: DoseCard, [meal, rule]: Meal): Alarm[] {
  const step = exact(Number(card.rounding.step));
  const limit = card.largestDose;
  return [...new Set(printedUnits(rule))].flatMap((units): Alarm[] => [
    ...(isMultipleOf(exact(units), step) ? [] : [{ alarm: "off the pen's step", meal, units } as const]),
    ...(limit !== null && units > limit ? [{ alarm: "above the largest dose", meal, units } as const] : []),
  ]);
}

/** The size of a meal's rule, to hold against the same kind of rule of another meal. */
function sizeOf(rule: MealRule): number {
  if (rule.kind === "fixed units") return rule.units;
  if (rule.kind === "ratio") return rule.gramsPerUnit;
  return rule.kind === "servings" ? rule.unitsPerServing : 0;
}

function betweenMeals(meals: readonly Meal[]): Alarm[] {
  return meals.flatMap(([meal, rule], i) =>
    meals.slice(i + 1).flatMap(([other, otherRule]): Alarm[] => {
      const [small, large] = [sizeOf(rule), sizeOf(otherRule)].sort((a, b) => a - b);
      const tenfold = rule.kind === otherRule.kind && small && large && large >= small * 10;
      return tenfold ? [{ alarm: "tenfold between meals", meal, other }] : [];
    }),
  );
}

type Where = Extract<Alarm, { alarm: "looks like the other unit" }>["where"];

function glucoseOf(rule: MealRule): [Where, number | null][] {
  const ofRows = (rows: readonly Span[]): [Where, number | null][] =>
    rows.flatMap(({ from, to }): [Where, number | null][] => [
      ["row", from],
      ["row", to],
    ]);
  if (rule.kind === "bands") return ofRows(rule.bands);
  if (rule.kind === "grid") return ofRows(rule.rows);
  if (rule.table) return ofRows(rule.table.bands);
  const target = rule.correction?.target;
  return target
    ? [
        ["target", target.low],
        ["target", target.high],
      ]
    : [];
}

function glucoseNumbers(card: DoseCard, meals: readonly Meal[]): [Where, number][] {
  const all: [Where, number | null][] = [
    ["low", card.low.value],
    ["high", card.high?.value ?? null],
    ["ketones", card.ketones?.from ?? null],
    ...meals.flatMap(([, rule]) => glucoseOf(rule)),
  ];
  // A row may begin at 0, and one may end at 999: both only mean "open".
  return all.flatMap(([where, value]): [Where, number][] => (value === null || value === 0 || value === 999 ? [] : [[where, value]]));
}

function unitAlarms(card: DoseCard, meals: readonly Meal[]): Alarm[] {
  const { least, most } = PLAUSIBLE[card.glucoseUnit];
  return glucoseNumbers(card, meals)
    .filter(([, value]) => value < least || value > most)
    .map(([where, value]) => ({ alarm: "looks like the other unit", where, value }));
}

function dateAlarms(card: DoseCard): Alarm[] {
  const { validFrom, reviewBy, validUntil } = card;
  const spans: readonly (readonly [string, string | null])[] = [
    [validFrom, reviewBy],
    [validFrom, validUntil],
  ];
  return spans.flatMap(([earlier, later]): Alarm[] =>
    later !== null && compareDates(later, earlier) < 0 ? [{ alarm: "dates in the wrong order", earlier, later }] : [],
  );
}

/**
 * Minutes that clinics print: 2 to 4 hours between corrections, "at least 4" at the most careful; a mealtime dose acts 2 to 6 hours (leaflets of rapid
 * analogues), regular insulin up to 12. From memory of leaflets and clinic sheets; under an hour no card is known to count a dose.
 */
const USUAL_MINUTES = { spacing: [120, 360], window: [60, 720] } as const;

function timeAlarms({ spacingMinutes, windowMinutes }: DoseCard): Alarm[] {
  const unusual = (of: "spacing" | "window", minutes: number | null): Alarm[] => {
    const [least, most] = USUAL_MINUTES[of];
    return minutes !== null && (minutes < least || minutes > most) ? [{ alarm: "time unusual", of, minutes }] : [];
  };
  return [...unusual("spacing", spacingMinutes), ...unusual("window", windowMinutes)];
}

function mealAlarms([meal, rule]: Meal, card: DoseCard, day: DayOfInsulin | null): Alarm[] {
  if (rule.kind === "bands") return rowAlarms(meal, rule, card.glucoseUnit);
  if (rule.kind === "grid") return gridAlarms(meal, rule, card.glucoseUnit);
  return [
    ...(rule.kind === "ratio" || rule.kind === "servings" ? foodAlarms(meal, rule, day) : []),
    ...(rule.correction ? correctionAlarms(meal, rule.correction, card, day) : []),
    ...(rule.table ? rowAlarms(meal, rule.table, card.glucoseUnit) : []),
  ];
}

/** Units of a day as the card names them, for the rules of thumb. */
export const dayOf = (card: DoseCard): DayOfInsulin | null =>
  card.unitsADay === undefined ? null : { unitsADay: card.unitsADay, kind: card.insulin.kind === "regular" ? "regular" : "rapid analogue" };

/** Each oddity once: two rows that are odd in the same words are one question. */
function once(alarms: readonly Alarm[]): Alarm[] {
  const keys = alarms.map((alarm) => canonical({ ...alarm }));
  return alarms.filter((_, i) => keys.indexOf(keys[i] ?? "") === i);
}

/** Everything odd about a card; [] when nothing is. day: null when nobody said how much insulin a day has, then no rule of thumb is used. */
export function alarmsOf(card: DoseCard, day: DayOfInsulin | null): Alarm[] {
  const meals = mealsOf(card);
  const { earliestMinutes: earliest, latestMinutes: latest } = card.timing;
  return once([
    ...meals.flatMap((meal) => mealAlarms(meal, card, day)),
    ...meals.flatMap((meal) => unitsAlarms(card, meal)),
    ...betweenMeals(meals),
    ...insulinAlarms(card, meals),
    ...unitAlarms(card, meals),
    ...ketoneAlarms(card),
    ...(earliest > latest ? [{ alarm: "bell ends before it begins", earliest, latest } as const] : []),
    ...timeAlarms(card),
    ...dateAlarms(card),
  ]);
}
