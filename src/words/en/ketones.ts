// Results of a ketone test in words, as a strip or a meter names them.
import type { KetoneTest } from "#events/ill-rules.ts";
import { number } from "./amounts.ts";

const STRIP: Readonly<Record<Exclude<KetoneTest, "blood">, readonly string[]>> = {
  "urine words": ["None", "Trace", "Small", "Moderate", "Large"],
  "urine plus signs": ["No plus", "Trace", "1 plus", "2 plus", "3 plus", "4 plus"],
};

/** "Moderate", "2 plus", "1.5 millimoles". */
export const ketonesWords = (test: KetoneTest, value: number): string =>
  test === "blood" ? `${number(value)} millimoles` : (STRIP[test][value] ?? String(value));
