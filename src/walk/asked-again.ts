// After the needle, a question that nobody answers is asked again by itself: the walk must not stand open with its last words said.
import { MINUTE } from "#events/quantity.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import type { Ctx } from "./context.ts";
import { stepOf } from "./state.ts";

/** Common practice, no source. */
const ASK_AGAIN_MS = 5 * MINUTE;
/** Then the screen keeps it, and the voice lets the room be. */
const MOST_TIMES = 3;

/** How often the question after the needle has been asked again by now; 0 before, and at every other step. */
export function askedAgain(c: Pick<Ctx, "walk" | "now" | "sure">): number {
  const { walk } = c;
  const step = stepOf(walk);
  const waits = step === "put away" || step === "done" || (step === "inject" && walk.pressed && !walk.wait && !walk.draft);
  if (!waits || !walk.injectOpened) return 0;
  const ms = elapsed(walk.touchedAt, c.now, c.sure);
  return ms === null ? MOST_TIMES : Math.min(MOST_TIMES, Math.floor(ms / ASK_AGAIN_MS));
}
