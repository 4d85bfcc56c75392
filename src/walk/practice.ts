// Practice: the state that a walk for practice begins with. It is the house as it stands, with nothing open, nothing due and nothing taken.
// What is practised is folded into a log in memory: nothing of it reaches the book, the pens or the places.
import type { BackgroundDose, DoseCard, MealName } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import type { Pen } from "#events/pen.ts";
import { DAY } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { compareDates, localParts, minuteOf, minutesApart } from "#rules/time/local.ts";
import { noWalkYet } from "./fresh.ts";
import { backgroundDosesOf } from "./insulin.ts";
import { type HouseState, type PersonState, type SignedCard, stepOf, type Walk } from "./state.ts";

/** An invented card and pen, for whoever has none yet. */
export interface MadeUp {
  card: DoseCard;
  pens: readonly Pen[];
}

export interface PracticeStart {
  house: HouseState;
  /** The walk that is practised. */
  opens: Extract<Intent, { do: "open meal" | "open background" }>;
  /** The card is invented: it tells nothing about this person. */
  madeUp: boolean;
}

const MEALS: readonly MealName[] = ["breakfast", "lunch", "dinner", "snack"];
/** From when on a meal is the likely one, in minutes of the day. Our choice. */
const FROM_MINUTE: readonly [number, MealName][] = [
  [17 * 60, "dinner"],
  [11 * 60, "lunch"],
  [0, "breakfast"],
];

function mealOf(card: DoseCard, now: Stamp): MealName | null {
  const { minuteOfDay } = localParts(now.wall, now.offset);
  const likely = FROM_MINUTE.find(([from]) => minuteOfDay >= from)?.[1] ?? "breakfast";
  return card.meals[likely] ? likely : (MEALS.find((meal) => card.meals[meal]) ?? null);
}

/** Of a card without any meal dose: the one whose hour is nearest, before or after. Our choice. */
function doseOf(card: DoseCard, now: Stamp): BackgroundDose | null {
  const { minuteOfDay } = localParts(now.wall, now.offset);
  const apart = ({ at }: BackgroundDose): number => minutesApart(minuteOfDay, minuteOf(at));
  return backgroundDosesOf(card).toSorted((a, b) => apart(a) - apart(b))[0] ?? null;
}

/** What the person's own card has something for: a meal first. null: nothing that is walked. */
function opening(card: DoseCard, person: string, now: Stamp): PracticeStart["opens"] | null {
  const meal = mealOf(card, now);
  if (meal) return { do: "open meal", person, meal };
  const dose = doseOf(card, now);
  return dose && { do: "open background", person, at: dose.at, insulin: dose.insulin.id };
}

/** Longer than practice lasts: no bell of it ever comes to call. */
const NO_BELL_MINUTES = 60;

/** A card that is over, or not yet in force, may be practised with all the same. */
function forPractice(signed: SignedCard, now: Stamp): SignedCard {
  const today = localParts(now.wall, now.offset).date;
  const { card } = signed;
  const timing = { ...card.timing, earliestMinutes: NO_BELL_MINUTES, latestMinutes: NO_BELL_MINUTES };
  const validFrom = compareDates(card.validFrom, today) > 0 ? today : card.validFrom;
  return { ...signed, card: { ...card, timing, validFrom, validUntil: null, reviewBy: null } };
}

const penKept = (pen: Pen): PersonState["pens"][number] => ({ pen, openedOn: pen.openedOn, used: 0, retired: false });

/** person: who practises. null: nobody is called so. `clear` days before now the log is taken to be whole: practice asks about no real dose. */
export function practiceStart(house: HouseState, person: string, now: Stamp, invented: MadeUp): PracticeStart | null {
  const me = house.people[person];
  if (!me) return null;
  const own = me.card ?? me.nextCard;
  const ownWalk = own && opening(own.card, person, now);
  const madeUp = own === null || ownWalk === null;
  const signature = { keeper: "", keeperName: "", signedOn: invented.card.validFrom, typedTwice: true, readBack: true } as const;
  const card = madeUp ? { card: { ...invented.card, person }, hash: "practice", signature } : own;
  const opens = ownWalk ?? { do: "open meal", person, meal: mealOf(invented.card, now) ?? "lunch" };
  const pens = madeUp ? invented.pens.map((pen) => penKept({ ...pen, person })) : me.pens;
  const people = Object.fromEntries(Object.entries(house.people).map(([id, other]) => [id, { ...other, ...noWalkYet }]));
  return {
    madeUp,
    opens,
    house: {
      ...house,
      people: { ...people, [person]: { ...me, ...noWalkYet, card: forPractice(card, now), pens } },
      keepers: [],
      front: null,
      lastSeq: 0,
      last: now,
      doubt: null,
      clearSince: now.wall - 30 * DAY,
      unreadable: [],
    },
  };
}

/** Steps that a person could take for an order to inject. */
const AT_THE_PEN: readonly string[] = ["pen", "dial", "place", "skin", "inject"];
/** Between hands and skin, while no wait runs: once the button was down, nothing asks for it any more. */
export const isAtThePen = (walk: Walk): boolean => AT_THE_PEN.includes(stepOf(walk)) && walk.wait === null && !walk.pressed;
