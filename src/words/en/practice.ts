// What practice shows and says. It must never be taken for the real thing, nor the real thing for practice.

import { frontPerson } from "#walk/offers.ts";
import { isAtThePen } from "#walk/practice.ts";
import type { HouseState } from "#walk/state.ts";
import { stepOf } from "#walk/state.ts";
import type { Say } from "#words/say.ts";

export const PRACTICE = {
  title: "Practice",
  /** On every screen for as long as it lasts. */
  banner: "Practice. Nothing is saved.",
  intro: ["Practice saves nothing.", "Touch no needle. Inject nothing."],
  start: "Start practice",
  busy: ["A walk is open. Finish it first."],
  noInject: "Practice. Inject nothing.",
  madeUp: "This card is made up. Never dose by it.",
  eat: ["In a real walk you eat now.", "Press: I am eating."],
  done: ["That was the whole walk.", "Nothing was saved."],
  over: ["Practice is over.", "Nothing was saved."],
  asleep: ["Practice ended: nobody answered.", "Nothing was saved."],
  low: ["Practice is over.", "Was that number real? Press I feel low."],
} as const;

/** The walk's own words, with what makes them practice wherever they could be taken for an order to inject, or for a dose. */
export function sayPractice(say: Say, house: HouseState, madeUp: boolean): Say {
  const walk = frontPerson(house)?.walk;
  if (!walk || walk.draft) return say;
  const step = stepOf(walk);
  // Their own words would tell of insulin that went in, of a bell, and of what is saved.
  if (step === "eat") return { title: PRACTICE.title, lines: [...PRACTICE.eat] };
  if (step === "done") return { title: PRACTICE.title, lines: [...PRACTICE.done] };
  const card = step === "card" && madeUp ? [PRACTICE.madeUp] : [];
  const pen = isAtThePen(walk) ? [PRACTICE.noInject] : [];
  const wrong = step === "mishap" || step === "needle question" ? [PRACTICE.noInject] : [];
  const before = [...card, ...pen, ...wrong];
  if (before.length === 0) return say;
  return {
    ...say,
    title: pen.length > 0 ? PRACTICE.title : say.title,
    lines: [...before, ...say.lines],
    ...(say.short ? { short: [...before, ...say.short] } : {}),
  };
}
