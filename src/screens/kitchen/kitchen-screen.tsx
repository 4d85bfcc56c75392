// The resting screen: the clock, what is due, four large buttons at most. Who comes before what, whenever more than one lives here.
import type { ComponentChildren } from "preact";
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import type { Chrome } from "#screens/shared/bar.tsx";
import { whoCalls } from "#walk/helper-case.ts";
import { backgroundDosesOf, backgroundInsulins } from "#walk/insulin.ts";
import { lumpQuestionDue } from "#walk/lump-question.ts";
import { maySetAside, mealQuestionDue } from "#walk/offers.ts";
import { standingReminder } from "#walk/reminders.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { sayEvening } from "#words/en/cautions.ts";
import { didITakeIt } from "#words/en/did-i.ts";
import { hasDue, sayNext, TODAY } from "#words/en/due.ts";
import { FIXED } from "#words/en/fixed.ts";
import { HELPER } from "#words/en/helper.ts";
import { ATE_ALL, dueNow } from "#words/en/kitchen.ts";
import { labelOf } from "#words/en/labels.ts";
import { reminderButton } from "#words/en/reminders.ts";
import { clock, dayAndMonth } from "#words/en/when.ts";
import { markedName } from "#words/en/who.ts";
import { BackgroundScreen, backgroundIntents } from "./background-screen.tsx";
import { type ChoiceButton, ChoicesScreen } from "./choices-screen.tsx";
import { LaterScreen } from "./later-screen.tsx";
import { LumpsScreen } from "./lumps-screen.tsx";
import { ReminderScreen } from "./reminder-screen.tsx";
import { TodayScreen } from "./today-screen.tsx";

type Wish = "meal" | "background" | "reading" | "taken" | "low" | "answer" | "remind" | "lumps";
/** Each sets an older walk aside, where that may be. */
const BEGINS: readonly Wish[] = ["meal", "background", "reading"];
/** A small screen over the resting one. */
export type KitchenView =
  | { at: "who"; wish: Wish }
  | { at: "today" }
  | { at: "meal" | "background" | "taken" | "later" | "answer" | "remind" | "lumps"; person: string }
  | { at: "answered"; person: string; lines: string[] };

export interface KitchenScreenProps {
  house: HouseState;
  now: Stamp;
  speaking: number;
  focusHeading: boolean;
  chrome: Chrome;
  banner: ComponentChildren;
  /** The small screens that were opened, the last one on top; none: the resting screen. Kept by the page: Help loses nothing. */
  views: readonly KitchenView[];
  onViews(views: readonly KitchenView[]): void;
  /** What the walk that has just ended has noted. */
  noted: { title?: string; lines: readonly string[] } | null;
  onRead(): void;
  onIntent(intent: Intent): void;
  onDayBook(): void;
  onDrawer(): void;
  /** The page for whoever comes when somebody does not answer. */
  onHelper(): void;
}

export function KitchenScreen(props: KitchenScreenProps) {
  const { house, now, onIntent, chrome, views, onViews } = props;
  const view = views.at(-1);
  const setView = (next: KitchenView) => onViews([...views, next]);
  const rest = () => onViews([]);
  const people = Object.values(house.people);
  const go = (wish: Wish, me: PersonState) => {
    const person = me.person.id;
    if (wish === "low") onIntent(me.walk?.low ? { do: "turn to", person } : { do: "open low", person });
    else if (BEGINS.includes(wish) && me.walk && !maySetAside(me)) onIntent({ do: "turn to", person });
    else if (wish === "reading") onIntent({ do: "open reading", person });
    else if (wish === "background") {
      const [only, another] = backgroundIntents(me);
      if (only && !another) onIntent(only);
      else setView({ at: wish, person });
    } else setView({ at: wish, person });
  };
  const wish = (w: Wish) => {
    const [only] = people;
    if (only && people.length === 1) go(w, only);
    else setView({ at: "who", wish: w });
  };
  const common = {
    speaking: props.speaking,
    focusHeading: props.focusHeading,
    banner: props.banner,
    chrome: { ...chrome, onBack: () => onViews(views.slice(0, -1)) },
  };
  if (props.noted) {
    const ok: ChoiceButton = { label: FIXED.ok, role: "main", press: props.onRead };
    return (
      <ChoicesScreen
        {...common}
        chrome={{ ...chrome, onBack: props.onRead }}
        title={props.noted.title ?? FIXED.saved}
        lines={props.noted.lines}
        buttons={[ok]}
      />
    );
  }
  if (!view) return <Rest {...props} people={people} onWish={wish} onToday={() => setView({ at: "today" })} />;

  switch (view.at) {
    case "today":
      return <TodayScreen {...common} house={house} now={now} onIntent={onIntent} onDayBook={props.onDayBook} onDone={rest} />;
    case "remind": {
      const me = house.people[view.person];
      const answered = (lines: string[]) => onViews([{ at: "answered", person: view.person, lines }]);
      return me ? <ReminderScreen {...common} house={house} me={me} now={now} onIntent={onIntent} onAnswered={answered} /> : null;
    }
    case "who":
      return (
        <ChoicesScreen
          {...common}
          title={FIXED.who}
          byHand
          lines={[FIXED.who]}
          buttons={people
            .filter((p) => view.wish !== "answer" || mealQuestionDue(p, now, house.doubt === null))
            .filter((p) => view.wish !== "remind" || standingReminder(p, now))
            .filter((p) => view.wish !== "background" || backgroundIntents(p).length > 0)
            .filter((p) => view.wish !== "lumps" || lumpQuestionDue(house, p, now))
            .map((p) => ({ label: markedName(p.person), press: () => go(view.wish, p) }))}
        />
      );
    case "meal": {
      const { person } = view;
      const buttons = (["breakfast", "lunch", "dinner", "snack"] as const).map((meal) => ({
        label: labelOf({ do: "open meal", person, meal }, house).shown,
        press: () => onIntent({ do: "open meal", person, meal }),
      }));
      return <ChoicesScreen {...common} title={FIXED.whichMeal} lines={[FIXED.whichMeal]} buttons={buttons} />;
    }
    case "background": {
      const me = house.people[view.person];
      return me ? <BackgroundScreen {...common} house={house} me={me} onIntent={onIntent} /> : null;
    }
    case "taken": {
      const me = house.people[view.person];
      if (!me) return null;
      return (
        <ChoicesScreen
          {...common}
          title={FIXED.didI}
          lines={didITakeIt(house, me, now)}
          buttons={[
            { label: FIXED.later, press: () => setView({ at: "later", person: view.person }) },
            { label: FIXED.ok, role: "main", press: rest },
          ]}
        />
      );
    }
    case "later":
      return (
        <LaterScreen
          {...common}
          person={view.person}
          insulins={backgroundInsulins(house.people[view.person]?.card?.card ?? null)}
          onIntent={(intent) => {
            onIntent(intent);
            rest();
          }}
        />
      );
    case "answer": {
      const buttons = (["all", "half", "hardly any", "not kept down"] as const).map((ate) => ({
        label: labelOf({ do: "answer meal", person: view.person, ate }, house).shown,
        press: () => {
          onIntent({ do: "answer meal", person: view.person, ate });
          // Less than all of it opens a walk, which stands over this screen.
          if (ate === "all") onViews([{ at: "answered", person: view.person, lines: [...ATE_ALL] }]);
          else rest();
        },
      }));
      return <ChoicesScreen {...common} title={FIXED.answerMeal} lines={["How much of the meal did you eat?"]} buttons={buttons} />;
    }
    case "lumps": {
      const me = house.people[view.person];
      return me ? <LumpsScreen {...common} me={me} now={now} onIntent={onIntent} onDone={rest} /> : null;
    }
    case "answered":
      return (
        <ChoicesScreen {...common} title={FIXED.saved} lines={view.lines} buttons={[{ label: FIXED.ok, role: "main", press: rest }]} />
      );
  }
}

