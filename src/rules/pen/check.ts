// May this pen be used for this dose? Pure: the pen as set up, the card, and the day.
import type { DoseCard } from "#events/card.ts";
import type { Pen } from "#events/pen.ts";
import type { LocalDate } from "#events/quantity.ts";
import { addDays, compareDates } from "#rules/time/local.ts";
import { checkUnits } from "./units.ts";

export type PenReason =
  | { why: "another person's pen"; person: string }
  | { why: "not mealtime insulin"; name: string }
  | { why: "not background insulin"; name: string }
  | { why: "does not stop at the dose"; units: number }
  | { why: "another insulin than the card's"; name: string }
  | { why: "expired"; on: LocalDate }
  | { why: "open too long"; days: number; lastDay: LocalDate }
  | { why: "put aside" }
  | { why: "too little left"; left: number };

export interface PenQuestion {
  pen: Pen;
  openedOn: LocalDate | null;
  /** Units already used from it, priming included. */
  used: number;
  retired: boolean;
  person: string;
  card: DoseCard;
  /** null when the day is not known: then nothing that depends on the day is let through. */
  today: LocalDate | null;
  /** Units that are about to be drawn, priming included; null before a dose was told. */
  needed: number | null;
  /** The background insulin that it is for, and the printed dose; left out: mealtime insulin. */
  background?: { insulinId: string; units: number | null };
}

/** The last day a pen may be used: the day it was opened counts as day 0 (facts of the leaflet's in-use days; calendar dates). */
export const lastDay = (openedOn: LocalDate, inUseDays: number): LocalDate => addDays(openedOn, inUseDays);

/** Whatever the keeper chose as its kind: a pen with a background insulin of the card is none for a meal. */
function notTheMealtime({ pen, card }: PenQuestion): PenReason | null {
  const byTheClock = (card.background ?? []).some(({ insulin }) => insulin.id === pen.insulinId) && pen.insulinId !== card.insulin.id;
  if (pen.kind === "long-acting" || byTheClock) return { why: "not mealtime insulin", name: pen.insulinName };
  return pen.insulinId === card.insulin.id ? null : { why: "another insulin than the card's", name: pen.insulinName };
}

/** A printed dose that the pen cannot show would never be dialled: said at the pen, and not at the dial. */
function notTheBackground({ pen }: PenQuestion, { insulinId, units }: NonNullable<PenQuestion["background"]>): PenReason | null {
  if (pen.kind !== "long-acting") return { why: "not background insulin", name: pen.insulinName };
  if (pen.insulinId !== insulinId) return { why: "another insulin than the card's", name: pen.insulinName };
  const stops = units === null || checkUnits(String(units), pen.unitsPerClick).ok;
  return stops ? null : { why: "does not stop at the dose", units };
}

/** The first reason against this pen, the most dangerous first; null when there is none. */
export function whyNotPen(q: PenQuestion): PenReason | null {
  if (q.pen.person !== q.person) return { why: "another person's pen", person: q.pen.person };
  const wrong = q.background ? notTheBackground(q, q.background) : notTheMealtime(q);
  if (wrong) return wrong;
  if (q.retired) return { why: "put aside" };
  if (q.today === null || compareDates(q.today, q.pen.expiresOn) > 0) return { why: "expired", on: q.pen.expiresOn };
  if (q.openedOn !== null) {
    const last = lastDay(q.openedOn, q.pen.inUseDays);
    if (compareDates(q.today, last) > 0) return { why: "open too long", days: q.pen.inUseDays, lastDay: last };
  }
  if (q.pen.unitsWhenOpened !== null && q.needed !== null) {
    const left = q.pen.unitsWhenOpened - q.used;
    if (left < q.needed) return { why: "too little left", left };
  }
  return null;
}
