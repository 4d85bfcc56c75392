// A number of insulin units as somebody gave it.
import { type Units, units } from "#events/quantity.ts";

export type UnitsCheck = { ok: true; units: Units } | { ok: false; why: "empty" | "not a number" | "off the pen's step" | "too many" };

/** Pens for home use dial up to 80 units, a few up to 160 (from memory); a larger number is a slip of the finger. */
const MOST = 160;

/** text: digits with at most one decimal place, point or comma. step: units one click adds. zero is a number here: an empty window shows it. */
export function checkUnits(text: string, step: "0.5" | "1" | "2" | "5"): UnitsCheck {
  const clean = text.trim().replace(",", ".");
  if (clean === "") return { ok: false, why: "empty" };
  if (!/^\d{1,4}(\.\d)?$/.test(clean)) return { ok: false, why: "not a number" };
  const tenths = Math.round(Number(clean) * 10);
  if (tenths > MOST * 10) return { ok: false, why: "too many" };
  if (tenths % Math.round(Number(step) * 10) !== 0) return { ok: false, why: "off the pen's step" };
  return { ok: true, units: units(tenths / 10) };
}
