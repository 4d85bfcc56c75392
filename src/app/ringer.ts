// When the tablet sounds of itself: the meal bell, the call for a low, the tone at the end of a wait.
// Computed afresh each second from stored times; only "when did I last ring" is remembered here.
import { MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import { oldestAge } from "#rules/time/elapsed.ts";
import { type AlertKind, alertOf, alertOfBell, isMoreUrgent } from "#walk/alerts.ts";
import { bellNow } from "#walk/bell.ts";
import { waitOver } from "#walk/context.ts";
import { insulinWatchAlert } from "#walk/insulin-watch.ts";
import { callers, frontPerson, HANDS_FULL } from "#walk/offers.ts";
import { type HouseState, type PersonState, stepOf, type Walk } from "#walk/state.ts";

export interface Ring {
  person: string;
  kind: AlertKind;
  level: "calling" | "insistent" | "loud";
}

/** Our choice, no source: so long a tone and its words take, and another person's call waits for them, unless it is the more urgent one. */
const ONE_VOICE_MS = 10_000;

/** Our choice, no source: a screen that nobody answers for so long keeps no bell waiting; longer where the hands are full. */
const UNATTENDED_MS = 2 * MINUTE;
const UNATTENDED_HANDS_FULL_MS = 5 * MINUTE;

/** Our choice, no source: who was fetched to hospital ends no low here, so the call falls silent; the screen keeps it. */
const LOW_RINGS_MS = 60 * MINUTE;

function unattended(walk: Walk, now: Stamp, sure: boolean): boolean {
  const limit = HANDS_FULL.includes(stepOf(walk)) ? UNATTENDED_HANDS_FULL_MS : UNATTENDED_MS;
  return (oldestAge(walk.touchedAt, now, sure) ?? limit) >= limit;
}

/** May the bell of the person in front ring over this step? Over their own needle only once nobody answers there. */
const OWN_STEPS: readonly string[] = ["put away", "eat", "done", "mishap", "ill"];

export class Ringer {
  private readonly rang = new Map<string, { mono: number; kind: AlertKind }>();
  /** What sounded last, for whomever. */
  private last: { person: string; mono: number; kind: AlertKind } | null = null;
  private waiting: string | null = null;

  /**
   * Whom to ring for now. Another person's bell waits for the edge of a step: `edge` says that a new screen has just come up.
   * A new level rings at once.
   */
  due(house: HouseState, now: Stamp, edge: boolean): Ring[] {
    const front = frontPerson(house);
    const sure = house.doubt === null;
    const others = callers(house, now);
    const walk = front?.walk ?? null;
    const mayRing = (p: PersonState): boolean => {
      if (!walk || unattended(walk, now, sure)) return true;
      if (front === p) return OWN_STEPS.includes(stepOf(walk));
      return edge && (others.includes(p) || (insulinWatchAlert(p, now, sure) !== null && !HANDS_FULL.includes(stepOf(walk))));
    };
    const due = Object.values(house.people).flatMap((p): { person: string; kind: AlertKind }[] => {
      const person = p.person.id;
      const kind = kindOf(p, now, sure);
      if (kind === "over") this.rang.delete(person);
      if (kind === "over" || kind === "quiet") return [];
      // A low that needs help waits for nobody's step.
      if (!p.walk?.low?.callRaised && !p.walk?.ill?.callRaised && !mayRing(p)) return [];
      const last = this.rang.get(person);
      const every = alertOf(kind).everySeconds ?? Number.POSITIVE_INFINITY;
      return last && last.kind === kind && now.mono - last.mono < every * 1000 ? [] : [{ person, kind }];
    });
    const [first] = due.toSorted((a, b) => (isMoreUrgent(a.kind, b.kind) ? -1 : isMoreUrgent(b.kind, a.kind) ? 1 : 0));
    if (!first || this.isSpokenOver(first, now)) return [];
    const { tone } = alertOf(first.kind);
    if (tone === "note") return [];
    this.rang.set(first.person, { mono: now.mono, kind: first.kind });
    this.last = { ...first, mono: now.mono };
    return [{ ...first, level: tone }];
  }

  /** One voice at a time: a call for somebody else lets the last one be said, unless it is the more urgent of the two. */
  private isSpokenOver(next: { person: string; kind: AlertKind }, now: Stamp): boolean {
    const { last } = this;
    if (last === null || last.person === next.person || now.mono < last.mono) return false;
    return now.mono - last.mono < ONE_VOICE_MS && !isMoreUrgent(next.kind, last.kind);
  }

  /** True once, when the wait on the screen has just ended: who cannot see or hear words waits for this tone. */
  waitEnded(house: HouseState, now: Stamp): boolean {
    const walk = frontPerson(house)?.walk;
    const running = walk?.wait ? `${walk.id} ${walk.wait.for} ${walk.wait.began.mono}` : null;
    if (!walk || running === null || !waitOver(walk, now, house.doubt === null)) {
      this.waiting = running;
      return false;
    }
    const ended = this.waiting === running;
    this.waiting = null;
    return ended;
  }
}

/** A low with its call raised is the loud call (promise 13); while a low is treated, it comes before the meal. */
function kindOf(p: PersonState, now: Stamp, sure: boolean): AlertKind | "quiet" | "over" {
  if (p.walk?.low) {
    const age = oldestAge(p.walk.touchedAt, now, sure) ?? 0;
    return p.walk.low.callRaised && age < LOW_RINGS_MS ? "low, call raised" : "over";
  }
  if (p.walk?.ill?.callRaised && (oldestAge(p.walk.touchedAt, now, sure) ?? 0) < LOW_RINGS_MS) return "danger sign, call raised";
  const level = p.bell && bellNow(p.bell, now, sure).level;
  const bell = level && level !== "quiet" ? alertOfBell(level) : null;
  const watch = insulinWatchAlert(p, now, sure);
  if (bell && watch) return isMoreUrgent(watch, bell) ? watch : bell;
  return bell ?? watch ?? (level ? "quiet" : "over");
}
