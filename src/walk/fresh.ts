// A walk before its first answer, and a person before the first walk.
import type { Of } from "#events/happened.ts";
import type { Stamp } from "#events/stamp.ts";
import { emptyDay } from "./day.ts";
import type { PersonState, Walk } from "./state.ts";
import type { PenCheck } from "./walk-parts.ts";

/** Nothing taken, nothing open, nothing due. */
export const noWalkYet = {
  nextCard: null,
  doses: [],
  backgroundDoses: [],
  insulinWatch: null,
  lastLow: null,
  day: emptyDay,
  walk: null,
  bell: null,
  mealQuestion: null,
} satisfies Partial<PersonState>;

export const freshPenCheck: PenCheck = {
  again: false,
  pen: null,
  named: false,
  looked: false,
  mixed: false,
  needle: false,
  fitted: null,
  dry: 0,
  primed: false,
};

export function freshWalk(id: string, opened: Of<"walk opened">, at: Stamp): Walk {
  return {
    id,
    kind: opened.kind,
    meal: opened.meal,
    background: opened.background ?? null,
    openedAt: at,
    touchedAt: at,
    left: false,
    wait: null,
    waitDone: null,
    draft: null,
    unitAgreed: null,
    slips: 0,
    taken: null,
    wash: null,
    reading: null,
    readingLeftOut: null,
    his: 0,
    highHeard: false,
    low: null,
    ill: null,
    afterLow: false,
    sugarEaten: [],
    exercise: null,
    lines: [],
    plate: null,
    told: null,
    silent: null,
    telephoned: false,
    ownNumber: null,
    doseHeard: false,
    eatenFirst: false,
    helper: null,
    penCheck: freshPenCheck,
    dial: null,
    dialFirst: null,
    offered: null,
    noSpot: null,
    declined: [],
    place: null,
    cleaned: null,
    skinDry: false,
    injectOpened: null,
    needleAsked: false,
    needleIn: false,
    pressed: false,
    windowUnseen: false,
    injected: null,
    mishap: null,
    mishapsHeard: [],
    putAway: false,
    eat: null,
  };
}
