// The kitchen screen in words.
import type { Happened } from "#events/happened.ts";
import type { Stamp } from "#events/stamp.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import { isHeard } from "#rules/time/house-hours.ts";
import { localParts } from "#rules/time/local.ts";
import { bellNow, bellOfNothing } from "#walk/bell.ts";
import { lumpQuestionDue } from "#walk/lump-question.ts";
import { mealQuestionDue } from "#walk/offers.ts";
import { standingReminder } from "#walk/reminders.ts";
import { type HouseState, type PersonState, stepOf, type Walk } from "#walk/state.ts";
import { isWatched } from "#walk/steps/no-meal.ts";
import { ago } from "./amounts.ts";
import { sayClockDoubt } from "./due.ts";
import { FIXED } from "./fixed.ts";
import { sayInsulinWatch } from "./insulin-watch.ts";
import { sayLumpsDue } from "./lumps.ts";
import { sayStanding } from "./reminders.ts";

const STEP_NAMES: Readonly<Record<string, string>> = {
  taken: "the first question",
  wash: "washing",
  reading: "the reading",
  plate: "the plate",
  card: "the dose",
  "eat first": "the meal",
  pen: "the pen",
  dial: "the dial",
  place: "the place",
  skin: "the skin",
  inject: "the needle",
  "put away": "putting away",
  eat: "eating",
  done: "the end",
  low: "the low",
  ill: "an ill day",
  mishap: "what went wrong",
  "needle question": "the needle",
};

function walkName(walk: Walk): string {
  if (walk.meal) return `'s ${walk.meal}`;
  if (walk.background) return `'s ${walk.background.insulinName}`;
  return walk.kind === "reading" ? "'s reading" : "";
}

/** An unfinished walk: where it stopped and how long ago. */
export function unfinished(house: HouseState, me: PersonState, now: Stamp): string | null {
  if (!me.walk) return null;
  const ms = elapsed(me.walk.touchedAt, now, house.doubt === null);
  const minutes = ms === null ? null : Math.floor(ms / 60_000);
  const since = minutes === null ? "some time ago" : minutes === 0 ? "a moment ago" : `${ago(minutes)} ago`;
  const whose = `${me.person.name}${walkName(me.walk)}`;
  return `${whose} stopped at ${STEP_NAMES[stepOf(me.walk)] ?? "a step"}, ${since}.`;
}

/** Who has a low, and whom to call once it needs help: to whoever is near, or where nobody is, to the person, the number first. */
export function sayLowCall(house: HouseState, me: PersonState, now: Stamp): string {
  const { name } = me.person;
  if (me.walk && isWatched(me.walk) && me.walk.low?.because === "half eaten") return `${name} ate little after insulin. Measure on time.`;
  if (me.walk && isWatched(me.walk)) return `${name} had insulin and no meal. Measure on time.`;
  if (!me.walk?.low?.callRaised) return `${name} has a low. Sugar first.`;
  const minute = house.doubt === null ? localParts(now.wall, now.offset).minuteOfDay : null;
  if (isHeard(house.household, minute)) return `${name} has a low. Come and help now.`;
  return `Call ${house.household?.emergencyNumber ?? "the emergency number"} now. ${name} has a low.`;
}

/** A danger sign was told, or the question about them was not answered. */
export function sayIllCall(house: HouseState, me: PersonState, now: Stamp): string {
  const { name } = me.person;
  const minute = house.doubt === null ? localParts(now.wall, now.offset).minuteOfDay : null;
  if (isHeard(house.household, minute)) return `${name} may be in danger. Come and help now.`;
  return `Call ${house.household?.emergencyNumber ?? "the emergency number"} now. ${name} may be in danger.`;
}

/** Why somebody calls into another's walk. */
export const sayCaller = (house: HouseState, me: PersonState, now: Stamp): string =>
  me.walk?.low ? sayLowCall(house, me, now) : me.walk?.ill?.callRaised ? sayIllCall(house, me, now) : `${me.person.name}: ${FIXED.calls}`;

/** The loud bell. */
export const sayEatNow = (me: PersonState): string =>
  `${me.person.name}, eat now. ${bellOfNothing(me) ? "Nobody is sure how much went in." : "Insulin is working."}`;

/** What calls on the kitchen screen, the most urgent first. */
export function dueNow(house: HouseState, now: Stamp): string[] {
  const sure = house.doubt === null;
  const lines = Object.values(house.people).flatMap((me) => {
    const lines: string[] = [];
    if (me.walk?.low) lines.push(sayLowCall(house, me, now));
    else if (me.walk?.ill?.callRaised) lines.push(sayIllCall(house, me, now));
    if (me.bell) {
      const bell = bellNow(me.bell, now, sure);
      if (bell.level === "loud") lines.push(sayEatNow(me));
      else if (bell.level !== "quiet") lines.push(`${me.person.name}, it is time to eat.`);
    }
    lines.push(...sayInsulinWatch(house, me, now));
    // Where somebody is called for, that is all there is to read.
    const open = me.walk?.low?.callRaised || me.walk?.ill?.callRaised ? null : unfinished(house, me, now);
    if (open) lines.push(open);
    if (mealQuestionDue(me, now, sure)) lines.push(`${me.person.name}, how much of the meal did you eat?`);
    const reminder = standingReminder(me, now);
    if (reminder) lines.push(...sayStanding(me, reminder));
    if (lumpQuestionDue(house, me, now)) lines.push(sayLumpsDue(me));
    return lines;
  });
  return [...lines, ...sayClockDoubt(house)];
}

/** The numbers to call, always shown. */
export function numbersToCall(house: HouseState): string[] {
  const clinics = [
    ...new Map(
      Object.values(house.people).flatMap((p) => (p.card ? [[p.card.card.clinic.phone, p.card.card.clinic] as const] : [])),
    ).values(),
  ];
  return [...(house.household ? [`Emergency: ${house.household.emergencyNumber}.`] : []), ...clinics.map((c) => `${c.name}: ${c.phone}.`)];
}

/** Less than all of it opens what the walk says then: walk/meal-answer.ts. */
export const ATE_ALL: readonly string[] = ["Saved. You ate all of it."];

/**
 * What was noted, once a walk has ended at its first question (events as they were stored). null: it ended elsewhere.
 * A dose told there and not in the book counts as taken now.
 */
export function afterTaken(me: PersonState, events: readonly Happened[]): string[] | null {
  const { name } = me.person;
  const ended = events.find((e) => e.type === "walk ended");
  if (!ended || !events.some((e) => e.type === "near miss" && e.step === "taken")) return null;
  if (ended.how === "dose already taken") {
    const told = events.some((e) => e.type === "dose told later");
    return [
      told ? `Saved. ${name}, that dose counts as taken now.` : `Saved. ${name}, you took that dose.`,
      me.walk?.background ? `Inject no more ${me.walk.background.insulinName} for this hour.` : "Inject no mealtime insulin for this meal.",
    ];
  }
  const clinic = me.card ? `Call ${me.card.card.clinic.name}: ${me.card.card.clinic.phone}.` : "Call your clinic.";
  return [
    `Saved. ${name}, you do not know if you took it.`,
    `Inject no ${me.walk?.background?.insulinName ?? "mealtime insulin"} now.`,
    clinic,
  ];
}
