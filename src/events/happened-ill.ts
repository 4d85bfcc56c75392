// Facts of an ill day and of a reading that is high.
import * as z from "zod/mini";
import { via } from "./told.ts";

export const illBecause = z.enum(["feels ill", "high reading", "HI again"]);
export type IllBecause = z.infer<typeof illBecause>;

const illBegan = z.object({ type: z.literal("ill began"), because: illBecause });
const dangerAnswered = z.object({ type: z.literal("danger signs answered"), any: z.boolean() });
/** value: mmol/L of blood, or the place on the strip (events/ill-rules.ts). */
const ketonesRead = z.object({
  type: z.literal("ketones read"),
  test: z.enum(["blood", "urine words", "urine plus signs"]),
  value: z.number().check(z.gte(0)),
  via,
  helper: z.nullable(z.string()),
});
const cannotTestKetones = z.object({ type: z.literal("cannot test ketones") });
/** Something of the card was heard: its words for this reading, its line for these ketones, or so many of the sick-day rules. */
const illHeard = z.object({ type: z.literal("ill advice heard"), what: z.enum(["high", "ketones", "rule"]), rules: z.number() });
const illEnded = z.object({ type: z.literal("ill ended") });

export const illEvents = [illBegan, dangerAnswered, ketonesRead, cannotTestKetones, illHeard, illEnded] as const;
