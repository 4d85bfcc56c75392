// Too much insulin, or the wrong one, is watched from the moment it was told: no walk, no reading and no start of the app ends that.
import type { Stamp } from "#events/stamp.ts";
import { insulinReadingLateMs } from "#walk/insulin-watch.ts";
import { type Account, passed } from "../ledger.ts";
import type { Turn } from "../world.ts";
import { firstBroken, type PromiseCheck, wanted } from "./shape.ts";

const HOUR = 3_600_000;
/** Hours at least, of whatever insulin: a rapid one that was too much, and a day where nobody knows which (printed actions: rules/glucose/watch.ts). */
const AT_LEAST = { "too much": 6, "wrong insulin": 24 } as const;

function isWatched(a: Account, now: Stamp, trusted: boolean): boolean {
  return a.watched.some(({ kind, at }) => {
    const ms = passed(at, now, trusted);
    return ms === null || ms < AT_LEAST[kind] * HOUR;
  });
}

/** The walk's own word for it must stand, and in the kitchen the way to a reading. */
function silent({ after }: Turn): string | null {
  for (const [id, a] of Object.entries(after.ledger.people)) {
    const me = after.house.people[id];
    if (!me || !isWatched(a, after.now, after.ledger.trusted)) continue;
    if (insulinReadingLateMs(me, after.now, after.house.doubt === null) === null)
      return "too much or the wrong insulin, and nothing is watched";
    const offered = (...wants: string[]) =>
      after.offers.some((o) => o.offer === "press" && wants.includes(o.intent.do) && "person" in o.intent && o.intent.person === id);
    if (after.house.front === null && !offered("open reading", "turn to")) return "watched in the kitchen, with no way to a reading";
  }
  return null;
}

export const watchPromise: PromiseCheck = {
  number: 16,
  says: "Too much insulin, or the wrong one, is watched until it has worked itself out or somebody said that a doctor watches.",
  broken: (turn) =>
    firstBroken(turn, ({ event }) =>
      event.type === "insulin watch given over" && wanted(turn)?.do !== "doctor watches" ? "a watch given over without a word" : null,
    ) ?? silent(turn),
};
