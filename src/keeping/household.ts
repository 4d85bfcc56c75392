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
  const hours = { ...hearerOf(r), ...quietOf(r) };
  if (r.problems.length > 0) return { ok: false, problems: r.problems };
  return { ok: true, events: [{ type: "household begun", household: { kind, country, emergencyNumber, ...hours } }] };
}

/** Left blank it is not known, and then nobody is counted on. */
function hearerOf(r: Reader): Pick<Household, "hearer"> {
  switch (r.raw("household.hearer")) {
    case "nobody":
      return { hearer: { who: "nobody" } };
    case "always":
      return { hearer: { who: "always" } };
    case "between":
      return { hearer: { who: "between", from: r.time("household.hearer.from"), until: r.time("household.hearer.until") } };
    default:
      return {};
  }
}

/** Both blank: the usual quiet hours. */
function quietOf(r: Reader): Pick<Household, "quietHours"> {
  const from = "household.quietHours.from";
  const until = "household.quietHours.until";
  return r.raw(from) === "" && r.raw(until) === "" ? {} : { quietHours: { from: r.time(from), until: r.time(until) } };
}

/** What the form of the household shows who set it up before. */
export function draftOfHousehold({ country, emergencyNumber, hearer, quietHours }: Household): Draft {
  return {
    "household.country": country,
    "household.emergencyNumber": emergencyNumber,
    ...(hearer ? { "household.hearer": hearer.who } : {}),
    ...(hearer?.who === "between" ? { "household.hearer.from": hearer.from, "household.hearer.until": hearer.until } : {}),
    ...(quietHours ? { "household.quietHours.from": quietHours.from, "household.quietHours.until": quietHours.until } : {}),
  };
}

/** The number known by everybody of the country; the keeper may type another. */
export const USUAL_EMERGENCY = { US: "911", UK: "999" } as const;
