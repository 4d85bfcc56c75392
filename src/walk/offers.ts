// Everything that would be accepted right now. One list for buttons, voice, keys and help.

import type { MealName } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import { backEvents } from "./back.ts";
import { bellNow } from "./bell.ts";
import { contextOf, type Offer, press, waitOver } from "./context.ts";
import { GUARDS, type Guards } from "./guards.ts";
import { backgroundDosesOf, backgroundInsulins, isBackground } from "./insulin.ts";
import { insulinWatched } from "./insulin-watch.ts";
import { lumpOffers } from "./lump-question.ts";
import { clockOffers, reminderOffers } from "./reminders.ts";
import { type HouseState, type PersonState, stepOf } from "./state.ts";
import { careMinutesMs } from "./steps/care-ms.ts";
import { KITCHEN_MISHAPS, mishapsOf } from "./steps/mishap.ts";
import { isWatched } from "./steps/no-meal.ts";
import { STEPS } from "./steps.ts";

/** Between these steps nothing of another person comes in, but a low. */
export const HANDS_FULL: readonly string[] = ["dial", "place", "skin", "inject", "put away"];

/** Steps before the needle: doubtful day and time are settled before they go on. */
const NEEDS_CLOCK: readonly string[] = ["taken", "wash", "reading", "plate", "card", "eat first", "pen", "dial", "place", "skin"];

export function frontPerson(house: HouseState): PersonState | null {
  const person = house.front === null ? undefined : house.people[house.front];
  return person?.walk ? person : null;
}

/** Is "It is Wednesday, ten past twelve. Is that right?" the question on the screen? */
export function clockQuestion(house: HouseState): boolean {
  const walk = frontPerson(house)?.walk;
  if (!walk || house.doubt === null) return false;
  const step = stepOf(walk);
  return NEEDS_CLOCK.includes(step) || (step === "inject" && !walk.injectOpened);
}

/** People whose bell calls or whose low is open while somebody else's walk is in front. */
export function callers(house: HouseState, now: Stamp): PersonState[] {
  const front = frontPerson(house);
  const step = front?.walk ? stepOf(front.walk) : null;
  return Object.values(house.people).filter((p) => {
    if (p === front || !p.walk) return false;
    // Watched after a good reading: nothing of it is due until the next one is.
    if (p.walk.low) return !isWatched(p.walk) || waitOver(p.walk, now, house.doubt === null);
    if (p.walk.ill?.callRaised) return true;
    if (step !== null && HANDS_FULL.includes(step)) return false;
    return p.bell !== null && bellNow(p.bell, now, house.doubt === null).level !== "quiet";
  });
}

/** Is the calm question about the meal due? */
export function mealQuestionDue(me: PersonState, now: Stamp, sure: boolean): boolean {
  // An open needle is asked about first: an answer that something went wrong with the last meal would stand before it.
  if (!me.mealQuestion || (me.walk?.injectOpened && !me.walk.injected)) return false;
  const ms = elapsed(me.mealQuestion.from, now, sure);
  return ms === null || ms >= careMinutesMs(me.card?.card ?? null, "askEatenMinutes");
}

/** In the kitchen whatever walk is open, and at the last screen while it stands: nothing may lose the question. */
const mealAnswers = (me: PersonState, now: Stamp, sure: boolean): Offer[] =>
  mealQuestionDue(me, now, sure)
    ? (["all", "half", "hardly any", "not kept down"] as const).map((ate) =>
        press("choice", { do: "answer meal", person: me.person.id, ate }),
      )
    : [];

const MEALS: readonly MealName[] = ["breakfast", "lunch", "dinner", "snack"];

/** A walk that may be put aside for good: no low is open, and nothing is in the body or the meal was answered. */
export const maySetAside = (me: PersonState): boolean =>
  me.walk !== null &&
  me.walk.low === null &&
  !me.walk.ill?.callRaised &&
  (me.walk.injectOpened === null || (me.walk.injected !== null && (isBackground(me.walk) || me.walk.eat !== null)));

/** Whatever walk is open: the watch is no part of it. */
const watchOffers = (me: PersonState, now: Stamp, sure: boolean): Offer[] =>
  insulinWatched(me, now, sure) ? [press("choice", { do: "doctor watches", person: me.person.id })] : [];

