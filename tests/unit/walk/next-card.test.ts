// A card that was signed ahead holds from its day on, and not before.
import { describe, expect, it } from "vitest";
import type { DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { fold } from "#walk/fold.ts";
import { bring, odileAt, walk } from "../../kit/explore/at-table.ts";
import { signed } from "../../kit/explore/households.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const HALF_A_DAY = 12 * 3600;
/** The table stands at noon on 5 June. */
const next: DoseCard = {
  ...fixedCard,
  validFrom: "2026-06-06",
  meals: { ...fixedCard.meals, breakfast: { kind: "fixed units", units: units(5) } },
};

function sign(t: Table, card = next, hash = "next", waits = true): Table {
  const event = { ...signed(card, hash), ...(waits ? { waits: true as const } : {}) };
  t.state = fold(t.state, { readable: true, seq: t.state.lastSeq + 1, at: t.now, person: "odile", walk: null, event });
  return t;
}
const odile = (t: Table) => {
  const me = t.state.people.odile;
  if (!me) throw new Error("no Odile");
  return me;
};

describe("a card signed ahead", () => {
  it("leaves the card in force as it is until its day", () => {
    const t = sign(bring(odileAt("wash"), "card"));
    expect(walk(t).told?.units).toBe(6);
    t.pass(HALF_A_DAY - 60);
    t.send({ do: "pass time" });
    expect([odile(t).card?.hash, odile(t).nextCard?.hash]).toEqual(["hash-of-odile", "next"]);
  });

  it("begins with its day, whatever is done first, and the old one stays to be read", () => {
    const t = sign(odileAt("wash"));
    t.pass(HALF_A_DAY);
    t.send({ do: "pass time" });
    expect(odile(t)).toMatchObject({ card: { hash: "next" }, nextCard: null, pastCards: [{ hash: "hash-of-odile" }] });
    expect(t.types().filter((type) => type === "card began")).toHaveLength(1);
    t.send({ do: "pass time" });
    expect(t.types().filter((type) => type === "card began")).toHaveLength(1);
  });

  it("takes back a dose that the old card told", () => {
    const t = sign(bring(odileAt("wash"), "card"));
    t.pass(HALF_A_DAY);
    t.send({ do: "pass time" });
    expect(walk(t).told).toBeNull();
  });

  it("does not begin on a day that nobody is sure of", () => {
    const t = sign(odileAt("wash"));
    t.restart(HALF_A_DAY);
    t.send({ do: "pass time" });
    expect(odile(t).card?.hash).toBe("hash-of-odile");
    t.send({ do: "agree clock" }, { do: "pass time" });
    expect(odile(t).card?.hash).toBe("next");
  });

  it("gives way to a card signed later for the same days, and stays beside one that ends before", () => {
    const over = sign(sign(odileAt("wash")), { ...fixedCard, validFrom: "2026-06-05", validUntil: null }, "now", false);
    expect(odile(over)).toMatchObject({ card: { hash: "now" }, nextCard: null, pastCards: [{ hash: "next" }, { hash: "hash-of-odile" }] });
    const before = sign(sign(odileAt("wash")), { ...fixedCard, validFrom: "2026-06-05", validUntil: "2026-06-05" }, "today", false);
    expect(odile(before)).toMatchObject({ card: { hash: "today" }, nextCard: { hash: "next" }, pastCards: [{ hash: "hash-of-odile" }] });
    const again = sign(sign(odileAt("wash")), { ...next, validFrom: "2026-06-07" }, "other");
    expect(odile(again)).toMatchObject({ nextCard: { hash: "other" }, pastCards: [{ hash: "next" }] });
  });
});
