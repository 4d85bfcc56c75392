// A typed table, looked over row by row.
import type { Band, CorrectionTable, MealName, MealRule } from "#events/card.ts";
import type { GlucoseUnit, Units } from "#events/quantity.ts";
import { exact, minus, toNumber } from "#rules/glucose/exact.ts";
import type { Alarm } from "./alarm.ts";
import { type BandRule, inOrder, type Span, type Table } from "./band-row.ts";

/** The smallest step a meter shows. */
const SHOWN = { "mg/dL": 1, "mmol/L": 0.1 } as const;
/** Carbohydrate is counted in whole grams, here and there in tenths. */
const GRAM = 1;

/** Exact, so that the hole from 7.8 to 7.9 is 0.1 wide and not a hair more. */
const difference = (a: number, b: number): number => toNumber(minus(exact(a), exact(b)));

function pairs<T>(rows: readonly T[]): (readonly [T, T])[] {
  return rows.slice(1).flatMap((row, i) => {
    const before = rows[i];
    return before === undefined ? [] : [[before, row] as const];
  });
}

type Fault =
  | { readonly fault: "upside down"; readonly from: number; readonly to: number }
  | { readonly fault: "gap"; readonly after: number; readonly before: number }
  | { readonly fault: "overlap"; readonly from: number | null; readonly to: number | null };

/** shown: the smallest step in which the number comes. */
function edgeFaults({ bands, edges }: Table, shown: number): Fault[] {
  const faults: Fault[] = [];
  for (const { from, to } of bands) if (from !== null && to !== null && from > to) faults.push({ fault: "upside down", from, to });
  const upToNext = edges === "up to the next";
  for (const [before, row] of pairs(inOrder(bands))) {
    // An open end is settled by "up to the next", and is an overlap on a card that is read as printed.
    const end = before.to ?? (upToNext && before.from !== row.from ? null : Number.POSITIVE_INFINITY);
    const begin = row.from ?? Number.NEGATIVE_INFINITY;
    if (end === null) continue;
    if (begin < end || (begin === end && !upToNext)) faults.push({ fault: "overlap", from: row.from, to: before.to });
    // As printed even 180 to 181 is a hole; "up to the next" closes a hole that no meter can show.
    else if (begin > end && difference(begin, end) > (upToNext ? shown : 0)) faults.push({ fault: "gap", after: end, before: begin });
  }
  return faults;
}

const ROW = { "upside down": "row is upside down", gap: "gap between rows", overlap: "rows overlap" } as const;
const COLUMN = { "upside down": "column is upside down", gap: "gap between columns", overlap: "columns overlap" } as const;

function asAlarm(meal: MealName, names: typeof ROW | typeof COLUMN, found: Fault): Alarm {
  switch (found.fault) {
    case "upside down":
      return { alarm: names["upside down"], meal, from: found.from, to: found.to };
    case "gap":
      return { alarm: names.gap, meal, after: found.after, before: found.before };
    case "overlap":
      return { alarm: names.overlap, meal, from: found.from, to: found.to };
  }
}

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
  return (lower + upper) / 2;
}

interface Place {
  readonly meal: MealName;
  readonly column?: number;
}
interface Row extends Span {
  readonly units: Units;
}

const tenfold = (a: number, b: number): boolean => Math.min(a, b) > 0 && Math.max(a, b) >= Math.min(a, b) * 10;

/** Derived rules: doses do not fall; a step above twice the middle step is suspicious; ten times a neighbour is a slipped digit. */
function steps(place: Place, rows: readonly Row[]): Alarm[] {
  const all = pairs(inOrder(rows));
  const rises = all.map(([before, row]) => difference(row.units, before.units)).filter((rise) => rise > 0);
  const usual = median(rises);
  return all.flatMap(([before, row]): Alarm[] => {
    const change = { ...place, before: before.units, units: row.units };
    const found: Alarm[] = row.units < before.units ? [{ alarm: "dose falls as glucose rises", ...change }] : [];
    if (tenfold(row.units, before.units)) found.push({ alarm: "tenfold step", ...change });
    else if (rises.length >= 3 && row.units - before.units > usual * 2) found.push({ alarm: "large step", ...change });
    return found;
  });
}

function foodOnlyAbove(place: Place, foodOnly: Units | null | undefined, rows: readonly Row[]): Alarm[] {
  const above = foodOnly !== null && foodOnly !== undefined && rows.every((row) => row.units < foodOnly);
  return above ? [{ alarm: "food-only above every row", ...place, units: foodOnly }] : [];
}

export function rowAlarms(meal: MealName, rule: BandRule | CorrectionTable, unit: GlucoseUnit): Alarm[] {
  const foodOnly = "foodOnly" in rule ? rule.foodOnly : null;
  return [
    ...edgeFaults(rule, SHOWN[unit]).map((found) => asAlarm(meal, ROW, found)),
    ...steps({ meal }, rule.bands),
    ...foodOnlyAbove({ meal }, foodOnly, rule.bands),
  ];
}

/** Along a row, a larger meal never has fewer units. */
function acrossColumns(meal: MealName, cells: readonly Units[]): Alarm[] {
  return pairs(cells).flatMap(([before, units]): Alarm[] => [
    ...(units < before ? [{ alarm: "dose falls as the meal grows", meal, before, units } as const] : []),
    ...(tenfold(before, units) ? [{ alarm: "tenfold step between columns", meal, before, units } as const] : []),
  ]);
}

export function gridAlarms(meal: MealName, rule: Extract<MealRule, { kind: "grid" }>, unit: GlucoseUnit): Alarm[] {
  const order = inOrder(rule.columns).map((column) => rule.columns.indexOf(column));
  const inColumn = (at: number): Row[] =>
    rule.rows.flatMap(({ from, to, units }): Row[] => {
      const cell: Band["units"] | undefined = units[at];
      return cell === undefined ? [] : [{ from, to, units: cell }];
    });
  const cellsOf = (units: readonly Units[]): Units[] => order.flatMap((at) => units[at] ?? []);
  return [
    ...edgeFaults({ bands: rule.rows, edges: rule.edges }, SHOWN[unit]).map((found) => asAlarm(meal, ROW, found)),
    ...edgeFaults({ bands: rule.columns, edges: rule.columnEdges }, GRAM).map((found) => asAlarm(meal, COLUMN, found)),
    ...rule.columns.flatMap((_, at) => {
      const place = { meal, column: at + 1 };
      return [...steps(place, inColumn(at)), ...foodOnlyAbove(place, rule.foodOnly?.[at], inColumn(at))];
    }),
    ...rule.rows.flatMap((row) => acrossColumns(meal, cellsOf(row.units))),
    ...(rule.foodOnly ? acrossColumns(meal, cellsOf(rule.foodOnly)) : []),
  ];
}
