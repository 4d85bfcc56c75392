// Where the typing of a card stands. Pure: each act gives the next place, and keeping/sign.ts alone decides whether a card is signed.
import type { DoseCard } from "#events/card.ts";
import type { Person } from "#events/person.ts";
import type { LocalDate } from "#events/quantity.ts";
import { EMPTY_CARD, readCard } from "#keeping/card-draft.ts";
import type { Draft, Problem } from "#keeping/problem.ts";
import { type Held, type Signed, signCard } from "#keeping/sign.ts";
import type { KeeperHere } from "./ports.ts";

export type Stage = "start" | "first" | "second" | "checked" | "signed" | "shown" | "old cards" | "trial";

export interface CardWork {
  stage: Stage;
  first: Draft;
  second: Draft;
  /** Keys of the alarms to which the paper says so. */
  agreed: readonly string[];
  /** The keeper confirmed that the clinic ends the card in force. */
  endsOld: boolean;
  /** Parts of the sheet that were read against the paper; all of them, and it may be signed. */
  partsRead: number;
  /** The photograph of the paper; null: none was taken. */
  picture: string | null;
  /** The card that is looked at, by its hash. */
  shown: string | null;
  problems: readonly Problem[];
}

export const NEW_WORK: CardWork = {
  stage: "start",
  first: EMPTY_CARD,
  second: EMPTY_CARD,
  agreed: [],
  endsOld: false,
  partsRead: 0,
  picture: null,
  shown: null,
  problems: [],
};

/** One typing is done: its problems, or the next stage. */
export function typingDone(work: CardWork, person: string): CardWork {
  const draft = work.stage === "first" ? work.first : work.second;
  const read = readCard(draft, person);
  if (!read.ok) return { ...work, problems: read.problems };
  // Whatever was read back before, it was another typing.
  return { ...work, problems: [], partsRead: 0, endsOld: false, stage: work.stage === "first" ? "second" : "checked" };
}

export interface Signer {
  person: Person;
  keeper: KeeperHere;
  today: LocalDate;
  held: readonly Held[];
  hash(card: DoseCard): string;
}

/** What keeping/ says to both typings now. */
export function judge(work: CardWork, signer: Signer, readBack: boolean): Signed {
  const cardOf = (draft: Draft): unknown => {
    const read = readCard(draft, signer.person.id);
    return read.ok ? read.card : null;
  };
  return signCard({
    ...signer,
    first: cardOf(work.first),
    second: cardOf(work.second),
    readBack,
    agreed: work.agreed,
    endsOld: work.endsOld,
  });
}
