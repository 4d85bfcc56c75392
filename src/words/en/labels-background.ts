// Names of the answers that belong to background insulin and to the reading walk.
import type { Intent } from "#events/intent.ts";
import type { HouseState } from "#walk/state.ts";
import { type Label, label } from "#words/say.ts";
import { FIXED } from "./fixed.ts";
import { hourWords } from "./steps/background.ts";

type Own = Extract<Intent, { do: "open reading" | "open background" | "leave out reading" | "pen says" }>;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const insulinName = (house: HouseState, person: string, id: string): string =>
  house.people[person]?.card?.card.background?.find((dose) => dose.insulin.id === id)?.insulin.name ?? "long-acting insulin";

export function backgroundLabel(intent: Own, house: HouseState): Label {
  switch (intent.do) {
    case "open reading":
      return label(FIXED.reading);
    case "open background":
      // Figures are no words for the ear: the part of the day tells two doses apart.
      return {
        shown: `${capital(insulinName(house, intent.person, intent.insulin))}, ${hourWords(intent.at)}`,
        said: [hourWords(intent.at).split(" ").slice(1).join(" ")],
      };
    case "leave out reading":
      return label("No reading now", "no reading", "go on without a reading");
    case "pen says":
      return intent.name === "the insulin" ? label("Yes, that name", "yes", "it says so") : label("Another name", "no", "no another name");
  }
}
