// What a reminder says, shown and spoken, and the names of its answers. It asks, and never pushes to a dose.

import type { Of } from "#events/happened.ts";
import type { Reminder, ReminderAnswer } from "#events/happened-reminder.ts";
import type { CalledReminder } from "#walk/day.ts";
import type { PersonState } from "#walk/state.ts";
import { type Label, label } from "#words/say.ts";

const insulinOf = (me: PersonState, insulinId: string): string =>
  me.card?.card.background?.find((dose) => dose.insulin.id === insulinId)?.insulin.name ?? "background insulin";

/** The name first, so that in a house of two nobody answers for the other. */
export function sayReminder(me: PersonState, reminder: Reminder): string[] {
  const { name } = me.person;
  return reminder.of === "meal"
    ? [`${name}, no ${reminder.meal} is in the book.`, "Is it time to eat?"]
    : [`${name}, no ${insulinOf(me, reminder.insulinId)} is in the book today.`, "Look at the clock and at your card."];
}

export const REMINDER = { title: "Not in the book", meal: (meal: string) => `About ${meal}`, background: "About the insulin" } as const;

/** On the kitchen screen, while the question stands. */
export const reminderButton = ({ reminder }: CalledReminder): string =>
  reminder.of === "meal" ? REMINDER.meal(reminder.meal) : REMINDER.background;

/** On its own screen, with its answers. */
export const sayStanding = (me: PersonState, { reminder, answer }: CalledReminder): string[] => [
  ...sayReminder(me, reminder),
  ...(answer === "later" ? ["You said: later."] : []),
];

/** The same with the way to tell what the tablet did not see, which its own screen alone offers. */
export const sayOnItsScreen = (me: PersonState, called: CalledReminder): string[] => [
  ...sayStanding(me, called),
  ...(called.reminder.of === "background" ? ["Taken without me? Press Away from home."] : []),
];

const ANSWERS: Readonly<Record<ReminderAnswer, Label>> = {
  "eaten elsewhere": label("Eaten elsewhere", "i ate elsewhere"),
  "not eating": label("Not eating", "i am not eating"),
  later: label("Later", "ask me later"),
};
export const reminderLabel = (answer: ReminderAnswer): Label => ANSWERS[answer];

/** After the answer. Who ate away from home may have injected there, and is asked, since the book would not know. */
export function afterReminder(me: PersonState, answer: ReminderAnswer): string[] {
  switch (answer) {
    case "eaten elsewhere":
      return ["Saved. You ate somewhere else.", "Was insulin taken there? Then press Away from home."];
    case "not eating": {
      const own = me.card?.card.advice.mealSkipped;
      return ["Saved. No meal this time.", ...(own ? [`Your card says: ${own}`] : ["No meal, no mealtime insulin."])];
    }
    case "later":
      return ["Saved. The question stays on the screen.", "It will not sound again."];
  }
}

/** For the day book. */
export function sayReminderFact(event: Of<"reminder called" | "reminder answered">): string {
  const of = event.reminder.of === "meal" ? event.reminder.meal : `background insulin at ${event.reminder.at}`;
  if (event.type === "reminder called") return `Nothing was in the book for ${of}. The tablet asked once.`;
  return { "eaten elsewhere": `Said: ${of} was eaten elsewhere.`, "not eating": `Said: no ${of} this time.`, later: `Said: ${of} later.` }[
    event.answer
  ];
}
