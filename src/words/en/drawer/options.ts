// The answers a keeper may choose, and the units beside the boxes.
import { DEFAULT_BODY, REGIONS, SIDES } from "#rules/body/area.ts";
import { fromsOf } from "#rules/body/told-place.ts";
import { type CareField, care, DEFAULTS } from "#rules/card/care.ts";
import { fromLabel, partLabel } from "#words/en/lumps.ts";

const OPTIONS: Readonly<Record<string, string>> = {
  blank: "Left blank on the card",
  none: "No dose for this meal",
  "fixed units": "The same units each time",
  bands: "A table by glucose",
  grid: "A table by glucose and grams",
  servings: "By servings",
  ratio: "By grams",
  "correction only": "Only a correction",
  table: "By a table of its own",
  exactly: "Exactly by grams",
  "nearest half": "To the nearest half serving",
  "nearest whole": "To the nearest whole serving",
  "rapid analogue": "Rapid-acting",
  regular: "Regular",
  intermediate: "Intermediate, cloudy",
  "as printed": "Each row as printed, gaps stay gaps",
  "up to the next": "Each row reaches up to the next",
  "mg/dL": "mg/dL",
  "mmol/L": "mmol/L",
  total: "With fibre, as US labels do",
  available: "Without fibre, as UK labels do",
  "nearest, half up": "To the nearest, half goes up",
  linear: "Exactly by the difference",
  nearest: "To the nearest whole step",
  "each started step": "Each started step counts",
  tenths: "Each part to a tenth",
  whole: "Each part to a whole unit",
  "not used": "Not used",
  "two compartments": "Two-compartment curve",
  triangle: "Triangle with a peak",
  times: "Times on the card",
  "as usual": "As usual",
  "food part only": "Only the part for food",
  ask: "Stop and ask the clinic",
  "inject after eating": "Inject after eating",
  "at or below": "This reading and below",
  below: "Only below it",
  "before eating": "Some minutes after injecting",
  "with the first bite": "With the injection",
  "after eating": "Eat first, inject after",
  anyone: "Used by the person alone",
  "with a helper only": "Used with a helper only",
  never: "Never used",
  any: "Any part for any meal",
  kept: "A part is kept for each meal",
  blood: "Blood, a number",
  "urine words": "Urine strip with words",
  "urine plus signs": "Urine strip with plus signs",
  clinic: "Call the clinic now",
  emergency: "Call the emergency number now",
  belly: "Belly",
  thigh: "Thigh",
  arm: "Arm",
  buttock: "Buttock",
  yes: "Yes",
  no: "No",
  US: "United States",
  UK: "United Kingdom",
  adult: "Yes, a grown-up",
  child: "No, a child",
  pen: "A pen",
  pump: "A pump",
  syringe: "A syringe from a vial",
  circle: "Circle",
  square: "Square",
  star: "Star",
  "en-US": "English, United States",
  "en-GB": "English, United Kingdom",
  finger: "A finger",
  sensor: "A sensor",
  reads: "Read with the eyes",
  "counts twice": "Counted in clicks, two times",
  helper: "Read by a helper",
  mealtime: "Mealtime",
  "long-acting": "Long-acting",
  premixed: "Premixed",
  card: "The insulin on the card",
  other: "Another insulin",
  breakfast: "Breakfast",
  lunch: "Lunch",
  dinner: "Dinner",
  snack: "Snack",
};

const OWN: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "rounding.direction": { down: "Always down" },
  "person.shape": { triangle: "Triangle" },
  "bedtime.correction": { no: "No corrections", yes: "Corrections as usual" },
  onBoard: { linear: "Evenly over some hours" },
  "onBoard.model": { linear: "Evenly over some hours" },
  "household.hearer": { nobody: "Nobody", always: "Always", between: "Only between these hours" },
  "mark.kind": { scar: "A scar", mole: "A mole", lump: "A lump", sore: "A sore place", other: "Another place to leave free" },
};

