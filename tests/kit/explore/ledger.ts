// A second account of the same facts, kept by the tests alone: it is written from the design and the meaning of each fact, and knows nothing of how
// the walk folds or guards. The promises are judged by this account.
import type { DoseCard, Signature } from "#events/card.ts";
import type { Of } from "#events/happened.ts";
import type { StepName } from "#events/happened-walk.ts";
import type { Pen } from "#events/pen.ts";
import type { Person } from "#events/person.ts";
import type { Glucose } from "#events/quantity.ts";
import type { NoGo, Spot } from "#events/spot.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot, ToldDose } from "#events/told.ts";
import type { BackgroundAccount } from "./ledger-background.ts";
import type { MealOpened } from "./ledger-reminders.ts";

/** A number on its way, by the turns (moves of the explorer) in which it was given and agreed. */
export interface NumberAccount {
  slot: NumberSlot;
  /** Every text given for it since the last "no", with its turn; voice: heard and not touched. */
  given: { text: string; at: Stamp; turn: number; voice: boolean; named: boolean }[];
  /** The turn in which its digits were asked for again; null before. */
  askedAgain: number | null;
}

export interface WalkAccount {
  id: string;
  kind: "meal" | "low" | "mishap" | "background" | "reading";
  meal: "breakfast" | "lunch" | "dinner" | "snack" | null;
  /** The hour and the insulin of a background walk. */
  background: { at: string; insulinId: string } | null;
  /** No reading was an answer. */
  readingLeftOut: Stamp | null;
  /** The answer to "taken already?" with whether the log was clear at that moment; null: not asked, or doubted since. */
  taken: { how: string; clear: boolean; doseInside: boolean } | null;
  reading: { glucose: Glucose | null; word: "HI" | "LO" | null; at: Stamp } | null;
  /** A reading was low or LO, or low was said, and no later reading was otherwise. */
  lowOpen: boolean;
  /** That low began with a meal that never came after the insulin, and nothing was eaten since. */
  lowWithoutMeal: boolean;
  sugars: number;
  grams: number | null;
  exercise: boolean;
  afterLow: boolean;
  number: NumberAccount | null;
  told: ToldDose | null;
  /** Telephoned doses told in this walk, voided ones too. */
  telephoned: number;
  heard: boolean;
  eatenFirst: boolean;
  helper: string | null;
  pen: { id: string; named: boolean; looked: boolean; mixed: boolean; fitted: Stamp | null; primed: boolean } | null;
  dial: number | null;
  offered: { spot: Spot; restDays: number; fullRest: boolean } | null;
  place: Spot | null;
  opened: Stamp | null;
  needleIn: boolean;
  /** The count that the needle stays in. */
  hold: { at: Stamp; ms: number } | null;
  injected: { units: number | null; certain: boolean } | null;
  putAway: boolean;
  /** The needle step was opened and then left, or the app started again: the question is open. */
  needleOpenQuestion: boolean;
  /** Last fact that an answer of the person led to. */
  answeredAt: Stamp;
  callRaised: boolean;
  /** An ill day, or the look for ketones, is open. */
  illOpen: boolean;
}

export interface DoseAccount {
  walk: string | null;
  from: Stamp;
  /** Minutes before `from`; null: not known. */
  ago: number | null;
  units: number | null;
}

export interface Account {
  person: Person;
  card: { card: DoseCard; hash: string; signature: Signature } | null;
  /** Signed, and to begin on a later day. */
  next: { card: DoseCard; hash: string; signature: Signature } | null;
  pens: { pen: Pen; openedOn: string | null; used: number; retired: boolean }[];
  noGo: (NoGo & { since: number })[];
  uses: { spot: Spot; wall: number; walk: string }[];
  doses: DoseAccount[];
  background: BackgroundAccount[];
  lastLow: Stamp | null;
  walk: WalkAccount | null;
  /** Calls and walks of meals by day, as ledger-reminders.ts spells them. */
  reminded: readonly string[];
  mealsOpened: readonly MealOpened[];
  /** Each time too much insulin, or the wrong one, was told, and no doctor watched since. */
  watched: readonly { kind: "too much" | "wrong insulin"; at: Stamp }[];
  /** Insulin is in, or may be, and the meal has not come. */
  bell: { from: Stamp } | null;
}

export interface Ledger {
  people: Record<string, Account>;
  last: Stamp | null;
  /** The clocks agreed with each other since day and time were last agreed. */
  trusted: boolean;
  /** Wall time since when nothing is missing from the log; null: not known. */
  recordingSince: number | null;
  /** Rows that could not be read; latest wall time they can have, null while no later row is known. */
  unreadable: (number | null)[];
  turn: number;
}

export const emptyLedger: Ledger = { people: {}, last: null, trusted: true, recordingSince: null, unreadable: [], turn: 0 };

/** What a changed answer takes with it: the table of design section 3, the step itself first. */
export const VOIDS: Readonly<Partial<Record<StepName, readonly StepName[]>>> = {
  reading: ["reading", "card", "dial"],
  plate: ["plate", "card", "dial"],
  card: ["card", "dial"],
  pen: ["pen", "dial"],
  dial: ["dial"],
  place: ["place", "skin"],
  skin: ["skin"],
  taken: ["taken"],
  wash: ["wash"],
};

