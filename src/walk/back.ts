// Back: to the question before, with everything voided that was built on its answer. Never past an opened needle step.

import type { Happened } from "#events/happened.ts";
import type { StepName } from "#events/happened-walk.ts";
import type { Ctx } from "./context.ts";
import { freshPenCheck } from "./fresh.ts";
import { stepOf, type Walk } from "./state.ts";
import { ORDER, voidedBy } from "./voiding.ts";

/** Has the person answered something inside this step that Back can take out first? */
function begun(walk: Walk, step: StepName): boolean {
  switch (step) {
    case "wash":
      return walk.wait !== null;
    case "plate":
      return walk.plate !== null || walk.exercise !== null;
    case "card":
      return walk.ownNumber !== null;
    case "pen":
      return walk.penCheck !== freshPenCheck && walk.penCheck.pen !== null;
    case "skin":
      return walk.cleaned !== null;
    default:
      return false;
  }
}

/** Walks that are shorter than a meal's leave steps out. */
function belongs(walk: Walk, step: StepName): boolean {
  if (walk.kind === "reading") return step === "wash" || step === "reading";
  return walk.kind !== "background" || step !== "plate";
}

/** Steps that ask the person something; the others answer themselves again and are stepped over. */
function asks(c: Ctx, step: StepName): boolean {
  if (step === "taken") return c.walk.taken !== null && c.walk.taken.how !== "log is clear";
  // A meal that was eaten stays eaten.
  if (step === "eat first") return false;
  return belongs(c.walk, step);
}

/** What Back does here; null when there is nothing to go back to. */
export function backEvents(c: Ctx): Happened[] | null {
  const { walk } = c;
  if (walk.kind === "low" || walk.kind === "mishap" || walk.injectOpened || walk.low || walk.ill || walk.mishap || walk.needleAsked)
    return null;
  if (walk.draft) return [{ type: "number turned down", slot: walk.draft.slot }];
  const step = stepOf(walk);
  if (step === "low" || step === "ill" || step === "mishap" || step === "needle question") return null;
  if (begun(walk, step)) return [{ type: "went back", from: step, to: step, voided: voidedBy(step) }];
  const before = ORDER.slice(0, ORDER.indexOf(step)).filter((s) => asks(c, s));
  const to = before.at(-1);
  return to === undefined ? null : [{ type: "went back", from: step, to, voided: voidedBy(to) }];
}