function Rest(props: KitchenScreenProps & { people: PersonState[]; onWish(w: Wish): void; onToday(): void }) {
  const { house, now, people, onWish, onIntent } = props;
  const open = people.filter((p) => p.walk);
  const free = people.filter((p) => !p.walk || maySetAside(p));
  const answer = people.some((p) => mealQuestionDue(p, now, house.doubt === null));
  const [first] = open;
  const nobody = people.length === 0;
  const carryOn: ChoiceButton[] = open.slice(0, 2).map((p) => ({
    label: labelOf({ do: "turn to", person: p.person.id }, house).shown,
    role: "main" as const,
    byHand: people.length > 1,
    press: () => onIntent({ do: "turn to", person: p.person.id }),
  }));
  const start: ChoiceButton[] =
    free.length > 0 ? [{ label: FIXED.meal, role: first ? "choice" : "main", press: () => onWish("meal") }] : [];
  const didI: ChoiceButton = { label: FIXED.didI, press: () => onWish("taken") };
  const low: ChoiceButton = { label: FIXED.low, role: "stop", press: () => onWish("low") };
  const help: ChoiceButton[] = whoCalls(house, now) ? [{ label: HELPER.button, press: props.onHelper }] : [];
  const reminder = people.map((p) => standingReminder(p, now)).find((r) => r !== null);
  const tell: ChoiceButton[] = [
    ...(answer ? [{ label: FIXED.answerMeal, press: () => onWish("answer") }] : []),
    ...(reminder ? [{ label: reminderButton(reminder), press: () => onWish("remind") }] : []),
  ];
  const lumps: ChoiceButton[] = people.some((p) => lumpQuestionDue(house, p, now))
    ? [{ label: FIXED.lumps, also: ["feel for a lump"], press: () => onWish("lumps") }]
    : [];
  const book: ChoiceButton = hasDue(house, now)
    ? { label: TODAY.title, press: props.onToday }
    : { label: FIXED.dayBook, press: props.onDayBook };
  const others: ChoiceButton[] = [
    ...(people.some((p) => backgroundDosesOf(p.card?.card ?? null).length > 0)
      ? [{ label: FIXED.background, also: ["long acting insulin"], press: () => onWish("background") }]
      : []),
    book,
    { label: FIXED.reading, also: ["a reading"], press: () => onWish("reading") },
  ];
  // What presses comes first, and the low; the rest is behind More. With no walk open, the meal keeps the lower right corner.
  const [top = didI, ...pressing] = [...help, ...tell, ...lumps];
  const asks = top === didI ? others : [...pressing, didI, ...others];
  const buttons = first ? [...help, ...carryOn, low, ...tell, ...lumps, didI, ...start, ...others] : [top, low, ...asks];
  return (
    <ChoicesScreen
      title={dayAndMonth(now)}
      lines={nobody ? [FIXED.nobodyYet] : dueNow(house, now)}
      calm={[...sayEvening(house, now), ...sayNext(house, now)]}
      speaking={props.speaking}
      focusHeading={props.focusHeading}
      banner={props.banner}
      chrome={props.chrome}
      buttons={nobody ? [{ label: FIXED.drawer, role: "main", press: props.onDrawer }] : buttons}
      {...(first || nobody || !start[0] ? {} : { stays: start[0] })}
      head={
        <p class="clock-row">
          <span class="big-value">{clock(now)}</span>
          <span>
            {dayAndMonth(now)}
            {house.household?.kind === "demo" ? <span class="clock-note">{FIXED.demo}</span> : null}
          </span>
        </p>
      }
    />
  );
}
