// "Did I take it?": one truthful answer by person and insulin, at any hour, and what is not known said as not known.
import type { Stamp } from "#events/stamp.ts";
import type { BackgroundTaken, RapidDose } from "#walk/doses.ts";
import { GUARDS } from "#walk/guards.ts";
import { totalAgo } from "#walk/guards-window.ts";
import { backgroundDosesOf, knownBackground } from "#walk/insulin.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { ago, unitsOf } from "./amounts.ts";
import { timeOfDay, whichDay } from "./when.ts";

type Dose = Omit<RapidDose, "meal">;

/** Long-acting insulin that no card names: whatever is done with its pen, this book has no walk for it. */
export function notInBook(me: PersonState): string[] {
  const known = knownBackground(me).map(({ id }) => id);
  const pens = me.pens.filter(({ pen, retired }) => pen.kind === "long-acting" && !retired && !known.includes(pen.insulinId));
  return [...new Set(pens.map(({ pen }) => pen.insulinName))].map((name) => `${capital(name)} is not in this book.`);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const howMuch = (dose: Dose, name: string): string =>
  dose.units === null ? `${name}, amount not known` : `${unitsOf(dose.units)} of ${name}`;

/** "3 hours and 10 minutes ago"; null where the clocks or the person cannot say. */
function since(dose: Dose, now: Stamp, sure: boolean): string | null {
  const { minutes } = totalAgo(dose, now, sure);
  return minutes === null ? null : `${ago(minutes)} ago`;
}

function howSure(dose: Dose): string[] {
  if (dose.walk === null) return ["That was told later. It counts as taken."];
  return dose.certain ? [] : ["It is not certain that all of it went in."];
}

const NONE = "is in the book.";

/** Behind a newest dose that is not certain, the one before it is said too: it is the one that was seen. */
function sayDoses(doses: readonly Dose[], name: string, who: string, now: Stamp, sure: boolean): string[] {
  const [dose, before] = doses;
  if (!dose) return [capital(`${who === "" ? "" : `${who}, `}no recent ${name} ${NONE}`)];
  const how = since(dose, now, sure);
  const at = { wall: dose.at.wall - (dose.agoMinutes ?? 0) * 60_000, offset: dose.at.offset };
  const when = dose.agoMinutes === null ? "When is not known." : `That was ${whichDay(at, now)} at ${timeOfDay(at)}.`;
  const beforeAgo = before && since(before, now, sure);
  const earlier = before && !dose.certain ? [`Before it: ${howMuch(before, name)}${beforeAgo ? `, ${beforeAgo}` : ""}.`] : [];
  const lead = `${howMuch(dose, name)}${how ? `, ${how}` : ""}.`;
  return [who === "" ? capital(lead) : `${who}: ${lead}`, when, ...howSure(dose), ...earlier];
}

const dosesOf = (me: PersonState, id: string): BackgroundTaken[] => me.backgroundDoses.filter((d) => d.insulinId === id);

function gap(house: HouseState, me: PersonState, now: Stamp): string[] {
  const windows = [
    GUARDS.windowOf(house, me, now),
    ...backgroundDosesOf(me.card?.card ?? null).map((dose) => GUARDS.backgroundWindowOf(house, me, dose, now)),
  ];
  return windows.some(({ is }) => is === "not known") ? ["The tablet was not here all the time. It may not know all."] : [];
}

/** The insulin of an open needle step comes first, then mealtime insulin, then each background insulin by its name. */
export function didITakeIt(house: HouseState, me: PersonState, now: Stamp): string[] {
  const { name } = me.person;
  const sure = house.doubt === null;
  const background = knownBackground(me);
  const open = me.walk?.injectOpened && !me.walk.injected ? me.walk : null;
  const atNeedle = open ? [`${name}, your last walk stopped at the needle.`, "Nobody knows yet if it went in. It counts as taken."] : [];
  const mealtime = open && !open.background ? [] : sayDoses(me.doses, "mealtime insulin", name, now, sure);
  const others = background
    .filter(({ id }) => id !== open?.background?.insulinId)
    .flatMap((one) => sayDoses(dosesOf(me, one.id), one.name, "", now, sure));
  // Somebody may read "none" as leave to inject.
  const nothing = [...mealtime, ...others].some((line) => line.endsWith(NONE));
  return [
    ...atNeedle,
    ...(open?.background ? [`It is about ${open.background.insulinName}.`] : []),
    ...mealtime,
    ...others,
    ...(nothing ? ["I know only what I was told.", "In doubt: no dose."] : []),
    ...(sure ? [] : ["The tablet's clock is not sure now."]),
    ...(open ? [] : gap(house, me, now)),
    ...notInBook(me),
  ];
}
