// Too much insulin, or the wrong one: glucose is measured each hour until it has worked itself out, whatever walk was open when it was told.
import type { DoseCard, InsulinKind } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import type { InsulinWatchBecause } from "#events/happened-watch.ts";
import { HOUR, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { watchOf } from "#rules/glucose/watch.ts";
import { elapsed, oldestAge } from "#rules/time/elapsed.ts";
import type { AlertKind } from "./alerts.ts";
import { insulinOf } from "./insulin.ts";
import type { PersonState, Walk } from "./state.ts";

export interface InsulinWatch {
  because: InsulinWatchBecause;
  /** When it was told; it counts from the last time. */
  at: Stamp;
  hours: number;
  /** The newest reading since; null: none yet. */
  readAt: Stamp | null;
}

/** Common practice, no source. A meal that did not come is watched more closely: rules/card/care.ts. */
const EACH_MS = HOUR;
/** Our choice, no source: "Measure now" was said and stands on the screen; so long it is not said again. */
const FIRST_CALL_MS = 10 * MINUTE;
/** Our choice, no source: a reading that is so late may be a person who cannot answer. */
const NOBODY_ANSWERS_MS = 30 * MINUTE;
/** Our choice, no source, as for a low (app/ringer.ts): who was fetched ends nothing here, so the call falls silent; the screen keeps it. */
const LOUD_FOR_MS = 60 * MINUTE;

/** The insulin of the walk; told outside any dose, each that the card names. */
function kindsInDoubt(card: DoseCard | null, walk: Walk | null): (InsulinKind | undefined)[] {
  if (walk && (walk.kind === "meal" || walk.kind === "background")) return [insulinOf({ walk, card }).kind];
  return [card?.insulin.kind, ...(card?.background ?? []).map(({ insulin }) => insulin.kind)];
}

/** Hours until it has worked itself out. Which insulin the wrong one was is not known to the tablet. null: this mishap is not watched so. */
export function insulinWatchHours(mishap: MishapKind, card: DoseCard | null, walk: Walk | null): number | null {
  if (mishap === "wrong insulin") return watchOf("long-acting").longestHours;
  return mishap === "too much" ? Math.max(...kindsInDoubt(card, walk).map((kind) => watchOf(kind).longestHours)) : null;
}

/** With the mishap itself, not with its advice: whoever puts the tablet down is watched too. */
export function insulinWatchBegins(mishap: MishapKind, card: DoseCard | null, walk: Walk | null): Happened[] {
  const hours = insulinWatchHours(mishap, card, walk);
  return hours !== null && (mishap === "too much" || mishap === "wrong insulin")
    ? [{ type: "insulin watch began", because: mishap, hours }]
    : [];
}

/** One fact into the watch. A second mishap never shortens the first. */
export function foldInsulinWatch(watch: InsulinWatch | null, event: Happened, at: Stamp): InsulinWatch | null {
  switch (event.type) {
    case "insulin watch began":
      return { because: event.because, at, hours: Math.max(event.hours, watch?.hours ?? 0), readAt: null };
    case "insulin watch given over":
      return null;
    case "reading taken":
    case "meter word read":
      return watch && { ...watch, readAt: at };
    default:
      return watch;
  }
}

/** Of a watch that is not over; a time that nobody knows ends none (promise 14). null: nothing is watched. */
export function insulinWatched(me: PersonState, now: Stamp, sure: boolean): InsulinWatch | null {
  const watch = me.insulinWatch;
  if (!watch) return null;
  const since = elapsed(watch.at, now, sure);
  return since === null || since < watch.hours * HOUR ? watch : null;
}

/** Milliseconds since a reading was due, below 0 before it is; by the clocks at their worst, so that none is late. null: nothing is watched. */
export function insulinReadingLateMs(me: PersonState, now: Stamp, sure: boolean): number | null {
  const watch = insulinWatched(me, now, sure);
  if (!watch) return null;
  const since = oldestAge(watch.readAt ?? watch.at, now, sure);
  if (since === null) return watch.readAt ? 0 : FIRST_CALL_MS;
  return watch.readAt ? since - EACH_MS : since;
}

/** What sounds for it now. null: nothing. */
export function insulinWatchAlert(me: PersonState, now: Stamp, sure: boolean): Extract<AlertKind, `insulin watch${string}`> | null {
  const late = insulinReadingLateMs(me, now, sure);
  if (late === null || late < (me.insulinWatch?.readAt ? 0 : FIRST_CALL_MS)) return null;
  if (late < NOBODY_ANSWERS_MS) return "insulin watch";
  return late < NOBODY_ANSWERS_MS + LOUD_FOR_MS ? "insulin watch, no answer" : null;
}
