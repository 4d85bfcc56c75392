// Promises 7, 11 and 13: what follows the needle, leaving, and lows.
import type { Stamp } from "#events/stamp.ts";
import { bellNow } from "#walk/bell.ts";
import { type Account, age, isLow, passed, type WalkAccount } from "../ledger.ts";
import type { Turn, World } from "../world.ts";
import { firstBroken, type PromiseCheck, stampOf, wanted } from "./shape.ts";

const MINUTE = 60_000;
/** Three treatments, then a call (JBDS 01, 2020). */
const MOST_ROUNDS = 3;
/** One less where nobody is known to hear a call: our choice. */
const MOST_ROUNDS_UNHEARD = 2;
/** Our own bound: a low that nobody answers for this long has been called, whatever the walk waits for (15 minutes of waiting included). */
const UNANSWERED_AT_MOST = 45 * MINUTE;

/** What the bell must be by the times in the facts. */
function bellDue(a: Account, from: Stamp, w: World): "quiet" | "calls" | "loud" {
  const timing = a.card?.card.timing;
  const ms = w.ledger.trusted ? age(from, w.now, true) : null;
  if (ms === null || ms >= (timing?.latestMinutes ?? 15) * MINUTE) return ms === null ? "calls" : "loud";
  return ms < (timing?.earliestMinutes ?? 0) * MINUTE ? "quiet" : "calls";
}

function bellFault(turn: Turn): string | null {
  const w = turn.after;
  for (const [id, a] of Object.entries(w.ledger.people)) {
    const bell = w.house.people[id]?.bell ?? null;
    if (a.bell === null) {
      if (bell !== null) return "a bell without insulin";
      continue;
    }
    if (bell === null) return "insulin is in and there is no bell";
    const { level } = bellNow(bell, w.now, w.house.doubt === null);
    const due = bellDue(a, a.bell.from, w);
    if (due === "loud" && level !== "loud") return `the bell is ${level} past the latest minute`;
    if (due === "calls" && level === "quiet") return "the bell is quiet when it is due";
    if (due === "quiet" && level !== "quiet") return `the bell is ${level} before the earliest minute`;
    const ticked = turn.move.kind !== "keeper" && turn.move.kind !== "start again";
    // Insulin that goes in later than the step was opened starts the minutes again.
    if (ticked && due === "loud" && bell.unansweredMinutes < 0) return "the silence was not written down";
  }
  return null;
}

const ENDS_BELL: readonly string[] = ["eating", "cannot eat", "needle did not go in", "inject opened", "injected"];

const seventh: PromiseCheck = {
  number: 7,
  says: "After mealtime insulin there is a meal bell until “I am eating” or “I cannot eat”, computed from stored times, so nothing can lose it.",
  broken: (turn) => {
    for (const [id, a] of Object.entries(turn.before.ledger.people)) {
      const ended = a.bell !== null && turn.after.ledger.people[id]?.bell === null;
      if (ended && !turn.decision.facts.some((f) => f.person === id && ENDS_BELL.includes(f.event.type))) return "the bell ended by itself";
    }
    return (
      bellFault(turn) ??
      firstBroken(turn, (s) =>
        s.event.type === "inject opened" && s.w?.told?.timing === "after eating" && !s.w.eatenFirst ? "inject opened before eating" : null,
      )
    );
  },
};

/** Presses that take the walk past an open needle question. */
const PAST_NEEDLE: readonly string[] = ["button is down", "window is at zero", "wait is over", "put away", "eating", "heard dose"];

function leavingFault(turn: Turn): string | null {
  const { after } = turn;
  const presses = after.offers.flatMap((o) => (o.offer === "press" ? [o.intent] : []));
  const front = after.house.front;
  const open = Object.entries(after.ledger.people).filter(([, a]) => a.walk !== null);
  if (front === null) {
    const lost = open.find(([id]) => !presses.some((i) => i.do === "turn to" && i.person === id));
    return lost ? `${lost[0]}'s unfinished walk is not offered again` : null;
  }
  if (!presses.some((i) => i.do === "leave") && after.house.people[front]?.walk) {
    // The one question that the house itself asks may stand alone, as long as leaving is among its answers.
    if (!(after.ledger.people[front]?.walk?.needleOpenQuestion === true && presses.some((i) => i.do === "leave")))
      return "a step that cannot be left";
  }
  const w = after.ledger.people[front]?.walk;
  if (!w?.needleOpenQuestion) return null;
  const past = presses.find((i) => PAST_NEEDLE.includes(i.do));
  if (past) return `"${past.do}" is offered before the needle question was answered`;
  // A low is treated before anything is asked (promise 13); the question is open until then, and judged again when the low is over.
  if (w.lowOpen && !w.lowWithoutMeal) return null;
  return presses.some((i) => i.do === "needle went in") ? null : "the needle question is not asked";
}

