// Facts into the state of the house. Replaying the same facts always gives the same state.

import type { Happened } from "#events/happened.ts";
import { DAY } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { withCard, withNextCard } from "./fold-card.ts";
import { foldDay } from "./fold-day.ts";
import { DOSES_KEPT_MS, withInjected, withNeedleOpened, withoutNeedle, withPriming, withToldLater } from "./fold-doses.ts";
import { keepersAfter } from "./fold-keepers.ts";
import { withLumpsAsked, withMark, withoutMark } from "./fold-marks.ts";
import { foldWalk } from "./fold-walk.ts";
import { freshWalk, noWalkYet } from "./fresh.ts";
import { foldInsulinWatch } from "./insulin-watch.ts";
import type { HouseState, PersonState } from "./state.ts";
import { withoutAll } from "./voiding.ts";

/** A stored row as the fold needs it. */
export type Fact =
  | { readable: true; seq: number; at: Stamp; person: string | null; walk: string | null; event: Happened }
  | { readable: false; seq: number; wall: number | null };

type Readable = Extract<Fact, { readable: true }>;

const after = (stamp: Stamp, ms: number): Stamp => ({ ...stamp, wall: stamp.wall + ms, mono: stamp.mono + ms });

/** What an event of a walk does to the person around the walk. */
function foldPerson(person: PersonState, { event, at, seq, walk: walkId }: Readable, sure: boolean): PersonState {
  const walk = person.walk;
  switch (event.type) {
    case "person changed":
      return { ...person, person: event.person };
    case "card signed":
      return withCard(person, event);
    case "card began":
      return person.nextCard?.hash === event.cardHash ? withNextCard(person) : person;
    case "card photographed":
      return { ...person, photos: { ...person.photos, [event.cardHash]: seq } };
    case "pen added":
      return { ...person, pens: [...person.pens, { pen: event.pen, openedOn: event.pen.openedOn, used: 0, retired: false }] };
    case "pen opened":
      return { ...person, pens: person.pens.map((p) => (p.pen.id === event.pen ? { ...p, openedOn: event.on } : p)) };
    case "pen retired":
      return { ...person, pens: person.pens.map((p) => (p.pen.id === event.pen ? { ...p, retired: true } : p)) };
    case "no-go place marked":
      return withMark(person, event, at);
    case "no-go place cleared":
      return withoutMark(person, event, at);
    case "felt for lumps":
      return withLumpsAsked(person, event, at);
    case "dose told later":
      return withToldLater(person, event, at, sure);
    case "walk left":
      // The pen was made ready with a helper, and so it is again.
      return person.person.helperOnly && walk?.id === walkId && !walk.injectOpened
        ? { ...person, walk: withoutAll(walk, ["pen", "dial"]) }
        : person;
    case "pen primed":
      return withPriming(person);
    case "inject opened":
      return withNeedleOpened(person, walkId, at, sure);
    case "injected":
      return withInjected(person, event, walkId, at, sure);
    case "wait ended": {
      // The insulin is in when the hold is over, whenever that is said. Without a counted hold the bell counts from the opening: early, never late.
      const hold = event.for === "hold" ? walk?.wait : null;
      return hold && person.bell?.walk === walkId ? { ...person, bell: { ...person.bell, from: after(hold.began, hold.ms) } } : person;
    }
    case "needle did not go in":
      return withoutNeedle(person, walkId);
    case "eating":
      return { ...person, bell: null, mealQuestion: walkId ? { walk: walkId, from: at } : null };
    case "cannot eat":
      return { ...person, bell: null };
    case "low began":
    case "sugar taken":
    case "low ended":
      return { ...person, lastLow: at };
    case "bell not answered":
      return person.bell ? { ...person, bell: { ...person.bell, unansweredMinutes: event.minutes } } : person;
    case "meal answered":
      return { ...person, mealQuestion: null };
    default:
      return person;
  }
}

