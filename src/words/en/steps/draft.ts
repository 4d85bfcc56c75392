// A number on its way is read back whole, then digit by digit (ISMP: 15 heard as 50).
import type { NumberSlot } from "#events/told.ts";
import type { Ctx } from "#walk/context.ts";
import { draftStage } from "#walk/steps/number.ts";
import { digits, unitSaid } from "#words/en/amounts.ts";
import { ketonesWords } from "#words/en/ketones.ts";
import type { Say } from "#words/say.ts";

const isGlucose = (slot: NumberSlot): boolean =>
  slot === "reading" || slot === "recheck" || slot === "recheck after low" || slot === "reading when ill";

export function unitOf(c: Ctx, slot: NumberSlot, text: string): string {
  if (isGlucose(slot)) return c.me.person.glucoseUnit;
  if (slot === "ketones") return "mmol/L";
  if (slot === "grams") return text === "1" ? "gram" : "grams";
  if (slot === "servings") return text === "1" ? "serving" : "servings";
  return text === "1" ? "unit" : "units";
}

const unitInWords = (c: Ctx, slot: NumberSlot, text: string): string =>
  slot === "ketones" ? unitSaid["mmol/L"] : isGlucose(slot) ? unitSaid[c.me.person.glucoseUnit] : unitOf(c, slot, text);

const AGAIN: Partial<Record<NumberSlot, string>> = {
  dial: "Turn back to zero and dial again. Then give the number again.",
  grams: "That is much for one meal. Give the number again.",
  servings: "That is much for one meal. Give the number again.",
  "telephoned number": "Ask the caller again. Give the number a second time.",
};

export function sayDraft(c: Ctx): Say {
  const draft = c.walk.draft;
  if (!draft) return { title: "A number", lines: [] };
  const { slot } = draft;
  switch (draftStage(c)) {
    case "give":
      return { title: "A number", lines: [] };
    case "digits again": {
      if (slot === "dial" && c.me.person.dialBy !== "counts twice")
        return { title: "Look again", lines: ["Look at the dial again.", "Say its digits one by one."] };
      return { title: "Once more", lines: [AGAIN[slot] ?? "That is unusual for you. Look again and give the digits."] };
    }
    case "which unit":
      return {
        title: "Which unit?",
        lines: [`${draft.text} fits two units. Look at your meter.`, "Which unit does it show?"],
        big: { value: draft.text, unit: "" },
      };
    case "read back": {
      const strip = c.card?.ketones?.test ?? "blood";
      if (slot === "ketones" && strip !== "blood") {
        const shown = ketonesWords(strip, Number(draft.text));
        return { title: "Is this right?", lines: [`The strip shows: ${shown}.`, "Right?"] };
      }
      // One digit is its own read-back.
      const each = draft.text.length > 1 ? [digits(draft.text)] : [];
      return {
        title: "Is this right?",
        lines: [`${draft.text} ${unitInWords(c, slot, draft.text)}.`, ...each, "Right?"],
        short: each.length > 0 ? [`${each[0]} Right?`] : [`${draft.text} ${unitOf(c, slot, draft.text)}. Right?`],
        big: { value: draft.text, unit: unitOf(c, slot, draft.text) },
      };
    }
  }
}
