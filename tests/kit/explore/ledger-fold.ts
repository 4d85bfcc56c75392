// One stored fact into the tests' own account.
import type { Happened } from "#events/happened.ts";
import type { Stamp } from "#events/stamp.ts";
import type { Fact } from "#walk/fold.ts";
import {
  type Account,
  DAY,
  dosesInside,
  doubtTaken,
  freshWalk,
  isLow,
  type Ledger,
  logIsClear,
  voidIn,
  type WalkAccount,
} from "./ledger.ts";
import { backgroundInside, backgroundLogIsClear } from "./ledger-background.ts";
import { callOf, mealOn } from "./ledger-reminders.ts";

/** Default of a blank care field, by the clinical facts: 2 units of priming. */
const PRIME_UNITS = 2;

/** Facts that no answer of the person leads to. */
const UNASKED: readonly Happened["type"][] = [
  "bell not answered",
  "call raised",
  "reading grew old",
  "pen check grew old",
  "dose told",
  "card silent",
  "spot offered",
  "no spot free",
  "inject opened",
  "needle asked about",
];

/** A reading of an ill day before the needle: what was told from another one is told anew. */
const doseOf = (w: WalkAccount): WalkAccount => (w.illOpen && !w.opened ? { ...w, told: null, heard: false, dial: null } : w);

function walkOf(w: WalkAccount, event: Happened, at: Stamp, l: Ledger, a: Account): WalkAccount {
  switch (event.type) {
    case "walk turned to":
      // A half-given number is given anew.
      return { ...w, number: null, needleOpenQuestion: w.opened !== null && w.injected === null };
    case "walk left":
      // Whoever was at the elbow may be gone; a person who injects only with somebody makes the pen ready anew.
      return w.opened || !a.person.helperOnly ? { ...w, helper: null } : { ...w, helper: null, number: null, pen: null, dial: null };
    case "went back":
      return voidIn(w, event.to);
    case "reading grew old":
      return voidIn(w, "reading");
    case "button pressed down":
      return { ...w, needleIn: true };
    case "wait began":
      // Watched after a good reading, a call has been answered.
      if (event.for === "watch") return { ...w, callRaised: false };
      return event.for === "hold" ? { ...w, hold: { at, ms: event.ms } } : w;
    case "number given": {
      const given = { text: event.text, at, turn: l.turn, voice: event.via === "voice", named: event.helper !== null };
      const same = w.number?.slot === event.slot ? w.number : null;
      return { ...w, number: { slot: event.slot, given: [...(same?.given ?? []), given], askedAgain: same?.askedAgain ?? null } };
    }
    case "digits asked again":
      return { ...w, number: w.number ? { ...w.number, askedAgain: l.turn } : null };
    case "number turned down":
      return { ...w, number: null };
    case "taken answered": {
      if (w.background)
        return {
          ...w,
          taken: { how: event.how, clear: backgroundLogIsClear(l, a, w, at), doseInside: backgroundInside(a, w, at, l.trusted).length > 0 },
        };
      const window = a.card?.card.windowMinutes ?? null;
      const inside = window === null || dosesInside(a, window, at, l.trusted).length > 0;
      return { ...w, taken: { how: event.how, clear: logIsClear(l, a, at), doseInside: inside } };
    }
    case "reading taken": {
      const low = isLow(event.glucose, a.card?.card ?? null);
      return {
        ...doseOf(w),
        number: null,
        reading: { glucose: event.glucose, word: null, at: w.number?.given[0]?.at ?? at },
        lowOpen: low,
      };
    }
    case "meter word read":
      return { ...doseOf(w), number: null, reading: { glucose: null, word: event.word, at }, lowOpen: event.word === "LO" || w.lowOpen };
    case "reading left out":
      return { ...w, number: null, readingLeftOut: at };
    case "low began":
      return { ...w, lowOpen: true, lowWithoutMeal: event.because === "cannot eat", number: null, sugars: 0, callRaised: false };
    case "eating":
      return { ...w, lowWithoutMeal: false };
    case "ill began":
      return { ...w, illOpen: true, number: null };
    case "danger signs answered":
    case "cannot test ketones":
    case "ketones read":
      return { ...w, number: null };
    case "ill ended":
      return { ...w, illOpen: false, number: null };
    case "low ended":
      return { ...w, lowOpen: false, afterLow: true };
    case "sugar taken":
      return { ...w, sugars: w.sugars + 1 };
    case "call raised":
      return { ...w, callRaised: true };
    case "exercise answered":
      return { ...w, exercise: event.hard };
    case "plate agreed":
      return { ...w, number: null, grams: event.grams };
    case "dose told":
      return {
        ...w,
        number: null,
        told: event.told,
        heard: false,
        dial: null,
        telephoned: w.telephoned + (event.told.by === "card" ? 0 : 1),
      };
    case "card silent":
      return { ...w, told: null, heard: false, dial: null };
    case "own number given":
      return { ...w, number: null };
    case "dose heard":
      return { ...w, heard: true };
    case "meal eaten first":
      return { ...w, eatenFirst: true };
    case "helper named":
      return { ...w, helper: event.name };
    case "pen picked":
      return { ...w, pen: { id: event.pen, named: false, looked: false, mixed: false, fitted: null, primed: false }, dial: null };
    case "pen name read":
      return { ...w, pen: w.pen && event.fits ? { ...w.pen, named: true } : null };
    case "insulin looked at":
      return { ...w, pen: w.pen && event.look === "as it should be" ? { ...w.pen, looked: true } : null };
    case "insulin mixed":
      return { ...w, pen: w.pen && { ...w.pen, mixed: true } };
    case "needle fitted":
      return { ...w, pen: w.pen && { ...w.pen, fitted: at } };
    case "pen check grew old":
      return { ...w, number: null, pen: null, dial: null };
    case "pen primed":
      return { ...w, pen: w.pen && { ...w.pen, primed: event.stream } };
    case "dose dialled":
      return { ...w, number: null, dial: event.units };
    case "spot offered":
      return { ...w, offered: { spot: event.spot, restDays: event.restDays, fullRest: event.fullRest } };
    case "spot chosen":
      return { ...w, place: event.spot };
    case "inject opened":
      return { ...w, opened: at };
    case "needle asked about":
      return { ...w, needleOpenQuestion: true };
    case "mishap advice heard":
      // The needle may have been in when something went wrong: injecting is not simply offered again.
      return { ...w, needleOpenQuestion: w.opened !== null && w.injected === null && !w.needleIn };
    case "needle question answered":
      // "Not sure" counts as taken, of unknown size.
      return {
        ...w,
        needleOpenQuestion: false,
        needleIn: event.wentIn === "yes",
        injected: event.wentIn === "not sure" ? { units: null, certain: false } : w.injected,
      };
    case "needle did not go in":
      return { ...w, opened: null, hold: null, needleIn: false, dial: null, number: null };
    case "injected":
      return { ...w, number: null, injected: { units: event.units, certain: event.certain } };
    case "pen put away":
      return { ...w, putAway: true };
    default:
      return w;
  }
}

