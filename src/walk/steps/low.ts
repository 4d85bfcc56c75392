// A low: sugar, a wait, a new reading, again, then a call. The number decides, never the feeling (promise 13).
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { grams, MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot } from "#events/told.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import { isVeryLow } from "#rules/glucose/classify.ts";
import { elapsed, oldestAge } from "#rules/time/elapsed.ts";
import { isHeard } from "#rules/time/house-hours.ts";
import { type Ctx, happen, type Offer, type Outcome, press, type StepRules } from "#walk/context.ts";
import type { Walk } from "#walk/state.ts";
import { careMinutesMs, careNumber } from "./care-ms.ts";
import { helpStepNow } from "./help-steps.ts";
import { keepsWatch, missesMeal, watchAgain } from "./no-meal.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";
import { glucoseOf, words } from "./reading.ts";

/** Up to three treatments, then a call (JBDS 01, 4th edition 2020). */
export const MOST_ROUNDS = 3;
/** So many where the reading is very low, or where there is no meter to tell. Our choice, no source. */
const FEWER_ROUNDS = 2;

export type LowStage = "treat" | "wait" | "clock" | "watch" | "recheck" | "number" | "help" | "call";

export function lowStage(c: Ctx): LowStage {
  const { low, wait } = c.walk;
  if (!low) return "treat";
  if (c.walk.draft) return "number";
  if (low.cannotSwallow) return "help";
  if (low.callRaised) return "call";
  if (low.due === "treat") return "treat";
  if (wait?.for === "watch") return watchLeft(c) <= 0 ? "recheck" : asksClock(c) ? "clock" : "watch";
  // In doubt nothing is counted down: the reading says more than the clock.
  return c.sure && sugarLeft(c) > 0 ? "wait" : "recheck";
}

/** Milliseconds that the sugar still needs. 0 where the clocks cannot say: measuring too early frees no dose, and waiting without end may hurt. */
function sugarLeft(c: Ctx): number {
  const { wait } = c.walk;
  const passed = wait?.for === "recheck" ? elapsed(wait.began, c.now, c.sure) : null;
  return wait === null || passed === null ? 0 : Math.max(0, wait.ms - passed);
}

/** Counted in doubt too, at its worst: a watch that asks at once after each good reading would be given up. */
function watchLeft(c: Ctx): number {
  const { wait } = c.walk;
  const passed = wait ? oldestAge(wait.began, c.now, c.sure) : null;
  return wait === null || passed === null ? 0 : Math.max(0, wait.ms - passed);
}

/**
 * With a clock in doubt nobody knows how long the insulin has been in, and the watch would end with food alone (promise 14). So day and time are
 * asked, after a good reading and never before: a number that needs sugar waits for no question. Who said that they are wrong is not asked again.
 */
const asksClock = (c: Ctx): boolean => !c.sure && missesMeal(c.walk) && c.house.doubt !== "the person said no";

/** Somebody in a low may be drowsy, and choke on it (general first-aid teaching). */
const NEVER: readonly string[] = ["candy-hard"];

/**
 * Quick sugars in the order they are offered, glucose first, without those that the clinic bars. Glucose is offered where all are barred.
 * target: grams of one treatment by the card; left out: 15.
 */
export function sugarsOffered(leftOut: readonly string[] = [], target?: number): ReturnType<typeof sugarFoods> {
  const all = sugarFoods(target).filter((sugar) => !NEVER.includes(sugar.id));
  const may = all.filter((sugar) => !leftOut.includes(sugar.id));
  return (may.length > 0 ? may : all).slice(0, 4);
}

