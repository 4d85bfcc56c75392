import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sayWalk } from "#words/en/steps.ts";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const MINUTE = 60;
const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const HI = { do: "read word", word: "HI", via: "touch" } as const;
const inLow = () => new Table([{ person: odile, card: fixedCard, pens: [odilePen] }]).send({ do: "open low", person: "odile" }, sugar);
const again = (t: Table, text: string) => t.number("recheck after low", text);
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines.join(" ") ?? "";

describe("a new reading in a low", () => {
  it("ends nothing while the sugar has not had its time", () => {
    const t = inLow();
    t.pass(2 * MINUTE);
    again(t, "90");
    expect(t.step()).toBe("low");
    expect(lines(t)).toContain("It is too early to be sure. Sit down. Wait 13 minutes.");
    t.pass(13 * MINUTE);
    expect(lines(t)).toContain("Measure again.");
    expect(again(t, "90").step()).toBe("done");
  });

  it("that is still low brings sugar at once, however early", () => {
    const t = inLow();
    t.pass(2 * MINUTE);
    t.send({ do: "read word", word: "LO", via: "touch" });
    expect(offers(t.state, t.now).some((o) => o.offer === "press" && o.intent.do === "took sugar")).toBe(true);
  });

  it("that shows HI is asked for again with clean hands, and the second one brings the clinic's number", () => {
    const t = inLow();
    t.pass(15 * MINUTE);
    t.send(HI);
    expect(t.step()).toBe("low");
    expect(lines(t)).toContain("HI may be sugar on your hands. Wash the sugar off your hands.");
    t.send(HI);
    expect(t.step()).toBe("done");
    expect(lines(t)).not.toContain("The low is over.");
    expect(lines(t)).toContain("555 0142");
  });

  it("ends a low whose call was raised, however early", () => {
    const t = inLow().send({ do: "cannot swallow" });
    expect(again(t, "110").step()).toBe("done");
  });

  it("is asked for at once after a start of the app, not after a wait that never ends", () => {
    const t = inLow();
    t.restart();
    expect(lines(t)).toContain("Measure again.");
    expect(again(t, "110").step()).toBe("done");
  });
});
