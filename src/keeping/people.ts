// Who injects, as a keeper sets them up. What the tool is not for is refused before anything is written.
import type { Happened } from "#events/happened.ts";
import { type Person, person as personShape } from "#events/person.ts";
import type { BodyMeasures, Region } from "#events/spot.ts";
import { DEFAULT_BODY } from "#rules/body/area.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import { PLAUSIBLE } from "#rules/glucose/reading.ts";
import { draftOfHours, mealHoursOf, readingTimesOf } from "./meal-hours.ts";
import type { Draft, NotFor, Problem } from "./problem.ts";
import { Reader } from "./reader.ts";
import type { NumberSpan } from "./typed.ts";

export type PersonSet = { ok: true; events: Happened[] } | { ok: false; notFor: NotFor } | { ok: false; problems: readonly Problem[] };

export const USUAL_MEALS = 4;
/** Steps of a glucagon kit; leaflets have three to six (common practice, no source). */
export const KIT_STEPS = 6;
/** The bound of the stored shape (events/person.ts). */
const LONGEST_STEP = 90;
export const REGION_NAMES: readonly Region[] = ["belly", "thigh", "arm", "buttock"];

/** The bounds of the stored shape (events/spot.ts). */
export const BODY: Readonly<Record<keyof BodyMeasures, NumberSpan>> = {
  bellyWidthMm: { least: 150, most: 900, decimals: 0 },
  bellyHeightMm: { least: 80, most: 500, decimals: 0 },
  thighLengthMm: { least: 200, most: 700, decimals: 0 },
  armLengthMm: { least: 150, most: 600, decimals: 0 },
  fingerMm: { least: 10, most: 30, decimals: 0 },
  handMm: { least: 50, most: 130, decimals: 0 },
};
export const BODY_FIELDS = ["fingerMm", "handMm", "bellyWidthMm", "bellyHeightMm", "thighLengthMm", "armLengthMm"] as const;

function bodyOf(r: Reader): BodyMeasures {
  const measure = (name: keyof BodyMeasures) => r.blankOrNumber(`person.body.${name}`, BODY[name]) ?? DEFAULT_BODY[name];
  return {
    bellyWidthMm: measure("bellyWidthMm"),
    bellyHeightMm: measure("bellyHeightMm"),
    thighLengthMm: measure("thighLengthMm"),
    armLengthMm: measure("armLengthMm"),
    fingerMm: measure("fingerMm"),
    handMm: measure("handMm"),
  };
}

/** A line in which nothing was typed is no meal. */
function usualMealsOf(r: Reader): Person["usualMeals"] {
  return Array.from({ length: USUAL_MEALS }, (_, i) => `person.usualMeals.${i}`).flatMap((at) => {
    if (r.raw(`${at}.name`) === "" && r.raw(`${at}.grams`) === "") return [];
    return [
      {
        name: r.text(`${at}.name`, 40),
        meal: r.choice(`${at}.meal`, ["breakfast", "lunch", "dinner", "snack"]),
        grams: r.number(`${at}.grams`, { least: 1, most: 300, decimals: 1 }),
      },
    ];
  });
}

/** In the order typed; blank lines between are left out. */
function kitOf(r: Reader): Pick<Person, "glucagonSteps"> {
  const steps = Array.from({ length: KIT_STEPS }, (_, i) => r.blankOrText(`person.kit.${i}`, LONGEST_STEP)).filter((step) => step !== null);
  return steps.length > 0 ? { glucagonSteps: steps } : {};
}

function bandOf(r: Reader, unit: Person["glucoseUnit"]): Person["usualBand"] {
  const span = { ...PLAUSIBLE[unit], decimals: unit === "mg/dL" ? 0 : 1 };
  const band = { low: r.number("person.usualBand.low", span), high: r.number("person.usualBand.high", span) };
  if (band.high <= band.low) r.note("person.usualBand.high", { why: "upside down" });
  return band;
}

