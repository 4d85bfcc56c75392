import * as z from "zod/mini";
import { localDate } from "./quantity.ts";

/** A pen as the keeper set it up. The mark is what fingers feel on it. */
export const pen = z.object({
  id: z.string(),
  person: z.string(),
  insulinId: z.string(),
  insulinName: z.string(),
  kind: z.enum(["mealtime", "long-acting", "premixed"]),
  cloudy: z.boolean(),
  /** "one rubber band", "no band": told by touch, never by colour alone. */
  mark: z.string(),
  /** Units one click adds. */
  unitsPerClick: z.enum(["0.5", "1", "2", "5"]),
  /** Units in it when it was opened; null when the keeper did not say. */
  unitsWhenOpened: z.nullable(z.number()),
  openedOn: z.nullable(localDate),
  /** From the pen's own leaflet, typed in, never inferred (leaflets differ: 10 to 56 days). */
  inUseDays: z.number().check(z.gt(0)),
  expiresOn: localDate,
});
export type Pen = z.infer<typeof pen>;
