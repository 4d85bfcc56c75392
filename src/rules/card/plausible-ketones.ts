// Slips in what a card says about ketones. Published numbers: rules/glucose/guidelines.ts.
import type { DoseCard } from "#events/card.ts";
import { KETONE_GUIDELINES } from "#rules/glucose/guidelines.ts";
import { ketoneLineOf } from "#rules/glucose/ketones.ts";
import type { Alarm } from "./alarm.ts";

/** Around the numbers that sheets print (240 mg/dL to 15 mmol/L), wide on purpose. */
const USUAL_FROM = { "mg/dL": [180, 360], "mmol/L": [10, 20] } as const;
/** The highest number that a published sheet names, and some room. */
const HIGHEST_LINE = 5;
/** Moderate on a strip. */
const STRIP_CALLS_AT = 3;

export function ketoneAlarms(card: DoseCard): Alarm[] {
  const rule = card.ketones;
  if (!rule) return [];
  const { from, test, lines } = rule;
  const [least, most] = USUAL_FROM[card.glucoseUnit];
  const blood = test === "blood";
  const callsAt = blood ? Math.max(...KETONE_GUIDELINES.flatMap(({ callAt }) => callAt ?? [])) : STRIP_CALLS_AT;
  const called = ketoneLineOf(rule, callsAt);
  return [
    ...(from !== null && (from < least || from > most) ? [{ alarm: "ketone check unusual", from } as const] : []),
    ...lines.flatMap((line): Alarm[] => (blood && line.from > HIGHEST_LINE ? [{ alarm: "ketone line unusual", from: line.from }] : [])),
    ...lines.slice(1).flatMap((line, i): Alarm[] => {
      const before = lines[i]?.from ?? line.from;
      return line.from <= before ? [{ alarm: "ketone lines out of order", before, from: line.from, test }] : [];
    }),
    ...(called === null || called.call === "no" ? [{ alarm: "no call at high ketones", from: callsAt, test } as const] : []),
  ];
}
