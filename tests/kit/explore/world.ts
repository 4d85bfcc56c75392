// One household at one moment, and how a move changes it. The engine that decides, offers and folds is a value, so that a fault can be planted in it.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import type { Offer } from "#walk/context.ts";
import { type Decision, decide, type NewFact } from "#walk/decide.ts";
import { type Fact, fold } from "#walk/fold.ts";
import { GUARDS, type Guards } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { emptyHouse, type HouseState } from "#walk/state.ts";
import { beginTurn, emptyLedger, type Ledger } from "./ledger.ts";
import { account } from "./ledger-fold.ts";

export interface Engine {
  decide(house: HouseState, intent: Intent, now: Stamp, walkId: string): Decision;
  offers(house: HouseState, now: Stamp): Offer[];
  fold(house: HouseState, fact: Fact): HouseState;
}

export const engineWith = (guards: Guards): Engine => ({
  decide: (house, intent, now, walkId) => decide(house, intent, now, walkId, guards),
  offers: (house, now) => offers(house, now, guards),
  fold,
});
export const engine: Engine = engineWith(GUARDS);

export type Move =
  | { kind: "want"; intent: Intent }
  /** Both clocks go on, and the app's tick looks at them. */
  | { kind: "pass"; seconds: number }
  /** Somebody sets the wall clock, or the tablet sleeps and only the wall clock goes on. */
  | { kind: "set clock"; seconds: number }
  /** The app starts again; rowLost: one row of the log cannot be read any more, at a known time or not. */
  | { kind: "start again"; afterSeconds: number; rowLost: null | "time known" | "time not known" }
  /** A keeper changes something in the drawer. */
  | { kind: "keeper"; person: string; event: Happened };

export interface World {
  house: HouseState;
  now: Stamp;
  ledger: Ledger;
  /** What is offered now, worked out once. */
  offers: Offer[];
  walks: number;
}

/** One fact with the account before and after it. */
export interface Entry {
  was: Ledger;
  fact: Fact;
  is: Ledger;
}

export interface Turn {
  before: World;
  move: Move;
  decision: Decision;
  entries: Entry[];
  after: World;
}

export const tell = (move: Move): string => {
  switch (move.kind) {
    case "want":
      return JSON.stringify(move.intent);
    case "keeper":
      return `keeper: ${move.event.type} for ${move.person}`;
    default:
      return JSON.stringify(move);
  }
};

const later = (now: Stamp, wallSeconds: number, monoSeconds: number): Stamp => ({
  ...now,
  wall: now.wall + wallSeconds * 1000,
  mono: now.mono + monoSeconds * 1000,
});

function started(now: Stamp, afterSeconds: number): Stamp {
  return { ...now, wall: now.wall + afterSeconds * 1000, mono: 10, boot: `boot-${Number(now.boot.split("-")[1] ?? 0) + 1}` };
}

interface Done {
  now: Stamp;
  decision: Decision;
  facts: Fact[];
}

function carryOut(w: World, move: Move, e: Engine): Done {
  const stamped = (facts: readonly NewFact[], now: Stamp, from: number): Fact[] =>
    facts.map((f, i) => ({ readable: true, seq: from + i + 1, at: now, ...f }));
  const decided = (intent: Intent, now: Stamp): Done => {
    const decision = e.decide(w.house, intent, now, `walk-${w.walks + 1}`);
    return { now, decision, facts: stamped(decision.facts, now, w.house.lastSeq) };
  };
  switch (move.kind) {
    case "want":
      return decided(move.intent, w.now);
    case "pass":
      return decided({ do: "pass time" }, later(w.now, move.seconds, move.seconds));
    case "set clock":
      return decided({ do: "pass time" }, later(w.now, move.seconds, 0));
    case "start again": {
      const now = started(w.now, move.afterSeconds);
      const begun: NewFact[] = [{ person: null, walk: null, event: { type: "tablet started" } }];
      const lost: Fact[] =
        move.rowLost === null
          ? []
          : [{ readable: false, seq: w.house.lastSeq + 1, wall: move.rowLost === "time known" ? w.now.wall : null }];
      return { now, decision: { facts: begun, refusal: null }, facts: [...lost, ...stamped(begun, now, w.house.lastSeq + lost.length)] };
    }
    case "keeper": {
      const kept: NewFact[] = [{ person: move.person, walk: null, event: move.event }];
      return { now: w.now, decision: { facts: kept, refusal: null }, facts: stamped(kept, w.now, w.house.lastSeq) };
    }
  }
}

export function go(before: World, move: Move, e: Engine): Turn {
  const { now, decision, facts } = carryOut(before, move, e);
  const entries: Entry[] = [];
  let ledger = beginTurn(before.ledger, now);
  let house = before.house;
  for (const fact of facts) {
    const is = account(ledger, fact);
    entries.push({ was: ledger, fact, is });
    ledger = is;
    house = e.fold(house, fact);
  }
  const walks = before.walks + (decision.facts.some((f) => f.event.type === "walk opened") ? 1 : 0);
  return { before, move, decision, entries, after: { house, now, ledger, offers: e.offers(house, now), walks } };
}

/** 3 June 2026, 12:00 in a zone five hours behind UTC. */
const NOON = Date.UTC(2026, 5, 3, 17, 0, 0);

/** A household as set up: these facts, then `hours` of quiet, then a start by an entry, so that the log is clear or is not. */
export function setUp(facts: readonly NewFact[], e: Engine, hours: number): World {
  let now: Stamp = { wall: NOON - hours * 3_600_000, mono: 1000, boot: "boot-1", zone: "America/Chicago", offset: -300 };
  let house = emptyHouse;
  let ledger = emptyLedger;
  for (const f of facts) {
    const fact: Fact = { readable: true, seq: house.lastSeq + 1, at: now, ...f };
    ledger = account(ledger, fact);
    house = e.fold(house, fact);
  }
  now = later(now, hours * 3600, hours * 3600);
  return { house, now, ledger, offers: e.offers(house, now), walks: 0 };
}
