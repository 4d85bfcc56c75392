// Something went wrong: the card's own words, or "call now". Never a top-up, never a second dose on doubt.
import type { Happened } from "#events/happened.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import type { Intent } from "#events/intent.ts";
import { type Ctx, happen, type Outcome, press, type StepRules } from "#walk/context.ts";
import { stepOf, type Walk } from "#walk/state.ts";
import { uncertainDose } from "./inject.ts";

/** Mishaps that leave nobody knowing how much went in. */
const UNCERTAIN: readonly MishapKind[] = [
  "nothing came out",
  "button too stiff",
  "pen ran out",
  "not sure",
  "wrong insulin",
  "too much",
  "too little",
];

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

/** Whatever the book says, more insulin or another one may be in the body. */
const MORE_THAN_THE_BOOK: readonly MishapKind[] = ["too much", "wrong insulin"];

/** While the pen is tested these are the pen's trouble, and nobody injected yet. */
const PEN_TROUBLE: readonly MishapKind[] = ["nothing came out", "button too stiff", "pen ran out"];

export const isPenTrouble = (walk: Walk, mishap: MishapKind): boolean =>
  PEN_TROUBLE.includes(mishap) && stepOf({ ...walk, mishap: null }) === "pen";

/** What a mishap says about insulin in the body. Nothing else keeps the walk from going on to a second dose once the advice was heard. */
function doseOf(c: Ctx, mishap: MishapKind): Happened[] {
  const { injectOpened, injected } = c.walk;
  const told: Happened = { type: "dose told later", units: null, minutesAgo: null };
  if (injectOpened && !injected) return UNCERTAIN.includes(mishap) ? [uncertainDose(c)] : [];
  if (injected) return MORE_THAN_THE_BOOK.includes(mishap) ? [told] : [];
  // Reported before the needle step: insulin went in without the tablet, or may have. It counts, and "taken already?" is asked again.
  return UNCERTAIN.includes(mishap) && !isPenTrouble(c.walk, mishap) ? [told] : [];
}

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

/** Told in the kitchen, with no walk open: insulin that may be in beside what the book says counts from then on. */
export const toldInKitchen = (mishap: MishapKind): Happened[] => [
  ...(UNCERTAIN.includes(mishap) ? [{ type: "dose told later" as const, units: null, minutesAgo: null }] : []),
  { type: "mishap opened", kind: mishap },
];

/** "Something is wrong" is on offer at every step; what it does to the dose depends on whether the needle step was opened. */
export const report = (c: Ctx, mishap: MishapKind): Outcome => happen(...doseOf(c, mishap), { type: "mishap opened", kind: mishap });

/** Once the advice was heard, what nobody may be left alone with: insulin without food, and a meal eaten without insulin. */
function whatFollows(c: Ctx, mishap: MishapKind): Happened[] {
  const { walk } = c;
  if (walk.low) return [];
  if (walk.kind === "mishap") return [{ type: "walk ended", how: "whole walk" }];
  const noFood: Happened[] = [{ type: "cannot eat" }, { type: "low began", because: "cannot eat" }];
  if (mishap === "cannot eat" && walk.injected && walk.eat !== "cannot eat") return noFood;
  // Sugar may not stay down either: the number comes first.
  if (mishap === "vomiting" && walk.injected) return [...noFood, { type: "wait began", for: "recheck", ms: 0 }];
  // The card's row is for insulin before the meal: late, only its own words count, and without any there is no dose.
  if (mishap === "eaten, not injected" && !walk.injectOpened && walk.kind === "meal" && !c.card?.advice.missed)
    return [{ type: "walk ended", how: "no dose" }];
  return [];
}

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
