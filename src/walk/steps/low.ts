// A low: sugar, a wait, a new reading, again, then a call. The number decides, never the feeling (promise 13).
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { grams } from "#events/quantity.ts";
import type { NumberSlot } from "#events/told.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import { isVeryLow } from "#rules/glucose/classify.ts";
import { type Ctx, happen, type Offer, type Outcome, press, type StepRules, waitOver } from "#walk/context.ts";
import { careMinutesMs } from "./care-ms.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";
import { glucoseOf, words } from "./reading.ts";

/** Up to three treatments, then a call (JBDS 01, 4th edition 2020). */
export const MOST_ROUNDS = 3;

export type LowStage = "treat" | "wait" | "recheck" | "number" | "call";

export function lowStage(c: Ctx): LowStage {
  const low = c.walk.low;
  if (!low) return "treat";
  if (low.callRaised) return c.walk.draft ? "number" : "call";
  if (c.walk.draft) return "number";
  if (low.due === "treat") return "treat";
  return waitOver(c.walk, c.now, c.sure) ? "recheck" : "wait";
}

/** Quick sugars in the order they are offered; glucose first. */
export const sugarsOffered = () => sugarFoods().slice(0, 4);

function offers(c: Ctx): Offer[] {
  const cannot = press("wrong", { do: "cannot swallow" });
  switch (lowStage(c)) {
    case "treat":
      return [...sugarsOffered().map((s) => press("choice", { do: "took sugar", food: s.food.id, grams: s.grams })), cannot];
    case "wait":
      // A new reading is always welcome: feeling worse may not have to wait.
      return [...numberOffers(c, ["recheck after low"]), ...words, cannot];
    case "recheck":
      return [...numberOffers(c, ["recheck after low"]), ...words, cannot];
    case "number":
      return numberOffers(c, []);
    case "call":
      return [
        ...sugarsOffered().map((s) => press("choice", { do: "took sugar", food: s.food.id, grams: s.grams })),
        ...numberOffers(c, ["recheck after low"]),
        ...words,
        press("stop", { do: "leave" }),
      ];
  }
}

function afterRecheck(c: Ctx, stillLow: boolean): Happened[] {
  const rounds = c.walk.low?.rounds.length ?? 0;
  if (!stillLow) return [{ type: "low ended", rounds }];
  const readings = c.walk.low?.readings ?? [];
  const last = readings.at(-1)?.glucose;
  const enough = rounds >= MOST_ROUNDS || (rounds >= 2 && last !== null && last !== undefined && isVeryLow(last));
  return enough ? [{ type: "call raised", why: "still low" }] : [];
}

function accept(c: Ctx, _slot: NumberSlot, text: string): Outcome {
  const glucose = glucoseOf(c, text);
  const stillLow = c.guards.isLow(glucose, c.card);
  const draft = c.walk.draft;
  return happen(
    {
      type: "reading taken",
      glucose,
      source: c.me.person.readsFrom ?? "finger",
      via: draft?.via ?? "touch",
      helper: draft?.helper ?? null,
    },
    ...afterRecheck(c, stillLow),
  );
}

export const low: StepRules = {
  offers,
  decide(c: Ctx, intent: Intent) {
    switch (intent.do) {
      case "took sugar":
        return happen(
          { type: "sugar taken", food: intent.food, grams: grams(intent.grams) },
          { type: "wait began", for: "recheck", ms: careMinutesMs(c.card, "recheckMinutes") },
        );
      case "cannot swallow":
        return happen({ type: "call raised", why: "cannot swallow" });
      case "read word":
        return happen({ type: "meter word read", word: intent.word, via: intent.via }, ...afterRecheck(c, intent.word === "LO"));
      default:
        return isNumberIntent(intent) ? decideNumber(c, intent, low) : happen();
    }
  },
  accept,
};
