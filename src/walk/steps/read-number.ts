// One place that says what a text means in a slot: a number, a question about it, or a refusal with its reason.
import type { StepName } from "#events/happened-walk.ts";
import type { NumberSlot } from "#events/told.ts";
import { checkGrams, checkServings } from "#rules/food/grams.ts";
import { checkKetones } from "#rules/glucose/ketones.ts";
import { checkReading } from "#rules/glucose/reading.ts";
import { checkUnits } from "#rules/pen/units.ts";
import type { Ctx } from "#walk/context.ts";
import type { Refusal } from "#walk/refusal.ts";
import type { Step } from "#walk/state.ts";

export type NumberRead = { ok: true | "ask unit"; text: string; unusual: boolean } | { ok: false; refusal: Refusal };

export const STEP_OF_SLOT: Readonly<Record<NumberSlot, StepName>> = {
  reading: "reading",
  grams: "plate",
  servings: "plate",
  "own number": "card",
  "telephoned number": "card",
  dial: "dial",
  "left in window": "inject",
  recheck: "reading",
  "recheck after low": "reading",
  "reading when ill": "reading",
  ketones: "reading",
};

/** Slots of what lies over a step. */
export const OVER_A_STEP: Readonly<Partial<Record<NumberSlot, Step>>> = {
  "recheck after low": "low",
  "reading when ill": "ill",
  ketones: "ill",
};

/** Of a strip the place in its row of fields, given by one press and never typed. */
function readKetones(c: Ctx, text: string): NumberRead {
  const test = c.card?.ketones?.test ?? "blood";
  if (test !== "blood") return { ok: true, text, unusual: false };
  const checked = checkKetones(text);
  return checked.ok
    ? { ok: true, text: String(checked.value), unusual: false }
    : { ok: false, refusal: { no: "ketones", why: checked.why, text } };
}

function readGlucose(c: Ctx, text: string): NumberRead {
  const unit = c.me.person.glucoseUnit;
  const checked = checkReading(text, unit);
  if (checked.ok === false) return { ok: false, refusal: { no: "reading", why: checked.why, text, unit } };
  const { low, high } = c.me.person.usualBand;
  const value = checked.glucose.value;
  return { ok: checked.ok, text: String(value), unusual: value < low || value > high };
}

/** The largest of the person's usual meals of this name, in grams. */
function usualGrams(c: Ctx): number | null {
  const usual = c.me.person.usualMeals.filter((m) => m.meal === c.walk.meal).map((m) => m.grams);
  return usual.length > 0 ? Math.max(...usual) : null;
}

/** text as given, in the person's unit. unusual: outside what is usual for this person, so its digits are asked for twice. */
export function readNumber(c: Ctx, slot: NumberSlot, text: string): NumberRead {
  switch (slot) {
    case "reading":
    case "recheck":
    case "recheck after low":
    case "reading when ill":
      return readGlucose(c, text);
    case "ketones":
      return readKetones(c, text);
    case "grams": {
      const checked = checkGrams(text, usualGrams(c));
      if (checked.ok === false) return { ok: false, refusal: { no: "grams", why: checked.why, text } };
      return { ok: true, text: String(checked.grams), unusual: checked.ok === "ask" };
    }
    case "servings": {
      const checked = checkServings(text, usualGrams(c));
      if (checked.ok === false) return { ok: false, refusal: { no: "grams", why: checked.why, text } };
      return { ok: true, text: String(checked.servings), unusual: checked.ok === "ask" };
    }
    case "own number":
    case "telephoned number":
    case "dial":
    case "left in window": {
      const pen = c.me.pens.find((p) => p.pen.id === c.walk.penCheck.pen)?.pen;
      // What a card or a caller says is checked against the card's own step later; a window can show halves.
      const step = slot === "dial" ? (pen?.unitsPerClick ?? "0.5") : "0.5";
      const checked = checkUnits(text, step);
      if (!checked.ok) return { ok: false, refusal: { no: "units", why: checked.why, text } };
      return { ok: true, text: String(checked.units), unusual: false };
    }
    default:
      return slot satisfies never;
  }
}