const eleventh: PromiseCheck = {
  number: 11,
  says: "Every walk can be left at any step, and leaving is recorded; it is offered again with how long ago it stopped; past step 11 by its own question.",
  broken: (turn) => {
    const front = turn.before.house.front;
    if (wanted(turn)?.do === "leave" && front !== null) {
      if (!turn.decision.facts.some((f) => f.person === front && (f.event.type === "walk left" || f.event.type === "walk ended")))
        return "leaving is not recorded";
      if (turn.after.house.front === front) return "the walk is still in front";
    }
    const inHand = turn.decision.facts.find((f) => {
      const w = f.person === null ? null : turn.before.ledger.people[f.person]?.walk;
      return f.event.type === "walk ended" && f.event.how === "whole walk" && w?.id === f.walk && w?.opened && !w.putAway;
    });
    if (inHand) return "a walk was whole with the needle still on the pen";
    const wrongAgo = Object.entries(turn.after.house.people).find(
      ([id, p]) => p.walk?.left && p.walk.touchedAt.wall !== turn.after.ledger.people[id]?.walk?.answeredAt.wall,
    );
    return wrongAgo ? "how long ago the walk stopped is not what it was" : leavingFault(turn);
  },
};

/** Hours in which most of an insulin works (AAFP 2009: rapid 4 to 5; AAFP 2005: regular 8 to 10); a card that does not say is taken for the slower. */
const MAIN_HOURS: Readonly<Record<string, number>> = { "rapid analogue": 4, regular: 8, premixed: 12, intermediate: 12, "long-acting": 24 };

/** Insulin is in and no meal came: a low that began so ends with food, or with a good reading after the insulin's main action. */
function endedTooEarly(a: Account, w: WalkAccount, at: Stamp, trusted: boolean): boolean {
  // Told later in the kitchen, it is the newest dose of whatever walk that misses its meal.
  const own = w.background ? null : w.opened;
  const from = own ?? a.doses[0]?.from ?? null;
  if (!w.lowWithoutMeal || from === null) return false;
  const since = passed(from, at, trusted);
  const ms = since === null ? null : since + (own ? 0 : (a.doses[0]?.ago ?? 0)) * MINUTE;
  return ms === null || ms < (MAIN_HOURS[a.card?.card.insulin.kind ?? "regular"] ?? 24) * 60 * MINUTE;
}

/** Nothing of a dose happens while a low is open. */
const NOT_IN_A_LOW: readonly string[] = ["plate agreed", "dose told", "dose heard", "dose dialled", "inject opened", "food is ready"];

function lowStateFault(turn: Turn): string | null {
  for (const [id, a] of Object.entries(turn.after.ledger.people)) {
    const w = a.walk;
    if (!w?.lowOpen) continue;
    if (!turn.after.house.people[id]?.walk?.low) return "a low is not looked after";
    const silent = passed(w.answeredAt, turn.after.now, turn.after.ledger.trusted);
    const ticked = turn.move.kind === "pass" || turn.move.kind === "set clock";
    if (ticked && silent !== null && silent > UNANSWERED_AT_MOST && !w.callRaised) return "nobody answers in a low and nobody is called";
  }
  return null;
}

const thirteenth: PromiseCheck = {
  number: 13,
  says: "A low needs no judgement of how the person feels: the number decides; a confused answer or none goes to the loud call.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      const w = s.w;
      if (!w) return null;
      if (w.lowOpen && NOT_IN_A_LOW.includes(s.event.type)) return `${s.event.type} in a low`;
      if (s.event.type === "walk ended" && w.lowOpen) return "a walk ended in a low";
      if (s.event.type === "low ended" && w.reading?.glucose && isLow(w.reading.glucose, s.a.card?.card ?? null))
        return "a low ended on a low reading";
      if (s.event.type === "low ended" && (w.reading === null || w.reading.word === "LO")) return "a low ended without a reading";
      if (s.event.type === "low ended" && w.lowOpen && w.reading?.word !== "HI") return "a low ended without a new reading";
      if (s.event.type === "low ended" && endedTooEarly(s.a, w, stampOf(s), s.entry.was.trusted))
        return "a low ended while insulin works and no meal came";
      const called = turn.decision.facts.some((f) => f.event.type === "call raised") || w.callRaised;
      const lowAgain =
        (s.event.type === "reading taken" && isLow(s.event.glucose, s.a.card?.card ?? null)) ||
        (s.event.type === "meter word read" && s.event.word === "LO");
      const most = turn.before.house.household?.hearer ? MOST_ROUNDS : MOST_ROUNDS_UNHEARD;
      if (lowAgain && w.sugars >= most && !called) return `still low after ${w.sugars} treatments and nobody is called`;
      return null;
    }) ??
    (wanted(turn)?.do === "cannot swallow" && !turn.decision.facts.some((f) => f.event.type === "call raised")
      ? "cannot swallow and nobody is called"
      : null) ??
    swallowFault(turn) ??
    lowStateFault(turn),
};

/** Who cannot swallow is given nothing by mouth (facts, oracle O14). */
function swallowFault(turn: Turn): string | null {
  if (wanted(turn)?.do !== "cannot swallow") return null;
  const { after } = turn;
  return after.offers.some((o) => o.offer === "press" && o.intent.do === "took sugar")
    ? "sugar is offered to somebody who cannot swallow"
    : null;
}

export const afterPromises = [seventh, eleventh, thirteenth];
