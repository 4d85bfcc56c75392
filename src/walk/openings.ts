// Walks as they begin in the kitchen, and a dose told later there.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { NewFact } from "./decide.ts";
import { backgroundDosesOf, backgroundInsulins } from "./insulin.ts";
import type { HouseState, PersonState } from "./state.ts";
import { toldInKitchen } from "./steps/mishap.ts";

function backgroundOpening(me: PersonState | undefined, intent: Extract<Intent, { do: "open background" }>): Happened[] {
  const dose = backgroundDosesOf(me?.card?.card ?? null).find((d) => d.at === intent.at && d.insulin.id === intent.insulin);
  if (!dose) return [];
  const { id: insulinId, name: insulinName } = dose.insulin;
  return [{ type: "walk opened", kind: "background", meal: null, background: { at: dose.at, insulinId, insulinName } }];
}

/** A background insulin goes by the name on the card, which the book keeps even when the card changes. */
export function toldLater(me: PersonState | undefined, intent: Extract<Intent, { do: "tell a dose later" }>): Happened {
  const insulin = backgroundInsulins(me?.card?.card ?? null).find(({ id }) => id === intent.insulin);
  return { type: "dose told later", units: intent.units, minutesAgo: intent.minutesAgo, ...(insulin ? { insulin } : {}) };
}

/** A walk that was open is over when another one takes its place. */
function setAside(house: HouseState, person: string): NewFact[] {
  const walk = house.people[person]?.walk;
  return walk ? [{ person, walk: walk.id, event: { type: "walk ended", how: "stopped" } }] : [];
}

/** Intents that begin, take up or end a walk from the kitchen; null for any other. */
export function openingFacts(house: HouseState, intent: Intent, walkId: string): NewFact[] | null {
  const own = (person: string, walk: string | null, event: Happened): NewFact => ({ person, walk, event });
  switch (intent.do) {
    case "open meal":
      return [...setAside(house, intent.person), own(intent.person, walkId, { type: "walk opened", kind: "meal", meal: intent.meal })];
    case "open background":
    case "open reading": {
      const opened: Happened[] =
        intent.do === "open reading"
          ? [{ type: "walk opened", kind: "reading", meal: null }]
          : backgroundOpening(house.people[intent.person], intent);
      return [...setAside(house, intent.person), ...opened.map((event) => own(intent.person, walkId, event))];
    }
    case "open low": {
      const walk = house.people[intent.person]?.walk;
      const low: Happened = { type: "low began", because: "feels strange" };
      // After the needle the walk is kept: its bell rings, and its question is still to be answered.
      if (walk?.injectOpened) {
        const turn = house.front === intent.person ? [] : [own(intent.person, walk.id, { type: "walk turned to" })];
        return [...turn, own(intent.person, walk.id, low)];
      }
      return [
        ...setAside(house, intent.person),
        own(intent.person, walkId, { type: "walk opened", kind: "low", meal: null }),
        own(intent.person, walkId, low),
      ];
    }
    case "open mishap":
      return [
        { type: "walk opened" as const, kind: "mishap" as const, meal: null },
        ...toldInKitchen(intent.mishap, house.people[intent.person]),
      ].map((event) => own(intent.person, walkId, event));
    case "turn to":
      return [own(intent.person, house.people[intent.person]?.walk?.id ?? null, { type: "walk turned to" })];
    case "set aside":
      return [own(intent.person, house.people[intent.person]?.walk?.id ?? null, { type: "walk ended", how: "stopped" })];
    default:
      return null;
  }
}
