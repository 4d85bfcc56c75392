// The dose card: the clinician's dosing instructions for one person, as a keeper typed them in.
// Nothing is implied: where two clinics teach differently, the difference is a field (ADA, UK and Canadian teaching differ on most of them).
// Dosing fields are null when the clinic left them blank: blank means "stop and ask". Care fields are null when blank: blank means the named default of rules/card/care.ts.
import * as z from "zod/mini";
import { ketoneRule, sickDayRules } from "./ill-rules.ts";
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

/** "as printed": a number between two rows is a hole and nothing is told. "up to the next": a row reaches up to where the next begins. */
const bandEdges = z.enum(["as printed", "up to the next"]);

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

/** Units added by bands of glucose: a table for the correction alone, beside food that is counted in another way. */
export const correctionTable = z.object({
  bands: z.array(band).check(z.minLength(1)),
  edges: bandEdges,
});
export type CorrectionTable = z.infer<typeof correctionTable>;

/** A correction is a rule or a table, never both. Left out: none. */
const added = { correction: z.nullable(correctionRule), table: z.optional(correctionTable) };
const parts = z.enum(["none", "tenths", "whole"]);

/** Columns of a grid, in grams of carbohydrate; null is open. Both edges belong to the column. */
export const gridColumn = z.object({ from: z.nullable(z.number()), to: z.nullable(z.number()) });
export type GridColumn = z.infer<typeof gridColumn>;
/** units: one cell for each column, in the order of the columns. */
export const gridRow = z.object({
  from: z.nullable(z.number()),
  to: z.nullable(z.number()),
  units: z.array(unitsSchema).check(z.minLength(1)),
  call: z.boolean(),
});

export const mealRule = z.discriminatedUnion("kind", [
  /** The same units each time this meal is eaten, with a correction or without. */
  z.object({
    kind: z.literal("fixed units"),
    units: unitsSchema,
    correction: z.optional(correctionRule),
    table: z.optional(correctionTable),
    roundParts: z.optional(parts),
  }),
  /** Units by bands of glucose. The rows hold food and correction together; foodOnly names the part that is for the food. */
  z.object({
    kind: z.literal("bands"),
    bands: z.array(band).check(z.minLength(1)),
    edges: bandEdges,
    foodOnly: z.nullable(unitsSchema),
  }),
  /** Units by rows of glucose and columns of carbohydrate. foodOnly: the cells for the food alone, one a column. */
  z.object({
    kind: z.literal("grid"),
    columns: z.array(gridColumn).check(z.minLength(1)),
    columnEdges: bandEdges,
    rows: z.array(gridRow).check(z.minLength(1)),
    edges: bandEdges,
    foodOnly: z.nullable(z.array(unitsSchema)),
  }),
  /** Units for each serving, plus a correction. */
  z.object({
    kind: z.literal("servings"),
    unitsPerServing: z.number().check(z.gt(0)),
    /** 15 on most lists; some clinics count 10 or 12. */
    gramsPerServing: z.number().check(z.gt(0)),
    /** A meal of 40 g is 2.67 servings of 15: counted exactly, or to the nearest half or whole serving. */
    count: z.enum(["exactly", "nearest half", "nearest whole"]),
    ...added,
    roundParts: parts,
  }),
  /** Grams one unit covers, plus a correction. */
  z.object({
    kind: z.literal("ratio"),
    gramsPerUnit: z.number().check(z.gt(0)),
    ...added,
    /** Rounding of each part before they are added. */
    roundParts: parts,
  }),
  /** Nothing for the food. */
  z.object({ kind: z.literal("correction only"), ...added, roundParts: parts }),
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

/** What follows from each kind stands in rules/card/insulin-kind.ts. */
export const insulinKind = z.enum(["rapid analogue", "regular", "premixed", "intermediate", "long-acting"]);
export type InsulinKind = z.infer<typeof insulinKind>;

/** One dose of background insulin a day, by the clock, whatever is eaten. */
export const backgroundDose = z.object({
  insulin: z.object({ id: z.string(), name: z.string(), unitsPerMl: z.number().check(z.gt(0)), kind: insulinKind }),
  units: unitsSchema,
  at: clockTime,
  /** Minutes after it in which another counts as a second one; null = the clinic left it blank. */
  windowMinutes: z.nullable(z.number().check(z.gte(0))),
});
export type BackgroundDose = z.infer<typeof backgroundDose>;

const text = z.string().check(z.maxLength(600));
const situation = z.enum(["as usual", "food part only", "ask"]);

export const doseCard = z.object({
  person: z.string(),
  /**
   * Generic name of the mealtime insulin and its concentration in units per mL. The id ties pens to the card.
   * kind: left out on cards that were signed before it was asked for; those are read as they always were.
   */
  insulin: z.object({ id: z.string(), name: z.string(), unitsPerMl: z.number().check(z.gt(0)), kind: z.optional(insulinKind) }),
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
  /** Background doses by the clock. Left out: none on this card. */
  background: z.optional(z.array(backgroundDose)),
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
  /** Left out where the clinic left them blank, and on cards that were signed before they were asked for: then the clinic is called. */
  ketones: z.optional(ketoneRule),
  sickDay: z.optional(sickDayRules),
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
    /** Minutes between readings while insulin is in and no meal came. Left out on cards that were signed before it was asked for. */
    watchMinutes: z.optional(z.nullable(z.number())),
  }),
  /** The card's own words for what went wrong; null = call the clinic now. */
  advice: z.object({
    tooMuch: z.nullable(text),
    wrongInsulin: z.nullable(text),
    missed: z.nullable(text),
    /** The meal is skipped: left out on cards that were signed before it was asked for. */
    mealSkipped: z.optional(z.nullable(text)),
    partDose: z.nullable(text),
    cannotEat: z.nullable(text),
    halfEaten: z.nullable(text),
    ill: z.nullable(text),
  }),
  clinic: z.object({ name: z.string(), phone: z.string() }),
  /** Units of a whole usual day, long-acting included, where the paper has it. Only to ask whether a ratio was typed right. */
  unitsADay: z.optional(z.number().check(z.gt(0))),
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
