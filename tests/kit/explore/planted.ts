// One fault or more for each promise, planted in the engine and never in the code: a guard taken out, a decision or a fold bent.
// The explorer must meet each of them with a breach of that promise.
import type { DoseCard } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import { units } from "#events/quantity.ts";
import type { Decision } from "#walk/decide.ts";
import { GUARDS, type Guards } from "#walk/guards.ts";
import type { HouseState } from "#walk/state.ts";
import { type Engine, engine, engineWith } from "./world.ts";

export interface Planted {
  promise: number;
  fault: string;
  /** Where it shows itself. */
  exploration: string;
  engine: Engine;
}

export const guards = (change: Partial<Guards>): Engine => engineWith({ ...GUARDS, ...change });

/** Facts that get lost on the way into the log. */
export const losing = (lost: (type: string) => boolean): Engine => ({
  ...engine,
  decide: (house, intent, now, walkId): Decision => {
    const decision = engine.decide(house, intent, now, walkId);
    return { ...decision, facts: decision.facts.filter((f) => !lost(f.event.type)) };
  },
});

/** A fold that forgets something each time. */
export const forgetting = (forget: (house: HouseState) => HouseState): Engine => ({
  ...engine,
  fold: (house, fact) => forget(engine.fold(house, fact)),
});

export const eachPerson =
  (change: (p: HouseState["people"][string]) => HouseState["people"][string]) =>
  (house: HouseState): HouseState => ({
    ...house,
    people: Object.fromEntries(Object.entries(house.people).map(([id, p]) => [id, change(p)])),
  });

type Person = HouseState["people"][string];

const withoutNeedleQuestion = (p: Person): Person => ({ ...p, walk: p.walk && { ...p.walk, needleAsked: false } });

function withoutHoles(card: DoseCard): DoseCard {
  const rule = card.meals.breakfast;
  return rule?.kind === "bands" ? { ...card, meals: { ...card.meals, breakfast: { ...rule, edges: "up to the next" } } } : card;
}

/** Facts that are told as others. */
export const instead = (type: string, other: (event: Happened) => Happened | null): Engine => ({
  ...engine,
  decide: (house, intent, now, walkId): Decision => {
    const decision = engine.decide(house, intent, now, walkId);
    return {
      ...decision,
      facts: decision.facts.map((f) => ({ ...f, event: (f.event.type === type ? other(f.event) : null) ?? f.event })),
    };
  },
});

const tenTimesTelephoned: Engine = {
  ...engine,
  decide: (house, intent, now, walkId) => {
    const decision = engine.decide(house, intent, now, walkId);
    const facts = decision.facts.map((f) =>
      f.event.type === "dose told" && f.event.told.by !== "card"
        ? { ...f, event: { ...f.event, told: { ...f.event.told, units: units(f.event.told.units * 10) } } }
        : f,
    );
    return { ...decision, facts };
  },
};

const silenceIsYes: Engine = {
  ...engine,
  decide: (house, intent, now, walkId) => {
    const draft = house.front === null ? null : house.people[house.front]?.walk?.draft;
    return engine.decide(house, intent.do === "pass time" && draft ? { do: "agree number" } : intent, now, walkId);
  },
};

const changesTheStored: Engine = {
  ...engine,
  fold: (house, fact) => {
    const dose = Object.values(house.people)[0]?.doses[0];
    if (dose) dose.units = units(0);
    return engine.fold(house, fact);
  },
};

