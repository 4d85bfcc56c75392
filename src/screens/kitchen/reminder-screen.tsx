// The question of a reminder with its answers: what is missing may be begun, was done elsewhere, or waits.
import type { Intent } from "#events/intent.ts";
import { reminderOffers, standingReminder } from "#walk/reminders.ts";
import type { PersonState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import { afterReminder, REMINDER, sayOnItsScreen } from "#words/en/reminders.ts";
import { type ChoiceButton, ChoicesScreen } from "./choices-screen.tsx";
import type { OnKitchen } from "./on-kitchen.ts";

export interface ReminderScreenProps extends OnKitchen {
  me: PersonState;
  onIntent(intent: Intent): void;
  /** What was said was noted: these lines come next. */
  onAnswered(lines: string[], elsewhere: boolean): void;
  /** It was taken without the tablet, and is told as a dose. */
  onElsewhere(): void;
}

export function ReminderScreen({ house, me, now, onIntent, onAnswered, onElsewhere, ...common }: ReminderScreenProps) {
  const standing = standingReminder(me, now);
  if (!standing) return null;
  const { reminder } = standing;
  const person = me.person.id;
  const begin: Intent =
    reminder.of === "meal"
      ? { do: "open meal", person, meal: reminder.meal }
      : { do: "open background", person, at: reminder.at, insulin: reminder.insulinId };
  const buttons: ChoiceButton[] = [
    ...reminderOffers(me, now).flatMap((o): ChoiceButton[] => {
      if (o.offer !== "press" || o.intent.do !== "answer reminder") return [];
      const { intent } = o;
      const { shown, said } = labelOf(intent, house);
      return [
        {
          label: shown,
          also: said.slice(1),
          press: () => {
            onIntent(intent);
            onAnswered(afterReminder(me, intent.answer), intent.answer === "eaten elsewhere");
          },
        },
      ];
    }),
    ...(reminder.of === "background" ? [{ label: FIXED.later, press: onElsewhere }] : []),
    { label: labelOf(begin, house).shown, role: "main", press: () => onIntent(begin) },
  ];
  return <ChoicesScreen {...common} title={REMINDER.title} lines={sayOnItsScreen(me, standing)} buttons={buttons} />;
}
