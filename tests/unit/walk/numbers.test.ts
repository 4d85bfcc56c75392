import { describe, expect, it } from "vitest";
import { bring, led, me, odileAlone, odileAt, twice, walk } from "../../kit/explore/at-table.ts";
import { bram, bramPen, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

type Slot = "reading" | "dial" | "grams" | "servings" | "left in window";
const give = (slot: Slot, text: string, via: "touch" | "voice" = "touch") =>
  ({ do: "give number", slot, text, via, helper: null }) as const;

const bramAt = (to: "reading" | "plate"): Table => {
  const t = new Table([{ person: bram, card: ratioCard, pens: [bramPen] }]);
  t.send({ do: "open meal", person: "bram", meal: "breakfast" }, { do: "already washed" });
  if (to === "plate") t.number("reading", "7.0").send({ do: "exercise", hard: false });
  return t;
};

/** What the walk is, but for the near misses it counts: a refused number must lose nothing. */
const kept = (t: Table, id: string) => ({ ...walk(t, id), slips: 0, touchedAt: null });

describe("bad numbers (mistakes 1 to 3 and 6)", () => {
  const refusals: readonly [string, () => Table, string, Slot, string, string][] = [
    ["nothing at all", () => odileAt("reading"), "odile", "reading", "", "empty"],
    ["zero", () => odileAt("reading"), "odile", "reading", "0", "zero"],
    ["a digit too many", () => odileAt("reading"), "odile", "reading", "1800", "too high"],
    ["5.5 in mg/dL", () => odileAt("reading"), "odile", "reading", "5.5", "fits only the other unit"],
    ["110 in mmol/L", () => bramAt("reading"), "bram", "reading", "110", "fits only the other unit"],
    ["half a milligram", () => odileAt("reading"), "odile", "reading", "180.5", "too many decimals"],
    ["HI as a number", () => odileAt("reading"), "odile", "reading", "HI", "word HI"],
    ["LO as a number", () => odileAt("reading"), "odile", "reading", "Lo", "word LO"],
    ["letters", () => odileAt("reading"), "odile", "reading", "12O", "not a number"],
    ["no grams", () => bramAt("plate"), "bram", "grams", "", "empty"],
    ["grams ten times too many", () => bramAt("plate"), "bram", "grams", "450", "too many"],
    ["a quarter of a serving", () => bramAt("plate"), "bram", "servings", "2.25", "too many decimals"],
    ["half a unit on a pen of whole units", () => odileAt("dial"), "odile", "dial", "6.5", "off the pen's step"],
    ["more than any pen dials", () => odileAt("dial"), "odile", "dial", "600", "too many"],
    ["a dial of nothing", () => odileAt("dial"), "odile", "dial", " ", "empty"],
  ];

  for (const [name, at, person, slot, text, why] of refusals) {
    it(`${name}: refused with its reason, kept as a near miss, and the walk stands where it was`, () => {
      const t = at();
      const before = kept(t, person);
      const decision = t.try(give(slot, text));
      expect(decision.refusal).toMatchObject({ why, text });
      expect(decision.facts.map((f) => f.event.type)).toEqual(["near miss"]);
      expect(kept(t, person)).toEqual(before);
    });
  }

  it("25 could be either unit: asked, and the other one is refused as a near miss", () => {
    for (const [t, own, other] of [
      [odileAt("reading"), "mg/dL", "mmol/L"],
      [bramAt("reading"), "mmol/L", "mg/dL"],
    ] as const) {
      t.send(give("reading", "25"));
      expect(t.try({ do: "agree number" }).refusal).toEqual({ no: "not offered here" });
      const wrong = t.try({ do: "choose unit", unit: other });
      expect(wrong.refusal).toEqual({ no: "wrong unit", unit: own });
      expect(wrong.facts.map((f) => f.event.type)).toEqual(["near miss", "number turned down"]);
      t.send(give("reading", "25"), { do: "choose unit", unit: own });
      expect(led(t, { do: "agree number" })).toEqual(["digits asked again"]);
    }
  });

  it("a unit agreed for one number is not agreed for the next", () => {
    const t = odileAt("reading").send(
      give("reading", "25"),
      { do: "choose unit", unit: "mg/dL" },
      { do: "leave" },
      { do: "turn to", person: "odile" },
    );
    t.send(give("reading", "25"));
    expect(t.try({ do: "agree number" }).refusal).toEqual({ no: "not offered here" });
  });

  it("HI is a word: washing and a new strip come next, and no dose", () => {
    const t = odileAt("reading").send({ do: "read word", word: "HI", via: "touch" });
    expect(t.step()).toBe("reading");
    expect(t.types()).not.toContain("dose told");
    t.send({ do: "change number" }).number("reading", "120");
    expect(t.step()).toBe("plate");
  });

  it("three times the usual meal is asked for twice", () => {
    const t = bramAt("plate").send(give("grams", "90"));
    expect(led(t, { do: "agree number" })).toEqual(["digits asked again"]);
    t.send(give("grams", "90"));
    expect(me(t, "bram").walk?.plate).toMatchObject({ grams: 90 });
  });
});

describe("how a number comes to be used (promise 8)", () => {
  it("is given, read back and agreed in a later turn, by touch as by voice", () => {
    for (const via of ["touch", "voice"] as const) {
      const t = odileAt("reading");
      expect(led(t, give("reading", "120", via))).toEqual(["number given"]);
      expect(walk(t).reading).toBeNull();
      expect(led(t, { do: "agree number" })).toEqual(["reading taken"]);
    }
  });

  it("no wins: nothing is used and the number is asked for again", () => {
    const t = odileAt("reading").send(give("reading", "120"));
    expect(led(t, { do: "change number" })).toEqual(["number turned down"]);
    expect(walk(t)).toMatchObject({ reading: null, draft: null });
  });

  it("silence is never yes", () => {
    const t = odileAt("reading").send(give("reading", "120", "voice"));
    t.pass(3600);
    expect(led(t, { do: "pass time" })).toEqual([]);
    expect(walk(t).reading).toBeNull();
  });

  it("a second number does not slip in while the first is read back", () => {
    const t = odileAt("reading").send(give("reading", "120"));
    expect(t.try(give("reading", "210")).refusal).toEqual({ no: "not offered here" });
    expect(walk(t).draft?.text).toBe("120");
  });

  it("a reading outside the usual band needs its digits twice, and two that differ are both dropped", () => {
    const t = odileAt("reading").send(give("reading", "251"), { do: "agree number" });
    expect(t.try(give("reading", "215")).refusal).toEqual({ no: "two numbers differ", first: "251", second: "215" });
    expect(walk(t)).toMatchObject({ reading: null, draft: null });
    expect(twice(t, "reading", "251").step()).toBe("plate");
  });

  it("a dial said by voice needs its digits twice, by touch once", () => {
    const touched = odileAt("dial").number("dial", "6");
    expect(touched.step()).toBe("place");
    const said = odileAt("dial").send(give("dial", "6", "voice"));
    expect(led(said, { do: "agree number" })).toEqual(["digits asked again"]);
    expect(said.send(give("dial", "6", "voice")).step()).toBe("place");
  });

  it("clicks are counted twice by somebody who does not see them, and a second count that differs starts anew", () => {
    const t = odileAt("dial", {}, { dialBy: "counts twice" }).send(give("dial", "6"));
    expect(led(t, { do: "agree number" })).toEqual(["digits asked again"]);
    expect(t.try(give("dial", "7")).refusal).toEqual({ no: "two numbers differ", first: "6", second: "7" });
    t.send(give("dial", "6"), { do: "agree number" }, give("dial", "6"));
    expect(walk(t).dial).toEqual({ units: 6, how: "counted twice" });
  });

  it("a dial that is not the card's is a near miss, and nothing is dialled", () => {
    for (const text of ["5", "7", "16", "60", "0"]) {
      const t = odileAt("dial").send(give("dial", text));
      expect(t.try({ do: "agree number" }).refusal).toEqual({ no: "dial is not the card", dialled: Number(text), told: 6 });
      expect(walk(t)).toMatchObject({ dial: null, draft: null });
      expect(t.types()).toContain("near miss");
    }
  });

  it("the person's own number first: a different one is a near miss and the card's is told all the same", () => {
    const t = bring(odileAlone({}, { sayFirst: true }), "card").number("own number", "16");
    expect(t.types()).toContain("near miss");
    expect(walk(t).ownNumber).toEqual({ units: 16, matches: false });
    expect(walk(t).told?.units).toBe(6);
  });

  it("a number half given is given anew after the walk was left: six units never become six grams", () => {
    const t = odileAt("dial").send(give("dial", "6"), { do: "leave" });
    t.pass(11 * 60);
    t.send({ do: "turn to", person: "odile" });
    expect(walk(t).draft).toBeNull();
    expect(t.try({ do: "agree number" }).refusal).toEqual({ no: "not offered here" });
  });

  it("what is left in the window is taken off the dose, and is never more than was dialled", () => {
    const t = odileAt("inject").send({ do: "button is down" });
    t.pass(10);
    t.send({ do: "wait is over" }, give("left in window", "7"));
    expect(t.try({ do: "agree number" }).refusal).toEqual({ no: "window shows more than was dialled", left: 7, dialled: 6 });
    t.send(give("left in window", "2"), { do: "agree number" });
    expect(walk(t).injected).toEqual({ units: 4, left: 2, certain: true });
    expect(t.step()).toBe("mishap");
    expect(me(t).doses[0]?.units).toBe(4);
  });
});
