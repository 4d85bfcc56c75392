// Today's list, one press from the kitchen screen, and under it what else can be begun; in doubt the clock is asked about first.
import type { Intent } from "#events/intent.ts";
import { asksClock } from "#walk/reminders.ts";
import { sayToday, TODAY } from "#words/en/due.ts";
import { FIXED } from "#words/en/fixed.ts";
import { dayAndMonth, timeOfDay } from "#words/en/when.ts";
import { type ChoiceButton, ChoicesScreen } from "./choices-screen.tsx";
import type { OnKitchen } from "./on-kitchen.ts";

export interface TodayScreenProps extends OnKitchen {
  /** What the kitchen screen has no room for. */
  more: readonly ChoiceButton[];
  onIntent(intent: Intent): void;
  onDayBook(): void;
  onDone(): void;
}

export function TodayScreen({ house, now, more, onIntent, onDayBook, onDone, ...common }: TodayScreenProps) {
  const book: ChoiceButton = { label: FIXED.dayBook, press: onDayBook };
  if (asksClock(house)) {
    const wrong: ChoiceButton = { label: TODAY.wrong, also: ["no"], press: () => onIntent({ do: "doubt clock" }) };
    const right: ChoiceButton = { label: TODAY.right, also: ["yes"], role: "main", press: () => onIntent({ do: "agree clock" }) };
    const set = house.doubt === "the person said no" ? [TODAY.clockWrong] : [];
    const lines = [...set, `It is ${dayAndMonth(now)}.`, `The time is ${timeOfDay(now)}.`, "Is that right?"];
    return <ChoicesScreen {...common} title="Day and time" lines={lines} buttons={[wrong, ...more, book]} stays={right} together />;
  }
  const ok: ChoiceButton = { label: FIXED.ok, role: "main", press: onDone };
  return <ChoicesScreen {...common} title={TODAY.title} lines={sayToday(house, now)} buttons={[...more, book]} stays={ok} together />;
}
