// How the meal walks of one person go, for a keeper: where they are stopped, how often somebody was not sure, what was caught, and how long they take.
// Counts and no judgement: many things make a walk longer, and the person is never told of them.
import type { Happened, Of } from "#events/happened.ts";
import type { LogRow } from "#events/log-port.ts";
import { DAY, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { elapsed } from "#rules/time/elapsed.ts";

/** Two spans of this length are looked at, the later one beside the earlier one. Our choice, no source. */
export const SPAN_DAYS = 28;
/** Stopped as often at one step: worth a talk. Our choice, no source. */
const REPEATED = 3;
/** Fewer walks than this in a span tell nothing about how long they take. Our choice, no source. */
const ENOUGH_WALKS = 5;
/** By half, and by two minutes at least, is longer. Our choice, no source. */
const LONGER_BY = 1.5;
const LONGER_MS = 2 * MINUTE;

export interface StepCount {
  /** A step of a walk, by its name in the log. */
  step: string;
  times: number;
}

export interface Walks {
  /** Meal walks that were opened. */
  opened: number;
  /** Meal walks that came to their end with an answer to every step. */
  whole: number;
  /** Where they were stopped by the person, the most frequent first. */
  stops: StepCount[];
  /** The steps among them at which it happened again and again. */
  repeated: StepCount[];
  notSure: { needle: number; taken: number };
  /** Slips that were stopped before the body, by step, the most frequent first. */
  caught: StepCount[];
  /** What was cut short: it was noted, and the walk went on. */
  cut: { what: CutShort; times: number }[];
  /** Minutes from the first question to the needle, the middle one of the span's undisturbed walks; null: too few of them. */
  minutes: { now: number | null; before: number | null };
  growing: boolean;
}

/** Near misses that were not stopped: the names that the steps give them. */
const CUT_SHORT = ["washing skipped", "drying cut short", "needle out early"] as const;
type CutShort = (typeof CUT_SHORT)[number];

type Row = Extract<LogRow, { readable: true }>;
type Type = Happened["type"];

const has = (rows: readonly Row[], type: Type): boolean => rows.some((row) => row.event.type === type);

function byStep(steps: readonly string[]): StepCount[] {
  const times = new Map<string, number>();
  for (const step of steps) times.set(step, (times.get(step) ?? 0) + 1);
  return [...times].map(([step, count]) => ({ step, times: count })).sort((a, b) => b.times - a.times);
}

/** Left, low, mishap, started again: how long such a walk took says nothing about its pace. */
const DISTURBED: readonly Type[] = ["walk left", "walk turned to", "low began", "mishap opened", "needle asked about", "clock doubted"];

/** Milliseconds from the first question to the needle, without the waits that the tablet itself counted; null where it cannot be told. */
function paceMs(rows: readonly Row[]): number | null {
  const opened = rows.find((row) => row.event.type === "walk opened");
  const needle = rows.find((row) => row.event.type === "button pressed down");
  if (!opened || !needle || DISTURBED.some((type) => has(rows, type))) return null;
  const ms = opened.at.boot === needle.at.boot ? elapsed(opened.at, needle.at, true) : null;
  return ms === null ? null : Math.max(0, ms - waitedMs(rows));
}

function waitedMs(rows: readonly Row[]): number {
  let began: Stamp | null = null;
  let sum = 0;
  for (const { event, at } of rows) {
    if (event.type === "button pressed down") return sum;
    if (event.type === "wait began") began = at;
    const over = event.type === "wait ended" || event.type === "wait jumped" || event.type === "hands washed" || event.type === "skin dry";
    if (!over || began === null) continue;
    sum += elapsed(began, at, true) ?? 0;
    began = null;
  }
  return sum;
}

function middleMinutes(walks: readonly (readonly Row[])[]): number | null {
  const all = walks.flatMap((rows) => paceMs(rows) ?? []).sort((a, b) => a - b);
  if (all.length < ENOUGH_WALKS) return null;
  const half = Math.floor(all.length / 2);
  const high = all[half] ?? 0;
  return (all.length % 2 === 1 ? high : ((all[half - 1] ?? 0) + high) / 2) / MINUTE;
}

/** What to ask the log for: [from, to) in ms since 1970. */
export const walksSpan = (now: Stamp): { from: number; to: number } => ({ from: now.wall - 2 * SPAN_DAYS * DAY, to: now.wall + 1 });

const isNotSure = (event: Happened): "needle" | "taken" | null => {
  if (event.type === "needle question answered") return event.wentIn === "not sure" ? "needle" : null;
  if (event.type === "mishap opened") return event.kind === "not sure" ? "needle" : null;
  return event.type === "near miss" && event.step === "taken" && event.detail === "do not know" ? "taken" : null;
};

const isCaught = (event: Happened): event is Of<"near miss"> =>
  event.type === "near miss" && isNotSure(event) === null && !CUT_SHORT.some((what) => what === event.what);

/**
 * Counts over the last SPAN_DAYS days before now; the span before it only for the pace. rows: of `walksSpan`, in order of their number, of everybody.
 * A walk belongs to the span in which it was opened. Rows nobody can read count nothing.
 */
export function walksOf(rows: readonly LogRow[], person: string, now: Stamp): Walks {
  const own = rows.filter((row): row is Row => row.readable && row.person === person);
  const since = now.wall - SPAN_DAYS * DAY;
  const walks = new Map<string, Row[]>();
  for (const row of own) {
    if (row.walk === null) continue;
    const of = walks.get(row.walk) ?? [];
    of.push(row);
    walks.set(row.walk, of);
  }
  const meals = [...walks.values()].filter(([first]) => first?.event.type === "walk opened" && first.event.kind === "meal");
  const isNow = ([first]: readonly Row[]): boolean => first !== undefined && first.at.wall >= since;
  const recent = meals.filter(isNow);
  const late = own.filter((row) => row.at.wall >= since);
  const stops = byStep(
    recent.flat().flatMap(({ event }) => (event.type === "walk left" && event.why === "stopped by the person" ? [event.step] : [])),
  );
  const unsure = late.flatMap(({ event }) => isNotSure(event) ?? []);
  const minutes = { now: middleMinutes(recent), before: middleMinutes(meals.filter((walk) => !isNow(walk))) };
  return {
    opened: recent.length,
    whole: recent.filter((walk) => walk.some(({ event }) => event.type === "walk ended" && event.how === "whole walk")).length,
    stops,
    repeated: stops.filter(({ times }) => times >= REPEATED),
    notSure: { needle: unsure.filter((what) => what === "needle").length, taken: unsure.filter((what) => what === "taken").length },
    caught: byStep(late.flatMap(({ event }) => (isCaught(event) ? [event.step] : []))),
    cut: CUT_SHORT.map((what) => ({
      what,
      times: late.filter(({ event }) => event.type === "near miss" && event.what === what).length,
    })).filter(({ times }) => times > 0),
    minutes,
    growing:
      minutes.now !== null &&
      minutes.before !== null &&
      minutes.now >= minutes.before * LONGER_BY &&
      (minutes.now - minutes.before) * MINUTE >= LONGER_MS,
  };
}
