// The names of the hours a keeper types: of the household, of meals and of readings.
import { MEALS, READING_TIMES } from "#keeping/meal-hours.ts";
import { USUAL_QUIET } from "#rules/time/house-hours.ts";

const MEAL_NAMES = { breakfast: "Breakfast", lunch: "Lunch", dinner: "Dinner", snack: "Snack" } as const;

export const HOURS_NAMES: Readonly<Record<string, string>> = {
  "household.hearer": "Is somebody in the house who hears it?",
  "household.hearer.from": "Somebody hears it from",
  "household.hearer.until": "Somebody hears it until",
  "household.quietHours.from": "No reminders from",
  "household.quietHours.until": "No reminders until",
  ...Object.fromEntries(
    MEALS.flatMap((meal) => [
      [`person.mealHours.${meal}.from`, `${MEAL_NAMES[meal]}, usually from`],
      [`person.mealHours.${meal}.until`, `${MEAL_NAMES[meal]}, usually until`],
    ]),
  ),
  ...Object.fromEntries(Array.from({ length: READING_TIMES }, (_, i) => [`person.readingTimes.${i}`, `Reading ${i + 1}, due at`])),
};

export const HOURS_HINTS: Readonly<Record<string, string>> = {
  "household.hearer.from": "Only for certain hours. For example 5:30 pm or 17:30.",
  "household.quietHours.from": `Blank: ${USUAL_QUIET.from} to ${USUAL_QUIET.until}. Bells and lows always sound.`,
  "person.mealHours.breakfast.from": "For example 7:00 am or 07:00. Blank: never asked about.",
  "person.readingTimes.0": "Besides meals: at bedtime, for example 10:00 pm.",
};