/** "left belly", "knee up", as keeping/body.ts spells them. */
function markOption(field: "mark.part" | "mark.from", option: string): string {
  if (field === "mark.part") {
    const part = REGIONS.flatMap((region) => SIDES.map((side) => ({ region, side }))).find((p) => `${p.side} ${p.region}` === option);
    return part ? partLabel(part) : option;
  }
  const from = REGIONS.flatMap((region) => fromsOf(region, DEFAULT_BODY)).find((f) => `${f.landmark} ${f.way}` === option);
  return from ? fromLabel(from) : option;
}

/** A place on a strip: both kinds share their names, since the strip is chosen above the lines. */
const STRIP: Readonly<Record<string, string>> = {
  none: "None, no plus",
  trace: "Trace",
  small: "Small, 1 plus",
  moderate: "Moderate, 2 plus",
  large: "Large, 3 plus",
  "very large": "4 plus",
};

export const stripName = (option: string): string => STRIP[option] ?? option;

/** The words of one answer; an answer without words is shown as it is. */
export function optionName(field: string, option: string): string {
  const own = OWN[field]?.[option];
  if (own !== undefined) return own;
  if (field === "mark.part" || field === "mark.from") return markOption(field, option);
  if (/^ketones\.lines\.\d+\.from$/.test(field)) return stripName(option);
  if (/^ketones\.lines\.\d+\.call$/.test(field) && option === "no") return "Nobody";
  if (field.endsWith(".mode") && option === "down") return "Only whole steps, the rest is dropped";
  if (/^meals\.\w+\.correction$/.test(field) && option === "yes") return "By a target and a step";
  if (/^meals\.\w+\.correction$/.test(field) && option === "no") return "No correction";
  if (field.endsWith("insulin.kind") && option === "premixed") return "Premixed, cloudy";
  if (field.endsWith(".roundParts") && option === "none") return "No rounding of parts";
  if (field.endsWith(".unitsPerClick") || field === "rounding.step") return option === "1" ? "1 unit" : `${option} units`;
  return OPTIONS[option] ?? option;
}

/** What follows the number in its box, or "". glucose: the unit of the card that is typed. */
export function unitWords(field: string, glucose: string): string {
  if (field.startsWith("hands.") && field !== "hands.handMm") return "hands";
  if (field === "mark.along" || field === "mark.outwards") return "fingers";
  if (field.endsWith("unitsPerMl")) return "units per mL";
  if (/\.columns\.\d+\.(from|to)$/.test(field)) return "grams";
  if (/\.(target\.(low|high)|perUnit|from|to)$/.test(field) && field.startsWith("meals.")) return glucose;
  if (/^ketones\.lines\.\d+\.from$/.test(field)) return "mmol/L";
  if (["low.value", "high.value", "ketones.from"].includes(field) || field.startsWith("person.usualBand")) return glucose;
  if (/(\.units(\.\d+)?|foodOnly(\.\d+)?|primeUnits|unitsWhenOpened|unitsPerServing)$/.test(field)) return "units";
  if (field === "largestDose" || field === "unitsADay") return "units";
  if (/(gramsPerUnit|gramsPerServing|treatGrams|\.grams)$/.test(field)) return "grams";
  if (field.endsWith("windowMinutes") || field === "spacingMinutes" || field === "onBoard.hours") return "hours";
  if (field.endsWith("Minutes") || field === "onBoard.minutes") return "minutes";
  if (field.endsWith("Seconds")) return "seconds";
  if (field.endsWith("Days")) return "days";
  return field.endsWith("Mm") ? "millimeters" : "";
}

/** "Blank: 20 seconds." */
export const careHint = (field: CareField): string => `Blank: ${DEFAULTS[field]} ${unitWords(`care.${field}`, "")}.`;

/** "20 seconds", and of a default that it is one. */
export function careWords(card: Parameters<typeof care>[0], field: CareField): string {
  const { value, isDefault } = care(card, field);
  return `${value} ${unitWords(`care.${field}`, "")}${isDefault ? " (blank on the card: the usual)" : ""}`;
}
