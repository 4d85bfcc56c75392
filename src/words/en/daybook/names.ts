// Names of steps, waits and answers as the day book writes them.
import type { MishapKind } from "#events/happened-walk.ts";
import type { NumberSlot } from "#events/told.ts";

const STEPS: Readonly<Record<string, string>> = {
  taken: "the first question",
  wash: "washing",
  reading: "the reading",
  plate: "the plate",
  card: "the dose",
  "eat first": "eating first",
  pen: "the pen",
  dial: "the dial",
  place: "the place",
  skin: "the skin",
  inject: "the needle",
  "put away": "putting away",
  eat: "eating",
  done: "the end",
  low: "the low",
  ill: "the questions for an ill day",
  mishap: "what went wrong",
  "needle question": "the question about the needle",
};
export const stepWords = (step: string): string => STEPS[step] ?? "a step";

export const SLOT_WORDS: Readonly<Record<NumberSlot, string>> = {
  reading: "Reading",
  grams: "Grams",
  servings: "Servings",
  "own number": "Own number",
  "telephoned number": "Number by telephone",
  dial: "Dial",
  "left in window": "Left in the window",
  recheck: "New reading",
  "recheck after low": "New reading",
  "reading when ill": "Reading",
  ketones: "Ketones",
};

export const MISHAP_WORDS: Readonly<Record<MishapKind, string>> = {
  "too much": "too much insulin",
  "too little": "too little insulin",
  "wrong insulin": "the wrong insulin",
  "nothing came out": "nothing came out",
  "number left in the window": "a number was left in the window",
  "not sure": "not sure if it went in",
  "it hurt or bled": "it hurt or bled",
  "button too stiff": "the button was too stiff",
  "pen ran out": "the pen ran out",
  "cannot eat": "could not eat",
  "half eaten": "ate only part of the meal",
  "hardly eaten": "ate hardly any of the meal",
  vomiting: "the food came up again",
  "eaten, not injected": "ate, and no insulin went in",
  "needle stick": "a used needle pricked somebody",
  "feeling ill": "feeling ill",
  "something else": "something was wrong",
};

export const NO_GO_WORDS = { scar: "scar", mole: "mole", lump: "lump", sore: "sore place", other: "place to leave free" } as const;
