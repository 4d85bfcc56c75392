// The question about lumps in words: every four weeks, calm, and told by fingers from a landmark.
import type { Spot } from "#events/spot.ts";
import { outWay } from "#rules/body/directions.ts";
import type { ToldFrom } from "#rules/body/told-place.ts";
import type { PersonState } from "#walk/state.ts";
import { inWords } from "#words/numbers.ts";
import { placeName } from "./places.ts";
import { dayAndMonth, type When } from "./when.ts";

export const sayLumpsDue = (me: PersonState): string => `${me.person.name}, feel for lumps when it suits you.`;

/** How a lump feels is from memory: thicker and firmer than the skin beside it, seldom sore. */
export const LUMPS = {
  ask: ["Feel each place where you inject.", "A lump is thicker and firmer than the skin around it.", "Is there a new lump?"],
  none: "No new lump",
  found: "I found a lump",
  // The ear does not know every word on these buttons.
  foundSaid: ["there is a lump", "a lump"],
  notNow: "Not now",
  old: (at: When) => `A lump was noted on ${dayAndMonth(at)}.`,
  stillThere: "Is it still there?",
  there: "Still there",
  gone: "It is gone",
  goneSaid: ["it is not there"],
  whichPart: "Where is the lump?",
  cannotSay: "I cannot say where",
  fromWhere: "From where do you count?",
  fingers: "fingers",
  isThere: "Is the lump there?",
  yesThere: "Yes, it is there",
  again: "No, tell it again",
  savedNone: ["Saved. The next question comes in four weeks."],
  savedLater: ["Saved. The question comes again in a week."],
  savedPlace: ["Saved. No needle goes there now.", "Show the lump to your clinic."],
  savedNowhere: ["Saved. Keep the needle away from it.", "Show the lump to your clinic."],
  storing: "One moment.",
} as const;

/** "Left side of the belly". */
export function partLabel(part: Pick<Spot, "region" | "side">): string {
  const name = placeName({ ...part, outMm: 0, downMm: 0 });
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}

/** "Above the navel", "Down from the groin". */
export const fromLabel = ({ landmark, way }: ToldFrom): string =>
  landmark === "navel" ? `${way === "up" ? "Above" : "Below"} the navel` : `${way === "up" ? "Up" : "Down"} from the ${landmark}`;

/** "How many fingers below the navel?", "How many fingers down from the groin?" */
export const askAlong = (from: ToldFrom): string => `How many fingers ${fromLabel(from).toLowerCase()}?`;

/** "How many fingers left of the navel?", "How many fingers outwards from there?" */
export const askOutwards = ({ region, side }: Pick<Spot, "region" | "side">): string =>
  region === "belly" ? `How many fingers to the ${side}?` : `How many fingers ${outWay(region, side)} from there?`;

/** What the ear takes for a count. */
export const fingersSaid = (count: number): readonly string[] => {
  const words = inWords(String(count), "en-US");
  return [words, `${words} ${count === 1 ? "finger" : "fingers"}`, ...(count === 0 ? ["none"] : [])];
};
