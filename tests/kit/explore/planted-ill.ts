// Faults planted for ill days and for meals that were not eaten whole: each must be met by the promise that it breaks.
import type { Happened } from "#events/happened.ts";
import { eachPerson, forgetting, guards, instead, losing, type Planted } from "./planted.ts";
import { type Engine, engine } from "./world.ts";

/** A fact that says nothing, in the place of one that is lost. */
const nothing: Happened = { type: "help step done", step: 0 };

/** What was told before stays told when an ill day brings another reading. */
const keepsTold: Engine = {
  ...engine,
  fold: (house, fact) => {
    const after = engine.fold(house, fact);
    if (!fact.readable || fact.event.type !== "reading taken" || fact.person === null) return after;
    const before = house.people[fact.person]?.walk;
    const me = after.people[fact.person];
    if (!before?.ill || !before.told || !me?.walk) return after;
    return { ...after, people: { ...after.people, [fact.person]: { ...me, walk: { ...me.walk, told: before.told } } } };
  },
};

export const PLANTED_ILL: readonly Planted[] = [
  { promise: 13, fault: "a danger sign calls nobody", exploration: "ill: blank card", engine: losing((type) => type === "call raised") },
  {
    promise: 13,
    fault: "silence about danger signs calls nobody",
    exploration: "ill: blank card",
    engine: {
      ...engine,
      decide: (...asked) => {
        const decision = engine.decide(...asked);
        return { ...decision, facts: decision.facts.filter(({ event }) => event.type !== "call raised" || event.why !== "no answer") };
      },
    },
  },
  {
    promise: 13,
    fault: "an ill day is forgotten",
    exploration: "ill: blank card",
    engine: forgetting(eachPerson((p) => ({ ...p, walk: p.walk && { ...p.walk, ill: null } }))),
  },
  {
    promise: 13,
    fault: "a low reading on an ill day begins no low",
    exploration: "ill: blank card",
    engine: losing((type) => type === "low began"),
  },
  {
    promise: 8,
    fault: "ketones are used before they were read back",
    exploration: "ill: ketones of blood",
    engine: guards({ readsBack: false }),
  },
  {
    promise: 13,
    fault: "ketones of an emergency are only a sentence",
    exploration: "ill: ketones of blood",
    engine: instead("call raised", (e) => (e.type === "call raised" && e.why === "ketones" ? nothing : null)),
  },
  { promise: 9, fault: "a dose told before the ill day is told on", exploration: "ill: high before a meal", engine: keepsTold },
  {
    promise: 4,
    fault: "still high, the correction is told again inside the spacing",
    exploration: "ill: correction",
    engine: guards({ recentDoses: () => [] }),
  },
  {
    promise: 13,
    fault: "half a meal is only a word",
    exploration: "not eaten whole",
    engine: losing((type) => type === "mishap opened"),
  },
  {
    promise: 13,
    fault: "nobody watches what did not stay down",
    exploration: "not eaten whole",
    engine: instead("low began", (e) => (e.type === "low began" && e.because !== "reading" ? nothing : null)),
  },
  {
    promise: 13,
    fault: "one good reading ends the watch of a meal that did not stay down",
    exploration: "not eaten whole",
    engine: instead("wait began", (e) =>
      e.type === "wait began" && e.for === "watch" && e.ms < 3_600_000 ? { type: "low ended", rounds: 0 } : null,
    ),
  },
  {
    promise: 13,
    fault: "after a start of the app the watch ends by a clock that nobody agreed to",
    exploration: "not eaten whole, after a start",
    engine: forgetting((house) => (house.doubt === "restart" ? { ...house, doubt: null } : house)),
  },
];
