// Facts of reminders: what was called once, and what was answered. A call is a fact, so that no start of the app repeats it.
import * as z from "zod/mini";
import { mealName } from "./card.ts";
import { clockTime, localDate } from "./quantity.ts";

/** What nothing is in the book about: a meal whose usual hours have passed, or a background dose of the card whose hour has. */
const reminder = z.discriminatedUnion("of", [
  z.object({ of: z.literal("meal"), meal: mealName }),
  z.object({ of: z.literal("background"), at: clockTime, insulinId: z.string() }),
]);
export type Reminder = z.infer<typeof reminder>;

/** "later" puts the question off and ends nothing; silence is no answer at all. */
const reminderAnswer = z.enum(["eaten elsewhere", "not eating", "later"]);
export type ReminderAnswer = z.infer<typeof reminderAnswer>;

/** day: of the meal or the dose, by the kitchen clock. */
const reminderCalled = z.object({ type: z.literal("reminder called"), day: localDate, reminder });
const reminderAnswered = z.object({ type: z.literal("reminder answered"), day: localDate, reminder, answer: reminderAnswer });

export const reminderEvents = [reminderCalled, reminderAnswered] as const;
