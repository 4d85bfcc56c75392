// A walk before its first answer.
import type { MealName } from "#events/card.ts";
import type { Stamp } from "#events/stamp.ts";
import type { PenCheck, Walk } from "./state.ts";

export const freshPenCheck: PenCheck = { again: false, pen: null, looked: false, mixed: false, needle: false, fitted: null, primed: false };

export function freshWalk(id: string, kind: "meal" | "low", meal: MealName | null, at: Stamp): Walk {
  return {
    id,
    kind,
    meal,
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
    highHeard: false,
    low: null,
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
    injected: null,
    mishap: null,
    mishapsHeard: [],
    putAway: false,
    eat: null,
  };
}
