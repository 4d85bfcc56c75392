// One fact of a walk into the state of that walk. Silent and total: no clock, no refusal.
import type { Happened } from "#events/happened.ts";
import { MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { illBegun, illHeard, illWith, readingInIll } from "./fold-ill.ts";
import { lowBegun, lowInWait, readingInLow, sugarCameUp } from "./fold-low.ts";
import { freshPenCheck } from "./fresh.ts";
import type { Walk } from "./state.ts";
import { withoutAll } from "./voiding.ts";
import type { Draft, PenCheck } from "./walk-parts.ts";

const quiet = { draft: null, wait: null, waitDone: null } as const;

function given(walk: Walk, event: Extract<Happened, { type: "number given" }>, at: Stamp): Draft {
  const first = walk.draft?.first ?? null;
  // Given a second time for its digits, it is as old as the first time.
  const since = first !== null && walk.draft ? walk.draft.at : at;
  return { slot: event.slot, text: event.text, via: event.via, helper: event.helper, first, at: since };
}

/** Common practice, no source: a needle that gives nothing two times is taken for blocked. */
const BLOCKED_AT = 2;

function tested(check: PenCheck, stream: boolean): PenCheck {
  const dry = stream ? check.dry : check.dry + 1;
  return { ...check, primed: stream, dry, needle: check.needle && dry !== BLOCKED_AT };
}

/** Our choice, no source: a meal that was ready so long ago is asked about again. */
const READY_MS = 10 * MINUTE;

function mealNow(walk: Walk, at: Stamp): Walk["plate"] {
  const since = walk.touchedAt;
  const fresh = since.boot === at.boot && at.wall - since.wall < READY_MS;
  return walk.plate && { ...walk.plate, ready: walk.plate.ready && fresh };
}

/** Facts that the clock wrote, and nobody: how long ago the walk stopped does not begin anew with them. */
const UNASKED: readonly Happened["type"][] = ["bell not answered", "call raised", "needle asked about"];

export function foldWalk(before: Walk, event: Happened, at: Stamp): Walk {
  const walk: Walk = UNASKED.includes(event.type) ? before : { ...before, touchedAt: at };
  switch (event.type) {
    case "walk turned to":
      // Time has passed: "taken already?" is looked at again, and an opened needle step is asked about first. A number half given is given anew:
      // the step may be another one by now, and six units must not be agreed to as six grams.
      return walk.injectOpened
        ? { ...walk, left: false, draft: null, needleAsked: !walk.injected }
        : { ...walk, left: false, draft: null, taken: null, plate: mealNow(before, at) };
    case "walk left":
      // Whoever was at the elbow is not known to be there when the walk goes on.
      return { ...walk, left: true, helper: null };
    case "went back":
      return withoutAll(walk, event.voided);
    case "wait began":
      return {
        ...walk,
        wait: { for: event.for, began: at, ms: event.ms },
        waitDone: null,
        low: walk.low && lowInWait(walk.low, event.for),
      };
    case "wait ended":
      return { ...walk, wait: null, waitDone: event.for };
    case "wait jumped":
      return { ...walk, wait: null, waitDone: event.for };
    case "near miss":
      return { ...walk, slips: walk.slips + 1 };
    case "number given":
      // A unit was agreed for one number and for no later one.
      return { ...walk, draft: given(walk, event, at), unitAgreed: walk.draft?.first != null ? walk.unitAgreed : null };
    case "digits asked again":
      return { ...walk, draft: walk.draft ? { ...walk.draft, first: walk.draft.text, text: "" } : null };
    case "number turned down":
      return { ...walk, draft: null, unitAgreed: null };
    case "unit agreed":
      return { ...walk, unitAgreed: event.unit };
    case "taken answered":
      // A wait that runs goes on, and so does a number that is being read back: the question comes again after a restart or a turn to somebody
      // else, in the middle of a drying wait too.
      return { ...walk, taken: { how: event.how } };
    case "hands washed":
      return { ...walk, ...quiet, wash: { how: event.how } };
    case "reading taken": {
      // As old as when it was given, not as when it was agreed to.
      const reading = { glucose: event.glucose, word: null, source: event.source, at: walk.draft?.at ?? at, via: event.via };
      const low = walk.low ? readingInLow(walk.low, event.glucose, null) : null;
      return readingInIll({ ...walk, ...quiet, unitAgreed: null, his: 0, reading, low }, { glucose: event.glucose, word: null });
    }
    case "meter word read": {
      const reading = { glucose: null, word: event.word, source: "finger" as const, at, via: event.via };
      const low = walk.low ? readingInLow(walk.low, null, event.word) : null;
      return readingInIll(
        { ...walk, ...quiet, his: event.word === "HI" ? walk.his + 1 : 0, reading, low },
        { glucose: null, word: event.word },
      );
    }
    case "reading grew old":
      return withoutAll(walk, ["reading", "card", "dial"]);
    case "reading left out":
      return { ...walk, ...quiet, readingLeftOut: at };
    case "high advice heard":
      return { ...walk, highHeard: true };
    case "low began":
      return { ...walk, ...quiet, low: lowBegun(walk.reading, event.because) };
    case "sugar taken":
      return walk.low
        ? {
            ...walk,
            waitDone: null,
            sugarEaten: [...walk.sugarEaten, event.grams],
            low: { ...walk.low, due: "recheck", rounds: [...walk.low.rounds, { food: event.food, grams: event.grams, at }] },
          }
        : walk;
    case "cannot measure":
      return walk.low ? { ...walk, ...quiet, low: { ...walk.low, noMeter: true, due: "treat" } } : illWith(walk, { noMeter: true });
    case "help step done":
      return walk.low ? { ...walk, low: { ...walk.low, helpSteps: event.step } } : walk;
    case "call raised":
      return walk.low
        ? { ...walk, low: { ...walk.low, callRaised: true, cannotSwallow: walk.low.cannotSwallow || event.why === "cannot swallow" } }
        : illWith(walk, { callRaised: true });
    case "ill began":
      return illBegun(walk, event.because);
    case "danger signs answered":
      return illWith(walk, { danger: event.any });
    case "ketones read":
      return illWith(walk, { ketones: event.value, noStrips: false });
    case "cannot test ketones":
      return illWith(walk, { noStrips: true });
    case "ill advice heard":
      return illHeard(walk, event);
    case "ill ended":
      return { ...walk, ...quiet, ill: null };
    case "low ended":
      return { ...walk, ...quiet, low: null, afterLow: true };
    case "exercise answered":
      return { ...walk, exercise: event.hard };
    case "food put on the plate":
      return { ...walk, lines: [...walk.lines, event.line] };
    case "food taken off the plate":
      return { ...walk, lines: walk.lines.filter((_, i) => i !== event.index) };
    case "plate agreed":
      return { ...walk, draft: null, plate: { grams: event.grams, how: event.how, ready: false } };
    case "food is ready":
      return { ...walk, ...quiet, plate: walk.plate ? { ...walk.plate, ready: true } : null };
    case "dose told":
      return { ...walk, ...quiet, told: event.told, silent: null, telephoned: walk.telephoned || event.told.by !== "card" };
    case "card silent":
      return { ...walk, draft: null, silent: { why: event.why, detail: event.detail }, told: null };
    case "own number given":
      return { ...walk, draft: null, ownNumber: { units: event.units, matches: event.matches } };
    case "dose heard":
      return { ...walk, doseHeard: true };
    case "meal eaten first":
      return { ...walk, ...quiet, eatenFirst: true };
    case "helper named":
      return { ...walk, helper: event.name };
    case "pen picked":
      return { ...walk, penCheck: { ...walk.penCheck, pen: event.pen } };
    case "pen name read":
      return { ...walk, penCheck: event.fits ? { ...walk.penCheck, named: true } : freshPenCheck };
    case "insulin looked at":
      return event.look === "as it should be"
        ? { ...walk, penCheck: { ...walk.penCheck, looked: true } }
        : { ...walk, penCheck: freshPenCheck };
    case "insulin mixed":
      return { ...walk, penCheck: { ...walk.penCheck, mixed: true } };
    case "needle fitted":
      return { ...walk, penCheck: { ...walk.penCheck, needle: true, fitted: at } };
    case "pen check grew old":
      return { ...withoutAll(walk, ["pen", "dial", "skin"]), penCheck: { ...freshPenCheck, again: true } };
    case "pen primed":
      return { ...walk, penCheck: tested(walk.penCheck, event.stream) };
    case "dose dialled":
      return { ...walk, ...quiet, dial: { units: event.units, how: event.how }, dialFirst: null };
    case "spot offered":
      return { ...walk, offered: { spot: event.spot, restDays: event.restDays, fullRest: event.fullRest }, noSpot: null };
    case "no spot free":
      return { ...walk, offered: null, noSpot: event.why };
    case "spot declined":
      return { ...walk, offered: null, declined: [...walk.declined, event.spot] };
    case "spot chosen":
      return { ...walk, ...quiet, place: event.spot };
    case "skin cleaned":
      return { ...walk, cleaned: { how: event.how } };
    case "skin dry":
      return { ...walk, ...quiet, skinDry: true };
    case "inject opened":
      return { ...walk, ...quiet, injectOpened: at };
    case "needle asked about":
      return { ...walk, needleAsked: true };
    case "needle question answered":
      return event.wentIn === "yes"
        ? { ...walk, needleAsked: false, needleIn: true, pressed: true, wait: null }
        : event.wentIn === "not sure"
          ? { ...walk, needleAsked: false, mishap: "not sure", injected: { units: null, left: null, certain: false } }
          : { ...walk, needleAsked: false };
    case "button pressed down":
      return { ...walk, needleIn: true, pressed: true };
    case "window not seen":
      return { ...walk, windowUnseen: true };
    case "needle out early":
      return { ...walk, wait: null, waitDone: "hold" };
    case "injected":
      return {
        ...walk,
        ...quiet,
        needleIn: true,
        pressed: true,
        injected: { units: event.units, left: event.left, certain: event.certain },
      };
    case "needle did not go in":
      return {
        ...withoutAll(walk, ["dial", "skin"]),
        taken: null,
        injectOpened: null,
        needleIn: false,
        pressed: false,
        windowUnseen: false,
        needleAsked: false,
      };
    case "mishap opened":
      return { ...walk, draft: null, mishap: event.kind };
    case "mishap advice heard": {
      // "Inject now" never simply comes back: the needle may have been in when it hurt.
      const open = walk.injectOpened !== null && walk.injected === null && !walk.pressed;
      const heard = { ...walk, mishap: null, mishapsHeard: [...walk.mishapsHeard, event.kind], needleAsked: open };
      return event.kind === "vomiting" ? sugarCameUp(heard) : heard;
    }
    case "pen put away":
      return { ...walk, putAway: true };
    case "eating":
      return { ...walk, eat: "eating" };
    case "cannot eat":
      return { ...walk, eat: "cannot eat" };
    default:
      return walk;
  }
}
