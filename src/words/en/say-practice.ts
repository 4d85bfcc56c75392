// The words of a walk in practice.
import { frontPerson } from "#walk/offers.ts";
import { isAtThePen } from "#walk/practice.ts";
import { type HouseState, stepOf } from "#walk/state.ts";
import type { Say } from "#words/say.ts";
import { PRACTICE } from "./practice.ts";

/** The walk's own words, with what makes them practice wherever they could be taken for an order to inject, or for a dose. */
export function sayPractice(say: Say, house: HouseState, madeUp: boolean): Say {
  const walk = frontPerson(house)?.walk;
  if (!walk || walk.draft) return say;
  const step = stepOf(walk);
  // Their own words would tell of insulin that went in, of a bell, and of what is saved.
  if (step === "eat") return { title: PRACTICE.title, lines: [...PRACTICE.eat] };
  if (step === "done") return { title: PRACTICE.title, lines: [...PRACTICE.done] };
  const far = walk.told?.cautions.some(({ caution }) => caution === "not at its hour") ?? false;
  const card = step === "card" ? [...(madeUp ? [PRACTICE.madeUp] : []), ...(far ? [PRACTICE.anyHour] : [])] : [];
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
