// Something went wrong: the card's own words, or "call now". Never a top-up, never a second dose on doubt.
import type { Happened } from "#events/happened.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import type { Intent } from "#events/intent.ts";
import { type Ctx, happen, type Outcome, press, type StepRules } from "#walk/context.ts";
import { insulinWatchBegins } from "#walk/insulin-watch.ts";
import type { PersonState, Walk } from "#walk/state.ts";
import { illBegins } from "./ill-begins.ts";
import { uncertainDose } from "./inject.ts";
import { dosesOfMishap, dosesToldInKitchen } from "./mishap-doses.ts";
import { whatFollows } from "./mishap-follows.ts";

export const MISHAPS: readonly MishapKind[] = [
  "nothing came out",
  "button too stiff",
  "pen ran out",
  "it hurt or bled",
  "too much",
  "too little",
  "wrong insulin",
  "not sure",
  "cannot eat",
  "half eaten",
  "vomiting",
  "eaten, not injected",
  "needle stick",
  "feeling ill",
  "something else",
];

/** Of a meal: told in no other walk. */
const ABOUT_A_MEAL: readonly MishapKind[] = ["cannot eat", "half eaten", "hardly eaten", "eaten, not injected"];

export const mishapsOf = (walk: Walk): readonly MishapKind[] =>
  walk.kind === "background" || walk.kind === "reading" ? MISHAPS.filter((kind) => !ABOUT_A_MEAL.includes(kind)) : MISHAPS;

/** What is often found out only later, in the kitchen. */
export const KITCHEN_MISHAPS: readonly MishapKind[] = [
  "too much",
  "wrong insulin",
  "not sure",
  "eaten, not injected",
  "vomiting",
  "needle stick",
  "feeling ill",
];

/** Whoever is ill is asked about danger signs at once: no screen stands before that. */
const opened = (kind: MishapKind): Happened[] => [
  { type: "mishap opened", kind },
  ...(kind === "feeling ill" ? [{ type: "mishap advice heard" as const, kind }, ...illBegins("feels ill")] : []),
];

export const toldInKitchen = (mishap: MishapKind, me: PersonState | undefined): Happened[] => [
  ...dosesToldInKitchen(mishap, me),
  ...insulinWatchBegins(mishap, me?.card?.card ?? null, null),
  ...opened(mishap),
];

/** "Something is wrong" is on offer at every step; what it does to the dose depends on whether the needle step was opened. */
export const report = (c: Ctx, mishap: MishapKind): Outcome =>
  happen(...dosesOfMishap(c, mishap), ...insulinWatchBegins(mishap, c.card, c.walk), ...opened(mishap));

export const mishap: StepRules = {
  offers: () => [press("main", { do: "heard mishap advice" })],
  decide(c: Ctx, intent: Intent) {
    if (intent.do !== "heard mishap advice" || !c.walk.mishap) return happen();
    return happen({ type: "mishap advice heard", kind: c.walk.mishap }, ...whatFollows(c, c.walk.mishap));
  },
};

/** After a start of the app with the needle step open. Until the answer is no, the dose counts as taken. */
export const needleQuestion: StepRules = {
  offers: (c) => [
    press("choice", { do: "needle went in", answer: "yes" }),
    // Once "It is down" was stored, a "no" would contradict the book and free a second dose: not sure is the most that can be said.
    ...(c.walk.pressed ? [] : [press("choice", { do: "needle went in", answer: "no" })]),
    press("stop", { do: "needle went in", answer: "not sure" }),
  ],
  decide(c: Ctx, intent: Intent) {
    if (intent.do !== "needle went in") return happen();
    const answered: Happened = { type: "needle question answered", wentIn: intent.answer };
    if (intent.answer === "no") return happen(answered, { type: "needle did not go in" });
    return intent.answer === "not sure" ? happen(answered, uncertainDose(c)) : happen(answered);
  },
};
