// The resting screen itself: the clock, what is due next, and its buttons, what presses first.
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import { whoCalls } from "#walk/helper-case.ts";
import { backgroundDosesOf } from "#walk/insulin.ts";
import { insulinWatched } from "#walk/insulin-watch.ts";
import { lumpQuestionDue } from "#walk/lump-question.ts";
import { maySetAside, mealQuestionDue } from "#walk/offers.ts";
import { standingReminder } from "#walk/reminders.ts";
import type { HouseState } from "#walk/state.ts";
import { sayEvening } from "#words/en/cautions.ts";
import { hasDue, sayClockDoubt, sayNext, TODAY } from "#words/en/due.ts";
import { FIXED } from "#words/en/fixed.ts";
import { HELPER } from "#words/en/helper.ts";
import { WATCH } from "#words/en/insulin-watch.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { labelOf } from "#words/en/labels.ts";
import { reminderButton } from "#words/en/reminders.ts";
import { clock, dayAndMonth } from "#words/en/when.ts";
import { type ChoiceButton, ChoicesScreen } from "./choices-screen.tsx";
import type { OnKitchen } from "./on-kitchen.ts";

/** What somebody wants before it is known who. */
export type Wish = "meal" | "background" | "reading" | "taken" | "low" | "ill" | "answer" | "remind" | "lumps" | "watch";

interface Acts {
  house: HouseState;
  now: Stamp;
  onIntent(intent: Intent): void;
  onDayBook(): void;
  onHelper(): void;
  onWish(wish: Wish): void;
  onToday(): void;
}

export interface RestButtons {
  buttons: ChoiceButton[];
  /** Keeps the lower right corner. */
  stays?: ChoiceButton;
  /** What stands on today's screen, under its list. */
  behind: ChoiceButton[];
}

/**
 * With no walk open, and something on today's list: the most pressing thing, Today, the low and the meal; all else is behind Today.
 * Otherwise what presses comes first, and the rest is behind More.
 */
export function restButtons({ house, now, onIntent, onDayBook, onHelper, onWish, onToday }: Acts): RestButtons {
  const people = Object.values(house.people);
  const open = people.filter((p) => p.walk);
  const free = people.filter((p) => !p.walk || maySetAside(p));
  const [first] = open;
  const carryOn: ChoiceButton[] = open.slice(0, 2).map((p) => ({
    label: labelOf({ do: "turn to", person: p.person.id }, house).shown,
    role: "main" as const,
    byHand: people.length > 1,
    press: () => onIntent({ do: "turn to", person: p.person.id }),
  }));
  const watched = people.some((p) => insulinWatched(p, now, house.doubt === null));
  const start: ChoiceButton[] =
    free.length > 0 ? [{ label: FIXED.meal, role: first || watched ? "choice" : "main", press: () => onWish("meal") }] : [];
  const didI: ChoiceButton = { label: FIXED.didI, press: () => onWish("taken") };
  const low: ChoiceButton = { label: FIXED.low, role: "stop", press: () => onWish("low") };
  const help: ChoiceButton[] = whoCalls(house, now) ? [{ label: HELPER.button, press: onHelper }] : [];
  const reminder = people.map((p) => standingReminder(p, now)).find((r) => r !== null);
  const answer = people.some((p) => mealQuestionDue(p, now, house.doubt === null));
  const tell: ChoiceButton[] = [
    ...(answer ? [{ label: FIXED.answerMeal, press: () => onWish("answer") }] : []),
    ...(reminder ? [{ label: reminderButton(reminder), press: () => onWish("remind") }] : []),
  ];
  const watch: ChoiceButton[] = watched ? [{ label: WATCH.button, role: first ? "choice" : "main", press: () => onWish("watch") }] : [];
  const lumps: ChoiceButton[] = people.some((p) => lumpQuestionDue(house, p, now))
    ? [{ label: FIXED.lumps, also: ["feel for a lump"], press: () => onWish("lumps") }]
    : [];
  const others: ChoiceButton[] = [
    ...(people.some((p) => backgroundDosesOf(p.card?.card ?? null).length > 0)
      ? [{ label: FIXED.background, also: ["long acting insulin"], press: () => onWish("background") }]
      : []),
    { label: FIXED.reading, also: ["a reading"], press: () => onWish("reading") },
    // In an open walk it is told there, under "Something is wrong".
    ...(people.some((p) => !p.walk) ? [{ label: FIXED.ill, also: ["i am ill"], role: "stop" as const, press: () => onWish("ill") }] : []),
  ];
  const book: ChoiceButton = { label: FIXED.dayBook, press: onDayBook };
  const today: ChoiceButton = { label: TODAY.title, press: onToday };
  const [top = didI, ...pressing] = [...help, ...watch, ...tell, ...lumps];
  const asks = top === didI ? others : [...pressing, didI, ...others];
  const due = hasDue(house, now);
  if (first) {
    const list = due ? today : book;
    return { buttons: [...help, ...carryOn, low, ...watch, ...tell, ...lumps, didI, ...start, list, ...others], behind: others };
  }
  if (due) return { buttons: [top, today, low, ...start], behind: asks };
  return { buttons: [top, low, ...asks, book], ...(start[0] ? { stays: start[0] } : {}), behind: [] };
}

interface RestScreenProps extends OnKitchen, RestButtons {
  onDrawer(): void;
}

export function RestScreen({ house, now, buttons, stays, behind, onDrawer, ...common }: RestScreenProps) {
  const nobody = Object.keys(house.people).length === 0;
  const drawer: ChoiceButton = { label: FIXED.drawer, role: "main", press: onDrawer };
  const said = new Set(buttons.map(({ label }) => label));
  const lines = nobody ? [FIXED.nobodyYet] : dueNow(house, now);
  // What is due goes by the clock: where nobody has agreed to it, its own question stands instead.
  const doubt = sayClockDoubt(house);
  // While nothing calls, the clock comes first and what is due, or its own question, beside it; a call takes the top of the screen, and what
  // is due waits behind Today: "Next: dinner" under "Too much insulin may be in" would be one sentence too many.
  const atRest = lines.length === doubt.length;
  const calm = doubt.length > 0 ? [] : [...sayEvening(house, now), ...(atRest ? sayNext(house, now) : [])];
  return (
    <ChoicesScreen
      speaking={common.speaking}
      focusHeading={common.focusHeading}
      banner={common.banner}
      chrome={common.chrome}
      title={dayAndMonth(now)}
      lines={lines}
      calm={calm}
      inHead={atRest}
      buttons={nobody ? [drawer] : buttons}
      {...(nobody || !stays ? {} : { stays })}
      heard={nobody ? [] : behind.filter(({ label }) => !said.has(label))}
      head={
        <p class="clock-row">
          <span class="big-value">{clock(now)}</span>
          <span>
            {dayAndMonth(now)}
            {atRest
              ? [...lines, ...calm].map((line, i) => (
                  <span class="clock-due" data-current={common.speaking === i ? "yes" : undefined}>
                    {line}
                  </span>
                ))
              : null}
            {house.household?.kind === "demo" ? <span class="clock-note">{FIXED.demo}</span> : null}
          </span>
        </p>
      }
    />
  );
}
