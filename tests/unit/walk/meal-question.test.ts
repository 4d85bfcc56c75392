import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sceneKey } from "#walk/scene-key.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, me, odileAt } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const MINUTE = 60;
const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];
const ate = { do: "answer meal", person: "odile", ate: "all" } as const;

describe("the question about the meal", () => {
  it("comes by itself at the last screen when nobody pressed Done, and its answer ends the walk", () => {
    const t = odileAt("done");
    t.pass(19 * MINUTE);
    expect(doing(t)).not.toContain("answer meal");
    t.pass(MINUTE);
    expect(doing(t)).toContain("answer meal");
    expect(doing(t)).toContain("finish");
    expect(lines(t)).toContain("How much of the meal did you eat?");
    t.send(ate);
    expect(t.types().slice(-2)).toEqual(["meal answered", "walk ended"]);
    expect(me(t)).toMatchObject({ walk: null, mealQuestion: null, cleanWalks: 1 });
  });

  it("is a new screen when it comes, and so is said", () => {
    const t = odileAt("done");
    const before = sceneKey(t.state, t.now);
    t.pass(20 * MINUTE);
    expect(sceneKey(t.state, t.now)).not.toBe(before);
  });

  it("is asked in the kitchen too when the last screen was left without Done", () => {
    const t = odileAt("done").send({ do: "leave" });
    t.pass(20 * MINUTE);
    expect(doing(t)).toContain("answer meal");
    t.send(ate);
    expect(me(t)).toMatchObject({ walk: null, mealQuestion: null });
  });

  it("waits for the question about an open needle, and comes after it", () => {
    const t = odileAt("done").send({ do: "finish" }, { do: "open meal", person: "odile", meal: "breakfast" });
    t.send({ do: "the first was not taken" });
    bring(t, "inject").send({ do: "leave" });
    t.pass(30 * MINUTE);
    expect(doing(t)).not.toContain("answer meal");
    t.send({ do: "turn to", person: "odile" }, { do: "needle went in", answer: "no" }, { do: "leave" });
    expect(doing(t)).toContain("answer meal");
  });

  it("is not lost by a next walk that is open", () => {
    const t = odileAt("done").send({ do: "finish" }, { do: "open meal", person: "odile", meal: "snack" }, { do: "leave" });
    t.pass(20 * MINUTE);
    expect(doing(t)).toContain("answer meal");
    t.send(ate);
    expect(me(t).mealQuestion).toBeNull();
    expect(me(t).walk?.meal).toBe("snack");
  });
});

describe("Done that nobody presses", () => {
  for (const stop of ["put away", "done"] as const) {
    it(`is asked for again five minutes later, three times: ${stop}`, () => {
      const t = odileAt(stop);
      const keys = new Set([sceneKey(t.state, t.now)]);
      t.pass(5 * MINUTE - 1);
      keys.add(sceneKey(t.state, t.now));
      expect(keys.size).toBe(1);
      for (let i = 0; i < 8; i++) {
        t.pass(5 * MINUTE);
        keys.add(sceneKey({ ...t.state, people: { odile: { ...me(t), mealQuestion: null } } }, t.now));
      }
      expect(keys.size).toBe(4);
    });
  }

  it("asks whether it is done, in words of its own", () => {
    const away = odileAt("put away");
    away.pass(5 * MINUTE);
    expect(lines(away)).toContain("Is the pen put away? Press Put away.");
    const done = odileAt("done");
    done.pass(5 * MINUTE);
    expect(lines(done)).toContain("Are you done? Press Done.");
  });

  it("asks at the window again, since the dose is not told as delivered yet", () => {
    const t = odileAt("inject").send({ do: "button is down" });
    t.pass(10);
    t.send({ do: "wait is over" });
    const before = sceneKey(t.state, t.now);
    t.pass(5 * MINUTE);
    expect(sceneKey(t.state, t.now)).not.toBe(before);
  });
});
