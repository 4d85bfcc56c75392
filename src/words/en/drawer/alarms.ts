// What looks odd on a typed card, as one sentence that asks to look at the paper.
import type { InsulinKind, MealName } from "#events/card.ts";
import type { Alarm } from "#rules/card/alarm.ts";
import { number, unitsOf } from "#words/en/amounts.ts";
import { ketonesWords } from "#words/en/ketones.ts";
import { dateInWords } from "#words/en/when.ts";

const MEAL: Readonly<Record<MealName, string>> = { breakfast: "Breakfast", lunch: "Lunch", dinner: "Dinner", snack: "Snack" };
const WHERE = { low: "The low", high: "The high", target: "The target", row: "A row", ketones: "The ketone check at" } as const;

/** "Dinner", or "Dinner, column 2". */
const placeOf = (a: { readonly meal: MealName; readonly column?: number }): string =>
  a.column === undefined ? MEAL[a.meal] : `${MEAL[a.meal]}, column ${a.column}`;
const KIND: Readonly<Record<InsulinKind, string>> = {
  "rapid analogue": "Rapid-acting",
  regular: "Regular",
  premixed: "Premixed",
  intermediate: "Intermediate",
  "long-acting": "Long-acting",
};

const edge = (value: number | null): string => (value === null ? "open" : number(value));

export function sayAlarm(a: Alarm): string {
  switch (a.alarm) {
    case "row is upside down":
      return `${MEAL[a.meal]}: a row goes from ${a.from} down to ${a.to}.`;
    case "gap between rows":
      return `${MEAL[a.meal]}: no row between ${a.after} and ${a.before}.`;
    case "rows overlap":
      return `${MEAL[a.meal]}: a row from ${edge(a.from)} meets one up to ${edge(a.to)}.`;
    case "dose falls as glucose rises":
      return `${placeOf(a)}: higher glucose, but ${unitsOf(a.before)} become ${unitsOf(a.units)}.`;
    case "large step":
    case "tenfold step":
      return `${placeOf(a)}: a large step from ${unitsOf(a.before)} to ${unitsOf(a.units)}.`;
    case "food-only above every row":
      return `${placeOf(a)}: food only, ${unitsOf(a.units)}, is more than every row.`;
    case "dose falls as the meal grows":
      return `${MEAL[a.meal]}: more food, but ${unitsOf(a.before)} become ${unitsOf(a.units)}.`;
    case "tenfold step between columns":
      return `${MEAL[a.meal]}: ${unitsOf(a.before)} stand beside ${unitsOf(a.units)}.`;
    case "column is upside down":
      return `${MEAL[a.meal]}: a column goes from ${a.from} down to ${a.to} grams.`;
    case "gap between columns":
      return `${MEAL[a.meal]}: no column between ${a.after} and ${a.before} grams.`;
    case "columns overlap":
      return `${MEAL[a.meal]}: a column from ${edge(a.from)} meets one up to ${edge(a.to)}.`;
    case "grams per serving unusual":
      return `${MEAL[a.meal]}: a serving of ${a.grams} grams. The tablet counts 15.`;
    case "this insulin is not for meals":
      return `${KIND[a.kind]} insulin is not for meals.`;
    case "this insulin does not correct":
      return `${MEAL[a.meal]}: ${KIND[a.kind].toLowerCase()} insulin never corrects. Only food is dosed.`;
    case "eating late for this insulin":
      return `Eating: ${a.minutes} minutes is late. Usual is up to ${a.usual}.`;
    case "mealtime insulin by the clock":
      return `${a.at}: ${a.name} is mealtime insulin, here by the clock.`;
    case "two background doses at one time":
      return `Two background doses stand at ${a.at}.`;
    case "tenfold between meals":
      return `${MEAL[a.meal]} and ${MEAL[a.other]} differ ten times or more.`;
    case "grams per unit unusual":
      return `${MEAL[a.meal]}: ${a.gramsPerUnit} grams for 1 unit is unusual.`;
    case "glucose per unit unusual":
      return `${MEAL[a.meal]}: 1 unit lowers by ${a.perUnit}. That is unusual.`;
    case "grams per unit far from the rule of thumb":
      return `${MEAL[a.meal]}: ${a.gramsPerUnit} grams for 1 unit, usual is about ${a.usual}.`;
    case "glucose per unit far from the rule of thumb":
      return `${MEAL[a.meal]}: 1 unit lowers by ${a.perUnit}, usual is about ${a.usual}.`;
    case "target is low":
      return `${MEAL[a.meal]}: the target ${a.target} counts as low.`;
    case "target is upside down":
      return `${MEAL[a.meal]}: the target goes from ${a.low} down to ${a.high}.`;
    case "looks like the other unit":
      return `${WHERE[a.where]} ${a.value} looks like the other glucose unit.`;
    case "off the pen's step":
      return `${MEAL[a.meal]}: ${unitsOf(a.units)} cannot be dialed in these steps.`;
    case "above the largest dose":
      return `${MEAL[a.meal]}: ${unitsOf(a.units)} is above the largest dose.`;
    case "ketone check unusual":
      return `Ketones: a test from ${number(a.from)} is unusual.`;
    case "ketone line unusual":
      return `Ketones: a line from ${number(a.from)}. Is a point missing?`;
    case "ketone lines out of order":
      return `Ketones: a line from ${ketonesWords(a.test, a.from)} follows ${ketonesWords(a.test, a.before)}.`;
    case "no call at high ketones":
      return `Ketones: nobody is called at ${ketonesWords(a.test, a.from)}.`;
    case "time unusual":
      return a.of === "spacing"
        ? `Between corrections: ${a.minutes} minutes is unusual.`
        : `A dose counts as taken for ${a.minutes} minutes: unusual.`;
    case "bell ends before it begins":
      return `Eating: the latest, ${a.latest} minutes, is before the earliest, ${a.earliest}.`;
    case "dates in the wrong order":
      return `Dates: ${dateInWords(a.later)} comes before ${dateInWords(a.earlier)}.`;
  }
}
