// What a promise is to the tests: a question to one turn, answered with what went wrong.
import type { Intent } from "#events/intent.ts";
import type { Account, WalkAccount } from "../ledger.ts";
import type { Entry, Turn } from "../world.ts";

export interface PromiseCheck {
  number: number;
  says: string;
  /** null: kept. */
  broken(turn: Turn): string | null;
}

export type ReadableEntry = Entry & { fact: Extract<Entry["fact"], { readable: true }> };

/** Every stored fact of a turn that belongs to a person, with the account of that person and walk before and after it. */
export interface Seen {
  entry: ReadableEntry;
  event: ReadableEntry["fact"]["event"];
  a: Account;
  w: WalkAccount | null;
  then: Account;
}

export function seen(turn: Turn): Seen[] {
  return turn.entries.flatMap((entry): Seen[] => {
    const { fact } = entry;
    if (!fact.readable || fact.person === null) return [];
    const a = entry.was.people[fact.person];
    const then = entry.is.people[fact.person];
    if (!a || !then) return [];
    return [{ entry: { ...entry, fact }, event: fact.event, a, w: a.walk?.id === fact.walk ? a.walk : null, then }];
  });
}

export const firstBroken = (turn: Turn, look: (s: Seen) => string | null): string | null => {
  for (const s of seen(turn)) {
    const found = look(s);
    if (found !== null) return found;
  }
  return null;
};

export const wanted = (turn: Turn): Intent | null => (turn.move.kind === "want" ? turn.move.intent : null);
export const stampOf = (s: Seen) => s.entry.fact.at;
