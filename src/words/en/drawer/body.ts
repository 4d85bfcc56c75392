// The body in the drawer's words: what fits, what is marked, lengths in hands.
import type { Region } from "#events/spot.ts";
import type { DayLoad } from "#rules/body/day-load.ts";
import type { MarkedPlace } from "#rules/body/marks.ts";
import { SORE_DAYS } from "#rules/body/marks.ts";
import { NO_GO_WORDS } from "#words/en/daybook/names.ts";
import { dateInWords } from "#words/en/when.ts";

const days = (count: number): string => (count === 1 ? "1 day" : `${count} days`);
const PART: Readonly<Record<Region, string>> = { belly: "belly", thigh: "thighs", arm: "arms", buttock: "buttocks" };

export const BODY_PAGE = {
  title: (name: string) => `Body and places of ${name}`,
  fits: "What fits",
  noCard: "Sign a card first. Then this page reckons the rest.",
  noMeals: "The card has no dose for any meal.",
  reach: "Parts that are used",
  leftOut: (regions: readonly Region[]) =>
    regions.length === 0 ? "All parts are used." : `Never used: ${regions.map((region) => PART[region]).join(", ")}.`,
  changeReach: "Change the parts",
  marks: "Marked places",
  noMarks: "No place is marked.",
  markPlace: "Mark a place",
  markTitle: (name: string) => `A place to keep off, ${name}`,
  markIntro: "Count whole fingers of the person.",
  measure: "Measure in hands",
  handsTitle: (name: string) => `Lengths in hands of ${name}`,
  handsIntro: "Lay hand beside hand. Blank leaves a length as it is.",
} as const;

/** Three short sentences: how many fit, how long each rests, and what the card asks. */
export function sayLoad({ region, injectionsADay, spots, restDays, askedDays }: DayLoad): string[] {
  const where = region === null ? "" : ` on the ${PART[region]}`;
  const often = injectionsADay === 1 ? "1 injection a day" : `${injectionsADay} injections a day`;
  const fit = spots === 1 ? `1 place fits${where}, one finger apart.` : `${spots} places fit${where}, one finger apart.`;
  if (spots === 0) return [`No place fits${where}.`, "Ask the clinic which part to use."];
  const rest = `At ${often} each place can rest ${days(restDays)}.`;
  if (restDays >= askedDays) return [fit, rest, `The card asks for ${days(askedDays)}.`];
  return [fit, rest, `The ${days(askedDays)} of the card do not fit. Ask the clinic.`];
}

/** "Scar, marked on 3 May 2026.", and for what goes by itself or is asked about, how long it stays. */
export function sayMarked(mark: MarkedPlace, on: string): string {
  const name = NO_GO_WORDS[mark.kind];
  const stays = mark.kind === "sore" ? ` It heals in ${days(SORE_DAYS)}.` : mark.kind === "lump" ? " It rests until it is told gone." : "";
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}, marked on ${dateInWords(on)}.${stays}`;
}

/** One button for each mark: told apart by its number on the page. */
export const clearMark = (place: number, kind: MarkedPlace["kind"]): string => `Clear number ${place}, ${NO_GO_WORDS[kind]}`;

/** "Now 6.3 hands." */
export const nowInHands = (mm: number, handMm: number): string => `Now ${Math.round((mm / handMm) * 10) / 10} hands.`;
