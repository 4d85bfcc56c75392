// Places on the body in words. Left and right are the person's own.
import type { Spot } from "#events/spot.ts";
import type { Direction, Landmark, Step } from "#rules/body/directions.ts";

const NUMBERS = ["no", "one", "two", "three", "four", "five", "six"];

/** "three fingers left", "half a hand down", "one and a half hands left". Counts go to six, as rules/body/tellable.ts measures. */
const sayStep = ({ measure, count, way }: Step): string => {
  const one = measure === "fingers" ? "finger" : "hand";
  const whole = NUMBERS[Math.floor(count)];
  if (whole === undefined) throw new Error(`no word for ${count} ${measure}`);
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
