// For whoever comes when the person does not answer: is there such a case, and what the book knows of it.
import { MINUTE, type Units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { bellNow } from "./bell.ts";
import type { ReadingKept } from "./day.ts";
import type { RapidDose } from "./doses.ts";
import { DOSES_KEPT_MS } from "./fold-doses.ts";
import { totalAgo } from "./guards-window.ts";
import { knownBackground } from "./insulin.ts";
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

interface DoseInBook {
  /** null: not known. */
  units: Units | null;
  certain: boolean;
  /** Told later, and in no walk of this tablet. */
  told: boolean;
  /** null: when is not known. */
  at: { wall: number; offset: number } | null;
}

export interface InsulinInBook {
  name: string;
  /** Newest first: the newest dose of the last days, and behind one in doubt the newest that is certain. None is no proof that there was none. */
  doses: DoseInBook[];
  /** Nothing of the last days, but something older. */
  older: boolean;
}

type Kept = Omit<RapidDose, "meal">;

const inBook = ({ walk, units, certain, at, agoMinutes }: Kept): DoseInBook => ({
  units,
  certain,
  told: walk === null,
  at: agoMinutes === null ? null : { wall: at.wall - agoMinutes * MINUTE, offset: at.offset },
});

/** A clock in doubt lets go of none. */
const ofLastDays = (dose: Kept, now: Stamp, sure: boolean): boolean => (totalAgo(dose, now, sure).atLeastMs ?? 0) < DOSES_KEPT_MS;

function insulinInBook(name: string, kept: readonly Kept[], now: Stamp, sure: boolean): InsulinInBook {
  const lately = kept.filter((dose) => ofLastDays(dose, now, sure));
  const [newest] = lately;
  // Of which nothing went in, says nothing of what works now either.
  const doubted = newest !== undefined && (!newest.certain || newest.units === 0);
  const before = doubted ? lately.find((dose, i) => i > 0 && dose.certain && dose.units !== 0) : undefined;
  return { name, doses: [newest, before].flatMap((dose) => (dose ? [inBook(dose)] : [])), older: !newest && kept.length > 0 };
}

/** Mealtime insulin first, then each background insulin of the card or of the book by its name. */
export function insulinsInBook(me: PersonState, now: Stamp, sure: boolean): InsulinInBook[] {
  const mealtime = insulinInBook(me.card?.card.insulin.name ?? "mealtime insulin", me.doses, now, sure);
  const others = knownBackground(me).map(({ id, name }) => {
    const kept = me.backgroundDoses.filter((dose) => dose.insulinId === id);
    return insulinInBook(name, kept, now, sure);
  });
  return [mealtime.doses.length === 0 ? { ...mealtime, name: "mealtime insulin" } : mealtime, ...others];
}

/** "not known": nothing in the book speaks for eating or against it. */
export function hasEaten(me: PersonState): "yes" | "no" | "not known" {
  if (me.bell) return "no";
  if (me.walk?.eat === "eating") return "yes";
  if (me.walk?.eat === "cannot eat") return "no";
  return me.mealQuestion && me.mealQuestion.walk === me.doses[0]?.walk ? "yes" : "not known";
}

export const lastReading = (me: PersonState): ReadingKept | null => me.day.readings[0] ?? null;
