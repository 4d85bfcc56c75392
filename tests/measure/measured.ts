/** One line of a measure's table: column name to what stands under it. */
export type Row = Readonly<Record<string, string | number | boolean>>;

/** What a measure answers: the rows for a reader, and the figures that are kept as the last line. */
export type Measured = {
  rows: readonly Row[];
  figures: Readonly<Record<string, unknown>>;
};

/** Every file in this folder that offers a measure has this shape. */
export type Measure = { measure: (args: readonly string[]) => Promise<Measured> };

/** The rows as plain text, numbers to the right. */
export function table(rows: readonly Row[]): string {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const text = (row: Row, name: string) => String(row[name] ?? "");
  const widths = names.map((name) => Math.max(name.length, ...rows.map((row) => text(row, name).length)));
  const line = (cells: readonly string[], toTheRight: (index: number) => boolean) =>
    cells
      .map((cell, index) => (toTheRight(index) ? cell.padStart(widths[index] ?? 0) : cell.padEnd(widths[index] ?? 0)))
      .join("  ")
      .trimEnd();
  const isNumbers = (index: number) => rows.every((row) => typeof row[names[index] ?? ""] !== "string");
  return [
    line(names, isNumbers),
    ...rows.map((row) =>
      line(
        names.map((name) => text(row, name)),
        isNumbers,
      ),
    ),
  ].join("\n");
}