function offers(c: Ctx): Offer[] {
  const { low } = c.walk;
  // Who cannot swallow is given nothing by mouth (general first-aid teaching; ADA patient page).
  const cannot = low?.cannotSwallow ? [] : [press("wrong", { do: "cannot swallow" })];
  const sugars = sugarsOffered(c.me.person.leftOutSugars, careNumber(c.card, "treatGrams")).map((s) =>
    press("choice", { do: "took sugar", food: s.food.id, grams: s.grams }),
  );
  // A new reading is always welcome: feeling worse may not have to wait.
  const reads = [...numberOffers(c, ["recheck after low"]), ...words];
  const ate = missesMeal(c.walk) ? [press("choice", { do: "eating" })] : [];
  switch (lowStage(c)) {
    case "treat":
      return [...sugars, ...cannot];
    case "clock":
      return [press("main", { do: "agree clock" }), press("no", { do: "doubt clock" }), ...ate, ...cannot];
    case "wait":
    case "watch":
      return [...reads, ...ate, ...cannot];
    case "recheck":
      return [...reads, press("choice", { do: "no meter" }), ...ate, ...cannot];
    case "number":
      return numberOffers(c, []);
    case "help":
      return [...(helpStepNow(c).isLast ? [] : [press("main", { do: "help step done" })]), ...reads, press("stop", { do: "leave" })];
    case "call":
      return [...sugars, ...reads, ...cannot, press("stop", { do: "leave" })];
  }
}

/** Our choice, no source: so long may a question about a low stay without any answer before somebody is called. */
const UNANSWERED_MS = 5 * MINUTE;

/** Has nobody answered for too long? The wait for the new reading is not counted; a start of the app begins to count anew. */
export function unansweredLow(walk: Walk, now: Stamp, sure: boolean): boolean {
  if (!walk.low || walk.low.callRaised) return false;
  const since = oldestAge(walk.touchedAt, now, sure) ?? now.mono;
  // The question about danger signs stands before a watch, and is answered at once or not at all.
  const asked = walk.ill?.feelsIll === true && walk.ill.danger === null && walk.wait?.for === "watch";
  return since >= UNANSWERED_MS + (!asked && (walk.wait?.for === "recheck" || walk.wait?.for === "watch") ? walk.wait.ms : 0);
}

const wait = (ms: number): Happened => ({ type: "wait began", for: "recheck", ms });

const ended = (c: Ctx): Happened => ({ type: "low ended", rounds: c.walk.low?.rounds.length ?? 0 });

/** Treatments that may fail before somebody is called: one less below 54 mg/dL (3.0), and one less where nobody can hear a call. */
function roundsBeforeCall(c: Ctx, veryLow: boolean): number {
  const heard = isHeard(c.house.household, c.minuteOfDay);
  return (heard ? MOST_ROUNDS : FEWER_ROUNDS) - (veryLow ? 1 : 0);
}

function afterRecheck(c: Ctx, stillLow: boolean, veryLow: boolean): Happened[] {
  const rounds = c.walk.low?.rounds.length ?? 0;
  if (!stillLow) {
    // A minute after sugar a good number ends no low: it may be the sugar on the fingers, or the same reading a little off.
    const left = sugarLeft(c);
    if (left > 0 && !c.walk.low?.callRaised) return [wait(left)];
    return keepsWatch(c) ? [watchAgain(c)] : [ended(c)];
  }
  const enough = rounds >= roundsBeforeCall(c, veryLow);
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
    ...afterRecheck(c, stillLow, isVeryLow(glucose)),
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
      case "help step done":
        return happen({ type: "help step done", step: helpStepNow(c).done + 1 });
      case "no meter": {
        // How the person feels decides nothing (promise 13): sugar once more, then somebody is called.
        const enough = (c.walk.low?.rounds.length ?? 0) >= FEWER_ROUNDS;
        return happen({ type: "cannot measure" }, ...(enough ? [{ type: "call raised" as const, why: "no meter" as const }] : []));
      }
      case "eating":
        return happen({ type: "eating" }, ...(lowStage(c) === "watch" || lowStage(c) === "clock" ? [ended(c)] : []));
      case "read word": {
        const read: Happened = { type: "meter word read", word: intent.word, via: intent.via };
        // Meters show LO below about 20 mg/dL (1.1 mmol/L).
        if (intent.word === "LO") return happen(read, ...afterRecheck(c, true, true));
        // Sugar on the fingers shows HI (fruit on unwashed hands: Diabetes Care 2011): only a second HI, after washing, is believed.
        return happen(read, ...(c.walk.low?.readings.at(-1)?.word === "HI" ? afterRecheck(c, false, false) : [wait(sugarLeft(c))]));
      }
      default:
        return isNumberIntent(intent) ? decideNumber(c, intent, low) : happen();
    }
  },
  accept,
};
