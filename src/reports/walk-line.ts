// One walk in a few whole sentences, in the order it happened. A telephoned number always comes first (promise 5).
import type { DoseCard } from "#events/card.ts";
import type { Stored } from "#events/envelope.ts";
import type { HappenedType, Of } from "#events/happened.ts";
import { MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import { gramsOf } from "#words/en/amounts.ts";
import { whySilent } from "#words/en/card.ts";
import { foodWords } from "#words/en/daybook/steps.ts";
import { ATE, howKnown, sayInjected, sayMeterWord, sayReading, sayToldLater, WALK_LINE, walkName } from "#words/en/daybook.ts";

export interface WalkRows {
  /** Rows of one walk of one day, in order; at least one. */
  rows: readonly Stored[];
  language: "en-US" | "en-GB";
  /** The card a row names by its hash; null when it is not known any more. */
  cardOf(hash: string | null): DoseCard | null;
}

type Row<T extends HappenedType> = { at: Stamp; card: string | null; event: Of<T> };

function all<T extends HappenedType>(rows: readonly Stored[], type: T): Row<T>[] {
  return rows.flatMap(({ at, card, event }) => (event.type === type ? [{ at, card, event: event as Of<T> }] : []));
}

const last = <T extends HappenedType>(rows: readonly Stored[], type: T): Row<T> | undefined => all(rows, type).at(-1);

/** Readings as they led to the dose: the last one, or in a low each one with the sugar between them. */
function readings({ rows, language }: WalkRows): string[] {
  const low = rows.some((row) => row.event.type === "low began");
  const facts = rows.flatMap(({ event }): { text: string; sugar: boolean }[] => {
    switch (event.type) {
      case "reading taken":
        return [
          { text: sayReading(event.glucose).replace(/\.$/, `${event.helper ? howKnown(event.via, event.helper) : ""}.`), sugar: false },
        ];
      case "meter word read":
        return [{ text: sayMeterWord(event.word), sugar: false }];
      case "reading left out":
        return [{ text: WALK_LINE.noReading, sugar: false }];
      case "sugar taken":
        return [{ text: WALK_LINE.tookSugar(gramsOf(event.grams), foodWords(event.food, language)), sugar: true }];
      default:
        return [];
    }
  });
  return (low ? facts : facts.slice(-1)).map((fact) => fact.text);
}

/** The needle's own truth: what went in, what may have, what did not. */
function needle(rows: readonly Stored[]): string[] | null {
  const opened = rows.findLastIndex((row) => row.event.type === "inject opened");
  const injected = last(rows, "injected");
  if (injected) return sayInjected(injected.event, injected.event.spot);
  if (opened < 0) return null;
  const notIn = rows.findLastIndex((row) => row.event.type === "needle did not go in");
  return [notIn > opened ? WALK_LINE.notIn : WALK_LINE.needleOpen];
}

function dose(rows: readonly Stored[]): string[] {
  const went = needle(rows);
  if (went) return went;
  const ended = last(rows, "walk ended")?.event.how;
  if (ended === "dose already taken") return [WALK_LINE.alreadyTaken];
  const told = rows.findLast((row) => row.event.type === "dose told" || row.event.type === "card silent")?.event;
  if (told?.type === "card silent") return [WALK_LINE.noDose, whySilent(told)];
  if (told?.type === "dose told" && told.told.units === 0) return [WALK_LINE.zero];
  return ended === undefined ? [] : [WALK_LINE.noInsulin];
}

function eating(walk: WalkRows): string[] {
  const { rows, cardOf } = walk;
  const injected = last(rows, "injected");
  const eatenAt = last(rows, "eating");
  const bell = last(rows, "bell not answered");
  const rang = bell ? [WALK_LINE.bell(bell.event.minutes)] : [];
  if (rows.some((row) => row.event.type === "meal eaten first")) return [WALK_LINE.ateFirst];
  if (rows.some((row) => row.event.type === "cannot eat")) return [...rang, WALK_LINE.cannotEat];
  if (!eatenAt) return injected ? [...rang, ...(last(rows, "walk ended") || bell ? [WALK_LINE.noWordOfEating] : [])] : [];
  const ms = injected ? elapsed(injected.at, eatenAt.at, true) : null;
  if (!injected || ms === null) return [...rang, WALK_LINE.ate];
  const minutes = Math.floor(ms / MINUTE);
  const latest = cardOf(injected.card)?.timing.latestMinutes;
  const late = latest !== undefined && minutes > latest ? [WALK_LINE.late(minutes - latest)] : rang;
  return [WALK_LINE.ateAfter(minutes), ...late];
}

function whatElse(rows: readonly Stored[]): string[] {
  const slips = all(rows, "near miss").length;
  const answered = last(rows, "meal answered");
  const left = last(rows, "walk left");
  const ended = last(rows, "walk ended");
  return [
    ...all(rows, "dose told later").map((row) => sayToldLater(row.event)),
    ...all(rows, "call raised")
      .slice(0, 1)
      .map(() => WALK_LINE.call),
    ...all(rows, "mishap opened").map((row) => WALK_LINE.mishap(row.event.kind)),
    ...(answered ? [ATE[answered.event.ate]] : []),
    ...(slips > 0 ? [WALK_LINE.slips(slips)] : []),
    ...(left && !ended && rows.at(-1)?.event.type === "walk left" ? [WALK_LINE.stoppedAt(left.event.step)] : []),
  ];
}

/** Numbers that somebody gave by telephone, in order. */
export const telephoned = (rows: readonly Stored[]): string[] =>
  all(rows, "dose told").flatMap(({ event }) => (event.told.by === "card" ? [] : [WALK_LINE.telephoned(event.told.by, event.told.units)]));

/** "Lunch. Reading 132 mg/dL. 5 units, left side of the belly. Ate after 6 minutes." One sentence an entry. */
export function walkLine(walk: WalkRows): string[] {
  const { rows } = walk;
  const opened = last(rows, "walk opened");
  const lowWalk = opened?.event.kind === "low";
  const toldOnly = opened?.event.kind === "mishap" || opened?.event.kind === "reading";
  const name = opened ? walkName(opened.event) : WALK_LINE.dayBefore;
  const lowOver =
    (lowWalk || opened?.event.kind === "reading") && rows.some((row) => row.event.type === "low ended") ? [WALK_LINE.lowOver] : [];
  const helper = last(rows, "helper named");
  return [
    ...telephoned(rows),
    ...(name === null ? [] : [name]),
    ...readings(walk),
    ...lowOver,
    ...(lowWalk || toldOnly ? [] : dose(rows)),
    ...(helper ? [WALK_LINE.helped(helper.event.name)] : []),
    // Background insulin waits for no meal.
    ...(opened?.event.background ? [] : eating(walk)),
    ...whatElse(rows),
  ];
}
