// A day of the log as people read it: one line a walk, everything beneath on demand, nothing left out.
import type { DoseCard } from "#events/card.ts";
import type { Stored } from "#events/envelope.ts";
import type { LogRow } from "#events/log-port.ts";
import { HOUR } from "#events/quantity.ts";
import type { HouseState } from "#walk/state.ts";
import { type Names, sayFact } from "#words/en/daybook/steps.ts";
import { DAY_BOOK, STARTED, sayOff } from "#words/en/daybook.ts";
import { timeOfDay, type When } from "#words/en/when.ts";
import { telephoned, walkLine } from "./walk-line.ts";

export interface DayStep {
  time: string;
  text: string;
}

export interface DayLine {
  /** Number of the row it begins with: tells lines apart and keeps their order. */
  seq: number;
  kind: "walk" | "note" | "unreadable";
  /** "12:05 in the afternoon"; "Time not known" for a row whose time nobody can read. */
  time: string;
  /** Whole sentences. */
  text: string;
  /** Every fact of the walk; [] for a line that is one fact. */
  steps: DayStep[];
}

export interface DayPage {
  /** Numbers given by telephone: shown before everything else (promise 5). */
  first: DayStep[];
  /** In the order it happened. */
  lines: DayLine[];
}

/** "Some hours": shorter pauses are an ordinary afternoon. Own choice. */
const GAP_MS = 3 * HOUR;

function namesOf(house: HouseState, person: string): Names {
  const pens = Object.values(house.people).flatMap((p) => p.pens.map((kept) => kept.pen));
  return {
    pen(id) {
      const pen = pens.find((p) => p.id === id);
      return pen ? `${pen.mark}, ${pen.insulinName}` : "a pen";
    },
    language: house.people[person]?.person.language ?? "en-US",
  };
}

/** Cards in force now, by hash. A row that names an older card gets null. */
function cardsOf(house: HouseState): (hash: string | null) => DoseCard | null {
  const known = Object.values(house.people).flatMap((p) => (p.card ? [p.card] : []));
  return (hash) => known.find((card) => card.hash === hash)?.card ?? null;
}

const stepsOf = (rows: readonly Stored[], names: Names): DayStep[] =>
  rows.flatMap((row) => {
    const text = sayFact(row.event, names);
    return text === null ? [] : [{ time: timeOfDay(row.at), text }];
  });

/** A start of the app after hours without an entry. */
function started(row: Stored, before: When | null): string {
  return before && row.at.wall - before.wall > GAP_MS ? sayOff(timeOfDay(before), timeOfDay(row.at)) : STARTED;
}

function unreadableLine(row: Extract<LogRow, { readable: false }>, before: When | null, house: HouseState): DayLine {
  const offset = before?.offset ?? house.last?.offset ?? 0;
  const time = row.wall === null ? DAY_BOOK.timeNotKnown : timeOfDay({ wall: row.wall, offset });
  return { seq: row.seq, kind: "unreadable", time, text: DAY_BOOK.unreadable, steps: [] };
}

/**
 * The page of one person. rows: all rows of the day, of everybody, in order of their number; a row without a person (the tablet, the clock)
 * and a row nobody can read stand on everybody's page. A walk stands where its first row of the day stands.
 */
export function dayPage(rows: readonly LogRow[], person: string, house: HouseState): DayPage {
  const names = namesOf(house, person);
  const cardOf = cardsOf(house);
  const lines: DayLine[] = [];
  const first: DayStep[] = [];
  const walks = new Set<string>();
  let before: When | null = null;
  for (const row of rows) {
    if (!row.readable) {
      lines.push(unreadableLine(row, before, house));
      continue;
    }
    const last = before;
    before = row.at;
    if (row.person !== null && row.person !== person) continue;
    const time = timeOfDay(row.at);
    if (row.walk === null) {
      const text = row.event.type === "tablet started" ? started(row, last) : sayFact(row.event, names);
      if (text !== null) lines.push({ seq: row.seq, kind: "note", time, text, steps: [] });
      continue;
    }
    if (walks.has(row.walk)) continue;
    walks.add(row.walk);
    const own = rows.filter((r): r is Extract<LogRow, { readable: true }> => r.readable && r.walk === row.walk && r.person === person);
    lines.push({
      seq: row.seq,
      kind: "walk",
      time,
      text: walkLine({ rows: own, language: names.language, cardOf }).join(" "),
      steps: stepsOf(own, names),
    });
    first.push(...telephoned(own).map((text) => ({ time, text })));
  }
  return { first, lines };
}
