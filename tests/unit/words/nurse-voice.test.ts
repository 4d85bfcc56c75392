import { describe, expect, it } from "vitest";
import { spokenOffers } from "#app/spoken-offers.ts";
import { understand } from "#speech/understand.ts";
import { offers } from "#walk/offers.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

function meant(t: Table, text: string): unknown {
  const spoken = spokenOffers(offers(t.state, t.now), t.state);
  const heard = understand({ text, alternatives: [] }, spoken.offers);
  const means = heard.kind === "offer" ? spoken.meant.get(heard.id) : undefined;
  return means?.what === "intent" ? means.intent : heard.kind;
}

const table = () => new Table([{ person: odile, card: fixedCard, pens: [odilePen] }]);
const atNeedleQuestion = () => {
  const t = table()
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" })
    .send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" })
    .send({ do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6")
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" });
  t.restart();
  return t;
};
const atTakenQuestion = () => {
  const t = table();
  t.restart();
  t.send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "doubt clock" }, { do: "agree clock" });
  return t;
};

describe("a 'no' from the next room", () => {
  it("never says that the needle did not go in", () => {
    const t = atNeedleQuestion();
    expect(t.step()).toBe("needle question");
    for (const text of ["no", "no no", "yes no", "no yes"]) expect(meant(t, text)).not.toEqual({ do: "needle went in", answer: "no" });
    expect(meant(t, "yes it did not")).toBe("ask which");
    expect(meant(t, "it did not go in")).toEqual({ do: "needle went in", answer: "no" });
  });

  it("never says that no dose was taken", () => {
    const t = atTakenQuestion();
    expect(t.step()).toBe("taken");
    for (const text of ["no", "yes no"]) expect(meant(t, text)).not.toEqual({ do: "answer taken", answer: "no" });
    expect(meant(t, "i am not sure not yet")).toBe("ask which");
    expect(meant(t, "no i did not")).toEqual({ do: "answer taken", answer: "no" });
  });
});
