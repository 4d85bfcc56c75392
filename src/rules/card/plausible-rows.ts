// A typed band table, looked over row by row.
import type { Band, MealName } from "#events/card.ts";
import type { GlucoseUnit } from "#events/quantity.ts";
import { exact, minus, toNumber } from "#rules/glucose/exact.ts";
import type { Alarm } from "./alarm.ts";
import { type BandRule, inOrder } from "./band-row.ts";

/** The smallest step a meter shows. */
const SHOWN = { "mg/dL": 1, "mmol/L": 0.1 } as const;

/** Exact, so that the hole from 7.8 to 7.9 is 0.1 wide and not a hair more. */
const difference = (a: number, b: number): number => toNumber(minus(exact(a), exact(b)));

const pairs = (rows: readonly Band[]): (readonly [Band, Band])[] =>
  rows.slice(1).flatMap((row, i) => {
    const before = rows[i];
    return before ? [[before, row] as const] : [];
  });

function edges(meal: MealName, rule: BandRule, unit: GlucoseUnit): Alarm[] {
  const alarms: Alarm[] = [];
  for (const { from, to } of rule.bands)
    if (from !== null && to !== null && from > to) alarms.push({ alarm: "row is upside down", meal, from, to });
  const upToNext = rule.edges === "up to the next";
  for (const [before, row] of pairs(inOrder(rule.bands))) {
    // An open end is settled by "up to the next", and is an overlap on a card that is read as printed.
    const end = before.to ?? (upToNext && before.from !== row.from ? null : Number.POSITIVE_INFINITY);
    const begin = row.from ?? Number.NEGATIVE_INFINITY;
    if (end === null) continue;
    if (begin < end || (begin === end && !upToNext)) alarms.push({ alarm: "rows overlap", meal, from: row.from, to: before.to });
    // As printed even 180 to 181 is a hole; "up to the next" closes a hole that no meter can show.
    else if (begin > end && difference(begin, end) > (upToNext ? SHOWN[unit] : 0))
      alarms.push({ alarm: "gap between rows", meal, after: end, before: begin });
  }
  return alarms;
}

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
  return (lower + upper) / 2;
}

/** Derived rules: doses do not fall; a step above twice the middle step is suspicious; ten times a neighbour is a slipped digit. */
function steps(meal: MealName, rule: BandRule): Alarm[] {
  const all = pairs(inOrder(rule.bands));
  const rises = all.map(([before, row]) => difference(row.units, before.units)).filter((rise) => rise > 0);
  const usual = median(rises);
  return all.flatMap(([before, row]): Alarm[] => {
    const change = { meal, before: before.units, units: row.units };
    const [small, large] = row.units < before.units ? [row.units, before.units] : [before.units, row.units];
    const found: Alarm[] = row.units < before.units ? [{ alarm: "dose falls as glucose rises", ...change }] : [];
    if (small > 0 && large >= small * 10) found.push({ alarm: "tenfold step", ...change });
    else if (rises.length >= 3 && row.units - before.units > usual * 2) found.push({ alarm: "large step", ...change });
    return found;
  });
}

export function rowAlarms(meal: MealName, rule: BandRule, unit: GlucoseUnit): Alarm[] {
  const { foodOnly } = rule;
  const above = foodOnly !== null && rule.bands.every((row) => row.units < foodOnly);
  return [
    ...edges(meal, rule, unit),
    ...steps(meal, rule),
    ...(above ? [{ alarm: "food-only above every row", meal, units: foodOnly } as const] : []),
  ];
}
