// The kitchen screen in words, and the answer to "Did I take it?".
import type { Happened } from "#events/happened.ts";
import type { Stamp } from "#events/stamp.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import { bellNow } from "#walk/bell.ts";
import type { RapidDose } from "#walk/doses.ts";
import { GUARDS } from "#walk/guards.ts";
import { lumpQuestionDue } from "#walk/lump-question.ts";
import { mealQuestionDue } from "#walk/offers.ts";
import { standingReminder } from "#walk/reminders.ts";
import { type HouseState, type PersonState, stepOf } from "#walk/state.ts";
import { isWatched } from "#walk/steps/no-meal.ts";
import { ago, unitsOf } from "./amounts.ts";
import { sayClockDoubt } from "./due.ts";
import { FIXED } from "./fixed.ts";
import { sayLumpsDue } from "./lumps.ts";
import { sayStanding } from "./reminders.ts";
import { timeOfDay, whichDay } from "./when.ts";

/** Long-acting insulin goes by its own clock, and this book has no walk for it yet. */
function notInBook(me: PersonState): string[] {
  const has = (me.card?.card.background?.length ?? 0) > 0 || me.pens.some(({ pen, retired }) => pen.kind === "long-acting" && !retired);
  return has ? ["Long-acting insulin is not in this book."] : [];
}

const howMuch = (dose: RapidDose): string =>
  dose.units === null ? "mealtime insulin, amount not known" : `${unitsOf(dose.units)} of mealtime insulin`;

/** "3 hours and 10 minutes ago"; null where the clocks or the person cannot say. */
function since(dose: RapidDose, now: Stamp, sure: boolean): string | null {
  const ms = elapsed(dose.at, now, sure);
  return ms === null || dose.agoMinutes === null ? null : `${ago(Math.floor(ms / 60_000) + dose.agoMinutes)} ago`;
}

function howSure(dose: RapidDose): string[] {
  if (dose.walk === null) return ["That was told later. It counts as taken."];
  return dose.certain ? [] : ["It is not certain that all of it went in."];
}

/**
 * One truthful sentence by person and insulin, at any hour, and what is not known said as not known.
 * Behind a newest dose that is not certain, the one before it is said too: it is the one that was seen.
 */
export function didITakeIt(house: HouseState, me: PersonState, now: Stamp): string[] {
  const name = me.person.name;
  const sure = house.doubt === null;
  const [dose, before] = me.doses;
  const gap = GUARDS.windowOf(house, me, now).is === "not known" ? ["The tablet was not here all the time. It may not know all."] : [];
  const end = [...(sure ? [] : ["The tablet's clock is not sure now."]), ...gap, ...notInBook(me)];
  if (me.walk?.injectOpened && !me.walk.injected)
    return [`${name}, your last walk stopped at the needle.`, "Nobody knows yet if it went in. It counts as taken.", ...notInBook(me)];
  if (!dose) return [`${name}, no recent mealtime insulin is in the book.`, ...end];
  const how = since(dose, now, sure);
  const at = { wall: dose.at.wall - (dose.agoMinutes ?? 0) * 60_000, offset: dose.at.offset };
  const when = dose.agoMinutes === null ? "When is not known." : `That was ${whichDay(at, now)} at ${timeOfDay(at)}.`;
  const beforeAgo = before && since(before, now, sure);
  const earlier = before && !dose.certain ? [`Before it: ${howMuch(before)}${beforeAgo ? `, ${beforeAgo}` : ""}.`] : [];
  return [`${name}: ${howMuch(dose)}${how ? `, ${how}` : ""}.`, when, ...howSure(dose), ...earlier, ...end];
}

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

/** An unfinished walk: where it stopped and how long ago. */
export function unfinished(house: HouseState, me: PersonState, now: Stamp): string | null {
  if (!me.walk) return null;
  const ms = elapsed(me.walk.touchedAt, now, house.doubt === null);
  const since = ms === null ? "some time ago" : `${ago(Math.floor(ms / 60_000))} ago`;
  const whose = me.walk.meal ? `${me.person.name}'s ${me.walk.meal}` : me.person.name;
  return `${whose} stopped at ${STEP_NAMES[stepOf(me.walk)] ?? "a step"}, ${since}.`;
}

/** Who has a low, and whom to call once it needs help; for whoever is near. */
export function sayLowCall(house: HouseState, me: PersonState): string {
  const { name } = me.person;
  if (me.walk && isWatched(me.walk)) return `${name} had insulin and no meal. Measure on time.`;
  if (!me.walk?.low?.callRaised) return `${name} has a low. Sugar first.`;
  return `${name} has a low. Call ${house.household?.emergencyNumber ?? "the emergency number"}.`;
}

/** Why somebody calls into another's walk. */
export const sayCaller = (house: HouseState, me: PersonState): string =>
  me.walk?.low ? sayLowCall(house, me) : `${me.person.name}: ${FIXED.calls}`;

/** What calls on the kitchen screen, the most urgent first. */
export function dueNow(house: HouseState, now: Stamp): string[] {
  const sure = house.doubt === null;
  const lines = Object.values(house.people).flatMap((me) => {
    const lines: string[] = [];
    if (me.walk?.low) lines.push(sayLowCall(house, me));
    if (me.bell) {
      const bell = bellNow(me.bell, now, sure);
      if (bell.level === "loud") lines.push(`${me.person.name}, eat now. Insulin is working.`);
      else if (bell.level !== "quiet") lines.push(`${me.person.name}, it is time to eat.`);
    }
    const open = unfinished(house, me, now);
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

/** After less than a whole meal. Blank on the card: a reading in an hour, sugar in reach, whom to call (common practice, no source). */
export function afterMealAnswer(me: PersonState, ate: "all" | "half" | "hardly any" | "not kept down"): string[] {
  if (ate === "all") return ["Saved. You ate all of it."];
  const own = me.card?.card.advice.halfEaten;
  if (own) return ["Saved.", `Your card says: ${own}`];
  const clinic = me.card ? `Call ${me.card.card.clinic.name}: ${me.card.card.clinic.phone}.` : "Call your clinic.";
  return ["Saved.", "Keep quick sugar within reach.", "Measure again in one hour.", clinic];
}

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
      "Inject no mealtime insulin for this meal.",
    ];
  }
  const clinic = me.card ? `Call ${me.card.card.clinic.name}: ${me.card.card.clinic.phone}.` : "Call your clinic.";
  return [`Saved. ${name}, you do not know if you took it.`, "Inject no mealtime insulin now.", clinic];
}