const MINUTE = 60_000;
export const DAY = 24 * 60 * MINUTE;

/** Do both clocks tell the same story since the last entry? A second of wobble backwards, half a minute of drift. */
export const clocksAgree = (last: Stamp | null, now: Stamp): boolean =>
  last === null ||
  (last.boot === now.boot && now.wall >= last.wall - 1000 && Math.abs(now.wall - last.wall - (now.mono - last.mono)) <= 30_000);

/** Milliseconds that have passed for certain; null: not known. */
export function passed(from: Stamp, now: Stamp, trusted: boolean): number | null {
  if (from.boot === now.boot) return now.mono - from.mono;
  return trusted && now.wall >= from.wall ? now.wall - from.wall : null;
}

/** Milliseconds that may have passed at most; null: any. */
export function age(from: Stamp, now: Stamp, trusted: boolean): number | null {
  const sure = passed(from, now, trusted);
  return sure === null ? null : Math.max(sure, now.wall - from.wall);
}

export const isLow = (g: Glucose, card: DoseCard | null): boolean => {
  const unitFits = card?.glucoseUnit === g.unit;
  const limit = unitFits && card ? card.low : g.unit === "mg/dL" ? { value: 70, counts: "at or below" } : { value: 4, counts: "below" };
  return g.value < limit.value || (g.value === limit.value && limit.counts === "at or below");
};

/** A dose of rapid-acting insulin that may lie inside so many minutes. A time that nobody knows lies before it was told, no more is certain; a told one may be an hour off. */
export function dosesInside(a: Account, minutes: number, now: Stamp, trusted: boolean, but: string | null = null): DoseAccount[] {
  return a.doses.filter((d) => {
    if (but !== null && d.walk === but) return false;
    const ms = passed(d.from, now, trusted);
    return ms === null || ms + Math.max(0, (d.ago ?? 0) - (d.walk === null ? 60 : 0)) * MINUTE < minutes * MINUTE;
  });
}

/** Two hours after a low its meal still belongs to it; a time that is not known counts as inside. */
export function afterLow(a: Account, now: Stamp, trusted: boolean): boolean {
  const ms = a.lastLow && passed(a.lastLow, now, trusted);
  return a.lastLow !== null && (ms === null || ms < 120 * MINUTE);
}

/** Can the log vouch that no mealtime dose was taken for the whole window? */
export function logIsClear(l: Ledger, a: Account, now: Stamp, but: string | null = null): boolean {
  const window = a.card?.card.windowMinutes ?? null;
  if (window === null || !l.trusted || dosesInside(a, window, now, true, but).length > 0) return false;
  if (l.recordingSince === null || now.wall - l.recordingSince < window * MINUTE) return false;
  return l.unreadable.every((wall) => wall !== null && now.wall - wall >= window * MINUTE);
}

export function freshWalk(id: string, { kind, meal, background }: Of<"walk opened">, at: Stamp): WalkAccount {
  return {
    id,
    kind,
    meal,
    background: background ?? null,
    readingLeftOut: null,
    taken: null,
    reading: null,
    lowOpen: false,
    lowWithoutMeal: false,
    sugars: 0,
    grams: null,
    exercise: false,
    afterLow: false,
    number: null,
    told: null,
    telephoned: 0,
    heard: false,
    eatenFirst: false,
    helper: null,
    pen: null,
    dial: null,
    offered: null,
    place: null,
    opened: null,
    needleIn: false,
    hold: null,
    injected: null,
    putAway: false,
    needleOpenQuestion: false,
    answeredAt: at,
    callRaised: false,
    illOpen: false,
  };
}

export function voidIn(w: WalkAccount, step: StepName): WalkAccount {
  const gone = VOIDS[step] ?? [];
  const has = (s: StepName) => gone.includes(s);
  return {
    ...w,
    number: null,
    taken: has("taken") ? null : w.taken,
    reading: has("reading") ? null : w.reading,
    readingLeftOut: has("reading") ? null : w.readingLeftOut,
    grams: has("plate") ? null : w.grams,
    told: has("card") ? null : w.told,
    heard: has("card") ? false : w.heard,
    pen: has("pen") ? null : w.pen,
    dial: has("dial") ? null : w.dial,
    place: has("place") ? null : w.place,
  };
}

/** Doubt of any kind: every walk that has not reached the needle has to ask "taken already?" again. */
export const doubtTaken = (people: Ledger["people"]): Ledger["people"] =>
  Object.fromEntries(
    Object.entries(people).map(([id, a]) => [id, a.walk && !a.walk.opened ? { ...a, walk: { ...a.walk, taken: null } } : a]),
  );

/** The start of a turn: the clocks are looked at before anything else. */
export function beginTurn(l: Ledger, now: Stamp): Ledger {
  const agree = clocksAgree(l.last, now);
  const set = !agree && l.last?.boot === now.boot;
  return {
    ...l,
    turn: l.turn + 1,
    trusted: l.trusted && agree,
    recordingSince: set ? null : l.recordingSince,
    people: l.trusted && !agree ? doubtTaken(l.people) : l.people,
  };
}
