// Places on the body in words. Left and right are the person's own.
import type { Spot } from "#events/spot.ts";
import type { ChartMark } from "#rules/body/chart.ts";
import type { Direction, Landmark, Step } from "#rules/body/directions.ts";
import type { SpotReason } from "#rules/body/limits.ts";
import { inWords } from "#words/numbers.ts";

/** "three fingers left", "half a hand down", "one and a half hands left". Counts go to twenty-four, as rules/body/tellable.ts measures. */
const sayStep = ({ measure, count, way }: Step): string => {
  const one = measure === "fingers" ? "finger" : "hand";
  const whole = inWords(String(Math.floor(count)), "en-US");
  if (count === 0.5) return `half a ${one} ${way}`;
  if (count === 1) return `one ${one} ${way}`;
  return `${whole}${Number.isInteger(count) ? "" : " and a half"} ${measure} ${way}`;
};

const landmark: Record<Landmark, (side: string) => string> = {
  navel: () => "your navel",
  groin: (side) => `your ${side} groin`,
  knee: (side) => `your ${side} knee`,
  shoulder: (side) => `your ${side} shoulder`,
  elbow: (side) => `your ${side} elbow`,
  "hip bone": (side) => `your ${side} hip bone`,
};

const LONGEST = 12;
const wordsIn = (sentence: string): number => sentence.split(" ").length;

/** One or two sentences of at most 12 words: "Find your navel. Go three fingers left and two fingers down." */
export const sayPlace = (d: Direction): string[] => {
  const start = landmark[d.landmark](d.side);
  const [first, second] = d.steps;
  if (first === undefined) return [`Find ${start}.`];
  if (second === undefined) return [`Find ${start}.`, `Go ${sayStep(first)}.`];
  const both = `Go ${sayStep(first)} and ${sayStep(second)}.`;
  if (wordsIn(both) <= LONGEST) return [`Find ${start}.`, both];
  return [`From ${start} go ${sayStep(first)}.`, `Then go ${sayStep(second)}.`];
};

const REGION_NAME: Record<Spot["region"], (side: string) => string> = {
  belly: (side) => `${side} side of the belly`,
  thigh: (side) => `${side} thigh`,
  arm: (side) => `back of the ${side} upper arm`,
  buttock: (side) => `${side} buttock`,
};

export const placeName = (spot: Spot): string => REGION_NAME[spot.region](spot.side);

const MARKED: Record<NonNullable<ChartMark["place"]>, string> = {
  navel: "navel",
  scar: "scar",
  mole: "mole",
  lump: "lump",
  sore: "sore",
  other: "leave free",
};

const days = (count: number): string => (Math.floor(count) === 1 ? "1 day" : `${Math.floor(count)} days`);

/** The word beside a mark of the body chart: "here", "today", "12 days", "scar". */
export const sayMark = (mark: ChartMark): string => {
  if (mark.place !== null) return MARKED[mark.place];
  if (mark.daysAgo === null) return "here";
  return mark.daysAgo === 0 ? "today" : days(mark.daysAgo);
};

/** Why a place is not used, in one sentence of at most 12 words. */
export const saySpotReason = (reason: SpotReason): string => {
  switch (reason.why) {
    case "another region is kept for this meal":
      return `This meal keeps to the ${reason.region}.`;
    case "outside the area":
      return "This place is outside the area for injections.";
    case "too near the navel":
      return "This place is too near the navel.";
    case "on a marked place":
      return reason.kind === "other" ? "This place is marked as never to be used." : `A ${reason.kind} is marked here.`;
    case "too near the last one":
      return "This place is too near the last injection.";
    case "still resting":
      return Math.floor(reason.daysAgo) === 0 ? "This place was used today." : `This place was used ${days(reason.daysAgo)} ago.`;
  }
};
