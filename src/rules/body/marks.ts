// Marks and time: a sore heals, a lump rests until somebody says that it is gone, scars and moles stay.
import { DAY } from "#events/quantity.ts";
import type { NoGo } from "#events/spot.ts";

/** markedAt: wall time in ms. */
export type MarkedPlace = NoGo & { readonly markedAt: number };

/** Our choice, no source: a small wound of the skin looks closed before that, and who still feels it marks it again. */
export const SORE_DAYS = 14;

/** A mark made at the needle: the spot and the skin a thumb would cover. Our choice, no source. */
export const MARK_RADIUS_MM = 15;

const healed = (mark: MarkedPlace, now: number): boolean => mark.kind === "sore" && now - mark.markedAt >= SORE_DAYS * DAY;

/** Marks that keep the needle off now. now: wall time in ms; null: nobody vouches for the clock, and nothing heals by it. */
export const marksThatHold = (marks: readonly MarkedPlace[], now: number | null): MarkedPlace[] =>
  marks.filter((mark) => now === null || !healed(mark, now));