export const PLANTED: readonly Planted[] = [
  {
    promise: 1,
    fault: "a low is not seen as a low",
    exploration: "readings",
    engine: guards({ isLow: () => false, lookUp: (card, s) => GUARDS.lookUp({ ...card, low: { value: 1, counts: "below" } }, s) }),
  },
  { promise: 1, fault: "a reading never grows old", exploration: "leaving", engine: guards({ readingIsOld: () => false }) },
  {
    promise: 2,
    fault: "a card that has ended is used",
    exploration: "card: ended",
    engine: guards({ lookUp: (card, s) => GUARDS.lookUp({ ...card, validUntil: null }, s) }),
  },
  {
    promise: 3,
    fault: "the largest dose is not looked at",
    exploration: "card: small largest",
    engine: guards({ lookUp: (card, s) => GUARDS.lookUp({ ...card, largestDose: units(99) }, s) }),
  },
  {
    promise: 3,
    fault: "a hole between bands is closed",
    exploration: "bands",
    engine: guards({ lookUp: (card, s) => GUARDS.lookUp(withoutHoles(card), s) }),
  },
  { promise: 4, fault: "earlier doses are forgotten", exploration: "told later", engine: guards({ recentDoses: () => [] }) },
  { promise: 4, fault: "a lost row is no possible dose", exploration: "lost rows", engine: guards({ possibleDoses: () => [] }) },
  {
    promise: 5,
    fault: "any number dialled will do",
    exploration: "leaving",
    engine: guards({ dialFits: () => true, whyNotInject: () => null }),
  },
  { promise: 5, fault: "a telephoned number is told ten times too large", exploration: "telephoned", engine: tenTimesTelephoned },
  {
    promise: 6,
    fault: "earlier spots are forgotten",
    exploration: "little skin",
    engine: forgetting(eachPerson((p) => ({ ...p, uses: [] }))),
  },
  { promise: 6, fault: "any pen will do", exploration: "pens", engine: guards({ whyNotPen: () => null }) },
  { promise: 7, fault: "the bell is forgotten", exploration: "leaving", engine: forgetting(eachPerson((p) => ({ ...p, bell: null }))) },
  {
    promise: 7,
    fault: "the bell counts from the last entry",
    exploration: "leaving",
    engine: forgetting((house) => eachPerson((p) => (p.bell && house.last ? { ...p, bell: { ...p.bell, from: house.last } } : p))(house)),
  },
  { promise: 8, fault: "silence is taken for yes", exploration: "by voice", engine: silenceIsYes },
  { promise: 8, fault: "a number is used before it was read back", exploration: "by voice", engine: guards({ readsBack: false }) },
  { promise: 8, fault: "digits are never asked for again", exploration: "by voice", engine: guards({ digitsAgain: () => false }) },
  { promise: 9, fault: "the opened needle step is not stored", exploration: "leaving", engine: losing((type) => type === "inject opened") },
  { promise: 9, fault: "what is stored is changed", exploration: "leaving", engine: changesTheStored },
  {
    promise: 10,
    fault: "a lost row is forgotten",
    exploration: "lost rows",
    engine: forgetting((house) => ({ ...house, unreadable: [] })),
  },
  { promise: 10, fault: '"I do not know" goes on to a dose', exploration: "leaving", engine: guards({ unknownEnds: false }) },
  { promise: 10, fault: "the window is always clear", exploration: "leaving", engine: guards({ windowOf: () => ({ is: "clear" }) }) },
  {
    promise: 11,
    fault: "leaving is not recorded",
    exploration: "leaving",
    engine: losing((type) => type === "walk left" || type === "walk ended"),
  },
  { promise: 11, fault: "the needle question is forgotten", exploration: "leaving", engine: forgetting(eachPerson(withoutNeedleQuestion)) },
  {
    promise: 12,
    fault: "something is fetched while a walk runs",
    exploration: "leaving",
    engine: {
      ...engine,
      decide: (house, intent, now, walkId) => {
        if (house.front !== null) void fetch("http://127.0.0.1:9/");
        return engine.decide(house, intent, now, walkId);
      },
    },
  },
  { promise: 13, fault: "a low reading begins no low", exploration: "low", engine: losing((type) => type === "low began") },
  {
    promise: 13,
    fault: "one good reading is enough where insulin is in and no meal came",
    exploration: "low after insulin",
    engine: instead("wait began", (e) => (e.type === "wait began" && e.for === "watch" ? { type: "low ended", rounds: 1 } : null)),
  },
  {
    promise: 13,
    fault: "a low without a meter ends by itself",
    exploration: "low",
    engine: instead("cannot measure", () => ({ type: "low ended", rounds: 1 })),
  },
  { promise: 13, fault: "nobody is called", exploration: "low", engine: losing((type) => type === "call raised") },
  {
    promise: 14,
    fault: "a start of the app is no doubt",
    exploration: "with a helper",
    engine: forgetting((house) => (house.doubt === "restart" ? { ...house, doubt: null } : house)),
  },
  { promise: 14, fault: "a doubtful clock is believed", exploration: "clock", engine: forgetting((house) => ({ ...house, doubt: null })) },
];
