/**
 * The dose card: random cards and moments put to the app's rules and to an independent reference with exact ratios (tests/reference/card),
 * and spoilt cards put through a keeper's signing. `npm run measure -- card [cases] [spoilt cards]`.
 */
import { KINDS } from "./card/any-card.ts";
import { compareMany } from "./card/compare.ts";
import { fuzz } from "./card/fuzz.ts";
import { mutationScore } from "./card/mutation.ts";
import type { Measured, Row } from "./measured.ts";

const CASES = 250_000;
const SPOILT = 10_000;
const SHOWN = 5;

export async function measure([cases = String(CASES), spoilt = String(SPOILT)]: readonly string[]): Promise<Measured> {
  const compared = compareMany("the measure", Number(cases));
  const fuzzed = fuzz("the measure", Number(spoilt));
  const rows: Row[] = KINDS.map((kind) => {
    const { cases, told, silent, disagreements } = compared.tallies[kind];
    const fates = fuzzed.fates[kind];
    const threw = fuzzed.thrown.filter((one) => one.kind === kind).length;
    return { kind, cases, told, asks: silent, disagreements, ...fates, threw };
  });
  for (const one of compared.disagreements.slice(0, SHOWN)) console.error(JSON.stringify(one));
  for (const one of fuzzed.thrown.slice(0, SHOWN)) console.error(JSON.stringify(one));
  for (const sentence of fuzzed.unclear.slice(0, SHOWN)) console.error(`A keeper could not read: ${sentence}`);
  const score = await mutationScore();
  if (score === null) console.error("No mutation run has left a report: mutationScore is null.");
  return {
    rows,
    figures: {
      cases: rows.reduce((sum, row) => sum + Number(row.cases), fuzzed.asked),
      disagreements: compared.disagreements.length + fuzzed.disagreements,
      mutationScore: score,
      fuzzed: Number(spoilt),
      thrown: fuzzed.thrown.length,
    },
  };
}
