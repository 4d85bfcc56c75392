import { describe, expect, it } from "vitest";
import { spokenButtons, spokenOffers } from "#app/spoken-offers.ts";
import { understand } from "#speech/understand.ts";
import { offers } from "#walk/offers.ts";
import { bram, bramPen, fixedCard, odile, odilePen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const heard = (text: string) => ({ text, alternatives: [] });
const phrasesAt = (t: Table) => spokenOffers(offers(t.state, t.now), t.state).offers.flatMap((o) => ("phrases" in o ? o.phrases : []));

describe("what may be said at a step", () => {
  const table = () =>
    new Table([
      { person: odile, card: fixedCard, pens: [odilePen] },
      { person: bram, card: ratioCard, pens: [bramPen] },
    ]);

  it("gives no phrase two meanings", () => {
    const t = table().send({ do: "open meal", person: "odile", meal: "breakfast" });
    const all = [phrasesAt(t)];
    t.send({ do: "already washed" });
    all.push(phrasesAt(t));
    t.send({ do: "give number", slot: "reading", text: "120", via: "voice", helper: null });
    all.push(phrasesAt(t));
    for (const phrases of all) expect(new Set(phrases).size).toBe(phrases.length);
  });

  it("never turns to another person by voice", () => {
    const t = table();
    t.send(
      { do: "open meal", person: "bram", meal: "breakfast" },
      { do: "leave" },
      { do: "open meal", person: "odile", meal: "breakfast" },
    );
    const { meant } = spokenOffers(offers(t.state, t.now), t.state);
    for (const means of meant.values()) if (means.what === "intent") expect(means.intent.do).not.toBe("turn to");
  });

  it("takes no for no when both were said at a read-back", () => {
    const t = table().send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" });
    t.send({ do: "give number", slot: "reading", text: "120", via: "voice", helper: null });
    const spoken = spokenOffers(offers(t.state, t.now), t.state);
    const got = understand(heard("yes no"), spoken.offers);
    const means = got.kind === "offer" ? spoken.meant.get(got.id) : undefined;
    expect(means).toEqual({ what: "intent", intent: { do: "change number" } });
  });

  it("hears the five constant things beside the buttons of a small screen", () => {
    const spoken = spokenButtons({ buttons: [{ label: "■ Something else", press: () => undefined }] });
    const ids = ["something else", "help", "again", "quiet", "back", "something is wrong", "who speaks"].map(
      (text) => understand(heard(text), spoken.offers).kind,
    );
    expect(ids).toEqual(Array(7).fill("offer"));
  });
});