function accountOf(a: Account, event: Happened, at: Stamp, walk: string | null, _l: Ledger): Account {
  switch (event.type) {
    case "person changed":
      return { ...a, person: event.person };
    case "card signed":
      // A told dose names the card it came from; that it is no longer the card in force is for the promises to see.
      // A number half given before it is given anew, but for one that a low waits for.
      if (event.waits) return { ...a, next: { card: event.card, hash: event.cardHash, signature: event.signature } };
      return {
        ...a,
        card: { card: event.card, hash: event.cardHash, signature: event.signature },
        walk: a.walk && !a.walk.opened && !a.walk.lowOpen ? { ...a.walk, number: null } : a.walk,
      };
    case "reminder called":
      return { ...a, reminded: [...a.reminded, callOf(event)] };
    case "mishap opened":
      return event.kind === "too much" || event.kind === "wrong insulin" ? { ...a, watched: [...a.watched, { kind: event.kind, at }] } : a;
    case "insulin watch given over":
      return { ...a, watched: [] };
    case "card began":
      return {
        ...a,
        card: a.next,
        next: null,
        walk: a.walk && !a.walk.opened && !a.walk.lowOpen ? { ...a.walk, number: null } : a.walk,
      };
    case "pen added":
      return { ...a, pens: [...a.pens, { pen: event.pen, openedOn: event.pen.openedOn, used: 0, retired: false }] };
    case "pen opened":
      return { ...a, pens: a.pens.map((p) => (p.pen.id === event.pen ? { ...p, openedOn: event.on } : p)) };
    case "pen retired":
      return { ...a, pens: a.pens.map((p) => (p.pen.id === event.pen ? { ...p, retired: true } : p)) };
    case "pen primed":
      return {
        ...a,
        pens: a.pens.map((p) =>
          p.pen.id === a.walk?.pen?.id ? { ...p, used: p.used + (a.card?.card.care.primeUnits ?? PRIME_UNITS) } : p,
        ),
      };
    case "no-go place marked":
      return { ...a, noGo: [...a.noGo, { ...event.noGo, since: at.wall }] };
    case "no-go place cleared":
      return { ...a, noGo: a.noGo.filter((n) => n.id !== event.id) };
    case "dose told later":
      return {
        ...a,
        ...(event.insulin
          ? {
              background: [
                { walk: null, from: at, ago: event.minutesAgo, units: event.units, insulin: event.insulin.id, hour: null },
                ...a.background,
              ],
            }
          : { doses: [{ walk: null, from: at, ago: event.minutesAgo, units: event.units }, ...a.doses] }),
        walk: a.walk && !a.walk.opened ? { ...a.walk, taken: null, number: a.walk.lowOpen ? a.walk.number : null } : a.walk,
      };
    case "inject opened": {
      if (walk === null || !a.walk) return a;
      const uses = a.walk.place ? [{ spot: a.walk.place, wall: at.wall, walk }, ...a.uses] : a.uses;
      if (a.walk.background) {
        const { insulinId: insulin, at: hour } = a.walk.background;
        return { ...a, uses, background: [{ walk, from: at, ago: 0, units: a.walk.dial, insulin, hour }, ...a.background] };
      }
      return {
        ...a,
        uses,
        doses: [{ walk, from: at, ago: 0, units: a.walk.dial }, ...a.doses],
        bell: a.walk.eatenFirst ? null : { from: at },
      };
    }
    case "injected": {
      const pens = a.pens.map((p) => (p.pen.id === event.pen ? { ...p, used: p.used + (event.units ?? a.walk?.dial ?? 0) } : p));
      if (a.walk?.background) {
        const { insulinId: insulin, at: hour } = a.walk.background;
        const others = a.background.filter((d) => d.walk !== walk);
        return { ...a, pens, background: [{ walk, from: at, ago: 0, units: event.units, insulin, hour }, ...others] };
      }
      return {
        ...a,
        doses: [{ walk, from: at, ago: 0, units: event.units }, ...a.doses.filter((d) => d.walk !== walk)],
        pens,
      };
    }
    case "wait ended": {
      const hold = event.for === "hold" ? a.walk?.hold : null;
      return hold && a.bell ? { ...a, bell: { from: { ...hold.at, wall: hold.at.wall + hold.ms, mono: hold.at.mono + hold.ms } } } : a;
    }
    case "needle did not go in":
      return {
        ...a,
        doses: a.doses.filter((d) => d.walk !== walk),
        background: a.background.filter((d) => d.walk !== walk),
        uses: a.uses.filter((u) => u.walk !== walk),
        bell: a.walk?.background ? a.bell : null,
      };
    case "low began":
    case "sugar taken":
    case "low ended":
      return { ...a, lastLow: at };
    case "eating":
    case "cannot eat":
      return { ...a, bell: null };
    default:
      return a;
  }
}

