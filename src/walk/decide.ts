// An intent into facts or a refusal. Pure: the moment and a fresh walk id arrive as values.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import { checkUnits } from "#rules/pen/units.ts";
import { clockJump } from "#rules/time/clock-jump.ts";
import { compareDates, localParts } from "#rules/time/local.ts";
import { backEvents } from "./back.ts";
import { silenceDue } from "./bell.ts";
import { contextOf, type Outcome } from "./context.ts";
import { type Fact, fold } from "./fold.ts";
import { GUARDS, type Guards } from "./guards.ts";
import { lumpEvents } from "./lump-question.ts";
import { mealAnswered } from "./meal-answer.ts";
import { clockQuestion, fits, frontPerson, offers } from "./offers.ts";
import { openingFacts, toldLater } from "./openings.ts";
import type { Refusal } from "./refusal.ts";
import { reminderAnswered, reminderFacts } from "./reminders.ts";
import { type HouseState, stepOf } from "./state.ts";
import { unansweredIll } from "./steps/ill.ts";
import { standsAtNeedle } from "./steps/inject.ts";
import { unansweredLow } from "./steps/low.ts";
import { report } from "./steps/mishap.ts";
import { oldNeedle } from "./steps/old-needle.ts";
import { STEPS } from "./steps.ts";

/** A fact that is not stored yet: whose it is and of which walk. */
export interface NewFact {
  person: string | null;
  walk: string | null;
  event: Happened;
}

export interface Decision {
  facts: NewFact[];
  refusal: Refusal | null;
}

/** More arrivals than this in a row would be a circle: a defect. */
const MOST_ARRIVALS = 12;

function foldNew(house: HouseState, facts: readonly NewFact[], now: Stamp): HouseState {
  return facts.reduce(
    (state, f): HouseState => fold(state, { readable: true, seq: state.lastSeq + 1, at: now, ...f } satisfies Fact),
    house,
  );
}

/** What the clocks themselves say, before anything else is decided (promise 14). */
function clockFacts(house: HouseState, now: Stamp): NewFact[] {
  // Looked at in doubt too: a clock that is set after a start leaves a gap in the log, however it is agreed to afterwards.
  if (!house.last) return [];
  const jump = clockJump(house.last, now);
  return jump === null || jump === "restart" ? [] : [{ person: null, walk: null, event: { type: "clock doubted", why: jump } }];
}

/** The day of a card that was signed ahead has come. On a day that nobody knows the card before it stays, and tells nothing. */
function cardFacts(house: HouseState, now: Stamp): NewFact[] {
  if (house.doubt !== null) return [];
  const today = localParts(now.wall, now.offset).date;
  return Object.values(house.people).flatMap(({ person, nextCard }) =>
    nextCard && compareDates(today, nextCard.card.validFrom) >= 0
      ? [{ person: person.id, walk: null, event: { type: "card began" as const, cardHash: nextCard.hash } }]
      : [],
  );
}

function bellFacts(house: HouseState, now: Stamp): NewFact[] {
  return Object.values(house.people).flatMap((p) => {
    const minutes = p.bell ? silenceDue(p.bell, now, house.doubt === null) : null;
    return p.bell && minutes !== null
      ? [{ person: p.person.id, walk: p.bell.walk, event: { type: "bell not answered" as const, minutes } }]
      : [];
  });
}

/** A low that nobody answers goes to the loud call (promise 13), and so does the question about danger signs. */
function lowFacts(house: HouseState, now: Stamp): NewFact[] {
  return Object.values(house.people).flatMap((p) =>
    p.walk && (unansweredLow(p.walk, now, house.doubt === null) || unansweredIll(p.walk, now, house.doubt === null))
      ? [{ person: p.person.id, walk: p.walk.id, event: { type: "call raised" as const, why: "no answer" as const } }]
      : [],
  );
}

/** "Inject now" does not stand for long: whoever comes back to it is asked first whether the needle went in. */
function needleFacts(house: HouseState, now: Stamp): NewFact[] {
  const me = frontPerson(house);
  return me?.walk && standsAtNeedle(me.walk, now, house.doubt === null)
    ? [{ person: me.person.id, walk: me.walk.id, event: { type: "needle asked about" } }]
    : [];
}

/** Facts that a step stores on arriving, before anything of it is shown or said. */
function arrivals(house: HouseState, now: Stamp, guards: Guards): NewFact[] {
  const facts: NewFact[] = [];
  let state = house;
  for (let i = 0; i < MOST_ARRIVALS; i++) {
    const me = frontPerson(state);
    if (!me?.walk || clockQuestion(state)) return facts;
    const { id } = me.walk;
    const c = contextOf(state, me, me.walk, now, guards);
    const own = STEPS[stepOf(me.walk)].arrive?.(c) ?? [];
    const old = oldNeedle(c);
    // Needle and reading can grow old together; what else the step would store waits for the pen.
    const events = old.length > 0 ? [...old, ...own.filter((event) => GROWN_OLD.includes(event.type))] : own;
    if (events.length === 0) return facts;
    const fresh = events.map((event) => ({ person: me.person.id, walk: id, event }));
    facts.push(...fresh);
    state = foldNew(state, fresh, now);
  }
  throw new Error("the walk arrives in a circle");
}

