// A dose as it was told: what the card said, of which card, from which rows, and why.
import * as z from "zod/mini";
import { unitsSchema } from "./quantity.ts";

export const toldDose = z.object({
  units: unitsSchema,
  food: z.number(),
  correction: z.number(),
  cardHash: z.string(),
  rows: z.array(z.string()),
  /** Tagged reasons and cautions of rules/card, kept as they were so that the day book can say them again. */
  why: z.array(z.looseObject({ reason: z.string() })),
  cautions: z.array(z.looseObject({ caution: z.string() })),
  /** "by the clock": background insulin, whatever is eaten. */
  timing: z.enum(["before eating", "with the first bite", "after eating", "by the clock"]),
  /** "card", or who gave the number by telephone (promise 5). */
  by: z.string(),
});
export type ToldDose = z.infer<typeof toldDose>;

/** How an answer is known. */
export const via = z.enum(["touch", "keys", "voice", "helper", "meter"]);
export type Via = z.infer<typeof via>;

export const numberSlot = z.enum([
  "reading",
  "grams",
  "servings",
  "own number",
  "telephoned number",
  "dial",
  "left in window",
  "recheck",
  "recheck after low",
  "reading when ill",
  "ketones",
]);
export type NumberSlot = z.infer<typeof numberSlot>;
