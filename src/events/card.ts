// The dose card: the clinician's dosing instructions for one person, as a keeper typed them in.
// Nothing is implied: where two clinics teach differently, the difference is a field (ADA, UK and Canadian teaching differ on most of them).
// Dosing fields are null when the clinic left them blank: blank means "stop and ask". Care fields are null when blank: blank means the named default of rules/card/care.ts.
import * as z from "zod/mini";
import { clockTime, glucoseUnit, localDate, unitsSchema } from "./quantity.ts";

export const mealName = z.enum(["breakfast", "lunch", "dinner", "snack"]);
export type MealName = z.infer<typeof mealName>;

/** A row of a band table. Edges are in the card's glucose unit, as printed; null is open. Both edges belong to the band. */
export const band = z.object({
  from: z.nullable(z.number()),
  to: z.nullable(z.number()),
  units: unitsSchema,
  /** The row also says to telephone the clinic. */
  call: z.boolean(),
});
export type Band = z.infer<typeof band>;

/** Units per glucose above a target. */
export const correctionRule = z.object({
  /** A single target has low = high. Above high the difference to high counts, below low the difference to low. */
  target: z.object({ low: z.number(), high: z.number() }),
  /** Glucose one unit lowers, in the card's unit. */
  perUnit: z.number().check(z.gt(0)),
  /** "each started step": 1.33 steps give 2 units. */
  mode: z.enum(["linear", "nearest", "down", "each started step"]),
  /** May a reading below the target take units off the food part? */
  mayReduce: z.boolean(),
});
export type CorrectionRule = z.infer<typeof correctionRule>;

export const mealRule = z.discriminatedUnion("kind", [
  /** The same units each time this meal is eaten. */
  z.object({ kind: z.literal("fixed units"), units: unitsSchema }),
  /** Units by bands of glucose. The rows hold food and correction together; foodOnly names the part that is for the food. */
  z.object({
    kind: z.literal("bands"),
    bands: z.array(band).check(z.minLength(1)),
    /** "as printed": a reading between two rows is a hole and nothing is told. "up to the next": a row reaches up to where the next begins. */
    edges: z.enum(["as printed", "up to the next"]),
    foodOnly: z.nullable(unitsSchema),
  }),
  /** Grams one unit covers, plus a correction. */
  z.object({
    kind: z.literal("ratio"),
    gramsPerUnit: z.number().check(z.gt(0)),
    correction: z.nullable(correctionRule),
    /** Rounding of each part before they are added. */
    roundParts: z.enum(["none", "tenths", "whole"]),
  }),
]);
export type MealRule = z.infer<typeof mealRule>;

/** How much of an earlier dose still counts. Published curves: rules/card/on-board.ts. */
export const onBoardRule = z.discriminatedUnion("model", [
  z.object({ model: z.literal("not used") }),
  z.object({ model: z.literal("linear"), hours: z.number().check(z.gt(0)) }),
  z.object({ model: z.literal("two compartments"), minutes: z.number().check(z.gt(0)) }),
  z.object({ model: z.literal("triangle"), peakMinutes: z.number().check(z.gt(0)), endMinutes: z.number().check(z.gt(0)) }),
]);
export type OnBoardRule = z.infer<typeof onBoardRule>;

/** When the food belongs to the insulin: before eating, with the first bite, or after eating. Minutes after the injection. */
export const timingRule = z.object({
  when: z.enum(["before eating", "with the first bite", "after eating"]),
  earliestMinutes: z.number().check(z.gte(0), z.lte(120)),
  latestMinutes: z.number().check(z.gte(0), z.lte(120)),
});

const text = z.string().check(z.maxLength(600));
const situation = z.enum(["as usual", "food part only", "ask"]);

export const doseCard = z.object({
  person: z.string(),
  /** Generic name of the mealtime insulin and its concentration in units per mL. The id ties pens to the card. */
  insulin: z.object({ id: z.string(), name: z.string(), unitsPerMl: z.number().check(z.gt(0)) }),
  glucoseUnit,
  /** Does the clinic count fibre (total, as US labels) or not (available, as UK labels)? */
  carbohydrate: z.enum(["total", "available"]),
  /** A meal that is missing has no dose on this card. */
  meals: z.object({
    breakfast: z.nullable(mealRule),
    lunch: z.nullable(mealRule),
    dinner: z.nullable(mealRule),
    snack: z.nullable(mealRule),
  }),
  /** Rounding of the final dose to the pen's step. */
  rounding: z.object({ step: z.enum(["0.5", "1", "2", "5"]), direction: z.enum(["nearest, half up", "down"]) }),

  // Dosing fields: null = the clinic left it blank = stop and ask.
  largestDose: z.nullable(unitsSchema),
  /** Minutes after rapid-acting insulin in which no correction is told. */
  spacingMinutes: z.nullable(z.number().check(z.gte(0))),
  /** Minutes after a mealtime dose in which another counts as a second one. */
  windowMinutes: z.nullable(z.number().check(z.gte(0))),
  onBoard: z.nullable(onBoardRule),
  /** Between these times no correction is told. Blank: as "no correction" from 21:00 to 05:00 (ADA older-adult figure). */
  bedtime: z.nullable(z.object({ from: clockTime, until: clockTime, correction: z.boolean() })),
  afterExercise: z.nullable(situation),
  afterLow: z.nullable(z.enum(["as usual", "food part only", "inject after eating", "ask"])),

  /** A reading at or below (or only below) this is a low. */
  low: z.object({ value: z.number().check(z.gt(0)), counts: z.enum(["at or below", "below"]) }),
  /** At or above this the card's own high advice is said. */
  high: z.nullable(z.object({ value: z.number().check(z.gt(0)), advice: text })),
  timing: timingRule,
  /** May a dose given by telephone by a named caller be used by the person alone? */
  telephonedDose: z.enum(["anyone", "with a helper only", "never"]),
  /** Regions kept for a meal; null = any. */
  regions: z.nullable(z.record(mealName, z.enum(["belly", "thigh", "arm", "buttock"]))),

  // Care fields: null = the named default.
  care: z.object({
    washSeconds: z.nullable(z.number()),
    readingAgeMinutes: z.nullable(z.number()),
    primeUnits: z.nullable(z.number()),
    dryingSeconds: z.nullable(z.number()),
    holdSeconds: z.nullable(z.number()),
    recheckMinutes: z.nullable(z.number()),
    treatGrams: z.nullable(z.number()),
    restDays: z.nullable(z.number()),
    lastSpotMm: z.nullable(z.number()),
    navelMm: z.nullable(z.number()),
    askEatenMinutes: z.nullable(z.number()),
  }),
  /** The card's own words for what went wrong; null = call the clinic now. */
  advice: z.object({
    tooMuch: z.nullable(text),
    wrongInsulin: z.nullable(text),
    missed: z.nullable(text),
    partDose: z.nullable(text),
    cannotEat: z.nullable(text),
    halfEaten: z.nullable(text),
    ill: z.nullable(text),
  }),
  clinic: z.object({ name: z.string(), phone: z.string() }),
  validFrom: localDate,
  reviewBy: z.nullable(localDate),
  validUntil: z.nullable(localDate),
});
export type DoseCard = z.infer<typeof doseCard>;

/** How a card came into force. A card without this is never used (promise 2). */
export const signature = z.object({
  keeper: z.string(),
  keeperName: z.string(),
  signedOn: localDate,
  typedTwice: z.literal(true),
  readBack: z.literal(true),
});
export type Signature = z.infer<typeof signature>;
