// Places on the body. Left and right are always the person's own.
import * as z from "zod/mini";

export const region = z.enum(["belly", "thigh", "arm", "buttock"]);
export type Region = z.infer<typeof region>;
export const side = z.enum(["left", "right"]);
export type Side = z.infer<typeof side>;

/**
 * A spot in millimetres on its region.
 * belly: outMm from the navel's middle line towards the side, downMm below the navel (negative: above).
 * thigh: downMm below the groin, outMm outwards from the front middle line of the thigh.
 * arm: downMm below the shoulder, outMm towards the back from the outer middle line.
 * buttock: downMm below the top of the hip bone, outMm outwards from the middle of the buttock.
 */
export const spot = z.object({ region, side, outMm: z.number(), downMm: z.number() });
export type Spot = z.infer<typeof spot>;

/** A place that is never used, or rests: the navel is a rule of its own and needs no mark. */
export const noGo = z.object({
  id: z.string(),
  spot,
  radiusMm: z.number().check(z.gt(0)),
  kind: z.enum(["scar", "mole", "lump", "sore", "other"]),
});
export type NoGo = z.infer<typeof noGo>;

/** A few measures that fit the outline to the person, in millimetres. */
export const bodyMeasures = z.object({
  bellyWidthMm: z.number().check(z.gte(150), z.lte(900)),
  bellyHeightMm: z.number().check(z.gte(80), z.lte(500)),
  thighLengthMm: z.number().check(z.gte(200), z.lte(700)),
  armLengthMm: z.number().check(z.gte(150), z.lte(600)),
  /** One finger of this person, and one hand across the four fingers and the palm's edge. */
  fingerMm: z.number().check(z.gte(10), z.lte(30)),
  handMm: z.number().check(z.gte(50), z.lte(130)),
});
export type BodyMeasures = z.infer<typeof bodyMeasures>;