function kitchenOffers(house: HouseState, now: Stamp): Offer[] {
  const sure = house.doubt === null;
  return Object.values(house.people).flatMap((me): Offer[] => {
    const person = me.person.id;
    const meals = MEALS.map((meal) => press("main", { do: "open meal", person, meal }));
    const begin = [
      ...meals,
      ...backgroundDosesOf(me.card?.card ?? null).map(({ at, insulin }) =>
        press("choice", { do: "open background", person, at, insulin: insulin.id }),
      ),
      press("choice", { do: "open reading", person }),
    ];
    // A low, and a dose taken elsewhere, are heard whatever walk is open.
    const low = me.walk?.low ? [] : [press("wrong", { do: "open low", person })];
    const elsewhere = { do: "tell a dose later", person, units: null, minutesAgo: null } as const;
    const later = [
      press("choice", elsewhere),
      ...backgroundInsulins(me.card?.card ?? null).map(({ id }) => press("choice", { ...elsewhere, insulin: id })),
    ];
    if (me.walk) {
      // A new meal sets an old walk aside: nobody is led to lunch along the row of breakfast.
      const aside = maySetAside(me) ? [press("no", { do: "set aside", person }), ...begin] : [];
      return [
        press("main", { do: "turn to", person }),
        ...aside,
        ...low,
        ...later,
        ...mealAnswers(me, now, sure),
        ...reminderOffers(me, now),
        ...watchOffers(me, now, sure),
      ];
    }
    const wrong = KITCHEN_MISHAPS.map((mishap) => press("wrong", { do: "open mishap", person, mishap }));
    return [
      ...begin,
      ...low,
      ...wrong,
      ...later,
      ...mealAnswers(me, now, sure),
      ...reminderOffers(me, now),
      ...watchOffers(me, now, sure),
      ...lumpOffers(house, me, now),
    ];
  });
}

/** What a person in a walk is offered besides the step's own answers. */
function always(house: HouseState, me: PersonState, now: Stamp, guards: Guards): Offer[] {
  if (!me.walk) return [];
  const c = contextOf(house, me, me.walk, now, guards);
  const back = backEvents(c) ? [press("back", { do: "back" })] : [];
  const wrong = me.walk.mishap || me.walk.needleAsked ? [] : mishapsOf(me.walk).map((mishap) => press("wrong", { do: "report", mishap }));
  const turn = callers(house, now).map((p) => press("choice", { do: "turn to", person: p.person.id }));
  const low = me.walk.low ? [] : [press("wrong", { do: "open low", person: me.person.id })];
  const ate = stepOf(me.walk) === "done" && me.walk.eat === "eating" ? mealAnswers(me, now, c.sure) : [];
  return [...ate, ...back, press("stop", { do: "leave" }), ...low, ...wrong, ...turn];
}

const same = (a: Intent, b: Intent): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Each press once. Spelled out once each: this runs for every answer and every second. */
function unique(offers: Offer[]): Offer[] {
  const seen = new Set<string>();
  return offers.filter((o) => {
    if (o.offer !== "press") return true;
    const spelled = JSON.stringify(o.intent);
    return !seen.has(spelled) && seen.add(spelled);
  });
}

export function offers(house: HouseState, now: Stamp, guards: Guards = GUARDS): Offer[] {
  const me = frontPerson(house);
  if (!me?.walk) return [...clockOffers(house), ...kitchenOffers(house, now)];
  if (clockQuestion(house))
    return [press("main", { do: "agree clock" }), press("no", { do: "doubt clock" }), press("stop", { do: "leave" })];
  const c = contextOf(house, me, me.walk, now, guards);
  return unique([...STEPS[stepOf(me.walk)].offers(c), ...always(house, me, now, guards)]);
}

/** Is this intent one of the offers? Numbers and foods fit by their slot, "pass time" always. */
export function fits(list: readonly Offer[], intent: Intent): boolean {
  if (intent.do === "pass time") return true;
  return list.some((o) => fitsOffer(o, intent));
}

function fitsOffer(o: Offer, intent: Intent): boolean {
  switch (o.offer) {
    case "number":
      return intent.do === "give number" && intent.slot === o.slot;
    case "foods":
      return intent.do === "add food";
    case "press":
      return o.intent.do === intent.do && (same(o.intent, intent) || sameButVia(o.intent, intent));
    default:
      return o satisfies never;
  }
}

/** A word of the meter may be touched or spoken; a dose told later brings its own numbers, a lump its own place. */
function sameButVia(offered: Intent, intent: Intent): boolean {
  if (offered.do === "read word" && intent.do === "read word") return offered.word === intent.word;
  if (offered.do === "tell a dose later" && intent.do === "tell a dose later")
    return offered.person === intent.person && offered.insulin === intent.insulin;
  if (offered.do === "mark lump" && intent.do === "mark lump") return offered.person === intent.person;
  return false;
}
