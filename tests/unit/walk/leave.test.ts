import { describe, expect, it } from "vitest";
import { offers } from "#walk/offers.ts";
import { led, odileAt, walk } from "../../kit/explore/at-table.ts";

const STOPS = ["wash", "reading", "plate", "card", "pen", "dial", "place", "skin", "inject", "put away", "eat", "done"] as const;

describe("leaving (promise 11)", () => {
  for (const stop of STOPS) {
    it(`at ${stop} is recorded, and the walk is offered again with the moment it stopped`, () => {
      const t = odileAt(stop);
      t.pass(30);
      const left = t.now.wall;
      expect(led(t, { do: "leave" })).toEqual(["walk left"]);
      expect(t.step()).toBe("kitchen");
      t.pass(60);
      t.send({ do: "pass time" });
      expect(walk(t)).toMatchObject({ left: true, touchedAt: { wall: left } });
      expect(offers(t.state, t.now)).toContainEqual({ offer: "press", role: "main", intent: { do: "turn to", person: "odile" } });
      t.send({ do: "turn to", person: "odile" });
      expect(t.step()).toBe(stop === "inject" ? "needle question" : stop);
    });
  }

  it("a bell that nobody answers does not make a left walk look fresher", () => {
    const t = odileAt("eat").send({ do: "leave" });
    const left = t.now.wall;
    t.pass(30 * 60);
    t.send({ do: "pass time" });
    expect(t.types()).toContain("bell not answered");
    expect(walk(t).touchedAt.wall).toBe(left);
  });
});
