// Where injections went, as the family and the clinic read it: on the screen a part at a time, on paper the whole body.
import { DAY, type LocalDate } from "#events/quantity.ts";
import type { NoGo, Spot } from "#events/spot.ts";
import type { Stamp } from "#events/stamp.ts";
import { type MarkedPlace, marksThatHold } from "#rules/body/marks.ts";
import { type Overused, overused } from "#rules/body/overuse.ts";
import { type SiteCode, siteCode } from "#rules/body/site-code.ts";
import { type SiteRules, siteRules } from "#rules/body/site-rules.ts";
import { addDays, daysBetween, localParts } from "#rules/time/local.ts";
import type { PersonState } from "#walk/state.ts";

/** Both are read: one rest of a spot, and the time between two visits. */
export type Weeks = 4 | 12;

export interface SheetUse {
  spot: Spot;
  /** Calendar days, as people count them: an injection of last evening was one day ago. */
  daysAgo: number;
  on: LocalDate;
  /** HL7 v2 table 0163. */
  code: SiteCode;
}

export interface SheetMark {
  id: string;
  kind: NoGo["kind"];
  spot: Spot;
  on: LocalDate;
  /** null: it still holds. */
  gone: LocalDate | null;
}

export interface BodySheet {
  weeks: Weeks;
  from: LocalDate;
  to: LocalDate;
  rules: SiteRules;
  /** Newest first. */
  uses: SheetUse[];
  overused: Overused[];
  /** Places that keep the needle off now. */
  marks: MarkedPlace[];
  /** Lumps that still rest, and those told gone within the weeks; the newest first. */
  lumps: SheetMark[];
}

const NO_CARE = { restDays: null, lastSpotMm: null, navelMm: null };

/** now: of the tablet, for whole days in its own zone. */
export function bodySheet(me: PersonState, now: Stamp, weeks: Weeks): BodySheet {
  const dateOf = (wall: number): LocalDate => localParts(wall, now.offset).date;
  const to = dateOf(now.wall);
  const from = addDays(to, -weeks * 7);
  const rules = siteRules(me.card?.card.care ?? NO_CARE, me.person.body);
  const uses = me.uses.flatMap(({ spot, at }): SheetUse[] => {
    const daysAgo = Math.max(0, daysBetween(dateOf(at), to));
    return daysAgo <= weeks * 7 ? [{ spot, daysAgo, on: dateOf(at), code: siteCode(spot) }] : [];
  });
  const inWeeks = (wall: number): boolean => now.wall - wall <= weeks * 7 * DAY;
  const lumps = [
    ...me.noGo.map((mark): MarkedPlace & { goneAt: number | null } => ({ ...mark, goneAt: null })),
    ...me.marksGone.filter(({ goneAt }) => inWeeks(goneAt)),
  ]
    .filter(({ kind }) => kind === "lump")
    .sort((a, b) => b.markedAt - a.markedAt)
    .map(({ id, kind, spot, markedAt, goneAt }): SheetMark => {
      return { id, kind, spot, on: dateOf(markedAt), gone: goneAt === null ? null : dateOf(goneAt) };
    });
  return { weeks, from, to, rules, uses, overused: overused(uses, rules), marks: marksThatHold(me.noGo, now.wall), lumps };
}
