// Which row of a table a number belongs to. A number that no row claims, or two, gets no row: it is never guessed.
// Compared in the card's own unit: 10.0 mmol/L is 180.156 mg/dL and falls between a row that ends at 180 and one that begins at 181.
import type { Band, MealName, MealRule } from "#events/card.ts";
import type { Silence } from "./told.ts";

export type BandRule = Extract<MealRule, { kind: "bands" }>;

/** A row or a column: from one edge to another, null is open. */
export interface Span {
  readonly from: number | null;
  readonly to: number | null;
}
export interface Table<S extends Span = Span> {
  readonly bands: readonly S[];
  readonly edges: BandRule["edges"];
}

const from = (span: Span): number => span.from ?? Number.NEGATIVE_INFINITY;
const to = (span: Span): number => span.to ?? Number.POSITIVE_INFINITY;

/** The rows by where they begin; the order in which they were typed means nothing. */
export const inOrder = <S extends Span>(spans: readonly S[]): S[] =>
  [...spans].sort((a, b) => (from(a) === from(b) ? 0 : from(a) < from(b) ? -1 : 1));

/** Where a row ends: as printed (the edge belongs to it), or just before the next one begins. */
function holds(edges: Table["edges"], span: Span, next: Span | undefined, value: number): boolean {
  if (value < from(span)) return false;
  return edges === "up to the next" && next ? value < from(next) : value <= to(span);
}

/**
 * Rows whose printed edges both take in the number. "Up to the next" settles 140-180, 180-220 and "over 250", "over 350", but not
 * 140-190, 180-220: there somebody slipped.
 */
function claims(spans: readonly Span[], value: number): number {
  return spans.filter((span, i) => {
    const next = spans[i + 1];
    const openUntilNext = span.to === null && next !== undefined && from(next) > from(span);
    return !openUntilNext && value >= from(span) && value < to(span);
  }).length;
}

type NoRow = Extract<Silence["why"], "below the bands" | "above the bands" | "hole between bands" | "in two bands">;

/** value in the card's unit. Says which kind of hole the number fell into. */
export function findRow<S extends Span>(table: Table<S>, value: number): S | NoRow {
  const spans = inOrder(table.bands);
  const rows = spans.filter((span, i) => holds(table.edges, span, spans[i + 1], value));
  if (rows.length > 1 || claims(spans, value) > 1) return "in two bands";
  const [row] = rows;
  if (row) return row;
  if (spans.every((span) => value < from(span))) return "below the bands";
  if (spans.every((span) => value > to(span))) return "above the bands";
  return "hole between bands";
}

function spanName({ from, to }: Span): string {
  if (from === null && to === null) return "for any reading";
  if (from === null) return `up to ${to}`;
  return to === null ? `from ${from}` : `${from}-${to}`;
}

/** How the row is named in the log and on the clinic sheet: "dinner band 181-220". */
export const rowName = (meal: MealName, band: Band): string => `${meal} band ${spanName(band)}`;
/** "dinner table 181-220": of a table for the correction alone. */
export const tableRowName = (meal: MealName, band: Band): string => `${meal} table ${spanName(band)}`;
/** "dinner row 181-220, column 31-60". */
export const cellName = (meal: MealName, row: Span, column: Span): string =>
  `${meal} row ${spanName(row)}, column ${column.from === null && column.to === null ? "for any meal" : spanName(column)}`;
