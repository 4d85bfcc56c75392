import { describe, expect, it } from "vitest";
import type { Person } from "#events/person.ts";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

/** Somebody who can reach one narrow region only. */
const narrow: Person = {
  ...odile,
  body: { ...odile.body, armLengthMm: 200, fingerMm: 30, handMm: 90 },
  leftOutRegions: ["belly", "thigh", "buttock"],
};

const toThePlace = (t: Table) =>
  t
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send(
      { do: "exercise", hard: false },
      { do: "meal is ready" },
      { do: "heard dose" },
      { do: "pick pen", pen: "odile-meal", how: "mark" },
    )
    .send({ do: "insulin looks", look: "as it should be" }, { do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6");

describe("a body with hardly any place left", () => {
  it("is never sent to skin that was used the same day", () => {
    const t = new Table([{ person: narrow, card: fixedCard, pens: [odilePen] }]);
    const rests: number[] = [];
    for (let i = 0; i < 8; i++) {
      toThePlace(t);
      const walk = t.state.people.odile?.walk;
      if (!walk?.offered) {
        const say = sayWalk(t.state, t.now, GUARDS);
        expect(say?.lines.join(" ")).toContain("Harbour Clinic");
        expect(rests.length).toBeGreaterThan(0);
        return;
      }
      rests.push(walk.offered.restDays);
      expect(walk.offered.restDays).toBeGreaterThan(0);
      t.send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" }, { do: "button is down" });
      t.pass(10);
      t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" }, { do: "eating" }, { do: "finish" });
      t.pass(3 * 60 * 60 + 60);
    }
    expect.unreachable("the narrow region never ran out");
  });
});
