// Which row of a band table a reading belongs to. A reading that no row claims, or two, gets no row: it is never guessed.
// Compared in the card's own unit: 10.0 mmol/L is 180.156 mg/dL and falls between a row that ends at 180 and one that begins at 181.
import type { Band, MealName, MealRule } from "#events/card.ts";
import type { Silence } from "./told.ts";

export type BandRule = Extract<MealRule, { kind: "bands" }>;

const from = (band: Band): number => band.from ?? Number.NEGATIVE_INFINITY;
const to = (band: Band): number => band.to ?? Number.POSITIVE_INFINITY;

/** The rows by where they begin; the order in which they were typed means nothing. */
export const inOrder = (bands: readonly Band[]): Band[] =>
  [...bands].sort((a, b) => (from(a) === from(b) ? 0 : from(a) < from(b) ? -1 : 1));

/** Where a row ends: as printed (the edge belongs to it), or just before the next one begins. */
function holds(rule: BandRule, band: Band, next: Band | undefined, value: number): boolean {
  if (value < from(band)) return false;
  return rule.edges === "up to the next" && next ? value < from(next) : value <= to(band);
}

/**
 * Rows whose printed edges both take in the reading. "Up to the next" settles 140-180, 180-220 and "over 250", "over 350", but not
 * 140-190, 180-220: there somebody slipped.
 */
function claims(bands: readonly Band[], value: number): number {
  return bands.filter((band, i) => {
    const next = bands[i + 1];
    const openUntilNext = band.to === null && next !== undefined && from(next) > from(band);
    return !openUntilNext && value >= from(band) && value < to(band);
  }).length;
}

type NoRow = Extract<Silence["why"], "below the bands" | "above the bands" | "hole between bands" | "in two bands">;

/** value in the card's unit. Says which kind of hole the reading fell into. */
export function findRow(rule: BandRule, value: number): Band | NoRow {
  const bands = inOrder(rule.bands);
  const rows = bands.filter((band, i) => holds(rule, band, bands[i + 1], value));
  if (rows.length > 1 || claims(bands, value) > 1) return "in two bands";
  const [row] = rows;
  if (row) return row;
  if (bands.every((band) => value < from(band))) return "below the bands";
  if (bands.every((band) => value > to(band))) return "above the bands";
  return "hole between bands";
}

/** How the row is named in the log and on the clinic sheet: "dinner band 181-220". */
export function rowName(meal: MealName, band: Band): string {
  if (band.from === null && band.to === null) return `${meal} band for any reading`;
  if (band.from === null) return `${meal} band up to ${band.to}`;
  return band.to === null ? `${meal} band from ${band.from}` : `${meal} band ${band.from}-${band.to}`;
}
