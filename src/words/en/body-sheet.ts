// The body chart in words: what was used too often, lumps with their days, and the sheet that is printed.
import type { LocalDate } from "#events/quantity.ts";
import type { Overused } from "#rules/body/overuse.ts";
import { dateInWords } from "./when.ts";

const days = (count: number): string => (count === 1 ? "1 day" : `${count} days`);
const times = (count: number): string => (count === 1 ? "1 time" : `${count} times`);

export const BODY_SHEET = {
  showWeeks: (weeks: number) => `${weeks} weeks`,
  print: "Print",
  noSpots: (weeks: number) => `No spot was used here in ${weeks} weeks.`,
  chartTitle: (weeks: number, where: string) => `Spots of the last ${weeks} weeks: ${where}`,
  often: "Used too soon again",
  noneOften: "Every spot rested as the card asks.",
  lumps: "Lumps",
  title: (name: string) => `Body chart of ${name}`,
  span: (from: LocalDate, to: LocalDate) => `${dateInWords(from)} to ${dateInWords(to)}`,
  total: (count: number) => `${count === 1 ? "1 injection" : `${count} injections`} noted here.`,
  restOfCard: (restDays: number, clinic: string) => `The card of ${clinic} lets each spot rest ${days(restDays)}.`,
  restWithoutCard: (restDays: number) => `No card is signed. Spots usually rest ${days(restDays)}.`,
  date: "Date",
  daysAgo: "Days ago",
  place: "Place",
  code: "Code",
  millimeters: "Outwards, down",
  codeNote: "Codes: HL7 v2 table 0163. Millimeters from the landmark of each part; above it they have a minus.",
  reported: "Places are as offered and agreed to. Nobody measured them.",
} as const;

/** "Used 4 times in 4 weeks. The shortest rest was 5 days." */
export const sayOverused = ({ times: count, leastRestDays }: Overused, weeks: number): string =>
  `Used ${times(count)} in ${weeks} weeks. The shortest rest was ${days(leastRestDays)}.`;

/** "Noted on 3 May 2026. It is still marked." */
export const sayLump = (lump: { on: LocalDate; gone: LocalDate | null }): string =>
  `Noted on ${dateInWords(lump.on)}. ${lump.gone === null ? "It is still marked." : `Told gone on ${dateInWords(lump.gone)}.`}`;
