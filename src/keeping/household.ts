// The household's own numbers: written once at the beginning, and again whenever a keeper changes them.
import type { Happened } from "#events/happened.ts";
import type { Household } from "#events/person.ts";
import type { Draft, Problem } from "./problem.ts";
import { Reader } from "./reader.ts";

export type HouseholdSet = { ok: true; events: Happened[] } | { ok: false; problems: readonly Problem[] };

/**
 * A new "household begun" also makes the log begin to be clear anew: until the window has passed, "taken already?" is asked. That is the careful side.
 */
export function setHousehold(draft: Draft, kind: Household["kind"]): HouseholdSet {
  const r = new Reader(draft);
  const country = r.choice("household.country", ["US", "UK"]);
  const emergencyNumber = r.phone("household.emergencyNumber");
  if (r.problems.length > 0) return { ok: false, problems: r.problems };
  return { ok: true, events: [{ type: "household begun", household: { kind, country, emergencyNumber } }] };
}

/** The number known by everybody of the country; the keeper may type another. */
export const USUAL_EMERGENCY = { US: "911", UK: "999" } as const;
