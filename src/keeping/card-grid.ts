// A grid of glucose rows and carbohydrate columns, as it was typed.
import type { GridColumn, MealRule } from "#events/card.ts";
import { type GlucoseUnit, type Units, units } from "#events/quantity.ts";
import { MOST_ROWS } from "./card-rows.ts";
import { glucoseSpan, UNITS } from "./card-spans.ts";
import type { Reader } from "./reader.ts";

/** Wider grids do not fit a paper card (from memory). */
export const MOST_COLUMNS = 6;
const GRAMS = { least: 0, most: 400, decimals: 1 };
const EDGES = ["as printed", "up to the next"] as const;

type Grid = Extract<MealRule, { kind: "grid" }>;

const columnAt = (at: string, i: number): string => `${at}.columns.${i}`;
const typedIn = (r: Reader, ...fields: string[]): boolean => fields.some((field) => r.raw(field) !== "");
const places = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

/** Columns and rows in which anything was typed. A cell of one of each that is empty is a problem: nothing is taken for 0. */
export function gridOf(r: Reader, at: string, unit: GlucoseUnit): Grid {
  const columns = places(MOST_COLUMNS).filter((i) => typedIn(r, `${columnAt(at, i)}.from`, `${columnAt(at, i)}.to`));
  const rowAt = (i: number): string => `${at}.rows.${i}`;
  const rows = places(MOST_ROWS).filter((i) =>
    typedIn(r, `${rowAt(i)}.from`, `${rowAt(i)}.to`, ...places(MOST_COLUMNS).map((c) => `${rowAt(i)}.units.${c}`)),
  );
  const [firstColumn = 0] = columns;
  const [firstRow = 0] = rows;
  if (columns.length === 0) r.note(`${columnAt(at, firstColumn)}.from`, { why: "empty" });
  if (rows.length === 0) r.note(`${rowAt(firstRow)}.units.0`, { why: "empty" });
  const cells = (row: string): Units[] => columns.map((c) => units(r.number(`${row}.${c}`, UNITS)));
  const stray = rows.flatMap((i) => places(MOST_COLUMNS).filter((c) => !columns.includes(c) && typedIn(r, `${rowAt(i)}.units.${c}`)));
  for (const c of new Set(stray)) r.note(`${columnAt(at, c)}.from`, { why: "empty" });
  const foodOnly = columns.some((c) => typedIn(r, `${at}.foodOnly.${c}`));
  return {
    kind: "grid",
    columns: columns.map(
      (i): GridColumn => ({
        from: r.blankOrNumber(`${columnAt(at, i)}.from`, GRAMS),
        to: r.blankOrNumber(`${columnAt(at, i)}.to`, GRAMS),
      }),
    ),
    columnEdges: r.choice(`${at}.columnEdges`, EDGES),
    rows: rows.map((i) => ({
      from: r.blankOrNumber(`${rowAt(i)}.from`, glucoseSpan(unit)),
      to: r.blankOrNumber(`${rowAt(i)}.to`, glucoseSpan(unit)),
      units: cells(`${rowAt(i)}.units`),
      call: r.raw(`${rowAt(i)}.call`) === "yes",
    })),
    edges: r.choice(`${at}.edges`, EDGES),
    foodOnly: foodOnly ? cells(`${at}.foodOnly`) : null,
  };
}
