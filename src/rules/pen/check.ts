// May this pen be used for this dose? Pure: the pen as set up, the card, and the day.
import type { DoseCard } from "#events/card.ts";
import type { Pen } from "#events/pen.ts";
import type { LocalDate } from "#events/quantity.ts";
import { addDays, compareDates } from "#rules/time/local.ts";

export type PenReason =
  | { why: "another person's pen"; person: string }
  | { why: "not mealtime insulin"; name: string }
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
}

/** The last day a pen may be used: the day it was opened counts as day 0 (facts of the leaflet's in-use days; calendar dates). */
export const lastDay = (openedOn: LocalDate, inUseDays: number): LocalDate => addDays(openedOn, inUseDays);

/** The first reason against this pen, the most dangerous first; null when there is none. */
export function whyNotPen(q: PenQuestion): PenReason | null {
  if (q.pen.person !== q.person) return { why: "another person's pen", person: q.pen.person };
  if (q.pen.kind === "long-acting") return { why: "not mealtime insulin", name: q.pen.insulinName };
  if (q.pen.insulinId !== q.card.insulin.id) return { why: "another insulin than the card's", name: q.pen.insulinName };
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
