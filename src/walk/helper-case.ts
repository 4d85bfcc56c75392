// For whoever comes when the person does not answer: is there such a case, and what the book knows of it.
import type { Units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { bellNow } from "./bell.ts";
import type { ReadingKept } from "./day.ts";
import type { HouseState, PersonState } from "./state.ts";

/** A low or a danger sign whose call is raised, or a meal bell past the latest minute. */
export function calls(me: PersonState, now: Stamp, sure: boolean): boolean {
  if (me.walk?.low) return me.walk.low.callRaised;
  if (me.walk?.ill?.callRaised) return true;
  return me.bell !== null && bellNow(me.bell, now, sure).level === "loud";
}

/** Who needs somebody now: the person in front first. */
export function whoCalls(house: HouseState, now: Stamp): PersonState | null {
  const sure = house.doubt === null;
  const all = Object.values(house.people).filter((me) => calls(me, now, sure));
  return all.find((me) => me.person.id === house.front) ?? all[0] ?? null;
}

export interface LastDose {
  name: string;
  /** null: not known. */
  units: Units | null;
  certain: boolean;
  /** null: when is not known. */
  at: { wall: number; offset: number } | null;
}

/** Mealtime insulin; null: none is in the book of the last days, which is no proof that there was none. */
export function lastMealtimeDose(me: PersonState): LastDose | null {
  const [dose] = me.doses;
  if (!dose) return null;
  const at = dose.agoMinutes === null ? null : { wall: dose.at.wall - dose.agoMinutes * 60_000, offset: dose.at.offset };
  return { name: me.card?.card.insulin.name ?? "mealtime insulin", units: dose.units, certain: dose.certain, at };
}

/** "not known": nothing in the book speaks for eating or against it. */
export function hasEaten(me: PersonState): "yes" | "no" | "not known" {
  if (me.bell) return "no";
  if (me.walk?.eat === "eating") return "yes";
  if (me.walk?.eat === "cannot eat") return "no";
  return me.mealQuestion && me.mealQuestion.walk === me.doses[0]?.walk ? "yes" : "not known";
}

export const lastReading = (me: PersonState): ReadingKept | null => me.day.readings[0] ?? null;
