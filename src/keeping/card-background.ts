// Background doses by the clock, as they were typed.
import type { BackgroundDose, InsulinKind } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { UNITS } from "./card-spans.ts";
import { insulinId } from "./insulin.ts";
import type { Reader } from "./reader.ts";

/** Two a day are common, four already rare (from memory). */
export const MOST_BACKGROUND = 4;
export const KINDS: readonly [InsulinKind, ...InsulinKind[]] = ["rapid analogue", "regular", "premixed", "intermediate", "long-acting"];
export const STRENGTH = { least: 40, most: 500, decimals: 0 };
/** Cards print hours; the card's shape holds minutes. */
export const HOURS = { least: 0, most: 24, decimals: 2 };

export function hoursInMinutes(r: Reader, field: string): number | null {
  const hours = r.blankOrNumber(field, HOURS);
  return hours === null ? null : Math.round(hours * 60);
}

/** A dose in which neither name nor units nor time were typed is none. Left out of the card where there is none at all. */
export function backgroundOf(r: Reader): { background?: BackgroundDose[] } {
  const doses = Array.from({ length: MOST_BACKGROUND }, (_, i) => `background.${i}`).filter((at) =>
    ["insulin.name", "units", "at"].some((name) => r.raw(`${at}.${name}`) !== ""),
  );
  if (doses.length === 0) return {};
  return {
    background: doses.map((at): BackgroundDose => {
      const name = r.text(`${at}.insulin.name`, 60);
      const unitsPerMl = r.number(`${at}.insulin.unitsPerMl`, STRENGTH);
      return {
        insulin: { id: insulinId(name, unitsPerMl), name, unitsPerMl, kind: r.choice(`${at}.insulin.kind`, KINDS) },
        units: units(r.number(`${at}.units`, UNITS)),
        at: r.time(`${at}.at`),
        windowMinutes: hoursInMinutes(r, `${at}.windowMinutes`),
      };
    }),
  };
}
