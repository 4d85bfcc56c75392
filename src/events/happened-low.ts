// Facts of a low.
import * as z from "zod/mini";
import { gramsSchema } from "./quantity.ts";

const lowBegan = z.object({
  type: z.literal("low began"),
  because: z.enum(["reading", "meter word", "feels strange", "cannot eat", "half eaten"]),
});
const sugarTaken = z.object({ type: z.literal("sugar taken"), food: z.string(), grams: gramsSchema });
/** No meter, or no strip, where a new reading was asked for. */
const cannotMeasure = z.object({ type: z.literal("cannot measure") });
/** For whoever is in the house of somebody who cannot swallow: so many steps were heard and done. */
const helpStepDone = z.object({ type: z.literal("help step done"), step: z.number() });
const lowEnded = z.object({ type: z.literal("low ended"), rounds: z.number() });
const callRaised = z.object({
  type: z.literal("call raised"),
  why: z.enum(["still low", "no answer", "cannot swallow", "no meter", "bell not answered", "danger signs", "ketones"]),
});

export const lowEvents = [lowBegan, sugarTaken, cannotMeasure, helpStepDone, lowEnded, callRaised] as const;