function withWalk(a: Account, event: Happened, at: Stamp, walk: string | null, l: Ledger): Account {
  if (event.type === "walk opened" && walk !== null)
    return { ...a, walk: freshWalk(walk, event, at), mealsOpened: [...a.mealsOpened, ...mealOn(event.meal, at)] };
  const around = accountOf(a, event, at, walk, l);
  if (!around.walk || around.walk.id !== walk) return around;
  if (event.type === "walk ended") return { ...around, walk: null };
  const next = walkOf(around.walk, event, at, l, a);
  return { ...around, walk: UNASKED.includes(event.type) ? next : { ...next, answeredAt: at } };
}

function recordingSince(l: Ledger, event: Happened, at: Stamp): number | null {
  if (event.type === "household begun") return at.wall;
  if (event.type === "clock doubted") return null;
  if (event.type === "clock agreed" && l.recordingSince === null) return at.wall;
  return l.last && at.wall - l.last.wall > DAY ? at.wall : l.recordingSince;
}

const askNeedles = (people: Ledger["people"]): Ledger["people"] =>
  Object.fromEntries(
    Object.entries(people).map(([id, a]) => [
      id,
      a.walk?.opened && !a.walk.injected ? { ...a, walk: { ...a.walk, needleOpenQuestion: true } } : a,
    ]),
  );

export function account(l: Ledger, fact: Fact): Ledger {
  if (!fact.readable) return { ...l, unreadable: [...l.unreadable, fact.wall], people: doubtTaken(l.people) };
  const { event, at } = fact;
  const away = l.last !== null && at.wall - l.last.wall > DAY;
  const next: Ledger = {
    ...l,
    people: away ? doubtTaken(l.people) : l.people,
    last: at,
    recordingSince: recordingSince(l, event, at),
    unreadable: l.unreadable.map((wall) => wall ?? at.wall),
  };
  switch (event.type) {
    case "person added":
      return {
        ...next,
        people: {
          ...next.people,
          [event.person.id]: {
            person: event.person,
            card: null,
            next: null,
            pens: [],
            noGo: [],
            uses: [],
            doses: [],
            background: [],
            reminded: [],
            watched: [],
            mealsOpened: [],
            lastLow: null,
            walk: null,
            bell: null,
          },
        },
      };
    case "tablet started":
      return { ...next, trusted: false, people: askNeedles(doubtTaken(next.people)) };
    case "clock doubted":
      return { ...next, trusted: false, people: doubtTaken(next.people) };
    case "clock agreed":
      return { ...next, trusted: true };
    default: {
      const person = fact.person === null ? undefined : next.people[fact.person];
      if (!person || fact.person === null) return next;
      return { ...next, people: { ...next.people, [fact.person]: withWalk(person, event, at, fact.walk, next) } };
    }
  }
}
