// What the form of a dose card asks, part by part. Which further fields there are depends on what was chosen before.
import { MOST_BACKGROUND } from "#keeping/card-background.ts";
import { ADVICE_FIELDS, CARE_FIELDS } from "#keeping/card-care.ts";
import { MEALS } from "#keeping/card-meals.ts";
import type { Draft } from "#keeping/problem.ts";
import type { Section, Spec } from "#screens/drawer/parts/spec.ts";
import { CARD } from "#words/en/drawer/card.ts";
import { PARTS } from "#words/en/drawer/fields.ts";
import { careHint } from "#words/en/drawer/options.ts";
import { illSection } from "./ill-specs.ts";
import { mealSection } from "./meal-specs.ts";
import { choice, number, where } from "./specs.ts";

function backgroundSection(draft: Draft, onChange: (field: string, value: string) => void): Section {
  const places = Array.from({ length: MOST_BACKGROUND }, (_, i) => i);
  const typed = places.filter((i) => ["insulin.name", "units", "at"].some((name) => draft[`background.${i}.${name}`]));
  const shown = Math.max(1, Number(draft["rows.background"] ?? 0), (typed.at(-1) ?? -1) + 1);
  const specs = places.slice(0, shown).map((i): Spec => {
    const at = `background.${i}`;
    const text = (field: string): Spec => ({ kind: "text", field });
    const specs = [
      text(`${at}.insulin.name`),
      ...where(
        shown > 1 || typed.includes(i),
        choice(`${at}.insulin.kind`, "intermediate", "long-acting", "premixed", "regular", "rapid analogue"),
        number(`${at}.insulin.unitsPerMl`),
        number(`${at}.units`),
        text(`${at}.at`),
        number(`${at}.windowMinutes`),
      ),
    ];
    return { kind: "row", field: at, specs, below: true };
  });
  const more = {
    label: CARD.otherBackground,
    goesTo: `background.${shown}`,
    onPress: () => onChange("rows.background", String(shown + 1)),
  };
  return { heading: PARTS.background, specs, ...(shown < MOST_BACKGROUND && typed.length > 0 ? { more: [more] } : {}) };
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
        choice("insulin.kind", "rapid analogue", "regular", "premixed", "intermediate", "long-acting"),
        number("insulin.unitsPerMl"),
        choice("glucoseUnit", "mg/dL", "mmol/L"),
        choice("carbohydrate", "total", "available"),
        { kind: "text", field: "validFrom" },
        { kind: "text", field: "reviewBy" },
        { kind: "text", field: "validUntil" },
        { kind: "text", field: "clinic.name" },
        { kind: "phone", field: "clinic.phone" },
        number("unitsADay"),
      ],
    },
    ...MEALS.map((meal) => mealSection(draft, meal, onChange)),
    backgroundSection(draft, onChange),
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
    illSection(draft, onChange),
    {
      heading: PARTS.wrong,
      specs: ADVICE_FIELDS.map((field): Spec => ({ kind: "long", field: `advice.${field}`, hint: "Blank: call the clinic." })),
    },
  ];
}
