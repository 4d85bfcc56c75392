import * as z from "zod/mini";
import { mealName } from "./card.ts";
import { clockTime, glucoseUnit } from "./quantity.ts";
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
  /**
   * When each meal is usually eaten, as a keeper typed it; a meal left out has no hours and is never asked about. With the person and not on the
   * card: it is a habit of the house, and changing it must not ask for another signature under the dosing.
   */
  mealHours: z.optional(z.array(z.object({ meal: mealName, from: clockTime, until: clockTime }))),
  /** When a reading is due besides those before meals, as the clinic asked for it: at bedtime, say. */
  readingTimes: z.optional(z.array(clockTime)),
  body: bodyMeasures,
  leftOutRegions: z.array(region),
  /** Ids of quick sugars that the clinic bars, or that are not in this kitchen. */
  leftOutSugars: z.optional(z.array(z.string())),
  /** Steps of this person's own glucagon kit, one action each, as a keeper typed them from its leaflet. Left out: there is none. */
  glucagonSteps: z.optional(z.array(z.string().check(z.minLength(1), z.maxLength(90)))),
});
export type Person = z.infer<typeof person>;

/** Hours of the day that may cross midnight; from is inside, until is not. */
const span = z.object({ from: clockTime, until: clockTime });

/** Who in the house can hear a call of the tablet. */
const hearer = z.discriminatedUnion("who", [
  z.object({ who: z.literal("nobody") }),
  z.object({ who: z.literal("always") }),
  z.object({ who: z.literal("between"), from: clockTime, until: clockTime }),
]);
export type Hearer = z.infer<typeof hearer>;

/** The household's own numbers to call; always shown and said digit by digit. */
export const household = z.object({
  kind: z.enum(["demo", "home"]),
  emergencyNumber: z.string().check(z.minLength(2), z.maxLength(20)),
  country: z.enum(["US", "UK"]),
  /** No reminder sounds in these hours. Left out: rules/time/house-hours.ts. */
  quietHours: z.optional(span),
  /** Left out: not known, and taken for nobody. */
  hearer: z.optional(hearer),
});
export type Household = z.infer<typeof household>;
