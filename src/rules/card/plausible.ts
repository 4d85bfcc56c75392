// Alarms on a typed card. They ask and never block: a clinic may have its reasons. What may not be signed at all is decided in keeping/.
import type { DoseCard, MealName, MealRule } from "#events/card.ts";
import type { Units } from "#events/quantity.ts";
import { exact, isMultipleOf } from "#rules/glucose/exact.ts";
import { PLAUSIBLE } from "#rules/glucose/reading.ts";
import { compareDates } from "#rules/time/local.ts";
import type { Alarm } from "./alarm.ts";
import { type DayOfInsulin, ratioAlarms } from "./plausible-ratio.ts";
import { rowAlarms } from "./plausible-rows.ts";

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
  if (rule.kind === "fixed units") return [rule.units];
  if (rule.kind === "ratio") return [];
  return [...rule.bands.map((row) => row.units), ...(rule.foodOnly === null ? [] : [rule.foodOnly])];
}

function unitsAlarms(card: DoseCard, [meal, rule]: Meal): Alarm[] {
  const step = exact(Number(card.rounding.step));
  const limit = card.largestDose;
  return [...new Set(printedUnits(rule))].flatMap((units): Alarm[] => [
    ...(isMultipleOf(exact(units), step) ? [] : [{ alarm: "off the pen's step", meal, units } as const]),
    ...(limit !== null && units > limit ? [{ alarm: "above the largest dose", meal, units } as const] : []),
  ]);
}

/** The size of a meal's rule, to hold against the same kind of rule of another meal. */
const sizeOf = (rule: MealRule): number => (rule.kind === "fixed units" ? rule.units : rule.kind === "ratio" ? rule.gramsPerUnit : 0);

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

function glucoseNumbers(card: DoseCard, meals: readonly Meal[]): [Where, number][] {
  const ofMeals = meals.flatMap(([, rule]): [Where, number | null][] => {
    if (rule.kind === "bands")
      return rule.bands.flatMap((row): [Where, number | null][] => [
        ["row", row.from],
        ["row", row.to],
      ]);
    const target = rule.kind === "ratio" ? rule.correction?.target : undefined;
    return target
      ? [
          ["target", target.low],
          ["target", target.high],
        ]
      : [];
  });
  const all: [Where, number | null][] = [["low", card.low.value], ["high", card.high?.value ?? null], ...ofMeals];
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

/** Everything odd about a card; [] when nothing is. day: null when nobody said how much insulin a day has, then no rule of thumb is used. */
export function alarmsOf(card: DoseCard, day: DayOfInsulin | null): Alarm[] {
  const meals = mealsOf(card);
  const { earliestMinutes: earliest, latestMinutes: latest } = card.timing;
  return [
    ...meals.flatMap(([meal, rule]) => {
      if (rule.kind === "bands") return rowAlarms(meal, rule, card.glucoseUnit);
      return rule.kind === "ratio" ? ratioAlarms(meal, rule, card, day) : [];
    }),
    ...meals.flatMap((meal) => unitsAlarms(card, meal)),
    ...betweenMeals(meals),
    ...unitAlarms(card, meals),
    ...(earliest > latest ? [{ alarm: "bell ends before it begins", earliest, latest } as const] : []),
    ...dateAlarms(card),
  ];
}