function foldPersonAndWalk(person: PersonState, fact: Readable, sure: boolean): PersonState {
  const { event, at } = fact;
  const insulinWatch = foldInsulinWatch(person.insulinWatch, event, at);
  const today = { ...person, day: foldDay(person.day, event, at), insulinWatch };
  if (event.type === "walk opened" && fact.walk) return { ...today, walk: freshWalk(fact.walk, event, at) };
  const around = foldPerson(today, fact, sure);
  if (!around.walk || fact.walk !== around.walk.id) return around;
  const walk = foldWalk(around.walk, event, at);
  if (event.type === "walk ended") {
    return {
      ...around,
      walk: null,
      cleanWalks: event.how === "whole walk" && walk.kind === "meal" && walk.slips === 0 ? person.cleanWalks + 1 : person.cleanWalks,
    };
  }
  return { ...around, walk };
}

/** A day without any entry: a dose may have been taken elsewhere. */
const awaySince = (state: HouseState, at: Stamp): boolean => state.last !== null && at.wall - state.last.wall > DAY;

function clearSince(state: HouseState, event: Happened, at: Stamp): number | null {
  if (event.type === "household begun") return at.wall;
  if (event.type === "clock doubted") return null;
  if (event.type === "clock agreed" && state.clearSince === null) return at.wall;
  if (awaySince(state, at)) return at.wall;
  return state.clearSince;
}

/** A doubtful clock, or a row that may have been a dose: "taken already?" is looked at again by every walk that has not reached the needle (promise 10). */
function askTakenAgain(people: HouseState["people"]): HouseState["people"] {
  return Object.fromEntries(
    Object.entries(people).map(([id, p]) => [id, p.walk && !p.walk.injectOpened ? { ...p, walk: { ...p.walk, taken: null } } : p]),
  );
}

/** After a start of the app, a walk that had opened the injection is asked about before anything else. */
function askAboutNeedles(people: HouseState["people"]): HouseState["people"] {
  return Object.fromEntries(
    Object.entries(people).map(([id, p]) =>
      p.walk?.injectOpened && !p.walk.injected ? [id, { ...p, walk: { ...p.walk, needleAsked: true } }] : [id, p],
    ),
  );
}

function frontAfter(state: HouseState, fact: Readable): string | null {
  switch (fact.event.type) {
    case "walk opened":
    case "walk turned to":
      return fact.person;
    case "walk left":
    case "walk ended":
      return state.front === fact.person ? null : state.front;
    default:
      return state.front;
  }
}

export function fold(state: HouseState, fact: Fact): HouseState {
  if (!fact.readable)
    return { ...state, lastSeq: fact.seq, unreadable: [...state.unreadable, fact.wall], people: askTakenAgain(state.people) };
  const { event, at } = fact;
  const sure = state.doubt === null && event.type !== "clock doubted" && event.type !== "tablet started";
  const base: HouseState = {
    ...state,
    lastSeq: fact.seq,
    last: at,
    clearSince: clearSince(state, event, at),
    front: frontAfter(state, fact),
    people: awaySince(state, at) ? askTakenAgain(state.people) : state.people,
    // A row without a readable time lies before the next readable one.
    unreadable: state.unreadable.map((w) => w ?? at.wall).filter((w) => !sure || at.wall - w < DOSES_KEPT_MS),
  };
  switch (event.type) {
    case "household begun":
      return { ...base, household: event.household };
    case "keeper added":
    case "keeper PIN changed":
    case "recovery code made":
      return { ...base, keepers: keepersAfter(base.keepers, event) };
    case "person added":
      return {
        ...base,
        people: {
          ...base.people,
          [event.person.id]: {
            person: event.person,
            card: null,
            pastCards: [],
            photos: {},
            pens: [],
            noGo: [],
            marksGone: [],
            lumpsAsked: { at: at.wall, found: null },
            uses: [],
            cleanWalks: 0,
            ...noWalkYet,
          },
        },
      };
    case "tablet started":
      return { ...base, doubt: base.household ? "restart" : null, people: askAboutNeedles(askTakenAgain(base.people)) };
    case "clock doubted":
      return { ...base, doubt: event.why, people: askTakenAgain(base.people) };
    case "clock agreed":
      return { ...base, doubt: null };
    default: {
      const person = fact.person === null ? undefined : base.people[fact.person];
      if (!person || fact.person === null) return base;
      return { ...base, people: { ...base.people, [fact.person]: foldPersonAndWalk(person, fact, sure) } };
    }
  }
}
