import * as z from "zod/mini";
import { glucoseUnit } from "./quantity.ts";
import { bodyMeasures, region } from "./spot.ts";

/** Who injects, as a keeper set them up. */
export const person = z.object({
  id: z.string(),
  name: z.string().check(z.minLength(1), z.maxLength(40)),
  /** An own shape, so that the right person is found without reading. */
  shape: z.enum(["circle", "square", "triangle", "star"]),
  language: z.enum(["en-US", "en-GB"]),
  glucoseUnit,
  /** Where this person's readings come from; a finger where the keeper did not say. */
  readsFrom: z.optional(z.enum(["finger", "sensor"])),
  /** How the dial is known: read with the eyes, or counted in clicks alone (then twice, or by a helper). */
  dialBy: z.enum(["reads", "counts twice", "helper"]),
  /** Pen to injection only with somebody at the elbow (failing memory). */
  helperOnly: z.boolean(),
  /** The person gives their own number from the paper card before the tablet tells its own. */
  sayFirst: z.boolean(),
  /** Outside this band a reading is asked for a second time. In the person's unit. */
  usualBand: z.object({ low: z.number(), high: z.number() }),
  usualMeals: z.array(z.object({ name: z.string(), meal: z.enum(["breakfast", "lunch", "dinner", "snack"]), grams: z.number() })),
  body: bodyMeasures,
  leftOutRegions: z.array(region),
  /** Ids of quick sugars that the clinic bars, or that are not in this kitchen. */
  leftOutSugars: z.optional(z.array(z.string())),
  /** Steps of this person's own glucagon kit, one action each, as a keeper typed them from its leaflet. Left out: there is none. */
  glucagonSteps: z.optional(z.array(z.string().check(z.minLength(1), z.maxLength(90)))),
});
export type Person = z.infer<typeof person>;

/** The household's own numbers to call; always shown and said digit by digit. */
export const household = z.object({
  kind: z.enum(["demo", "home"]),
  emergencyNumber: z.string().check(z.minLength(2), z.maxLength(20)),
  country: z.enum(["US", "UK"]),
});
export type Household = z.infer<typeof household>;
