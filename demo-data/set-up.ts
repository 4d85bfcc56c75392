// The afternoon on which Ines set the tablet up, and the day on which she signed a new card.
import type { DoseCard, Signature } from "#events/card.ts";
import type { LocalDate } from "#events/quantity.ts";
import { addDays } from "#rules/time/local.ts";
import type { Home } from "./home.ts";
import { demoHousehold, demoKeeper, henk, henkCard, marta, martaCard, martaFirstCard } from "./household.ts";
import type { PenDrawer } from "./pens.ts";

export type HashOf = (card: DoseCard) => string;

function sign(home: Home, card: DoseCard, signedOn: LocalDate, hashOf: HashOf): void {
  const signature: Signature = { keeper: demoKeeper.id, keeperName: demoKeeper.name, signedOn, typedTwice: true, readBack: true };
  home.note(card.person, { type: "card signed", card, cardHash: hashOf(card), signature });
}

/** Half an hour for each card; about an hour and a half in all. */
export function setUp(home: Home, pens: PenDrawer, date: LocalDate, hashOf: HashOf): void {
  const days = { validFrom: addDays(date, -30), reviewBy: addDays(date, 150), validUntil: addDays(date, 330) };
  home.note(null, { type: "household begun", household: demoHousehold }, { type: "keeper added", keeper: demoKeeper });
  home.pass(400);
  home.note("marta", { type: "person added", person: marta });
  home.note("marta", {
    type: "no-go place marked",
    noGo: { id: "marta-scar", spot: { region: "belly", side: "right", outMm: 80, downMm: 70 }, radiusMm: 25, kind: "scar" },
  });
  home.pass(300);
  home.note("henk", { type: "person added", person: henk });
  home.pass(1800);
  sign(home, martaFirstCard({ ...days, reviewBy: addDays(date, 60) }), date, hashOf);
  home.pass(1800);
  sign(home, henkCard(days), date, hashOf);
  home.pass(500);
  pens.addAll(date);
}

/** Her old card stays in the log; doses told before this day name it. */
export function signMartasNewCard(home: Home, date: LocalDate, hashOf: HashOf): void {
  sign(home, martaCard({ validFrom: date, reviewBy: addDays(date, 120), validUntil: addDays(date, 300) }), date, hashOf);
}
