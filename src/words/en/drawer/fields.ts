// The name of every field a keeper types: the label beside its box, and how a difference or a problem calls it.
import { foodById } from "#rules/food/foods.ts";
import { BODY_HINTS, BODY_NAMES } from "./body-fields.ts";
import { HOURS_HINTS, HOURS_NAMES } from "./hours-fields.ts";
import { ILL_NAMES, illFieldHint, illFieldName } from "./ill-fields.ts";
import { PEN_HINTS, PEN_NAMES } from "./pen-fields.ts";

/** Headings of the parts of a form and of the sheet. */
export const PARTS = {
  insulin: "Insulin and dates",
  breakfast: "Breakfast",
  lunch: "Lunch",
  dinner: "Dinner",
  snack: "Snack",
  background: "Background insulin",
  limits: "Limits",
  eating: "Eating and body",
  care: "Care",
  ill: "High glucose and ill days",
  wrong: "When something goes wrong",
  who: "Who it is",
  readings: "Readings",
  dialing: "Dialing",
  meals: "Usual meals",
  body: "Body",
  sugars: "Sugars not to offer in a low",
  kit: "The glucagon kit, from its leaflet",
  pen: "The pen",
  dates: "Dates",
  hearer: "Who can hear the tablet",
  quiet: "Quiet hours",
  hours: "Hours of the day",
} as const;

const MEALS: Readonly<Record<string, string>> = { breakfast: "Breakfast", lunch: "Lunch", dinner: "Dinner", snack: "Snack" };

const NAMES: Readonly<Record<string, string>> = {
  ...BODY_NAMES,
  ...ILL_NAMES,
  "insulin.name": "Name of the mealtime insulin",
  "insulin.id": "Name of the mealtime insulin",
  "insulin.unitsPerMl": "Strength",
  "insulin.kind": "Kind of the mealtime insulin",
  unitsADay: "All insulin of a usual day",
  background: "Background insulin",
  glucoseUnit: "Unit of glucose on the card",
  carbohydrate: "How the clinic counts carbohydrate",
  "rounding.step": "Doses go in steps of",
  "rounding.direction": "Rounding of the dose",
  largestDose: "Largest dose",
  spacingMinutes: "Time between corrections",
  windowMinutes: "How long a mealtime dose counts",
  onBoard: "Insulin still working",
  "onBoard.model": "Insulin still working",
  "onBoard.hours": "Insulin works for",
  "onBoard.minutes": "Insulin works for",
  "onBoard.peakMinutes": "Strongest after",
  "onBoard.endMinutes": "Over after",
  bedtime: "Bedtime",
  "bedtime.from": "Bedtime from",
  "bedtime.until": "Bedtime until",
  "bedtime.correction": "Corrections at bedtime",
  afterExercise: "After hard exercise",
  afterLow: "After a low",
  "low.value": "A low begins at",
  "low.counts": "Which readings are low",
  high: "Advice for high readings",
  "high.value": "High from",
  "high.advice": "What the card says for high readings",
  "timing.when": "When to eat",
  "timing.earliestMinutes": "Eat at the earliest after",
  "timing.latestMinutes": "Eat at the latest after",
  telephonedDose: "Doses given by telephone",
  regions: "Parts of the body for each meal",
  "care.washSeconds": "Washing the hands",
  "care.readingAgeMinutes": "A reading counts for",
  "care.primeUnits": "Testing the pen",
  "care.dryingSeconds": "Drying of the skin",
  "care.holdSeconds": "Holding the needle in",
  "care.recheckMinutes": "Wait after sugar",
  "care.treatGrams": "Sugar for a low",
  "care.restDays": "Rest of a spot",
  "care.lastSpotMm": "Distance from the last spot",
  "care.navelMm": "Distance from the navel",
  "care.askEatenMinutes": "Question about the meal after",
  "advice.tooMuch": "Too much insulin",
  "advice.wrongInsulin": "Wrong insulin",
  "advice.missed": "A missed dose",
  "advice.mealSkipped": "A meal is skipped",
  "advice.partDose": "Only part of a dose",
  "advice.cannotEat": "Cannot eat",
  "advice.halfEaten": "Half a meal eaten",
  "advice.ill": "Feeling ill",
  "clinic.name": "Name of the clinic",
  "clinic.phone": "Telephone of the clinic",
  validFrom: "The card begins on",
  reviewBy: "Review by",
  validUntil: "The card ends on",

  "household.country": "Country",
  "household.emergencyNumber": "Emergency number",
  ...HOURS_NAMES,
  "keeper.name": "Your name",
  "keeper.pin": "PIN",
  "keeper.again": "PIN again",

  "person.age": "Is this a grown-up?",
  "person.gives": "What gives the insulin?",
  "person.name": "Name",
  "person.shape": "Own shape",
  "person.language": "Language",
  "person.glucoseUnit": "Unit on the meter",
  "person.readsFrom": "Where readings come from",
  "person.dialBy": "How the dial is known",
  "person.helperOnly": "Only with a helper at the elbow",
  "person.sayFirst": "Says the own number first",
  "person.usualBand.low": "Usual readings from",
  "person.usualBand.high": "Usual readings up to",
  ...PEN_NAMES,
};

