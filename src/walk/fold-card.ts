// Which card holds for a person: the one signed last, or the one whose day has come.
import type { Of } from "#events/happened.ts";
import { overlap } from "#rules/card/overlap.ts";
import type { PersonState, Walk } from "./state.ts";
import { without } from "./voiding.ts";

/** A dose told before is no dose any more, unless the needle step was opened with it. Another card has another window: "taken already?" is looked at again. */
export const doseAskedAgain = (walk: Walk): Walk =>
  walk.injectOpened ? walk : { ...without(without(walk, "card"), "dial"), taken: null, draft: walk.low ? walk.draft : null };

/** A new card takes the place of those whose days it shares; one that waits leaves the card in force as it is. */
export function withCard(person: PersonState, { card, cardHash: hash, signature, waits }: Of<"card signed">): PersonState {
  const signed = { card, hash, signature };
  const { nextCard, pastCards } = person;
  if (waits) return { ...person, nextCard: signed, pastCards: nextCard ? [nextCard, ...pastCards] : pastCards };
  const replaced = nextCard && overlap(card, nextCard.card) ? nextCard : null;
  return {
    ...person,
    card: signed,
    nextCard: replaced ? null : nextCard,
    pastCards: [replaced, person.card].filter((old) => old !== null).concat(pastCards),
    walk: person.walk && doseAskedAgain(person.walk),
  };
}

export const withNextCard = (person: PersonState): PersonState => ({
  ...person,
  card: person.nextCard,
  nextCard: null,
  pastCards: person.card ? [person.card, ...person.pastCards] : person.pastCards,
  walk: person.walk && doseAskedAgain(person.walk),
});
