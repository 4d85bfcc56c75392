// The day book in words: a line for each walk, as a neighbour would tell it, and the words of its screen.
import type { Happened, Of } from "#events/happened.ts";
import { DAY, type Glucose, type LocalDate } from "#events/quantity.ts";
import type { Spot } from "#events/spot.ts";
import type { Via } from "#events/told.ts";
import { daysBetween } from "#rules/time/local.ts";
import { minutesOf, number, unitsOf } from "./amounts.ts";
import { MISHAP_WORDS, stepWords } from "./daybook/names.ts";
import { placeName } from "./places.ts";
import { dayAndMonth } from "./when.ts";

export const DAY_BOOK = {
  title: "Day book",
  back: "Back",
  dayBefore: "Day before",
  dayAfter: "Day after",
  today: "Today",
  allSteps: "All steps",
  fewer: "Fewer words",
  chart: "Body chart",
  partBefore: "Part before",
  partAfter: "Next part",
  telephoned: "By telephone",
  toTheDay: "To the day",
  down: "Further down",
  up: "Further up",
  nothing: "Nothing was written on this day.",
  reading: "One moment. The day is being read.",
  notRead: "The day could not be read. Press Today to read again.",
  unreadable: "A row could not be read. It may hold a dose.",
  timeNotKnown: "Time not known",
  nobody: "Nobody lives on this tablet yet.",
  left: "left",
  right: "right",
  day: "Day",
  place: "Place",
  noGo: "Never used here",
  chartNumbers: "Numbers are days since then.",
} as const;

/** "Reading 132 mg/dL." A reading is never written without its unit. */
export const sayReading = (glucose: Glucose): string => `Reading ${glucose.value} ${glucose.unit}.`;
export const sayMeterWord = (word: "HI" | "LO"): string => `The meter showed ${word}.`;

/** How an answer was known, as it follows the answer: ", spoken". */
export function howKnown(via: Via, helper: string | null): string {
  if (helper !== null || via === "helper") return `, read by ${helper ?? "a helper"}`;
  return { touch: ", pressed", keys: ", typed", voice: ", spoken", meter: ", from the meter" }[via];
}

/** What went in: "5 units, left side of the belly." A doubt is written as a doubt. */
export function sayInjected(event: Of<"injected">, spot: Spot | null): string[] {
  const where = spot ? `, ${placeName(spot)}` : "";
  if (!event.certain || event.units === null) return [`Insulin may have gone in${where}.`, "How much is not certain. It counts as taken."];
  if (event.left !== null && event.left > 0)
    return [`${unitsOf(event.units)} of ${number(event.units + event.left)} went in${where}.`, `${unitsOf(event.left)} stayed in the pen.`];
  return [`${unitsOf(event.units)}${where}.`, ...(event.known === "felt" ? ["The button was felt, the window not read."] : [])];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a walk was for, before anything of it. */
export function walkName({ kind, meal, background }: Of<"walk opened">): string | null {
  if (meal) return MEAL_NAME[meal];
  if (background) return `Long-acting insulin, ${background.insulinName}.`;
  return { low: WALK_LINE.low, reading: "A reading.", meal: null, mishap: null, background: "Long-acting insulin." }[kind];
}

export const MEAL_NAME = { breakfast: "Breakfast.", lunch: "Lunch.", dinner: "Dinner.", snack: "Snack." } as const;

export const WALK_LINE = {
  low: "A low.",
  dayBefore: "A walk that began the day before.",
  needleOpen: "The needle step began. It counts as taken.",
  notIn: "The needle did not go in.",
  noInsulin: "No insulin went in.",
  noReading: "No reading was given.",
  noDose: "The card gave no dose.",
  zero: "The card said 0 units.",
  alreadyTaken: "The dose was taken already.",
  ateFirst: "Ate before the insulin.",
  ate: "Ate afterwards.",
  ateAfter: (minutes: number) => (minutes === 0 ? "Ate at once." : `Ate after ${minutesOf(minutes)}.`),
  late: (minutes: number) => `The meal was late by ${minutesOf(minutes)}.`,
  bell: (minutes: number) =>
    minutes === 0 ? "The bell was not answered in time." : `The bell was not answered for ${minutesOf(minutes)}.`,
  cannotEat: "Could not eat.",
  noWordOfEating: "Eating was not told.",
  call: "The tablet said: call for help.",
  lowOver: "The low was over.",
  slips: (n: number) => (n === 1 ? "1 slip was noted." : `${n} slips were noted.`),
  stoppedAt: (step: string) => `Stopped at ${stepWords(step)}.`,
  helped: (name: string) => `${name === "somebody else" ? "Somebody" : name} helped.`,
  tookSugar: (grams: string, food: string) => `Took ${grams} of ${food}.`,
  mishap: (kind: Of<"mishap opened">["kind"]) => `Said: ${MISHAP_WORDS[kind]}.`,
  telephoned: (by: string, units: number) => `${by} gave ${unitsOf(units)} by telephone.`,
} as const;

export const ATE: Readonly<Record<Of<"meal answered">["ate"], string>> = {
  all: "All of the meal was eaten.",
  half: "Half of the meal was eaten.",
  "hardly any": "Hardly any of the meal was eaten.",
  "not kept down": "The meal was not kept down.",
};

/** The tablet wrote nothing for hours and then started: nobody knows which part of it the tablet was off. */
export const sayOff = (from: string, until: string): string => `The tablet was off from ${from} to ${until}, or not used.`;
/** Started again, with the last entry on the same page too short ago to matter. */
export const STARTED = "The tablet started.";

/** A dose taken elsewhere. */
export function sayToldLater(event: Extract<Happened, { type: "dose told later" }>): string {
  const name = event.insulin?.name ?? "mealtime insulin";
  const much =
    event.units === null
      ? `${capital(name)}, amount not known,`
      : `${unitsOf(event.units)}${event.insulin ? ` of ${event.insulin.name}` : ""}`;
  const when = event.minutesAgo === null ? "at a time not known" : `about ${minutesOf(event.minutesAgo)} earlier`;
  return `${much} ${event.units === 1 ? "was" : event.units === null ? "was" : "were"} taken elsewhere, ${when}.`;
}

/** "Today, 3 June", "Wednesday, 3 June". */
export function dayTitle(day: LocalDate, today: LocalDate): string {
  const noon = { wall: (daysBetween("1970-01-01", day) + 0.5) * DAY, offset: 0 };
  const words = dayAndMonth(noon);
  return day === today ? `Today, ${words.slice(words.indexOf(", ") + 2)}` : words;
}

export const daysAgo = (days: number): string => (days === 0 ? "Today" : days === 1 ? "Yesterday" : `${days} days ago`);
