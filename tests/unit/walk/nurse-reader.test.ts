import { describe, expect, it } from "vitest";
import { sceneKey } from "#walk/scene-key.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const toDial = (dialBy: "reads" | "helper") =>
  new Table([{ person: { ...odile, dialBy }, card: fixedCard, pens: [odilePen] }])
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" })
    .send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" })
    .send({ do: "needle fitted" }, { do: "primed", stream: true });
const six = { do: "give number", slot: "dial", text: "6", via: "touch", helper: null } as const;

describe("a dial that only a helper reads", () => {
  it("is not read by somebody alone, and the book does not say that it was", () => {
    const t = toDial("helper");
    expect(t.try(six).refusal).not.toBeNull();
    const before = sceneKey(t.state, t.now);
    t.send({ do: "name helper", name: "somebody else" });
    expect(sceneKey(t.state, t.now)).not.toBe(before);
    t.send(six, { do: "agree number" });
    expect(t.facts.flatMap((f) => (f.readable && f.event.type === "dose dialled" ? [f.event] : []))).toMatchObject([
      { how: "read by a helper", helper: "somebody else" },
    ]);
  });

  it("asks nobody who reads it alone", () => {
    expect(toDial("reads").try(six).refusal).toBeNull();
  });
});
