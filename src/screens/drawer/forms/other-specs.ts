// What the other forms ask: household, keeper, person, pen.
import { MEALS, READING_TIMES } from "#keeping/meal-hours.ts";
import { BODY_FIELDS, KIT_STEPS, REGION_NAMES, USUAL_MEALS } from "#keeping/people.ts";
import type { Draft } from "#keeping/problem.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import type { Section, Spec } from "#screens/drawer/parts/spec.ts";
import { PARTS } from "#words/en/drawer/fields.ts";

const number = (field: string): Spec => ({ kind: "number", field });
const choice = (field: string, ...options: string[]): Spec => ({ kind: "choice", field, options });

const time = (field: string): Spec => ({ kind: "text", field });
const hours = (from: string, until: string): Spec => ({ kind: "row", field: from, specs: [time(from), time(until)] });

export const HOUSEHOLD: readonly Section[] = [
  {
    specs: [choice("household.country", "US", "UK"), { kind: "phone", field: "household.emergencyNumber" }],
  },
  {
    heading: PARTS.hearer,
    specs: [choice("household.hearer", "nobody", "always", "between"), hours("household.hearer.from", "household.hearer.until")],
  },
  { heading: PARTS.quiet, specs: [hours("household.quietHours.from", "household.quietHours.until")] },
];

const PINS: readonly Spec[] = [
  { kind: "pin", field: "keeper.pin" },
  { kind: "pin", field: "keeper.again" },
];
export const KEEPER: readonly Section[] = [{ specs: [{ kind: "name", field: "keeper.name" }, ...PINS] }];
export const NEW_PIN: readonly Section[] = [{ specs: PINS }];

const meal = (i: number): Spec => {
  const at = `person.usualMeals.${i}`;
  return {
    kind: "row",
    field: `${at}.name`,
    specs: [{ kind: "text", field: `${at}.name` }, choice(`${at}.meal`, "breakfast", "lunch", "dinner", "snack"), number(`${at}.grams`)],
  };
};

/** The two first questions are asked of new people only. */
export function personSections(isNew: boolean): Section[] {
  return [
    {
      heading: PARTS.who,
      specs: [
        ...(isNew ? [choice("person.age", "adult", "child"), choice("person.gives", "pen", "syringe", "pump")] : []),
        { kind: "text", field: "person.name" },
        choice("person.shape", "circle", "square", "triangle", "star"),
        choice("person.language", "en-US", "en-GB"),
      ],
    },
    {
      heading: PARTS.readings,
      specs: [
        choice("person.glucoseUnit", "mg/dL", "mmol/L"),
        choice("person.readsFrom", "finger", "sensor"),
        number("person.usualBand.low"),
        number("person.usualBand.high"),
      ],
    },
    {
      heading: PARTS.dialing,
      specs: [
        choice("person.dialBy", "reads", "counts twice", "helper"),
        choice("person.helperOnly", "no", "yes"),
        choice("person.sayFirst", "no", "yes"),
      ],
    },
    { heading: PARTS.meals, specs: Array.from({ length: USUAL_MEALS }, (_, i) => meal(i)) },
    {
      heading: PARTS.hours,
      specs: [
        ...MEALS.map((name) => hours(`person.mealHours.${name}.from`, `person.mealHours.${name}.until`)),
        ...Array.from({ length: READING_TIMES }, (_, i) => time(`person.readingTimes.${i}`)),
      ],
    },
    {
      heading: PARTS.body,
      specs: [
        ...BODY_FIELDS.map((name) => number(`person.body.${name}`)),
        ...REGION_NAMES.map((region): Spec => ({ kind: "tick", field: `person.leftOut.${region}` })),
      ],
    },
    { heading: PARTS.sugars, specs: sugarFoods().map(({ id }): Spec => ({ kind: "tick", field: `person.noSugar.${id}` })) },
    { heading: PARTS.kit, specs: Array.from({ length: KIT_STEPS }, (_, i): Spec => ({ kind: "text", field: `person.kit.${i}` })) },
  ];
}

/** hasCard: the pen may hold the insulin of the card in force. */
export function penSections(draft: Draft, hasCard: boolean): Section[] {
  const other: Spec[] =
    !hasCard || draft["pen.insulin"] === "other" ? [{ kind: "text", field: "pen.insulinName" }, number("pen.unitsPerMl")] : [];
  return [
    {
      heading: PARTS.pen,
      specs: [
        choice("pen.device", "pen", "syringe", "pump"),
        choice("pen.kind", "mealtime", "long-acting", "premixed"),
        ...(hasCard ? [choice("pen.insulin", "card", "other")] : []),
        ...other,
        choice("pen.cloudy", "no", "yes"),
        { kind: "text", field: "pen.mark" },
        choice("pen.unitsPerClick", "0.5", "1", "2", "5"),
        number("pen.unitsWhenOpened"),
      ],
    },
    {
      heading: PARTS.dates,
      specs: [{ kind: "text", field: "pen.openedOn" }, number("pen.inUseDays"), { kind: "text", field: "pen.expiresOn" }],
    },
  ];
}
