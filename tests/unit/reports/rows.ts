// Facts of a test table as rows of a log.
import type { Happened } from "#events/happened.ts";
import type { LogRow } from "#events/log-port.ts";
import type { Stamp } from "#events/stamp.ts";
import type { Fact } from "#walk/fold.ts";

const envelope = { v: 1, tablet: "tablet-1", prev: "", app: "test", words: "en-1", hash: "" };

export const rowOf = (seq: number, at: Stamp, person: string | null, walk: string | null, event: Happened): LogRow => ({
  ...envelope,
  readable: true,
  id: `row-${String(seq).padStart(6, "0")}`,
  seq,
  at,
  person,
  walk,
  card: person === null ? null : `hash-of-${person}`,
  event,
});

export const unreadable = (seq: number, wall: number | null): LogRow => ({ readable: false, seq, wall, raw: { seq }, why: "damaged" });

export const rowsOf = (facts: readonly Fact[]): LogRow[] =>
  facts.map((fact) => (fact.readable ? rowOf(fact.seq, fact.at, fact.person, fact.walk, fact.event) : unreadable(fact.seq, fact.wall)));
