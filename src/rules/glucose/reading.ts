// A typed reading, checked before anything is done with it. Mistakes 2 and 3 of the list: a slip of the finger, the wrong unit.
import type { Glucose, GlucoseUnit } from "#events/quantity.ts";

export type ReadingRefused =
  | "empty"
  | "not a number"
  | "too many decimals"
  | "zero"
  | "too high"
  | "too low"
  | "fits only the other unit"
  | "word HI"
  | "word LO";

export type CheckedReading =
  | { readonly ok: true; readonly glucose: Glucose }
  /** Possible in both units: the unit is asked aloud. */
  | { readonly ok: "ask unit"; readonly glucose: Glucose }
  | { readonly ok: false; readonly why: ReadingRefused };

/** What most meters can show; outside it they show a word. The scale of the risk-index papers of the 1990s, 1.1 to 33.3 mmol/L. */
export const PLAUSIBLE = { "mg/dL": { least: 20, most: 600 }, "mmol/L": { least: 1.1, most: 33.3 } } as const;

/** Meters show mmol/L to one decimal and mg/dL without any (usual practice, from memory). */
const DECIMALS = { "mg/dL": 0, "mmol/L": 1 } as const;

function fits(value: number, decimals: number, unit: GlucoseUnit): boolean {
  const { least, most } = PLAUSIBLE[unit];
  return decimals <= DECIMALS[unit] && value >= least && value <= most;
}

/** From 20 to 33.3 both units are possible, a whole number or not. */
const inBothRanges = (value: number): boolean => value >= PLAUSIBLE["mg/dL"].least && value <= PLAUSIBLE["mmol/L"].most;

/** Takes a decimal comma, spaces around, and the words HI and LO as meters print them, "0Hi" in old downloads too. */
export function checkReading(text: string, unit: GlucoseUnit): CheckedReading {
  const typed = text.trim();
  if (typed === "") return { ok: false, why: "empty" };
  const word = /^0?(hi|lo)$/i.exec(typed)?.[1]?.toUpperCase();
  if (word) return { ok: false, why: word === "HI" ? "word HI" : "word LO" };
  const number = /^(\d+)(?:[.,](\d+))?$/.exec(typed);
  if (!number) return { ok: false, why: "not a number" };

  const [, whole = "", after = ""] = number;
  const value = Number(`${whole}.${after}`);
  const decimals = after.length;
  if (value === 0) return { ok: false, why: "zero" };
  if (decimals > DECIMALS["mmol/L"]) return { ok: false, why: "too many decimals" };

  if (fits(value, decimals, unit)) return { ok: inBothRanges(value) ? "ask unit" : true, glucose: { value, unit } };
  if (fits(value, decimals, unit === "mg/dL" ? "mmol/L" : "mg/dL")) return { ok: false, why: "fits only the other unit" };
  if (value > PLAUSIBLE[unit].most) return { ok: false, why: "too high" };
  if (value < PLAUSIBLE[unit].least) return { ok: false, why: "too low" };
  return { ok: false, why: "too many decimals" };
}
