// Fills an empty demo log. Kept apart from every real household: its own database, whose name says demo.

import { demoHousehold, demoPens, henk, henkCard, marta, martaCard } from "#demo-data/household.ts";
import { canonical } from "#events/canonical.ts";
import type { DoseCard } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import type { Stamp } from "#events/stamp.ts";
import { sha256Hex } from "#log/chain.ts";
import { addDays, localParts } from "#rules/time/local.ts";
import type { NewFact } from "#walk/decide.ts";

export const cardHash = (card: DoseCard): string => sha256Hex(canonical(card));

/** The set-up of the demo household on this day. */
export function demoSetUp(now: Stamp): NewFact[] {
  const today = localParts(now.wall, now.offset).date;
  const days = { validFrom: addDays(today, -120), reviewBy: addDays(today, 60), validUntil: addDays(today, 240) };
  const signature = { keeper: "ines", keeperName: "Ines", signedOn: days.validFrom, typedTwice: true as const, readBack: true as const };
  const own = (person: string, event: Happened): NewFact => ({ person, walk: null, event });
  const sign = (card: DoseCard): NewFact => own(card.person, { type: "card signed", card, cardHash: cardHash(card), signature });
  const pens = demoPens(addDays(today, -6), addDays(today, 300));
  return [
    { person: null, walk: null, event: { type: "household begun", household: demoHousehold } },
    own("marta", { type: "person added", person: marta }),
    own("henk", { type: "person added", person: henk }),
    sign(martaCard(days)),
    sign(henkCard(days)),
    ...pens.map((pen) => own(pen.person, { type: "pen added", pen })),
  ];
}
