// A card comes into force only here (promise 2): typed twice alike, every oddity confirmed, read back, signed by a keeper.
import { canonical } from "#events/canonical.ts";
import { type DoseCard, doseCard } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import type { Person } from "#events/person.ts";
import type { LocalDate } from "#events/quantity.ts";
import type { Alarm } from "#rules/card/alarm.ts";
import { overlap } from "#rules/card/overlap.ts";
import { alarmsOf, dayOf } from "#rules/card/plausible.ts";
import { compareDates, isRealDate } from "#rules/time/local.ts";
import { type Difference, differences } from "./differences.ts";

export interface Signing {
  first: unknown;
  second: unknown;
  /** The whole card was read aloud against the paper and found right. */
  readBack: boolean;
  /** Keys (alarmKey) of the alarms to which a keeper said "the paper says so". */
  agreed: readonly string[];
  person: Person;
  keeper: { id: string; name: string } | null;
  today: LocalDate;
  /** The cards that hold or are to come. */
  held?: readonly Held[];
  /** The keeper confirmed that the clinic ends the cards whose days the new one shares. */
  endsOld?: boolean;
  /** Names the card for ever: a hash of its canonical form. */
  hash(card: DoseCard): string;
}

export interface Held {
  card: DoseCard;
  hash: string;
}

export type SignRefusal =
  | { refused: "no keeper" }
  | { refused: "not a card"; typing: "first" | "second" }
  | { refused: "another person's card" }
  | { refused: "typings differ"; differences: readonly Difference[] }
  | { refused: "another unit than the meter's"; card: string; meter: string }
  | { refused: "dates in the wrong order"; from: LocalDate; until: LocalDate }
  | { refused: "already over"; until: LocalDate }
  | { refused: "overlaps"; from: LocalDate; old: readonly DoseCard[] }
  | { refused: "alarms not confirmed"; alarms: readonly Alarm[] }
  | { refused: "not read back" };

export type Signed = { ok: true; events: Happened[] } | ({ ok: false } & SignRefusal);

export const alarmKey = (alarm: Alarm): string => canonical({ ...alarm });

const no = (refusal: SignRefusal): Signed => ({ ok: false, ...refusal });

function cardIn(typing: unknown): DoseCard | null {
  const read = doseCard.safeParse(typing);
  if (!read.success) return null;
  const { validFrom, reviewBy, validUntil } = read.data;
  const days = [validFrom, reviewBy, validUntil].every((date) => date === null || isRealDate(date));
  return days && isWhole(read.data) ? read.data : null;
}

/** Every row of a grid has a cell for every column, and a correction goes by a rule or by a table, never by both. */
function isWhole(card: DoseCard): boolean {
  return Object.values(card.meals).every((rule) => {
    if (rule === null || rule.kind === "bands") return true;
    if (rule.kind !== "grid") return !(rule.correction && rule.table);
    const cells = [...rule.rows.map((row) => row.units), ...(rule.foodOnly ? [rule.foodOnly] : [])];
    return cells.every((row) => row.length === rule.columns.length);
  });
}

/** The events that bring the card into force, or the first reason against it. Alarms ask and never block: once confirmed, they let it through. */
export function signCard(s: Signing): Signed {
  const first = cardIn(s.first);
  const second = cardIn(s.second);
  if (first === null) return no({ refused: "not a card", typing: "first" });
  if (second === null) return no({ refused: "not a card", typing: "second" });
  const differing = differences(first, second);
  if (differing.length > 0) return no({ refused: "typings differ", differences: differing });
  if (first.person !== s.person.id) return no({ refused: "another person's card" });
  if (first.glucoseUnit !== s.person.glucoseUnit)
    return no({ refused: "another unit than the meter's", card: first.glucoseUnit, meter: s.person.glucoseUnit });
  const { validFrom, validUntil } = first;
  if (validUntil !== null && compareDates(validUntil, validFrom) < 0)
    return no({ refused: "dates in the wrong order", from: validFrom, until: validUntil });
  if (validUntil !== null && compareDates(validUntil, s.today) < 0) return no({ refused: "already over", until: validUntil });
  const sharing = (s.held ?? []).filter((held) => overlap(held.card, first));
  if (sharing.length > 0 && s.endsOld !== true) return no({ refused: "overlaps", from: validFrom, old: sharing.map(({ card }) => card) });
  const open = alarmsOf(first, dayOf(first)).filter((alarm) => !s.agreed.includes(alarmKey(alarm)));
  if (open.length > 0) return no({ refused: "alarms not confirmed", alarms: open });
  if (!s.readBack) return no({ refused: "not read back" });
  if (s.keeper === null) return no({ refused: "no keeper" });
  const signature = {
    keeper: s.keeper.id,
    keeperName: s.keeper.name,
    signedOn: s.today,
    typedTwice: true as const,
    readBack: true as const,
  };
  // While a card holds, one that begins later waits for its day; with none, it is shown as the card that is not valid yet.
  const waits = s.held?.some(({ card }) => compareDates(card.validFrom, s.today) <= 0) && compareDates(validFrom, s.today) > 0;
  return {
    ok: true,
    events: [
      {
        type: "card signed",
        card: first,
        cardHash: s.hash(first),
        signature,
        ...(waits ? { waits: true as const } : {}),
        ...(sharing.length > 0 ? { ends: sharing.map(({ hash }) => hash) } : {}),
      },
    ],
  };
}
