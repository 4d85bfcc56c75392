// What the form of a dose card asks, part by part. Which further fields there are depends on what was chosen before.
import type { MealName } from "#events/card.ts";
import { ADVICE_FIELDS, CARE_FIELDS } from "#keeping/card-care.ts";
import { MEALS, MOST_ROWS } from "#keeping/card-meals.ts";
import type { Draft } from "#keeping/problem.ts";
import type { Section, Spec } from "#screens/drawer/parts/spec.ts";
import { PARTS } from "#words/en/drawer/fields.ts";
import { careHint } from "#words/en/drawer/options.ts";
import { CARD } from "#words/en/drawer.ts";

const number = (field: string): Spec => ({ kind: "number", field });
const choice = (field: string, ...options: string[]): Spec => ({ kind: "choice", field, options });
/** Further fields where the draft has this answer. */
const where = (is: boolean, ...specs: Spec[]): Spec[] => (is ? specs : []);

const FIRST_ROWS = 4;

/** As many rows as were asked for or typed. */
export function rowsShown(draft: Draft, meal: MealName): number {
  const typed = Array.from({ length: MOST_ROWS }, (_, i) => i).filter((i) =>
    ["from", "to", "units"].some((name) => draft[`meals.${meal}.bands.${i}.${name}`]),
  );
  return Math.max(FIRST_ROWS, Number(draft[`rows.${meal}`] ?? 0), (typed.at(-1) ?? -1) + 1);
}

function bandSpecs(draft: Draft, meal: MealName): Spec[] {
  const at = `meals.${meal}`;
  const rows = Array.from({ length: rowsShown(draft, meal) }, (_, i): Spec => {
    const row = `${at}.bands.${i}`;
    return {
      kind: "row",
      field: row,
      specs: [number(`${row}.from`), number(`${row}.to`), number(`${row}.units`), { kind: "tick", field: `${row}.call` }],
    };
  });
  return [...rows, choice(`${at}.edges`, "as printed", "up to the next"), number(`${at}.foodOnly`)];
}

function ratioSpecs(draft: Draft, at: string): Spec[] {
  return [
    number(`${at}.gramsPerUnit`),
    choice(`${at}.roundParts`, "none", "tenths", "whole"),
    choice(`${at}.correction`, "no", "yes"),
    ...where(
      draft[`${at}.correction`] === "yes",
      number(`${at}.correction.target.low`),
      number(`${at}.correction.target.high`),
      number(`${at}.correction.perUnit`),
      choice(`${at}.correction.mode`, "linear", "nearest", "down", "each started step"),
      choice(`${at}.correction.mayReduce`, "no", "yes"),
    ),
  ];
}

function mealSection(draft: Draft, meal: MealName, onChange: (field: string, value: string) => void): Section {
  const at = `meals.${meal}`;
  const kind = draft[`${at}.kind`];
  const specs = [
    choice(`${at}.kind`, "none", "fixed units", "bands", "ratio"),
    ...where(kind === "fixed units", number(`${at}.units`)),
    ...(kind === "bands" ? bandSpecs(draft, meal) : []),
    ...(kind === "ratio" ? ratioSpecs(draft, at) : []),
  ];
  const rows = rowsShown(draft, meal);
  if (kind !== "bands" || rows >= MOST_ROWS) return { heading: PARTS[meal], specs };
  return { heading: PARTS[meal], specs, more: { label: CARD.otherRow, onPress: () => onChange(`rows.${meal}`, String(rows + 1)) } };
}

function limits(draft: Draft): Spec[] {
  return [
    number("largestDose"),
    choice("rounding.step", "0.5", "1", "2", "5"),
    choice("rounding.direction", "nearest, half up", "down"),
    number("spacingMinutes"),
    number("windowMinutes"),
    choice("onBoard", "blank", "not used", "linear", "two compartments", "triangle"),
    ...where(draft.onBoard === "linear", number("onBoard.hours")),
    ...where(draft.onBoard === "two compartments", number("onBoard.minutes")),
    ...where(draft.onBoard === "triangle", number("onBoard.peakMinutes"), number("onBoard.endMinutes")),
    choice("bedtime", "blank", "times"),
    ...where(
      draft.bedtime === "times",
      { kind: "text", field: "bedtime.from" },
      { kind: "text", field: "bedtime.until" },
      choice("bedtime.correction", "no", "yes"),
    ),
    choice("afterExercise", "blank", "as usual", "food part only", "ask"),
    choice("afterLow", "blank", "as usual", "food part only", "inject after eating", "ask"),
    number("low.value"),
    choice("low.counts", "at or below", "below"),
    choice("high", "blank", "yes"),
    ...where(draft.high === "yes", number("high.value"), { kind: "long", field: "high.advice" }),
    choice("telephonedDose", "anyone", "with a helper only", "never"),
  ];
}

/** The whole card, in the order of the sheet that is read back. */
export function cardSections(draft: Draft, onChange: (field: string, value: string) => void): Section[] {
  return [
    {
      heading: PARTS.insulin,
      specs: [
        { kind: "text", field: "insulin.name" },
        number("insulin.unitsPerMl"),
        choice("glucoseUnit", "mg/dL", "mmol/L"),
        choice("carbohydrate", "total", "available"),
        { kind: "text", field: "validFrom" },
        { kind: "text", field: "reviewBy" },
        { kind: "text", field: "validUntil" },
        { kind: "text", field: "clinic.name" },
        { kind: "phone", field: "clinic.phone" },
      ],
    },
    ...MEALS.map((meal) => mealSection(draft, meal, onChange)),
    { heading: PARTS.limits, specs: limits(draft) },
    {
      heading: PARTS.eating,
      specs: [
        choice("timing.when", "before eating", "with the first bite", "after eating"),
        number("timing.earliestMinutes"),
        number("timing.latestMinutes"),
        choice("regions", "any", "kept"),
        ...(draft.regions === "kept" ? MEALS.map((meal) => choice(`regions.${meal}`, "belly", "thigh", "arm", "buttock")) : []),
      ],
    },
    { heading: PARTS.care, specs: CARE_FIELDS.map((field): Spec => ({ kind: "number", field: `care.${field}`, hint: careHint(field) })) },
    {
      heading: PARTS.wrong,
      specs: ADVICE_FIELDS.map((field): Spec => ({ kind: "long", field: `advice.${field}`, hint: "Blank: call the clinic." })),
    },
  ];
}
