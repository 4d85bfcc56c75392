// What the book knows of a person's last days, for what is due and for reminders: meals, readings, calls and their answers, hard exercise.
import type { MealName } from "#events/card.ts";
import type { Reminder, ReminderAnswer } from "#events/happened-reminder.ts";
import type { Glucose, LocalDate } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";

/** A moment as the kitchen clock showed it. */
export interface Moment {
  wall: number;
  offset: number;
}

export interface CalledReminder {
  reminder: Reminder;
  day: LocalDate;
  at: Stamp;
  /** null: nobody answered, which is never a yes. */
  answer: ReminderAnswer | null;
}

export interface ReadingKept extends Moment {
  glucose: Glucose | null;
  word: "HI" | "LO" | null;
}

/** Lists are newest first. They are cut by their number and never by a clock, so that a clock in doubt forgets nothing (promise 14). */
export interface PersonDay {
  /** Anything that says something of a meal: a walk opened for it, or a mealtime dose told later (meal null, and when it was). */
  meals: (Moment & { meal: MealName | null })[];
  readings: ReadingKept[];
  called: CalledReminder[];
  /** When hard exercise was last told; null: never. */
  hardExercise: Stamp | null;
}

export const emptyDay: PersonDay = { meals: [], readings: [], called: [], hardExercise: null };
