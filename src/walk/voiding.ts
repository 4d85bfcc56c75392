// Which later answers used an earlier one. Changing an answer voids every answer that was built on it.

import type { StepName } from "#events/happened-walk.ts";
import { freshPenCheck } from "./fresh.ts";
import type { Walk } from "./state.ts";

/** The steps in the order of the walk. */
export const ORDER: readonly StepName[] = [
  "taken",
  "wash",
  "reading",
  "plate",
  "card",
  "eat first",
  "pen",
  "dial",
  "place",
  "skin",
  "inject",
  "put away",
  "eat",
  "done",
];

/** Changing the answer on the left voids the answers on the right. The number dialled was checked against the dose and with the pen. */
export const USED_BY: Readonly<Record<StepName, readonly StepName[]>> = {
  taken: [],
  wash: [],
  reading: ["card", "dial"],
  plate: ["card", "dial"],
  card: ["dial"],
  "eat first": [],
  pen: ["dial"],
  dial: [],
  place: ["skin"],
  skin: [],
  inject: [],
  "put away": [],
  eat: [],
  done: [],
};

/** The step itself and everything that used it, in walk order. */
export function voidedBy(step: StepName): StepName[] {
  const all = new Set<StepName>([step]);
  for (const later of USED_BY[step]) for (const s of voidedBy(later)) all.add(s);
  return ORDER.filter((s) => all.has(s));
}

/** The walk with one answer taken out. */
export function without(walk: Walk, step: StepName): Walk {
  switch (step) {
    case "taken":
      return { ...walk, taken: null };
    case "wash":
      return { ...walk, wash: null };
    case "reading":
      return { ...walk, reading: null, readingLeftOut: null, unitAgreed: null, highHeard: false };
    case "plate":
      return { ...walk, plate: null, exercise: null };
    case "card":
      // telephoned stays: a caller's number holds once for a walk (promise 5).
      return { ...walk, told: null, silent: null, ownNumber: null, doseHeard: false };
    case "eat first":
      return walk;
    case "pen":
      return { ...walk, penCheck: freshPenCheck };
    case "dial":
      return { ...walk, dial: null, dialFirst: null };
    case "place":
      return { ...walk, place: null, offered: null, noSpot: null };
    case "skin":
      return { ...walk, cleaned: null, skinDry: false };
    case "inject":
    case "put away":
    case "eat":
    case "done":
      return walk;
    default:
      return step satisfies never;
  }
}

/** The walk with all these answers taken out, and nothing half-said left over. */
export function withoutAll(walk: Walk, steps: readonly StepName[]): Walk {
  return steps.reduce(without, { ...walk, draft: null, wait: null, waitDone: null });
}
