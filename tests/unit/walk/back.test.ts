import { describe, expect, it } from "vitest";
import type { StepName } from "#events/happened-walk.ts";
import { offers } from "#walk/offers.ts";
import { voidedBy } from "#walk/voiding.ts";
import { bring, led, odileAlone, odileAt, walk } from "../../kit/explore/at-table.ts";
import { VOIDS } from "../../kit/explore/ledger.ts";

const back = { do: "back" } as const;

describe("Back", () => {
  it("voids exactly what was built on the changed answer (the table of the design, kept by the tests)", () => {
    for (const [step, voided] of Object.entries(VOIDS)) expect(voidedBy(step as StepName), step).toEqual(voided);
  });

  it("from the dial takes the pen and the dial, and keeps reading, plate and dose", () => {
    const t = odileAt("dial").send(back);
    expect(t.step()).toBe("pen");
    expect(walk(t)).toMatchObject({ dial: null, told: { units: 6 }, plate: { ready: true } });
    expect(walk(t).reading).not.toBeNull();
  });

  it("from the skin takes the spot and the skin, and keeps the dial", () => {
    const t = odileAt("skin").send(back);
    expect(t.step()).toBe("place");
    expect(walk(t)).toMatchObject({ place: null, skinDry: false, dial: { units: 6 } });
  });

  it("is an event, which names where from, where to and what it voided", () => {
    const t = odileAt("dial");
    const [fact] = t.try(back).facts;
    expect(fact?.event).toEqual({ type: "went back", from: "dial", to: "pen", voided: ["pen", "dial"] });
  });

  it("is not offered once the needle step was opened", () => {
    for (const stop of ["inject", "put away", "eat", "done"] as const) {
      const t = odileAt(stop);
      expect(
        offers(t.state, t.now).some((o) => o.offer === "press" && o.role === "back"),
        stop,
      ).toBe(false);
      expect(led(t, back), stop).toEqual([]);
    }
  });

  it("steps over a meal that was eaten first: it leads to the card and nowhere in a circle", () => {
    const card = { timing: { when: "after eating", earliestMinutes: 0, latestMinutes: 30 } } as const;
    const t = bring(odileAlone(card), "card").send({ do: "heard dose" }, { do: "meal eaten first" }, back);
    expect(t.step()).toBe("card");
    expect(walk(t)).toMatchObject({ doseHeard: false, eatenFirst: true });
  });
});
