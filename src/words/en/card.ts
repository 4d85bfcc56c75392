// Why the card tells this dose, and what its silence means. Whole sentences, never an itemised sheet.
import type { ToldDose } from "#events/told.ts";
import type { Caution, Reason } from "#rules/card/told.ts";
import { gramsOf, number, unitsOf } from "./amounts.ts";
import { dateInWords } from "./when.ts";

const BECAUSE: Readonly<Record<string, string>> = {
  "clock doubtful": "the time is not sure",
  "eaten first": "the meal is eaten first",
  "after a low": "a low was treated",
  "after exercise": "of the hard exercise",
  spacing: "the last dose still works",
  bedtime: "it is bedtime",
  "this insulin": "this insulin never corrects",
  "insulin on board": "the last dose still works",
};

type Loose = { reason: string } & Record<string, unknown>;

const edge = (from: unknown, to: unknown): string =>
  from === null || from === undefined
    ? `up to ${number(Number(to))}`
    : to === null || to === undefined
      ? `${number(Number(from))} or more`
      : `${number(Number(from))} to ${number(Number(to))}`;

/** One reason as a short clause or sentence; "" for one that another sentence carries. */
function reason(why: Loose): string {
  const kind = why.reason as Reason["reason"] | "telephoned" | "background" | "no reading";
  const n = Number(why.units ?? 0);
  switch (kind) {
    case "fixed for the meal":
      return "That is for the meal.";
    case "band":
      return `The card's row is ${edge(why.from, why.to)}.`;
    case "cell":
      return `The card's row is ${edge(why.from, why.to)}, its column ${edge(why.gramsFrom, why.gramsTo)} grams.`;
    case "food-only row":
      return "This is the card's row for food only.";
    case "food":
      return `${unitsOf(n)} ${n === 1 ? "is" : "are"} for ${gramsOf(Number(why.grams ?? 0))} of food.`;
    case "reading is high":
      return `${unitsOf(n)} ${n === 1 ? "is" : "are"} because the reading is high.`;
    case "reading is below target":
      return `${unitsOf(n)} less, because the reading is below the target.`;
    case "insulin on board":
      return `${unitsOf(n)} less, because earlier insulin still works.`;
    case "no correction":
      return `No correction, because ${BECAUSE[String(why.because)] ?? "the card says so"}.`;
    case "background":
      return `It is ${String(why.insulin)}, whatever you eat.`;
    case "no reading":
      return "There is no reading. That is written down.";
    case "telephoned":
      return `${String(why.by)} gave this number by telephone.`;
    default:
      return "";
  }
}

function caution(c: { caution: string } & Record<string, unknown>): string {
  switch (c.caution as Caution["caution"] | "not at its hour") {
    case "not at its hour":
      return "That hour is far from now.";
    case "review date has passed":
      return `The card was due for review on ${dateInWords(String(c.reviewBy))}.`;
    case "card says call the clinic":
      return "The card also says: call the clinic.";
    case "card has advice for this reading":
      return "";
    case "below target, reduced":
      return "";
    case "default used":
      return "";
    default:
      return "";
  }
}

/** A printed number holds both parts: said apart where the card names the part for the food. */
function partsOfRow(told: ToldDose): string[] {
  const printed = told.why.some(({ reason }) => reason === "band" || reason === "cell");
  if (!printed || told.food <= 0 || told.correction <= 0) return [];
  return [`${unitsOf(told.food)} ${told.food === 1 ? "is" : "are"} for the food, ${number(told.correction)} because the reading is high.`];
}

/** Two short sentences at most about why, then cautions. */
export function whyTold(told: ToldDose): string[] {
  const reasons = [...told.why.map((w) => reason(w as Loose)).filter((s) => s !== ""), ...partsOfRow(told)];
  const cautions = told.cautions.map((c) => caution(c as { caution: string } & Record<string, unknown>)).filter((s) => s !== "");
  return [...reasons.slice(0, 3), ...cautions];
}

const SILENT: Readonly<Record<string, string>> = {
  "no card": "There is no signed card for you here.",
  "no dose for this meal": "The card has no dose for this meal.",
  "no dose at this hour": "The card no longer has this dose.",
  "no reading": "There is no reading to go by.",
  "reading is low": "The reading is low. A low comes first.",
  "reading is HI": "The meter shows HI. That is no number.",
  "reading is LO": "The meter shows LO. A low comes first.",
  "other unit": "The card and the meter use different units.",
  "hole between bands": "The card has no row for this reading.",
  "in two bands": "Two rows of the card claim this reading.",
  "below the bands": "The card has no row this low.",
  "above the bands": "The card has no row this high.",
  "no column for this meal": "The card has no column for these grams.",
  "in two columns": "Two columns of the card claim these grams.",
  "no food-only row": "The card does not say the dose for food only.",
  "not valid yet": "The card is not valid yet.",
  "no longer valid": "The card is no longer valid.",
  "day not known": "The tablet does not know the day.",
  "carbohydrate not known": "The carbohydrate is not known.",
  "after a low: ask": "After a low, the card says to ask.",
  "after exercise: ask": "After hard exercise, the card says to ask.",
  "off the pen's step": "The card's dose does not fit your pen.",
  "above the largest dose": "That is above the card's largest dose.",
  "blank field": "The clinic left a field of the card blank.",
};

const BLANK: Readonly<Record<string, string>> = {
  largestDose: "The card does not say the largest dose.",
  spacingMinutes: "The card does not say the time between corrections.",
  windowMinutes: "The card does not say how long a dose counts.",
  onBoard: "The card does not say how earlier insulin counts.",
  afterExercise: "The card does not say what follows hard exercise.",
  afterLow: "The card does not say what follows a low.",
  "background.windowMinutes": "The card does not say how long this dose counts.",
};

/** Why there is no dose, in one sentence. */
export function whySilent(silent: { why: string; detail: string | null }): string {
  if (silent.why === "blank field" && silent.detail) {
    const field = String((JSON.parse(silent.detail) as { field?: string }).field ?? "");
    return BLANK[field] ?? "The clinic left a field of the card blank.";
  }
  return SILENT[silent.why] ?? "The card does not say what to do here.";
}
