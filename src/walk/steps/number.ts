// How a number travels, whoever gives it: given, read back, agreed, and where it matters asked for again digit by digit.
import type { Intent } from "#events/intent.ts";
import type { NumberSlot } from "#events/told.ts";
import { type Ctx, happen, type Offer, type Outcome, press, refuse, type StepRules } from "#walk/context.ts";
import { stepOf } from "#walk/state.ts";
import { OVER_A_STEP, readNumber, STEP_OF_SLOT } from "./read-number.ts";

type NumberIntent = Extract<Intent, { do: "give number" | "agree number" | "change number" | "choose unit" }>;

export const isNumberIntent = (intent: Intent): intent is NumberIntent =>
  intent.do === "give number" || intent.do === "agree number" || intent.do === "change number" || intent.do === "choose unit";

/** Which question about the draft is open. */
export function draftStage(c: Ctx): "give" | "which unit" | "read back" | "digits again" {
  const draft = c.walk.draft;
  if (!draft) return "give";
  if (draft.text === "") return "digits again";
  const read = readNumber(c, draft.slot, draft.text);
  if (read.ok === "ask unit" && c.walk.unitAgreed === null) return "which unit";
  return "read back";
}

/** The offers while a number is on its way; slots: what may be given when none is. */
export function numberOffers(c: Ctx, slots: readonly NumberSlot[]): Offer[] {
  const draft = c.walk.draft;
  switch (draftStage(c)) {
    case "give":
      return slots.map((slot) => ({ offer: "number", slot }));
    case "digits again":
      return draft ? [{ offer: "number", slot: draft.slot }, press("no", { do: "change number" })] : [];
    case "which unit":
      return [
        press("choice", { do: "choose unit", unit: "mg/dL" }),
        press("choice", { do: "choose unit", unit: "mmol/L" }),
        press("no", { do: "change number" }),
      ];
    case "read back": {
      return [press("main", { do: "agree number" }), press("no", { do: "change number" })];
    }
  }
}

function give(c: Ctx, intent: Extract<Intent, { do: "give number" }>, rules: StepRules): Outcome {
  const read = readNumber(c, intent.slot, intent.text);
  if (read.ok === false)
    return refuse(read.refusal, {
      type: "near miss",
      step: STEP_OF_SLOT[intent.slot],
      what: `${intent.slot}: ${read.refusal.no}`,
      detail: intent.text.slice(0, 40),
    });
  const { slot, via, helper } = intent;
  const given = { type: "number given" as const, slot, text: read.text, via, helper };
  const draft = c.walk.draft;
  if (draft?.text === "" && draft.first !== null) {
    if (draft.first !== read.text) {
      return refuse(
        { no: "two numbers differ", first: draft.first, second: read.text },
        { type: "near miss", step: STEP_OF_SLOT[slot], what: "two numbers differ", detail: `${draft.first} ${read.text}` },
        { type: "number turned down", slot },
      );
    }
    const accepted = rules.accept?.(c, slot, read.text) ?? happen();
    return { ...accepted, events: [given, ...accepted.events] };
  }
  if (!c.guards.readsBack && rules.accept) return rules.accept(c, slot, read.text);
  return happen(given);
}

/** Answers a number intent. The step's own accept is reached only after the read-back was agreed to in a later turn. */
export function decideNumber(c: Ctx, intent: NumberIntent, rules: StepRules): Outcome {
  const draft = c.walk.draft;
  switch (intent.do) {
    case "give number":
      return give(c, intent, rules);
    case "change number":
      return draft ? happen({ type: "number turned down", slot: draft.slot }) : happen();
    case "choose unit": {
      if (!draft) return happen();
      if (intent.unit === c.me.person.glucoseUnit) return happen({ type: "unit agreed", unit: intent.unit });
      return refuse(
        { no: "wrong unit", unit: c.me.person.glucoseUnit },
        { type: "near miss", step: "reading", what: "wrong unit", detail: `${draft.text} ${intent.unit}` },
        { type: "number turned down", slot: draft.slot },
      );
    }
    case "agree number": {
      if (!draft || draft.text === "") return happen();
      // A number belongs to the step it was given at: six units are never agreed to as six grams.
      if (stepOf(c.walk) !== (OVER_A_STEP[draft.slot] ?? STEP_OF_SLOT[draft.slot]))
        return happen({ type: "number turned down", slot: draft.slot });
      const read = readNumber(c, draft.slot, draft.text);
      if (read.ok === false) return refuse(read.refusal, { type: "number turned down", slot: draft.slot });
      if (draft.first === null && c.guards.digitsAgain(draft.slot, draft.via, read.unusual))
        return happen({ type: "digits asked again", slot: draft.slot });
      return rules.accept?.(c, draft.slot, draft.text) ?? happen();
    }
  }
}
