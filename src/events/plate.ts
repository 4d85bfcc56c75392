// The plate: what will be eaten and its carbohydrate.
import * as z from "zod/mini";
import { gramsSchema } from "./quantity.ts";

/** One line of the plate: portions of a food of the table. grams is for all portions, in the card's way of counting. */
export const plateLine = z.object({
  food: z.string(),
  name: z.string(),
  portion: z.string(),
  portions: z.number().check(z.gt(0), z.lte(20)),
  grams: gramsSchema,
});
export type PlateLine = z.infer<typeof plateLine>;

export const plateHow = z.enum(["foods", "grams", "servings", "usual meal", "fixed meal"]);
export type PlateHow = z.infer<typeof plateHow>;
