// Promises 9, 12 and 14: storing, the network, and doubtful time.
import { bellNow } from "#walk/bell.ts";
import { passed } from "../ledger.ts";
import type { Turn } from "../world.ts";
import { type PromiseCheck, seen } from "./shape.ts";

const DAY = 24 * 60 * 60_000;

/** What may be offered only once the fact that makes it true is stored. */
function announcedFault(turn: Turn): string | null {
  const { after } = turn;
  const front = after.house.front;
  const w = front === null ? null : after.ledger.people[front]?.walk;
  if (!w) return null;
  const presses = after.offers.flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
  if (presses.includes("button is down") && !w.opened) return "injecting is offered before it is stored that the step was opened";
  if (presses.includes("heard dose") && !w.told) return "a dose is said before it is stored";
  if (presses.includes("put away") && !w.injected) return "done is said before it is stored";
  // Told in the kitchen, food that is missing belongs to the insulin of a walk that is over.
  const told = w.kind === "mishap" && (after.ledger.people[front ?? ""]?.doses.length ?? 0) > 0;
  return presses.includes("eating") && !w.injected && !told ? "time to eat is said before the injection is stored" : null;
}

const ninth: PromiseCheck = {
  number: 9,
  says: "Nothing is announced as done before it is stored. Nothing stored is ever changed.",
  broken: announcedFault,
};

const twelfth: PromiseCheck = {
  number: 12,
  says: "No network call is made while a walk runs.",
  // A call throws: see judge.ts.
  broken: () => null,
};

/** Facts that need a time or a day to be known. */
function freed(turn: Turn): string | null {
  for (const { entry, event, w } of seen(turn)) {
    if (entry.was.trusted) continue;
    switch (event.type) {
      case "dose told":
      case "inject opened":
        return `${event.type} while the clock is doubtful`;
      case "taken answered":
        if (event.how === "log is clear") return "the log was called clear while the clock is doubtful";
        break;
      case "hands washed":
        if (event.how === "counted") return "a wait was over while the clock is doubtful";
        break;
      case "skin dry":
        if (turn.move.kind === "want" && turn.move.intent.do === "wait is over") return "a wait was over while the clock is doubtful";
        break;
      case "wait ended":
        // The hold runs with the needle in the skin: one clock within one start of the app is enough, no wall clock is asked.
        if (w?.opened && w.opened.boot !== entry.fact.at.boot) return "a hold was over after a restart";
        break;
      default:
        break;
    }
  }
  return null;
}

function forgotten(turn: Turn): string | null {
  const { after } = turn;
  for (const [id, a] of Object.entries(after.ledger.people)) {
    const kept = after.house.people[id]?.doses ?? [];
    for (const d of a.doses) {
      const ms = passed(d.from, after.now, after.ledger.trusted);
      const had = turn.before.house.people[id]?.doses.some((k) => k.walk === d.walk && k.at.wall === d.from.wall);
      if (had && (ms === null || ms < DAY) && !kept.some((k) => k.walk === d.walk && k.at.wall === d.from.wall))
        return "a dose was forgotten";
    }
    const background = after.house.people[id]?.backgroundDoses ?? [];
    const lost = a.background.find((d) => {
      const ms = passed(d.from, after.now, after.ledger.trusted) ?? 0;
      return Math.max(ms, after.now.wall - d.from.wall) < DAY && !background.some((k) => k.walk === d.walk && k.at.wall === d.from.wall);
    });
    if (lost) return "a background dose was forgotten";
    const bell = after.house.people[id]?.bell;
    if (a.bell && bell && !after.ledger.trusted && bellNow(bell, after.now, after.house.doubt === null).level === "quiet")
      return "the bell is not due while the clock is doubtful";
  }
  if (!after.ledger.trusted && after.house.unreadable.length < turn.before.house.unreadable.length)
    return "a row nobody can read was forgotten";
  return null;
}

const fourteenth: PromiseCheck = {
  number: 14,
  says: "Doubtful time never frees a dose: spacing and window count as not passed, waits as not over, the bell as due, until day and time were agreed.",
  broken: (turn) => freed(turn) ?? forgotten(turn),
};

export const clockPromises = [ninth, twelfth, fourteenth];
