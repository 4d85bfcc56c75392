// Step 11: the needle. The opening is stored before it is shown; from then on the dose counts as taken until somebody says no.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { MINUTE, type Units, units } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot } from "#events/told.ts";
import { whyNot } from "#rules/body/limits.ts";
import { siteCode } from "#rules/body/site-code.ts";
import { oldestAge } from "#rules/time/elapsed.ts";
import { type Ctx, happen, type Offer, type Outcome, press, refuse, type StepRules, waitOver } from "#walk/context.ts";
import { insulinOf } from "#walk/insulin.ts";
import { stepOf, type Walk } from "#walk/state.ts";
import { careMs } from "./care-ms.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";
import { oldCard } from "./old-card.ts";
import { oldReading } from "./old-reading.ts";
import { penStillFits } from "./pen.ts";
import { spotQuestion } from "./place.ts";

/** "window": which number it shows is asked openly, since whoever does not look says yes to "is it at zero?". "feel": the window is not seen. */
export type InjectStage = "press" | "hold" | "held" | "window" | "feel" | "number";

export function injectStage(c: Ctx): InjectStage {
  if (c.walk.draft) return "number";
  if (!c.walk.pressed) return "press";
  if (c.walk.wait) return waitOver(c.walk, c.now, c.sure) ? "held" : "hold";
  return seesWindow(c) ? "window" : "feel";
}

/** Whoever dials by clicks alone does not see the window either. */
export const seesWindow = (c: Ctx): boolean => !c.walk.windowUnseen && c.me.person.dialBy !== "counts twice";

/** Our choice, no source: longer than shaky hands need to put the needle in and press. */
const AT_NEEDLE_MS = 5 * MINUTE;

/** Was the needle step opened so long ago, without any answer, that the person may have injected and forgotten to say so? */
export function standsAtNeedle(walk: Walk, now: Stamp, sure: boolean): boolean {
  if (!walk.injectOpened || stepOf(walk) !== "inject" || walk.pressed) return false;
  const ms = oldestAge(walk.injectOpened, now, sure);
  return ms === null || ms >= AT_NEEDLE_MS;
}

const wrongs: Offer[] = (["nothing came out", "button too stiff", "it hurt or bled"] as const).map((mishap) =>
  press("wrong", { do: "report", mishap }),
);

function offers(c: Ctx): Offer[] {
  switch (injectStage(c)) {
    case "press":
      return [press("main", { do: "button is down" }), ...wrongs];
    case "hold":
      return [press("no", { do: "needle came out early" })];
    case "held":
      return [press("main", { do: "wait is over" })];
    case "window":
      return [
        press("choice", { do: "window is at zero" }),
        press("choice", { do: "window not seen" }),
        ...numberOffers(c, ["left in window"]),
        ...wrongs,
      ];
    // The button of a pen goes down flat with the last unit, and stands out by what is left (common practice, no source).
    case "feel":
      return [
        press("choice", { do: "button feels", how: "flat" }),
        press("choice", { do: "button feels", how: "standing out" }),
        press("choice", { do: "button feels", how: "not sure" }),
        ...wrongs,
      ];
    case "number":
      return numberOffers(c, []);
  }
}

function done(c: Ctx, delivered: Units | null, left: Units | null, certain: boolean, known?: "read" | "felt"): Happened {
  return {
    type: "injected",
    units: delivered,
    left,
    insulinId: insulinOf(c).id,
    pen: c.walk.penCheck.pen,
    spot: c.walk.place,
    ...(c.walk.place ? { code: siteCode(c.walk.place) } : {}),
    certain,
    ...(known ? { known } : {}),
  };
}

/** Delivered = dialled minus what the window still shows; never topped up. */
function accept(c: Ctx, _slot: NumberSlot, text: string): Outcome {
  const left = units(Number(text));
  const dialled = c.walk.dial?.units ?? units(0);
  if (left > dialled)
    return refuse({ no: "window shows more than was dialled", left, dialled }, { type: "number turned down", slot: "left in window" });
  if (left === 0) return happen(done(c, dialled, units(0), true, "read"));
  const delivered = units(Math.round((dialled - left) * 10) / 10);
  return happen(done(c, delivered, left, true, "read"), { type: "mishap opened", kind: "number left in the window" });
}

/** Felt, not read: flat is the whole dose; how much is left of one that stands out, nobody knows. */
function felt(c: Ctx, how: Extract<Intent, { do: "button feels" }>["how"]): Outcome {
  if (how === "flat") return happen(done(c, c.walk.dial?.units ?? null, units(0), true, "felt"));
  return happen(done(c, null, null, false, "felt"), {
    type: "mishap opened",
    kind: how === "standing out" ? "number left in the window" : "not sure",
  });
}

/** The last check. Whatever does not hold any more sends the walk back to the answer that has to be given again. */
function opening(c: Ctx): Happened[] {
  const old = [...oldCard(c, "inject"), ...oldReading(c)].slice(0, 1);
  if (old.length > 0) return old;
  const why = c.guards.whyNotInject(c.walk, c.walk.told !== null && c.walk.doseHeard);
  if (why === "dial" || why === "no dose told") return [{ type: "went back", from: "inject", to: "dial", voided: ["dial"] }];
  if (why === "pen" || !penStillFits(c)) return [{ type: "went back", from: "inject", to: "pen", voided: ["pen", "dial"] }];
  if (why === "spot" || (c.walk.place && whyNot(c.walk.place, spotQuestion(c)) !== null)) {
    return [{ type: "went back", from: "inject", to: "place", voided: ["place", "skin"] }];
  }
  return [{ type: "inject opened" }];
}

export const inject: StepRules = {
  offers,
  arrive: (c) => (c.walk.injectOpened ? [] : opening(c)),
  decide(c: Ctx, intent: Intent) {
    switch (intent.do) {
      case "button is down":
        return happen({ type: "button pressed down" }, { type: "wait began", for: "hold", ms: careMs(c.card, "holdSeconds") });
      case "wait is over":
        return waitOver(c.walk, c.now, c.sure) ? happen({ type: "wait ended", for: "hold" }) : refuse({ no: "wait is not over" });
      case "needle came out early":
        return happen(
          { type: "near miss", step: "inject", what: "needle out early", detail: null },
          { type: "needle out early", reason: "said by the person" },
        );
      case "window is at zero":
        return happen(done(c, c.walk.dial?.units ?? null, units(0), true, "read"));
      case "window not seen":
        return happen({ type: "window not seen" });
      case "button feels":
        return felt(c, intent.how);
      default:
        return isNumberIntent(intent) ? decideNumber(c, intent, inject) : happen();
    }
  },
  accept,
};

/** What a mishap at the needle means for the dose: nobody knows how much went in. */
export const uncertainDose = (c: Ctx): Happened => done(c, null, null, false);
