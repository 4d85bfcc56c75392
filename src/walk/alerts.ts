// The alert ladder: all that the tablet sounds of itself, the most urgent first. One voice at a time, and each alert names one act.
// Levels, tones, pauses and ends are our own (written beside the guides on alarms in medical use, whose melodies are not used); what stands on
// facts names them. Older listeners hear 500 to 900 Hz best, and pulses better than one long tone (residential alarm studies): devices/tone-shapes.ts.
import type { BellLevel } from "./bell.ts";

export type AlertKind =
  | "low, call raised"
  | "danger sign, call raised"
  | "meal bell, loud"
  | "insulin watch, no answer"
  | "meal bell, insistent"
  | "insulin watch"
  | "meal bell, calling"
  | "reminder"
  | "wait is over";

export interface Alert {
  kind: AlertKind;
  /** 0 something was noted, 1 when it suits, 2 shortly, 3 now. */
  level: 0 | 1 | 2 | 3;
  tone: Exclude<BellLevel, "quiet"> | "note";
  /** Seconds between two calls; null: it sounds once. */
  everySeconds: number | null;
  /** What makes it louder, or the next rung. */
  louder: string;
  saidTo: "the person" | "the person and the house";
  /** Quiet hours silence reminders alone. The others stand on insulin or glucose in a body, which keep no hours. */
  inQuietHours: "sounds" | "silent";
  ends: string;
}

/** In this order one comes before another. */
export const ALERTS: readonly Alert[] = [
  {
    kind: "low, call raised",
    level: 3,
    tone: "loud",
    everySeconds: 30,
    louder: "nothing: it is the top",
    saidTo: "the person and the house",
    inQuietHours: "sounds",
    ends: "a good reading, or an hour without any answer; the screen keeps it",
  },
  {
    kind: "danger sign, call raised",
    level: 3,
    tone: "loud",
    everySeconds: 30,
    louder: "nothing: it is the top",
    saidTo: "the person and the house",
    inQuietHours: "sounds",
    ends: "Help was called, or an hour without any answer; the screen keeps it",
  },
  {
    kind: "meal bell, loud",
    level: 3,
    tone: "loud",
    everySeconds: 30,
    // The latest minute is the card's; 15 where it was left blank (common practice: mealtime insulin at most 15 minutes before eating).
    louder: "nothing: it is the top; silence is written down, and a low comes before it",
    saidTo: "the person and the house",
    inQuietHours: "sounds",
    ends: "I am eating, or I cannot eat",
  },
  {
    kind: "insulin watch, no answer",
    level: 3,
    tone: "loud",
    everySeconds: 60,
    louder: "nothing: it is the top",
    saidTo: "the person and the house",
    inQuietHours: "sounds",
    ends: "a reading, A doctor watches, or an hour without any answer; the screen keeps it",
  },
  {
    kind: "meal bell, insistent",
    level: 2,
    tone: "insistent",
    everySeconds: 60,
    louder: "the card's latest minute",
    saidTo: "the person",
    inQuietHours: "sounds",
    ends: "I am eating, or I cannot eat",
  },
  {
    kind: "insulin watch",
    level: 2,
    tone: "insistent",
    everySeconds: 120,
    louder: "half an hour without a reading",
    saidTo: "the person",
    inQuietHours: "sounds",
    ends: "a reading, or A doctor watches",
  },
  {
    kind: "meal bell, calling",
    level: 1,
    tone: "calling",
    everySeconds: 120,
    louder: "half-way to the card's latest minute",
    saidTo: "the person",
    inQuietHours: "sounds",
    ends: "I am eating, or I cannot eat",
  },
  {
    kind: "reminder",
    level: 1,
    tone: "calling",
    everySeconds: null,
    louder: "nothing: once, and the question stays on the screen",
    saidTo: "the person",
    inQuietHours: "silent",
    ends: "an answer, something in the book, or the next meal's hours",
  },
  {
    kind: "wait is over",
    level: 0,
    tone: "note",
    everySeconds: null,
    louder: "nothing: the question of the step is asked again by voice",
    saidTo: "the person",
    inQuietHours: "sounds",
    ends: "by itself",
  },
];

const BELL: Readonly<Record<Exclude<BellLevel, "quiet">, AlertKind>> = {
  calling: "meal bell, calling",
  insistent: "meal bell, insistent",
  loud: "meal bell, loud",
};
export const alertOfBell = (level: Exclude<BellLevel, "quiet">): AlertKind => BELL[level];

export function alertOf(kind: AlertKind): Alert {
  const found = ALERTS.find((alert) => alert.kind === kind);
  if (!found) throw new Error(`no alert is called ${kind}`);
  return found;
}

const rank = (kind: AlertKind): number => ALERTS.findIndex((alert) => alert.kind === kind);
export const isMoreUrgent = (a: AlertKind, b: AlertKind): boolean => rank(a) < rank(b);
