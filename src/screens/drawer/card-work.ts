// Where the typing of a card stands. Pure: each act gives the next place, and keeping/sign.ts alone decides whether a card is signed.
import type { DoseCard } from "#events/card.ts";
import type { Person } from "#events/person.ts";
import type { LocalDate } from "#events/quantity.ts";
import { EMPTY_CARD, readCard } from "#keeping/card-draft.ts";
import type { Draft, Problem } from "#keeping/problem.ts";
import { type Held, type Signed, signCard } from "#keeping/sign.ts";
import type { KeeperHere } from "./ports.ts";

export type Stage = "start" | "first" | "second" | "checked" | "signed" | "in force";

export interface CardWork {
  stage: Stage;
  first: Draft;
  second: Draft;
  /** Keys of the alarms to which the paper says so. */
  agreed: readonly string[];
  /** The keeper confirmed that the clinic ends the card in force. */
  endsOld: boolean;
  problems: readonly Problem[];
}

export const NEW_WORK: CardWork = { stage: "start", first: EMPTY_CARD, second: EMPTY_CARD, agreed: [], endsOld: false, problems: [] };

/** One typing is done: its problems, or the next stage. */
export function typingDone(work: CardWork, person: string): CardWork {
  const draft = work.stage === "first" ? work.first : work.second;
  const read = readCard(draft, person);
  if (!read.ok) return { ...work, problems: read.problems };
  return { ...work, problems: [], stage: work.stage === "first" ? "second" : "checked" };
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