const GROWN_OLD: readonly Happened["type"][] = ["reading grew old", "pen check grew old"];

/** Time alone takes nothing further but this: a dose must not stay on the screen once its reading is old (promise 1), nor a pen made ready long ago. */
function grownOld(house: HouseState, now: Stamp, guards: Guards): NewFact[] {
  const facts = arrivals(house, now, guards);
  const other = facts.findIndex((f) => !GROWN_OLD.includes(f.event.type));
  return other < 0 ? facts : facts.slice(0, other);
}

function walkOutcome(house: HouseState, intent: Intent, now: Stamp, guards: Guards): Outcome {
  const me = frontPerson(house);
  if (!me?.walk) return { events: [], refusal: { no: "not offered here" } };
  const c = contextOf(house, me, me.walk, now, guards);
  switch (intent.do) {
    case "leave": {
      // A walk that came to a stop without a dose is over; any other is offered again.
      const over = me.walk.silent !== null && !me.walk.injectOpened;
      return {
        events: [
          over ? { type: "walk ended", how: "no dose" } : { type: "walk left", step: stepOf(me.walk), why: "stopped by the person" },
        ],
      };
    }
    case "back":
      return { events: backEvents(c) ?? [] };
    case "report":
      return report(c, intent.mishap);
    default:
      return STEPS[stepOf(me.walk)].decide(c, intent);
  }
}

/** Longer ago than this a dose told later plays no part, and the number is a slip. */
const MOST_MINUTES_AGO = 2 * 24 * 60;

/** Why a dose told later cannot be: a number that no pen shows, or a time that is none. */
function whyNotLater(intent: Extract<Intent, { do: "tell a dose later" }>): Refusal | null {
  const { units, minutesAgo } = intent;
  const checked = units === null ? null : checkUnits(String(units), "0.5");
  if (checked && !checked.ok) return { no: "units", why: checked.why, text: String(units) };
  if (minutesAgo !== null && !(minutesAgo >= 0 && minutesAgo <= MOST_MINUTES_AGO))
    return { no: "units", why: "not a time ago", text: String(minutesAgo) };
  return null;
}

/** Intents of the kitchen screen and of the clock; null when the intent belongs to the walk in front. */
function houseFacts(house: HouseState, intent: Intent, walkId: string): NewFact[] | null {
  const own = (person: string, walk: string | null, event: Happened): NewFact => ({ person, walk, event });
  switch (intent.do) {
    case "agree clock":
      return [{ person: null, walk: null, event: { type: "clock agreed" } }];
    case "doubt clock":
      return [{ person: null, walk: null, event: { type: "clock doubted", why: "the person said no" } }];
    case "answer meal":
      return mealAnswered(house, intent.person, intent.ate, walkId);
    case "tell a dose later":
      return [own(intent.person, null, toldLater(house.people[intent.person], intent))];
    case "answer reminder":
      return [own(intent.person, null, reminderAnswered(intent))];
    case "doctor watches":
      return [own(intent.person, null, { type: "insulin watch given over" })];
    case "feel for lumps":
    case "mark lump":
    case "lump is gone":
      return lumpEvents(intent, walkId).map((event) => own(intent.person, null, event));
    default:
      return openingFacts(house, intent, walkId);
  }
}

/**
 * What happens when this is wanted at this moment. Facts are in the order they are to be stored; nothing was stored yet.
 * An intent that is not on offer changes nothing.
 */
export function decide(house: HouseState, intent: Intent, now: Stamp, walkId: string, guards: Guards = GUARDS): Decision {
  const clock = clockFacts(house, now);
  const sure = foldNew(house, clock, now);
  const cards = cardFacts(sure, now);
  const base = foldNew(sure, cards, now);
  const unanswered = [...bellFacts(base, now), ...lowFacts(base, now), ...needleFacts(base, now)];
  const state = foldNew(base, unanswered, now);
  const before = [...clock, ...cards, ...unanswered];
  if (!fits(offers(state, now, guards), intent)) return { facts: before, refusal: { no: "not offered here" } };

  const wrong = intent.do === "tell a dose later" ? whyNotLater(intent) : null;
  if (wrong) return { facts: before, refusal: wrong };
  // Time alone calls: an answer that comes late is no reason to be reminded at that moment.
  const facts = intent.do === "pass time" ? reminderFacts(state, now) : houseFacts(state, intent, walkId);
  if (facts) {
    const after = foldNew(state, facts, now);
    return {
      facts: [...before, ...facts, ...(intent.do === "pass time" ? grownOld(after, now, guards) : arrivals(after, now, guards))],
      refusal: null,
    };
  }
  const me = frontPerson(state);
  const outcome = walkOutcome(state, intent, now, guards);
  const own = outcome.events.map((event) => ({ person: me?.person.id ?? null, walk: me?.walk?.id ?? null, event }));
  const after = foldNew(state, own, now);
  return { facts: [...before, ...own, ...arrivals(after, now, guards)], refusal: outcome.refusal ?? null };
}
