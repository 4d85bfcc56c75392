// Everything a step may look at: the house, the person, their walk and card, and the moment.
import type { DoseCard } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { LocalDate } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot } from "#events/told.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import { localParts } from "#rules/time/local.ts";
import type { Guards } from "./guards.ts";
import type { Refusal } from "./refusal.ts";
import type { HouseState, PersonState, Walk } from "./state.ts";

/** Something the walk would accept right now. Buttons, vocabulary, keys and help all read the one list of these. */
export type Offer =
  | { offer: "press"; intent: Intent; role: "main" | "choice" | "no" | "stop" | "wrong" | "back" }
  /** A number may be given for this slot; helper: by whom, for a telephoned number. */
  | { offer: "number"; slot: NumberSlot }
  /** Foods may be put on the plate and taken off. */
  | { offer: "foods" };

export interface Outcome {
  events: Happened[];
  refusal?: Refusal;
}

export interface Ctx {
  house: HouseState;
  me: PersonState;
  walk: Walk;
  card: DoseCard | null;
  cardHash: string | null;
  now: Stamp;
  /** The clocks vouch for elapsed times and for the day. */
  sure: boolean;
  today: LocalDate | null;
  minuteOfDay: number | null;
  guards: Guards;
}

export interface StepRules {
  offers(c: Ctx): Offer[];
  /** Only called with an intent that is on offer. */
  decide(c: Ctx, intent: Intent): Outcome;
  /** What a number given for a slot of this step leads to, once it was read back and agreed. */
  accept?(c: Ctx, slot: NumberSlot, text: string): Outcome;
  /** Facts to store on arriving here, before anything is shown. */
  arrive?(c: Ctx): Happened[];
}

export function contextOf(house: HouseState, me: PersonState, walk: Walk, now: Stamp, guards: Guards): Ctx {
  const sure = house.doubt === null;
  const parts = localParts(now.wall, now.offset);
  return {
    house,
    me,
    walk,
    card: me.card?.card ?? null,
    cardHash: me.card?.hash ?? null,
    now,
    sure,
    today: sure ? parts.date : null,
    minuteOfDay: sure ? parts.minuteOfDay : null,
    guards,
  };
}

export const happen = (...events: Happened[]): Outcome => ({ events });
export const refuse = (refusal: Refusal, ...events: Happened[]): Outcome => ({ events, refusal });
export const press = (role: Extract<Offer, { offer: "press" }>["role"], intent: Intent): Offer => ({ offer: "press", role, intent });

/** Is the running wait over? Doubtful time never ends one (promise 14). */
export function waitOver(walk: Walk, now: Stamp, sure: boolean): boolean {
  if (!walk.wait) return false;
  const ms = elapsed(walk.wait.began, now, sure);
  return ms !== null && ms >= walk.wait.ms;
}

/** Milliseconds still to wait, for showing; the whole wait while time is doubtful, and none for a low: there the reading is asked for. */
export function waitLeft(walk: Walk, now: Stamp, sure: boolean): number {
  if (!walk.wait || (!sure && walk.wait.for === "recheck")) return 0;
  const ms = elapsed(walk.wait.began, now, sure);
  return ms === null ? walk.wait.ms : Math.max(0, walk.wait.ms - ms);
}
