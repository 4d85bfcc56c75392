// The usual hours of a person's day, as a keeper types them: when meals are eaten, and when readings are due.
import type { MealName } from "#events/card.ts";
import type { Person } from "#events/person.ts";
import { minuteOf } from "#rules/time/local.ts";
import type { Draft } from "./problem.ts";
import type { Reader } from "./reader.ts";

export const MEALS: readonly MealName[] = ["breakfast", "lunch", "dinner", "snack"];
/** Bedtime, in the night, and two more. */
export const READING_TIMES = 4;

/** Both hours blank: that meal has none, and is never asked about. Hours that go on past midnight are no usual meal. */
export function mealHoursOf(r: Reader): Pick<Person, "mealHours"> {
  const hours = MEALS.flatMap((meal) => {
    const [from, until] = [`person.mealHours.${meal}.from`, `person.mealHours.${meal}.until`];
    if (r.raw(from) === "" && r.raw(until) === "") return [];
    const span = { meal, from: r.time(from), until: r.time(until) };
    if (r.raw(from) !== "" && r.raw(until) !== "" && minuteOf(span.until) <= minuteOf(span.from)) r.note(until, { why: "upside down" });
    return [span];
  });
  return hours.length > 0 ? { mealHours: hours } : {};
}

export function readingTimesOf(r: Reader): Pick<Person, "readingTimes"> {
  const times = Array.from({ length: READING_TIMES }, (_, i) => `person.readingTimes.${i}`).flatMap((field) =>
    r.raw(field) === "" ? [] : [r.time(field)],
  );
  return times.length > 0 ? { readingTimes: times } : {};
}

export const draftOfHours = ({ mealHours = [], readingTimes = [] }: Person): Draft => ({
  ...Object.fromEntries(
    mealHours.flatMap(({ meal, from, until }) => [
      [`person.mealHours.${meal}.from`, from],
      [`person.mealHours.${meal}.until`, until],
    ]),
  ),
  ...Object.fromEntries(readingTimes.map((at, i) => [`person.readingTimes.${i}`, at])),
});
