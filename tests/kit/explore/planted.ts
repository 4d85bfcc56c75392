// One fault or more for each promise, planted in the engine and never in the code: a guard taken out, a decision or a fold bent.
// The explorer must meet each of them with a breach of that promise.
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

const guards = (change: Partial<Guards>): Engine => engineWith({ ...GUARDS, ...change });

/** Facts that get lost on the way into the log. */
const losing = (lost: (type: string) => boolean): Engine => ({
  ...engine,
  decide: (house, intent, now, walkId): Decision => {
    const decision = engine.decide(house, intent, now, walkId);
    return { ...decision, facts: decision.facts.filter((f) => !lost(f.event.type)) };
  },
});

/** A fold that forgets something each time. */
const forgetting = (forget: (house: HouseState) => HouseState): Engine => ({
  ...engine,
  fold: (house, fact) => forget(engine.fold(house, fact)),
});

const eachPerson =
  (change: (p: HouseState["people"][string]) => HouseState["people"][string]) =>
  (house: HouseState): HouseState => ({
    ...house,
    people: Object.fromEntries(Object.entries(house.people).map(([id, p]) => [id, change(p)])),
  });

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
  { promise: 4, fault: "earlier doses are forgotten", exploration: "bands", engine: guards({ recentDoses: () => [] }) },
  {
    promise: 5,
    fault: "any number dialled will do",
    exploration: "leaving",
    engine: guards({ dialFits: () => true, whyNotInject: () => null }),
  },
  { promise: 6, fault: "any pen will do", exploration: "pens", engine: guards({ whyNotPen: () => null }) },
  { promise: 7, fault: "the bell is forgotten", exploration: "leaving", engine: forgetting(eachPerson((p) => ({ ...p, bell: null }))) },
  { promise: 8, fault: "a number is used before it was read back", exploration: "by voice", engine: guards({ readsBack: false }) },
  { promise: 8, fault: "digits are never asked for again", exploration: "by voice", engine: guards({ digitsAgain: () => false }) },
  { promise: 9, fault: "the opened needle step is not stored", exploration: "leaving", engine: losing((type) => type === "inject opened") },
  { promise: 10, fault: '"I do not know" goes on to a dose', exploration: "leaving", engine: guards({ unknownEnds: false }) },
  { promise: 10, fault: "the window is always clear", exploration: "leaving", engine: guards({ windowOf: () => ({ is: "clear" }) }) },
  {
    promise: 11,
    fault: "leaving is not recorded",
    exploration: "leaving",
    engine: losing((type) => type === "walk left" || type === "walk ended"),
  },
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
  { promise: 14, fault: "a doubtful clock is believed", exploration: "clock", engine: forgetting((house) => ({ ...house, doubt: null })) },
];
