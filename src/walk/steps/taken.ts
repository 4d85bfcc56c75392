// Step 2: was this dose taken already? Nothing is asked while the log can vouch for it (promise 10).
import type { BackgroundDose } from "#events/card.ts";
import type { Of } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { type Ctx, happen, type Offer, press, type StepRules } from "#walk/context.ts";
import { sameReminder } from "#walk/fold-day.ts";
import type { Window } from "#walk/guards-window.ts";
import { backgroundNow, isBackground } from "#walk/insulin.ts";
import { standingReminder } from "#walk/reminders.ts";

/** Its hour is over and a call for it stands unanswered: it may have been taken without the tablet. */
function calledFor(c: Ctx, dose: BackgroundDose): boolean {
  const standing = standingReminder(c.me, c.now);
  return standing !== null && sameReminder(standing.reminder, { of: "background", at: dose.at, insulinId: dose.insulin.id });
}

/** Has an earlier walk left the needle question open, so that its dose counts as taken? */
export function windowNow(c: Ctx): Window {
  if (!isBackground(c.walk)) return c.guards.windowOf(c.house, c.me, c.now);
  const dose = backgroundNow(c);
  // Not on the card any more: nothing is asked about it, and the next step says that no dose is told.
  if (!dose) return { is: "clear" };
  const window = c.guards.backgroundWindowOf(c.house, c.me, dose, c.now);
  return window.is === "clear" && calledFor(c, dose) ? { is: "not known" } : window;
}

/** Not the book leaves it open, but the call that nobody answered. */
export function asksAfterCall(c: Ctx): boolean {
  const dose = backgroundNow(c);
  return dose !== null && calledFor(c, dose) && c.guards.backgroundWindowOf(c.house, c.me, dose, c.now).is === "clear";
}

/** Which insulin a dose told here is of; nothing is named for mealtime insulin. */
const named = (c: Ctx): Pick<Of<"dose told later">, "insulin"> =>
  c.walk.background ? { insulin: { id: c.walk.background.insulinId, name: c.walk.background.insulinName } } : {};

function offers(c: Ctx): Offer[] {
  const window = windowNow(c);
  switch (window.is) {
    case "clear":
      return [press("main", { do: "answer taken", answer: "no" })];
    case "a dose inside":
      return [
        press("stop", { do: "answer taken", answer: "yes" }),
        press("choice", { do: "answer taken", answer: "do not know" }),
        press("choice", { do: "the first was not taken" }),
      ];
    case "not known":
      return [
        press("choice", { do: "answer taken", answer: "yes" }),
        press("choice", { do: "answer taken", answer: "no" }),
        press("stop", { do: "answer taken", answer: "do not know" }),
      ];
  }
}

export const taken: StepRules = {
  offers,
  arrive(c) {
    return windowNow(c).is === "clear" ? [{ type: "taken answered", how: "log is clear" }] : [];
  },
  decide(c: Ctx, intent: Intent) {
    if (intent.do === "the first was not taken") return happen({ type: "taken answered", how: "the first was not taken" });
    if (intent.do !== "answer taken") return happen();
    if (intent.answer === "no")
      return happen({ type: "taken answered", how: windowNow(c).is === "clear" ? "log is clear" : "said not taken" });
    if (intent.answer === "do not know" && !c.guards.unknownEnds) return happen({ type: "taken answered", how: "said not taken" });
    const known = windowNow(c).is === "a dose inside";
    const slip = { type: "near miss" as const, step: "taken" as const, what: "second dose", detail: intent.answer };
    // Told now and not in the log: it counts as just taken, of unknown size.
    const told =
      intent.answer === "yes" && !known ? [{ type: "dose told later" as const, units: null, minutesAgo: null, ...named(c) }] : [];
    return happen(slip, ...told, { type: "walk ended", how: intent.answer === "yes" ? "dose already taken" : "no dose" });
  },
};
