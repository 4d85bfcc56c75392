// Background insulin in the tests' own account: its doses, its window and its pen, from the card's printed lines alone.
import type { BackgroundDose, DoseCard } from "#events/card.ts";
import type { Stamp } from "#events/stamp.ts";
import { type Account, type DoseAccount, type Ledger, passed, type WalkAccount } from "./ledger.ts";

const MINUTE = 60_000;
const DAY_MINUTES = 24 * 60;

export interface BackgroundAccount extends DoseAccount {
  insulin: string;
  /** The card's hour that it was taken for; null: told later. */
  hour: string | null;
}

const linesOf = (card: DoseCard | undefined, insulin: string): BackgroundDose[] =>
  (card?.background ?? []).filter((line) => line.insulin.id === insulin);

/** The line of the card that a background walk is for; undefined: it is gone. */
export const lineOf = (a: Account, w: WalkAccount): BackgroundDose | undefined =>
  linesOf(a.card?.card, w.background?.insulinId ?? "").find((line) => line.at === w.background?.at);

const longest = (lines: readonly BackgroundDose[]): number =>
  lines.length === 0 ? DAY_MINUTES : Math.max(...lines.map((line) => line.windowMinutes ?? DAY_MINUTES));

/** Doses that may make this one a second one: of its insulin, or of one that the card no longer knows. */
export function backgroundInside(a: Account, w: WalkAccount, now: Stamp, trusted: boolean): BackgroundAccount[] {
  const card = a.card?.card;
  return a.background.filter((d) => {
    if (d.walk === w.id) return false;
    const lines = linesOf(card, d.insulin);
    if (d.insulin !== w.background?.insulinId && lines.length > 0) return false;
    const own = lines.filter((line) => line.at === d.hour);
    const ms = passed(d.from, now, trusted);
    const toldAbout = d.walk === null ? 60 : 0;
    return ms === null || ms / MINUTE + Math.max(0, (d.ago ?? 0) - toldAbout) < longest(own.length > 0 ? own : lines);
  });
}

export function backgroundLogIsClear(l: Ledger, a: Account, w: WalkAccount, now: Stamp): boolean {
  const line = lineOf(a, w);
  // A line that is gone tells nothing, whatever was taken.
  if (!line) return true;
  if (line.windowMinutes === null || !l.trusted || backgroundInside(a, w, now, true).length > 0) return false;
  const window = longest(linesOf(a.card?.card, line.insulin.id)) * MINUTE;
  if (l.recordingSince === null || now.wall - l.recordingSince < window) return false;
  return l.unreadable.every((wall) => wall !== null && now.wall - wall >= window);
}
