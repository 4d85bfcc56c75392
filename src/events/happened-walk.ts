// Facts of a walk, in the order a meal walk meets them. Each answer says how it was known.
import * as z from "zod/mini";
import { mealName } from "./card.ts";
import { illEvents } from "./happened-ill.ts";
import { lowEvents } from "./happened-low.ts";
import { needleEvents } from "./happened-needle.ts";
import { plateHow, plateLine } from "./plate.ts";
import { clockTime, glucose, glucoseUnit, gramsSchema, unitsSchema } from "./quantity.ts";
import { numberSlot, toldDose, via } from "./told.ts";

const plain = <T extends string>(type: T) => z.object({ type: z.literal(type) });

export const stepName = z.enum([
  "taken",
  "wash",
  "reading",
  "plate",
  "card",
  "eat first",
  "pen",
  "dial",
  "place",
  "skin",
  "inject",
  "put away",
  "eat",
  "done",
]);
export type StepName = z.infer<typeof stepName>;

/** "watch": insulin is in, no meal came, and the last reading was good. */
export const waitFor = z.enum(["wash", "skin", "hold", "recheck", "watch", "ready"]);
export type WaitFor = z.infer<typeof waitFor>;

export const mishapKind = z.enum([
  "too much",
  "too little",
  "wrong insulin",
  "nothing came out",
  "number left in the window",
  "not sure",
  "it hurt or bled",
  "button too stiff",
  "pen ran out",
  "cannot eat",
  "half eaten",
  "hardly eaten",
  "vomiting",
  "eaten, not injected",
  "needle stick",
  "feeling ill",
  "something else",
]);
export type MishapKind = z.infer<typeof mishapKind>;

// The walk itself
/** Which background dose of the card: its time of day and its insulin, and its name as it was on the card then. */
export const backgroundOpened = z.object({ at: clockTime, insulinId: z.string(), insulinName: z.string() });
export type BackgroundOpened = z.infer<typeof backgroundOpened>;
const walkOpened = z.object({
  type: z.literal("walk opened"),
  kind: z.enum(["meal", "low", "mishap", "background", "reading"]),
  meal: z.nullable(mealName),
  /** In a background walk, and in no other. */
  background: z.optional(backgroundOpened),
});
const walkTurnedTo = plain("walk turned to");
const walkLeft = z.object({
  type: z.literal("walk left"),
  step: z.string(),
  why: z.enum(["stopped by the person", "no dose", "meal not ready", "helper needed"]),
});
const walkEnded = z.object({ type: z.literal("walk ended"), how: z.enum(["whole walk", "stopped", "no dose", "dose already taken"]) });
const wentBack = z.object({ type: z.literal("went back"), from: stepName, to: stepName, voided: z.array(stepName) });
const waitBegan = z.object({ type: z.literal("wait began"), for: waitFor, ms: z.number() });
const waitEnded = z.object({ type: z.literal("wait ended"), for: waitFor });
const waitJumped = z.object({ type: z.literal("wait jumped"), for: waitFor, reason: z.string() });
/** A slip that was stopped before the body: counted for the keeper, never told to the person as failure. */
const nearMiss = z.object({ type: z.literal("near miss"), step: stepName, what: z.string(), detail: z.nullable(z.string()) });

// Numbers, whoever gives them: given, read back, then agreed or turned down
const numberGiven = z.object({
  type: z.literal("number given"),
  slot: numberSlot,
  text: z.string(),
  via,
  helper: z.nullable(z.string()),
});
/** Agreed once, and its digits are asked for a second time (promise 8). */
const digitsAskedAgain = z.object({ type: z.literal("digits asked again"), slot: numberSlot });
const numberTurnedDown = z.object({ type: z.literal("number turned down"), slot: numberSlot });
const unitAgreed = z.object({ type: z.literal("unit agreed"), unit: glucoseUnit });

// 2 taken already?
const takenAnswered = z.object({
  type: z.literal("taken answered"),
  how: z.enum(["log is clear", "said not taken", "the first was not taken"]),
});
// 3 wash
const washed = z.object({
  type: z.literal("hands washed"),
  how: z.enum(["counted", "already washed", "skipped"]),
  reason: z.nullable(z.string()),
});
// 4 reading
const readingTaken = z.object({
  type: z.literal("reading taken"),
  glucose,
  source: z.enum(["finger", "sensor"]),
  via,
  helper: z.nullable(z.string()),
});
const wordRead = z.object({ type: z.literal("meter word read"), word: z.enum(["HI", "LO"]), via });
const readingGrewOld = plain("reading grew old");
/** Background insulin is never blocked by a missing reading; that there was none is a fact (promise 1). */
const readingLeftOut = plain("reading left out");
const highAdviceHeard = plain("high advice heard");
// 5 plate
const exerciseAnswered = z.object({ type: z.literal("exercise answered"), hard: z.boolean() });
const plateLineAdded = z.object({ type: z.literal("food put on the plate"), line: plateLine });
const plateLineRemoved = z.object({ type: z.literal("food taken off the plate"), index: z.number() });
const plateAgreed = z.object({ type: z.literal("plate agreed"), grams: z.nullable(gramsSchema), how: plateHow });
const foodReady = plain("food is ready");
// 6 card
const doseTold = z.object({ type: z.literal("dose told"), told: toldDose });
const cardSilent = z.object({ type: z.literal("card silent"), why: z.string(), detail: z.nullable(z.string()) });
const ownNumberGiven = z.object({ type: z.literal("own number given"), units: unitsSchema, matches: z.boolean() });
const doseHeard = plain("dose heard");
// eat first (card says after eating)
const mealEatenFirst = plain("meal eaten first");
const mishapOpened = z.object({ type: z.literal("mishap opened"), kind: mishapKind });
const mishapHeard = z.object({ type: z.literal("mishap advice heard"), kind: mishapKind });
// 12 put away
const putAway = plain("pen put away");
// 13 eat
const eating = plain("eating");
const cannotEat = plain("cannot eat");
const bellUnanswered = z.object({ type: z.literal("bell not answered"), minutes: z.number() });
// 14 done
const eatenAnswered = z.object({ type: z.literal("meal answered"), ate: z.enum(["all", "half", "hardly any", "not kept down"]) });

export const walkEvents = [
  walkOpened,
  walkTurnedTo,
  walkLeft,
  walkEnded,
  wentBack,
  waitBegan,
  waitEnded,
  waitJumped,
  nearMiss,
  numberGiven,
  digitsAskedAgain,
  numberTurnedDown,
  unitAgreed,
  takenAnswered,
  washed,
  readingTaken,
  wordRead,
  readingGrewOld,
  readingLeftOut,
  highAdviceHeard,
  ...lowEvents,
  ...illEvents,
  exerciseAnswered,
  plateLineAdded,
  plateLineRemoved,
  plateAgreed,
  foodReady,
  doseTold,
  cardSilent,
  ownNumberGiven,
  doseHeard,
  mealEatenFirst,
  ...needleEvents,
  mishapOpened,
  mishapHeard,
  putAway,
  eating,
  cannotEat,
  bellUnanswered,
  eatenAnswered,
] as const;
