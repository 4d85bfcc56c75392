// Names of the answers that belong to background insulin and to the reading walk.
import type { BackgroundDose } from "#events/card.ts";
import type { Intent } from "#events/intent.ts";
import { backgroundDosesOf } from "#walk/insulin.ts";
import type { HouseState } from "#walk/state.ts";
import { inWords } from "#words/numbers.ts";
import { type Label, label } from "#words/say.ts";
import { FIXED } from "./fixed.ts";
import { hourWords } from "./steps/background.ts";

type Own = Extract<Intent, { do: "open reading" | "open background" | "leave out reading" | "pen says" }>;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const insulinName = (house: HouseState, person: string, id: string): string =>
  house.people[person]?.card?.card.background?.find((dose) => dose.insulin.id === id)?.insulin.name ?? "long-acting insulin";

/** "in the evening", "nine thirty in the evening", and the insulin: figures are no words for the ear. */
function waysToSay({ at, insulin }: Pick<BackgroundDose, "at" | "insulin">): string[] {
  const [figures = "", ...part] = hourWords(at).split(" ");
  const hour = figures.split(":").flatMap((n) => (Number(n) === 0 ? [] : [inWords(String(Number(n)), "en-US")]));
  return [part.join(" "), [...hour, ...part].join(" "), insulin.name.toLowerCase()];
}

/** What would be said for another dose of the card too is said for none: it would begin the first of them. */
function saidFor({ person, at, insulin }: Extract<Own, { do: "open background" }>, house: HouseState): string[] {
  const doses = backgroundDosesOf(house.people[person]?.card?.card ?? null);
  const own = doses.find((dose) => dose.at === at && dose.insulin.id === insulin);
  const others = doses.filter((dose) => dose !== own).flatMap(waysToSay);
  return own ? waysToSay(own).filter((phrase) => !others.includes(phrase)) : [];
}

export function backgroundLabel(intent: Own, house: HouseState): Label {
  switch (intent.do) {
    case "open reading":
      return label(FIXED.reading);
    case "open background":
      return {
        shown: `${capital(insulinName(house, intent.person, intent.insulin))}, ${hourWords(intent.at)}`,
        said: saidFor(intent, house),
      };
    case "leave out reading":
      return label("No reading now", "no reading", "go on without a reading");
    case "pen says":
      return intent.name === "the insulin" ? label("Yes, that name", "yes", "it says so") : label("Another name", "no", "no another name");
  }
}
