// A low: sugar, a wait, a new reading, again, then a call. The number decides, never the feeling (promise 13).
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { type Glucose, grams, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot } from "#events/told.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import { isVeryLow } from "#rules/glucose/classify.ts";
import { elapsed, oldestAge } from "#rules/time/elapsed.ts";
import { type Ctx, happen, type Offer, type Outcome, press, type StepRules } from "#walk/context.ts";
import type { Walk } from "#walk/state.ts";
import { careMinutesMs } from "./care-ms.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";
import { glucoseOf, words } from "./reading.ts";

/** Up to three treatments, then a call (JBDS 01, 4th edition 2020). */
export const MOST_ROUNDS = 3;

export type LowStage = "treat" | "wait" | "recheck" | "number" | "call";

export function lowStage(c: Ctx): LowStage {
  const low = c.walk.low;
  if (!low) return "treat";
  if (low.callRaised) return c.walk.draft ? "number" : "call";
  if (c.walk.draft) return "number";
  if (low.due === "treat") return "treat";
  // In doubt nothing is counted down: the reading says more than the clock.
  return c.sure && recheckLeft(c) > 0 ? "wait" : "recheck";
}

/** Milliseconds until the new reading. 0 where the clocks cannot say: measuring too early frees no dose, and waiting without end may hurt. */
function recheckLeft(c: Ctx): number {
  const { wait } = c.walk;
  const passed = wait?.for === "recheck" ? elapsed(wait.began, c.now, c.sure) : null;
  return wait === null || passed === null ? 0 : Math.max(0, wait.ms - passed);
}

/** Quick sugars in the order they are offered; glucose first. */
export const sugarsOffered = () => sugarFoods().slice(0, 4);

function offers(c: Ctx): Offer[] {
  // Who cannot swallow is given nothing by mouth (general first-aid teaching; ADA patient page).
  const swallows = !c.walk.low?.cannotSwallow;
  const cannot = swallows ? [press("wrong", { do: "cannot swallow" })] : [];
  const sugars = swallows ? sugarsOffered().map((s) => press("choice", { do: "took sugar", food: s.food.id, grams: s.grams })) : [];
  switch (lowStage(c)) {
    case "treat":
      return [...sugars, ...cannot];
    case "wait":
    case "recheck":
      // A new reading is always welcome: feeling worse may not have to wait.
      return [...numberOffers(c, ["recheck after low"]), ...words, ...cannot];
    case "number":
      return numberOffers(c, []);
    case "call":
      return [...sugars, ...numberOffers(c, ["recheck after low"]), ...words, ...cannot, press("stop", { do: "leave" })];
  }
}

/** Our choice, no source: so long may a question about a low stay without any answer before somebody is called. */
const UNANSWERED_MS = 5 * MINUTE;

/** Has nobody answered for too long? The wait for the new reading is not counted; a start of the app begins to count anew. */
export function unansweredLow(walk: Walk, now: Stamp, sure: boolean): boolean {
  if (!walk.low || walk.low.callRaised) return false;
  const since = oldestAge(walk.touchedAt, now, sure) ?? now.mono;
  return since >= UNANSWERED_MS + (walk.wait?.for === "recheck" ? walk.wait.ms : 0);
}

const wait = (ms: number): Happened => ({ type: "wait began", for: "recheck", ms });

function afterRecheck(c: Ctx, stillLow: boolean, glucose: Glucose | null): Happened[] {
  const rounds = c.walk.low?.rounds.length ?? 0;
  if (!stillLow) {
    // A minute after sugar a good number ends no low: it may be the sugar on the fingers, or the same reading a little off.
    const left = recheckLeft(c);
    return left > 0 && !c.walk.low?.callRaised ? [wait(left)] : [{ type: "low ended", rounds }];
  }
  const enough = rounds >= MOST_ROUNDS || (rounds >= 2 && glucose !== null && isVeryLow(glucose));
  return enough ? [{ type: "call raised", why: "still low" }] : [];
}

function accept(c: Ctx, _slot: NumberSlot, text: string): Outcome {
  const glucose = glucoseOf(c, text);
  const stillLow = c.guards.isLow(glucose, c.card);
  const draft = c.walk.draft;
  return happen(
    {
      type: "reading taken",
      glucose,
      source: c.me.person.readsFrom ?? "finger",
      via: draft?.via ?? "touch",
      helper: draft?.helper ?? null,
    },
    ...afterRecheck(c, stillLow, glucose),
  );
}

export const low: StepRules = {
  offers,
  decide(c: Ctx, intent: Intent) {
    switch (intent.do) {
      case "took sugar":
        return happen(
          { type: "sugar taken", food: intent.food, grams: grams(intent.grams) },
          wait(careMinutesMs(c.card, "recheckMinutes")),
        );
      case "cannot swallow":
        return happen({ type: "call raised", why: "cannot swallow" });
      case "read word": {
        const read: Happened = { type: "meter word read", word: intent.word, via: intent.via };
        if (intent.word === "LO") return happen(read, ...afterRecheck(c, true, null));
        // Sugar on the fingers shows HI (fruit on unwashed hands: Diabetes Care 2011): only a second HI, after washing, is believed.
        return happen(read, ...(c.walk.low?.readings.at(-1)?.word === "HI" ? afterRecheck(c, false, null) : [wait(recheckLeft(c))]));
      }
      default:
        return isNumberIntent(intent) ? decideNumber(c, intent, low) : happen();
    }
  },
  accept,
};