const OF_MEAL: Readonly<Record<string, string>> = {
  "": "dose",
  kind: "dose",
  units: "units",
  edges: "between the rows",
  foodOnly: "units for food only",
  bands: "rows",
  gramsPerUnit: "grams for 1 unit",
  roundParts: "rounding of the parts",
  columns: "columns",
  columnEdges: "between the columns",
  rows: "rows",
  unitsPerServing: "units for 1 serving",
  gramsPerServing: "grams in 1 serving",
  count: "counting of servings",
  table: "table of corrections",
  "table.bands": "rows of corrections",
  "table.edges": "between the rows of corrections",
  correction: "correction",
  "correction.target": "target",
  "correction.target.low": "target from",
  "correction.target.high": "target up to",
  "correction.perUnit": "1 unit lowers by",
  "correction.mode": "counting of corrections",
  "correction.mayReduce": "less insulin below the target",
};

const OF_ROW: Readonly<Record<string, string>> = { from: "from", to: "up to", units: "units", call: "call the clinic" };

const OF_BACKGROUND: Readonly<Record<string, string>> = {
  "insulin.name": "name of the insulin",
  "insulin.id": "name of the insulin",
  "insulin.kind": "kind of insulin",
  "insulin.unitsPerMl": "strength",
  units: "units",
  at: "time",
  windowMinutes: "how long it counts",
};

/** "meals.lunch.bands.2.units" and the like: a place in a table; undefined where it is none. */
function tableName(meal: string, rest: readonly string[]): string | undefined {
  const [list = "", i, column, cell] = rest[0] === "table" ? rest.slice(1) : rest;
  const of = rest[0] === "table" ? `${meal}, correction` : meal;
  if (i === undefined) return undefined;
  const place = Number(i) + 1;
  if (list === "columns")
    return column === undefined ? `${meal}, column ${place}` : `${meal}, column ${place}: ${OF_ROW[column] ?? column}`;
  if (list === "foodOnly") return `${meal}, column ${place}: food only`;
  if (list !== "bands" && list !== "rows") return undefined;
  const row = `${of}, row ${place}`;
  if (column === undefined) return row;
  return cell === undefined ? `${row}: ${OF_ROW[column] ?? column}` : `${row}, column ${Number(cell) + 1}: units`;
}

/** "meals.lunch.bands.2.units" -> "Lunch, row 3: units". Throws (a defect) for a field without a name. */
export function fieldName(field: string): string {
  const own = NAMES[field];
  if (own !== undefined) return own;
  const [room = "", which = "", ...rest] = field.split(".");
  const meal = MEALS[which];
  if (room === "meals" && meal !== undefined) {
    const name = OF_MEAL[rest.join(".")];
    const place = name === undefined ? tableName(meal, rest) : `${meal}: ${name}`;
    if (place !== undefined) return place;
  }
  if (room === "background") {
    const place = `Background ${Number(which) + 1}`;
    return rest.length === 0 ? place : `${place}: ${OF_BACKGROUND[rest.join(".")] ?? rest.join(".")}`;
  }
  if (room === "regions" && meal !== undefined) return `${meal}: part of the body`;
  if (field.startsWith("person.usualMeals.")) {
    const [, , row, column] = field.split(".");
    return `Usual meal ${Number(row) + 1}: ${column === "grams" ? "grams" : column}`;
  }
  const ill = illFieldName(field);
  if (ill !== undefined) return ill;
  if (field.startsWith("person.kit.")) return `Glucagon kit, step ${Number(field.split(".")[2]) + 1}`;
  if (field.startsWith("person.noSugar.")) return `Do not offer: ${foodById(field.slice("person.noSugar.".length))?.us ?? "a sugar"}`;
  throw new Error(`the field ${field} has no name`);
}

const HINTS: Readonly<Record<string, string>> = {
  ...BODY_HINTS,
  "insulin.name": "As on the paper, for example insulin lispro.",
  largestDose: "Blank: no dose is told, the clinic is asked.",
  spacingMinutes: "Blank: no dose is told, the clinic is asked.",
  windowMinutes: "Blank: no dose is told, the clinic is asked.",
  validFrom: "With the month as a word: 3 June 2026.",
  reviewBy: "Blank if the paper has no such date.",
  validUntil: "Blank if the paper has no such date.",
  "insulin.kind": "The leaflet of the pen names it.",
  unitsADay: "Only to check ratios. Blank if the paper has none.",
  "bedtime.from": "For example 9:30 pm or 21:30.",
  "bedtime.until": "For example 5:00 am or 05:00.",
  "household.emergencyNumber": "It is shown whenever something is urgent.",
  ...HOURS_HINTS,
  ...PEN_HINTS,
  "keeper.pin": "4 to 8 digits.",
};

/** What stands under the label; rows and care fields share theirs. */
export function fieldHint(field: string): string | undefined {
  if (/\.(bands|rows|columns)\.\d+\.(from|to)$/.test(field)) return "Blank: open.";
  const ill = illFieldHint(field);
  if (ill !== undefined) return ill;
  if (field === "person.kit.0") return "One thing to do in each line. Blank if there is no kit.";
  if (/^background\.\d+\.insulin\.name$/.test(field)) return "Blank if the card has none.";
  if (/^background\.\d+\.at$/.test(field)) return "For example 9:30 pm or 21:30.";
  if (/^background\.\d+\.windowMinutes$/.test(field)) return "Blank: no dose is told, the clinic is asked.";
  if (/\.foodOnly(\.\d+)?$/.test(field)) return "Blank: without a correction, no dose is told.";
  return HINTS[field];
}