function read(r: Reader, id: string, others: readonly Person[]): Person {
  const name = r.text("person.name", 40);
  const shape = r.choice("person.shape", ["circle", "square", "triangle", "star"]);
  const sameName = others.find((other) => other.name.toLowerCase() === name.toLowerCase());
  const sameShape = others.find((other) => other.shape === r.raw("person.shape"));
  if (sameName) r.note("person.name", { why: "taken", by: sameName.name });
  if (sameShape) r.note("person.shape", { why: "taken", by: sameShape.name });
  const glucoseUnit = r.choice("person.glucoseUnit", ["mg/dL", "mmol/L"]);
  return {
    id,
    name,
    shape,
    language: r.choice("person.language", ["en-US", "en-GB"]),
    glucoseUnit,
    readsFrom: r.choice("person.readsFrom", ["finger", "sensor"]),
    dialBy: r.choice("person.dialBy", ["reads", "counts twice", "helper"]),
    helperOnly: r.choice("person.helperOnly", ["no", "yes"]) === "yes",
    sayFirst: r.choice("person.sayFirst", ["no", "yes"]) === "yes",
    usualBand: bandOf(r, glucoseUnit),
    usualMeals: usualMealsOf(r),
    ...mealHoursOf(r),
    ...readingTimesOf(r),
    body: bodyOf(r),
    leftOutRegions: REGION_NAMES.filter((region) => r.raw(`person.leftOut.${region}`) === "yes"),
    leftOutSugars: sugarFoods()
      .map(({ id }) => id)
      .filter((id) => r.raw(`person.noSugar.${id}`) === "yes"),
    ...kitOf(r),
  };
}

function notFor(r: Reader): NotFor | null {
  if (r.raw("person.age") === "child") return "children";
  if (r.raw("person.gives") === "pump") return "pumps";
  return r.raw("person.gives") === "syringe" ? "syringes" : null;
}

function withoutProblems(r: Reader, event: (person: Person) => Happened, person: Person): PersonSet {
  if (r.problems.length > 0) return { ok: false, problems: r.problems };
  return { ok: true, events: [event(personShape.parse(person))] };
}

/** A new person: the sentence of what the tool is not for comes before any other problem. */
export function addPerson(draft: Draft, id: string, others: readonly Person[]): PersonSet {
  const r = new Reader(draft);
  const refused = notFor(r);
  if (refused) return { ok: false, notFor: refused };
  r.choice("person.age", ["adult"]);
  r.choice("person.gives", ["pen"]);
  return withoutProblems(r, (person) => ({ type: "person added", person }), read(r, id, others));
}

/** A person's settings typed over. others: everybody else. */
export function changePerson(draft: Draft, id: string, others: readonly Person[], keeper: string): PersonSet {
  const r = new Reader(draft);
  return withoutProblems(r, (person) => ({ type: "person changed", person, keeper }), read(r, id, others));
}

/** What the form of a person shows who is known already. */
export function draftOfPerson(person: Person): Draft {
  const yes = (is: boolean) => (is ? "yes" : "no");
  return {
    "person.name": person.name,
    "person.shape": person.shape,
    "person.language": person.language,
    "person.glucoseUnit": person.glucoseUnit,
    "person.readsFrom": person.readsFrom ?? "finger",
    "person.dialBy": person.dialBy,
    "person.helperOnly": yes(person.helperOnly),
    "person.sayFirst": yes(person.sayFirst),
    "person.usualBand.low": String(person.usualBand.low),
    "person.usualBand.high": String(person.usualBand.high),
    ...Object.fromEntries(BODY_FIELDS.map((name) => [`person.body.${name}`, String(person.body[name])])),
    ...draftOfHours(person),
    ...Object.fromEntries(person.leftOutRegions.map((region) => [`person.leftOut.${region}`, "yes"])),
    ...Object.fromEntries((person.leftOutSugars ?? []).map((id) => [`person.noSugar.${id}`, "yes"])),
    ...Object.fromEntries((person.glucagonSteps ?? []).map((step, i) => [`person.kit.${i}`, step])),
    ...Object.fromEntries(
      person.usualMeals.flatMap((meal, i) => [
        [`person.usualMeals.${i}.name`, meal.name],
        [`person.usualMeals.${i}.meal`, meal.meal],
        [`person.usualMeals.${i}.grams`, String(meal.grams)],
      ]),
    ),
  };
}
