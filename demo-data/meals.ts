// One meal of one person: the walk, the answer to its question, and what the story says comes hours later.
import type { MealName } from "#events/card.ts";
import { MINUTE } from "#events/quantity.ts";
import type { Agenda } from "./agenda.ts";
import type { Chance } from "./chance.ts";
import { type Days, TODAY } from "./days.ts";
import { beginMinute, type DailyMeal, type Habits, readingBefore, within } from "./habits.ts";
import type { Home } from "./home.ts";
import { ONE_DOSE_UNITS, type PenDrawer } from "./pens.ts";
import { LATER, type Twist } from "./story.ts";
import { walkThrough } from "./walk-through.ts";
import { Walker, type WalkPlan } from "./walker.ts";

export interface Kitchen {
  home: Home;
  pens: PenDrawer;
  days: Days;
  agenda: Agenda;
  /** Instants after which no walk is begun, and nothing at all is written. */
  lastWalk: number;
  lastNote: number;
}

export interface Sitting {
  habits: Habits;
  day: number;
  meal: DailyMeal;
  twist: Twist | null;
  chance: Chance;
}

/** Minutes after the meal: its question (the card asks after 20), a second dose asked for (inside the card's 150), a low that is felt. Own figures. */
const ASKED = [22, 45] as const;
const SECOND_DOSE = [35, 55] as const;
const FELT_LOW = [90, 140] as const;
/** Minutes after half a meal until the next reading, which is due after an hour; and minutes that its watch takes at most. Own figures. */
const MEASURED = [45, 56] as const;
const WATCHED = 65;
/** Minutes past the card's latest minute of a meal that is late. */
const LATE = [1, 21] as const;
/** Share of meals whose question nobody answers. */
const NOT_ANSWERED = 0.08;
const SNACK_MINUTE = 15 * 60 + 5;
/** Near now a mealtime pen is put aside with more left in it than a dose, so that the next one lasts for whoever tries. */
const PLENTY_UNITS = 100;

/** Nobody in this house asks twice inside the card's window, but where the story says so. */
function outsideTheWindow(home: Home, person: string): void {
  const { card, doses } = home.person(person);
  const [last] = doses;
  if (last) home.passTo(last.at.wall + ((card?.card.windowMinutes ?? 0) + 2) * MINUTE);
}

function walk({ home }: Kitchen, { habits, chance }: Sitting, plan: WalkPlan): void {
  walkThrough(new Walker(home, habits, plan, chance));
}

/** A reading after half a meal; after hardly any a reading at once, and something eaten after all. */
function watchAfter(k: Kitchen, { habits, meal, chance }: Sitting, ate: "half" | "hardly any"): void {
  const { home } = k;
  const { person } = habits;
  const w = new Walker(home, habits, { meal, reading: "", twist: null, bite: 0 }, chance);
  const measured = () => {
    w.pause(30, 60);
    w.number("recheck after low", within(habits, habits.recovered, chance));
    w.pause(4, 9);
  };
  w.pause(8, 15);
  home.send({ do: "heard mishap advice" });
  if (ate === "hardly any") {
    measured();
    home.send({ do: "eating" });
    w.pause(3, 8);
    home.send({ do: "finish" });
    return;
  }
  w.pause(3, 6);
  home.send({ do: "leave" });
  k.agenda.add(home.wall + chance.between(...MEASURED) * MINUTE, k.lastNote, () => {
    home.send({ do: "turn to", person });
    measured();
    home.send({ do: "finish" });
  });
}

function answerMealLater(k: Kitchen, { habits, day, meal, twist, chance }: Sitting): void {
  const { home, agenda } = k;
  const { person } = habits;
  const asked = home.person(person).mealQuestion?.walk;
  const left = twist === "eats half" || twist === "hardly eats";
  if (!asked || (chance.happens(NOT_ANSWERED) && !left && day < TODAY - 2)) return;
  const eaten = twist === "eats half" ? "half" : twist === "hardly eats" ? "hardly any" : "all";
  agenda.add(home.wall + chance.between(...ASKED) * MINUTE, k.lastNote, () => {
    if (home.person(person).mealQuestion?.walk !== asked) return;
    // The watch that follows has to be over before the last note.
    const ate = home.wall + WATCHED * MINUTE > k.lastNote ? "all" : eaten;
    home.send({ do: "answer meal", person, ate });
    if (ate !== "all") watchAfter(k, { habits, day, meal, twist, chance }, ate);
  });
}

function hoursLater(k: Kitchen, sitting: Sitting): void {
  const { habits, day, meal, twist, chance } = sitting;
  const end = k.home.wall;
  const plan = (walked: MealName | null): WalkPlan => ({
    meal: walked,
    reading: readingBefore(habits, meal, chance),
    twist,
    bite: chance.between(...habits.bite),
  });
  switch (twist) {
    case "asks for a second dose":
      k.agenda.add(end + chance.between(...SECOND_DOSE) * MINUTE, k.lastWalk, () => walk(k, sitting, plan(meal)));
      break;
    case "feels low later":
    case "feels low later, two rounds":
      k.agenda.add(end + chance.between(...FELT_LOW) * MINUTE, k.lastWalk, () => walk(k, sitting, plan(null)));
      break;
    case "snack by telephone":
    case "snack not eaten after all":
      k.agenda.add(k.days.wall(day, SNACK_MINUTE), k.lastWalk, () => {
        outsideTheWindow(k.home, habits.person);
        walk(k, sitting, plan("snack"));
      });
      break;
    default:
      break;
  }
}

/** Puts the meal on the agenda. */
export function addMeal(k: Kitchen, sitting: Sitting): void {
  const { habits, day, meal, twist, chance } = sitting;
  const { person } = habits;
  k.agenda.add(k.days.wall(day, beginMinute(habits, meal, chance)), k.lastWalk, () => {
    k.pens.check(person, k.days.date(day), day >= TODAY - 1 ? PLENTY_UNITS : ONE_DOSE_UNITS);
    outsideTheWindow(k.home, person);
    const low = twist === "low first" || twist === "low first, two rounds";
    const latest = k.home.person(person).card?.card.timing.latestMinutes ?? 0;
    walk(k, sitting, {
      meal,
      reading: low ? within(habits, habits.low, chance) : readingBefore(habits, meal, chance),
      twist: twist && LATER.includes(twist) ? null : twist,
      bite: twist === "meal late" ? latest + chance.between(...LATE) : chance.between(...habits.bite),
    });
    answerMealLater(k, sitting);
    hoursLater(k, sitting);
  });
}
