import { describe, expect, it } from "vitest";
import { offers } from "#walk/offers.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const atTheNeedle = () =>
  new Table([{ person: odile, card: fixedCard, pens: [odilePen] }])
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send(
      { do: "exercise", hard: false },
      { do: "meal is ready" },
      { do: "heard dose" },
      { do: "pick pen", pen: "odile-meal", how: "mark" },
    )
    .send({ do: "insulin looks", look: "as it should be" }, { do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6")
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" });

const answers = (t: Table) =>
  offers(t.state, t.now).flatMap((o) => (o.offer === "press" && o.intent.do === "needle went in" ? [o.intent.answer] : []));

describe("Did the needle go in?", () => {
  it("takes a no while nothing was pressed", () => {
    const t = atTheNeedle();
    t.restart();
    expect(answers(t)).toEqual(["yes", "no", "not sure"]);
  });

  it("takes no no once the button was down: the dose stays counted", () => {
    const t = atTheNeedle().send({ do: "button is down" });
    t.restart();
    expect(answers(t)).toEqual(["yes", "not sure"]);
    t.send({ do: "needle went in", answer: "not sure" });
    expect(t.state.people.odile?.doses).toHaveLength(1);
  });
});
