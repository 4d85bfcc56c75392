// Is the newest reading of this walk high? Then no screen may call it good, whatever it was taken for.
import type { Ctx } from "#walk/context.ts";
import { isHigh } from "./ill.ts";

/** A card without a line for high readings: from here the ADA asks for a look at ketones. Our careful default, for words alone. */
const HIGH = { "mg/dL": 240, "mmol/L": 13.3 } as const;

export function isHighNow(c: Ctx): boolean {
  const { reading } = c.walk;
  if (reading?.word === "HI") return true;
  const glucose = reading?.glucose ?? null;
  if (glucose === null) return false;
  return c.card?.high ? isHigh(c, glucose) : glucose.value >= HIGH[glucose.unit];
}
