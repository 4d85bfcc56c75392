// Something went wrong: the card's own words, or "call now". Never a top-up, never a second dose on doubt.
import type { Happened } from "#events/happened.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import type { Intent } from "#events/intent.ts";
import { type Ctx, happen, type Outcome, press, type StepRules } from "#walk/context.ts";
import { uncertainDose } from "./inject.ts";

/** Mishaps that leave nobody knowing how much went in. */
const UNCERTAIN: readonly MishapKind[] = ["nothing came out", "button too stiff", "not sure", "wrong insulin", "too much", "too little"];

export const MISHAPS: readonly MishapKind[] = [
  "nothing came out",
  "button too stiff",
  "it hurt or bled",
  "too much",
  "too little",
  "wrong insulin",
  "not sure",
  "feeling ill",
  "something else",
];

/** "Something is wrong" is on offer at every step; what it does to the dose depends on whether the needle step was opened. */
export function report(c: Ctx, mishap: MishapKind): Outcome {
  const open = c.walk.injectOpened !== null && c.walk.injected === null;
  const dose: Happened[] = open && UNCERTAIN.includes(mishap) ? [uncertainDose(c)] : [];
  return happen(...dose, { type: "mishap opened", kind: mishap });
}

export const mishap: StepRules = {
  offers: () => [press("main", { do: "heard mishap advice" })],
  decide(c: Ctx, intent: Intent) {
    if (intent.do !== "heard mishap advice" || !c.walk.mishap) return happen();
    return happen({ type: "mishap advice heard", kind: c.walk.mishap });
  },
};

/** After a start of the app with the needle step open. Until the answer is no, the dose counts as taken. */
export const needleQuestion: StepRules = {
  offers: () => [
    press("choice", { do: "needle went in", answer: "yes" }),
    press("choice", { do: "needle went in", answer: "no" }),
    press("stop", { do: "needle went in", answer: "not sure" }),
  ],
  decide(_c: Ctx, intent: Intent) {
    if (intent.do !== "needle went in") return happen();
    const answered: Happened = { type: "needle question answered", wentIn: intent.answer };
    return intent.answer === "no" ? happen(answered, { type: "needle did not go in" }) : happen(answered);
  },
};
