// The resting screen: the clock, what is due, four large buttons at most. Who comes before what, whenever more than one lives here.
import type { ComponentChildren } from "preact";
import type { Intent } from "#events/intent.ts";
import { backgroundInsulins } from "#walk/insulin.ts";
import { insulinWatched } from "#walk/insulin-watch.ts";
import { lumpQuestionDue } from "#walk/lump-question.ts";
import { maySetAside, mealQuestionDue } from "#walk/offers.ts";
import { standingReminder } from "#walk/reminders.ts";
import type { PersonState } from "#walk/state.ts";
import { didITakeIt } from "#words/en/did-i.ts";
import { FIXED } from "#words/en/fixed.ts";
import { ATE_ALL } from "#words/en/kitchen.ts";
import { labelOf } from "#words/en/labels.ts";
import { markedName } from "#words/en/who.ts";
import { BackgroundScreen, backgroundIntents } from "./background-screen.tsx";
import { type ChoiceButton, ChoicesScreen } from "./choices-screen.tsx";
import { LaterScreen } from "./later-screen.tsx";
import { LumpsScreen } from "./lumps-screen.tsx";
import type { OnKitchen } from "./on-kitchen.ts";
import { ReminderScreen } from "./reminder-screen.tsx";
import { RestScreen, restButtons, type Wish } from "./rest-screen.tsx";
import { TodayScreen } from "./today-screen.tsx";
import { WatchScreen } from "./watch-screen.tsx";

/** Each sets an older walk aside, where that may be. */
const BEGINS: readonly Wish[] = ["meal", "background", "reading"];
/** A small screen over the resting one. */
export type KitchenView =
  | { at: "who"; wish: Wish }
  | { at: "today" }
  | { at: "meal" | "background" | "taken" | "later" | "answer" | "remind" | "lumps" | "watch"; person: string }
  /** elsewhere: a dose may have been taken there, and can be told. */
  | { at: "answered"; person: string; lines: string[]; elsewhere?: boolean };

export interface KitchenScreenProps extends OnKitchen {
  /** Of the resting screen, whose own words say who calls. */
  restBanner: ComponentChildren;
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
    if (wish === "ill") onIntent({ do: "open mishap", person, mishap: "feeling ill" });
    else if (wish === "low") onIntent(me.walk?.low ? { do: "turn to", person } : { do: "open low", person });
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
  const atRest = restButtons({
    house,
    now,
    onIntent,
    onDayBook: props.onDayBook,
    onHelper: props.onHelper,
    onWish: wish,
    onToday: () => setView({ at: "today" }),
  });
  if (!view) return <RestScreen {...props} banner={props.restBanner} {...atRest} />;

  switch (view.at) {
    case "today":
      return (
        <TodayScreen
          {...common}
          house={house}
          now={now}
          more={atRest.behind}
          onIntent={onIntent}
          onDayBook={props.onDayBook}
          onDone={rest}
        />
      );
    case "remind": {
      const me = house.people[view.person];
      const answered = (lines: string[], elsewhere: boolean) => onViews([{ at: "answered", person: view.person, lines, elsewhere }]);
      const elsewhere = () => setView({ at: "later", person: view.person });
      return me ? <ReminderScreen {...common} {...{ house, me, now, onIntent }} onAnswered={answered} onElsewhere={elsewhere} /> : null;
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
            .filter((p) => view.wish !== "watch" || insulinWatched(p, now, house.doubt === null))
            .filter((p) => view.wish !== "background" || backgroundIntents(p).length > 0)
            .filter((p) => view.wish !== "ill" || !p.walk)
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
    case "watch": {
      const me = house.people[view.person];
      return me ? <WatchScreen {...common} {...{ house, me, now, onIntent }} onMeasure={() => go("reading", me)} onDone={rest} /> : null;
    }
    case "lumps": {
      const me = house.people[view.person];
      return me ? <LumpsScreen {...common} me={me} now={now} onIntent={onIntent} onDone={rest} /> : null;
    }
    case "answered": {
      const later: ChoiceButton = { label: FIXED.later, press: () => setView({ at: "later", person: view.person }) };
      const buttons: ChoiceButton[] = [...(view.elsewhere ? [later] : []), { label: FIXED.ok, role: "main", press: rest }];
      return <ChoicesScreen {...common} title={FIXED.saved} lines={view.lines} buttons={buttons} />;
    }
  }
}
