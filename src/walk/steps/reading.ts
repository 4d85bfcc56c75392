// Step 4: the glucose reading. A low goes to the low walk whatever the person feels (promise 13).
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Glucose } from "#events/quantity.ts";
import { checkReading } from "#rules/glucose/reading.ts";
import { type Ctx, happen, type Offer, type Outcome, press, type StepRules } from "#walk/context.ts";
import { isBackground } from "#walk/insulin.ts";
import { afterHigh, illBegins } from "./ill-begins.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";

/** The glucose a text stands for in the person's unit; the text was read and agreed before. */
export function glucoseOf(c: Ctx, text: string): Glucose {
  const checked = checkReading(text, c.me.person.glucoseUnit);
  if (checked.ok === false) throw new Error(`an agreed reading can no longer be read: ${text}`);
  return checked.glucose;
}

export const words: Offer[] = [
  press("choice", { do: "read word", word: "HI", via: "touch" }),
  press("choice", { do: "read word", word: "LO", via: "touch" }),
];

function afterReading(c: Ctx, glucose: Glucose): Happened[] {
  return c.guards.isLow(glucose, c.card) ? [{ type: "low began", because: "reading" }] : afterHigh(c, glucose);
}

function accept(c: Ctx, _slot: string, text: string): Outcome {
  const glucose = glucoseOf(c, text);
  const draft = c.walk.draft;
  return happen(
    {
      type: "reading taken",
      glucose,
      source: c.me.person.readsFrom ?? "finger",
      via: draft?.via ?? "touch",
      helper: draft?.helper ?? null,
    },
    ...afterReading(c, glucose),
  );
}

export const reading: StepRules = {
  offers(c: Ctx) {
    // Background insulin is never blocked by a missing reading, nor by the word HI (promise 1).
    const without = isBackground(c.walk) && !c.walk.draft ? [press("choice", { do: "leave out reading" })] : [];
    if (c.walk.reading?.word === "HI") return [press("main", { do: "change number" }), ...without, press("stop", { do: "leave" })];
    const base = numberOffers(c, ["reading"]);
    return c.walk.draft ? base : [...base, ...words, ...without];
  },
  decide(c: Ctx, intent: Intent) {
    if (intent.do === "read word") {
      const word: Happened = { type: "meter word read", word: intent.word, via: intent.via };
      if (intent.word === "LO") return happen(word, { type: "low began", because: "meter word" });
      // After washing and a new strip HI is believed: very high, and somebody is called (general practice).
      return happen(word, ...(c.walk.his > 0 ? illBegins("HI again") : []));
    }
    if (intent.do === "leave out reading") return happen({ type: "reading left out" });
    // A meter that shows HI: wash, and test again with a new strip.
    if (intent.do === "change number" && c.walk.reading?.word === "HI") return happen({ type: "reading grew old" });
    return isNumberIntent(intent) ? decideNumber(c, intent, reading) : happen();
  },
  accept,
};
