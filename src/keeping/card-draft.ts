// One typing of a dose card into a card. Nothing is filled in: a blank dosing field stays blank, which means "stop and ask".
import type { DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { backgroundOf, hoursInMinutes, KINDS, STRENGTH } from "./card-background.ts";
import { adviceOf, careOf, MOST_TEXT } from "./card-care.ts";
import { illOf } from "./card-ill.ts";
import { mealsOf } from "./card-meals.ts";
import { UNITS } from "./card-spans.ts";
import { insulinId } from "./insulin.ts";
import type { Draft, Problem } from "./problem.ts";
import { Reader } from "./reader.ts";

export type CardRead = { ok: true; card: DoseCard } | { ok: false; problems: readonly Problem[] };

function onBoardOf(r: Reader): DoseCard["onBoard"] {
  const minutes = { least: 10, most: 1440, decimals: 0 };
  switch (r.choice("onBoard", ["blank", "not used", "linear", "two compartments", "triangle"])) {
    case "blank":
      return null;
    case "not used":
      return { model: "not used" };
    case "linear":
      return { model: "linear", hours: r.number("onBoard.hours", { least: 1, most: 12, decimals: 2 }) };
    case "two compartments":
      return { model: "two compartments", minutes: r.number("onBoard.minutes", minutes) };
    case "triangle": {
      const peakMinutes = r.number("onBoard.peakMinutes", minutes);
      const endMinutes = r.number("onBoard.endMinutes", minutes);
      if (endMinutes <= peakMinutes) r.note("onBoard.endMinutes", { why: "upside down" });
      return { model: "triangle", peakMinutes, endMinutes };
    }
  }
}

function bedtimeOf(r: Reader): DoseCard["bedtime"] {
  if (r.choice("bedtime", ["blank", "times"]) === "blank") return null;
  return {
    from: r.time("bedtime.from"),
    until: r.time("bedtime.until"),
    correction: r.choice("bedtime.correction", ["no", "yes"]) === "yes",
  };
}

function regionsOf(r: Reader): DoseCard["regions"] {
  if (r.choice("regions", ["any", "kept"]) === "any") return null;
  const region = (meal: string) => r.choice(`regions.${meal}`, ["belly", "thigh", "arm", "buttock"]);
  return { breakfast: region("breakfast"), lunch: region("lunch"), dinner: region("dinner"), snack: region("snack") };
}

const orBlank = <T extends string>(chosen: T | "blank"): T | null => (chosen === "blank" ? null : chosen);

/** Reads one typing. All problems are listed together. */
export function readCard(draft: Draft, person: string): CardRead {
  const r = new Reader(draft);
  const name = r.text("insulin.name", 60);
  const unitsPerMl = r.number("insulin.unitsPerMl", STRENGTH);
  const unitsADay = r.blankOrNumber("unitsADay", { least: 1, most: 500, decimals: 1 });
  const glucoseUnit = r.choice("glucoseUnit", ["mg/dL", "mmol/L"]);
  const glucose = { least: 0, most: 999, decimals: 1 };
  const largest = r.blankOrNumber("largestDose", UNITS);
  const card: DoseCard = {
    person,
    insulin: { id: insulinId(name, unitsPerMl), name, unitsPerMl, kind: r.choice("insulin.kind", KINDS) },
    glucoseUnit,
    carbohydrate: r.choice("carbohydrate", ["total", "available"]),
    meals: mealsOf(r, glucoseUnit),
    ...backgroundOf(r),
    rounding: {
      step: r.choice("rounding.step", ["0.5", "1", "2", "5"]),
      direction: r.choice("rounding.direction", ["nearest, half up", "down"]),
    },
    largestDose: largest === null ? null : units(largest),
    spacingMinutes: hoursInMinutes(r, "spacingMinutes"),
    windowMinutes: hoursInMinutes(r, "windowMinutes"),
    onBoard: onBoardOf(r),
    bedtime: bedtimeOf(r),
    afterExercise: orBlank(r.choice("afterExercise", ["blank", "as usual", "food part only", "ask"])),
    afterLow: orBlank(r.choice("afterLow", ["blank", "as usual", "food part only", "inject after eating", "ask"])),
    low: { value: r.number("low.value", { ...glucose, least: 1 }), counts: r.choice("low.counts", ["at or below", "below"]) },
    high:
      r.choice("high", ["blank", "yes"]) === "blank"
        ? null
        : { value: r.number("high.value", { ...glucose, least: 1 }), advice: r.text("high.advice", MOST_TEXT) },
    ...illOf(r, glucoseUnit),
    timing: {
      when: r.choice("timing.when", ["before eating", "with the first bite", "after eating"]),
      earliestMinutes: r.number("timing.earliestMinutes", { least: 0, most: 120, decimals: 0 }),
      latestMinutes: r.number("timing.latestMinutes", { least: 0, most: 120, decimals: 0 }),
    },
    telephonedDose: r.choice("telephonedDose", ["anyone", "with a helper only", "never"]),
    regions: regionsOf(r),
    care: careOf(r),
    advice: adviceOf(r),
    clinic: { name: r.text("clinic.name", 60), phone: r.phone("clinic.phone") },
    ...(unitsADay === null ? {} : { unitsADay }),
    validFrom: r.date("validFrom"),
    reviewBy: r.blankOrDate("reviewBy"),
    validUntil: r.blankOrDate("validUntil"),
  };
  return r.problems.length > 0 ? { ok: false, problems: r.problems } : { ok: true, card };
}

/** What a new typing begins with: every dosing choice the clinic may leave blank stands on blank, everything else is unanswered. */
export const EMPTY_CARD: Draft = {
  "meals.breakfast.kind": "none",
  "meals.lunch.kind": "none",
  "meals.dinner.kind": "none",
  "meals.snack.kind": "none",
  onBoard: "blank",
  bedtime: "blank",
  afterExercise: "blank",
  afterLow: "blank",
  high: "blank",
  ketones: "blank",
  regions: "any",
};
