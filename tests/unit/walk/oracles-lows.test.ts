// The oracle cases of the facts that are about readings, lows and sugar (section 13: O06 to O16 and O26), each with its source. The tool is asked, not the
// tests' own arithmetic; where the tool has no rule of its own, what it does instead is held.
import { describe, expect, it } from "vitest";
import type { Glucose } from "#events/quantity.ts";
import { millilitres } from "#rules/food/millilitres.ts";
import { adaLevel, classify } from "#rules/glucose/classify.ts";
import { LOW_GUIDELINES, snackAfterMinutes } from "#rules/glucose/guidelines.ts";
import { checkReading } from "#rules/glucose/reading.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { CAUTIONS } from "#words/en/fixed.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, led, me, odileAlone, odileAt, twice, walk } from "../../kit/explore/at-table.ts";
import { bram, bramPen, odile, ratioCard } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const MINUTE = 60;
const mg = (value: number): Glucose => ({ value, unit: "mg/dL" });
const mmol = (value: number): Glucose => ({ value, unit: "mmol/L" });
const doing = (t: Table) =>
  offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : [`number ${"slot" in o ? o.slot : ""}`]));
const lines = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.lines ?? [];
const HI = { do: "read word", word: "HI", via: "touch" } as const;
const LO = { do: "read word", word: "LO", via: "touch" } as const;
const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const bramReads = (text: string): Table => {
  const t = new Table([{ person: bram, card: ratioCard, pens: [bramPen] }]);
  t.send({ do: "open meal", person: "bram", meal: "breakfast" }, { do: "already washed" });
  return Number(text) < 4.5 ? twice(t, "reading", text) : t.number("reading", text);
};

describe("O06: 53, 54, 69, 70, 71 mg/dL (ADA Standards of Care, section 6; the ADA table of 2017 counts 70)", () => {
  it("are level 2, 1, 1, none, none, and 70 is level 1 where the limit counts", () => {
    const all = [53, 54, 69, 70, 71];
    expect(all.map((n) => adaLevel(mg(n), { limitCounts: false }))).toEqual(["level 2", "level 1", "level 1", "none", "none"]);
    expect(all.map((n) => adaLevel(mg(n), { limitCounts: true }))).toEqual(["level 2", "level 1", "level 1", "level 1", "none"]);
  });

  it("are low or not in the walk by the card's own edge", () => {
    const step = (n: number, counts: "below" | "at or below") =>
      twice(odileAt("reading", { low: { value: 70, counts } }), "reading", String(n)).step();
    expect([53, 54, 69, 70, 71].map((n) => step(n, "at or below"))).toEqual(["low", "low", "low", "low", "plate"]);
    expect([53, 54, 69, 70, 71].map((n) => step(n, "below"))).toEqual(["low", "low", "low", "plate", "plate"]);
  });
});

describe("O07: 3.9 and 4.0 mmol/L (UK practice: below 4.0)", () => {
  it("are low and not low", () => {
    const uk = LOW_GUIDELINES.find(({ by }) => by === "UK")?.low["mmol/L"] ?? { value: 0, counts: "below" };
    expect([3.9, 4].map((n) => classify(mmol(n), uk))).toEqual(["low", "not low"]);
    expect([bramReads("3.9").step(), bramReads("4.0").step()]).toEqual(["low", "plate"]);
  });
});

describe("O08 and O09: 5.5 in mg/dL and 110 in mmol/L (scale of the risk-index papers: 20 to 600 mg/dL, 1.1 to 33.3 mmol/L)", () => {
  it("fit only the other unit, and are refused", () => {
    expect(checkReading("5.5", "mg/dL")).toEqual({ ok: false, why: "fits only the other unit" });
    expect(checkReading("110", "mmol/L")).toEqual({ ok: false, why: "fits only the other unit" });
    const refused = (t: Table, text: string) => t.try({ do: "give number", slot: "reading", text, via: "touch", helper: null }).refusal;
    expect(refused(odileAt("reading"), "5.5")).toMatchObject({ no: "reading", why: "fits only the other unit" });
    const t = new Table([{ person: bram, card: ratioCard, pens: [bramPen] }]);
    t.send({ do: "open meal", person: "bram", meal: "breakfast" }, { do: "already washed" });
    expect(refused(t, "110")).toMatchObject({ no: "reading", why: "fits only the other unit" });
  });
});

describe("O10: HI and LO are words (how meters print them; 0Hi and 0Lo in the UCI data set AIM-94)", () => {
  it.each(["0Hi", "HI", "hi"])("%s is the word HI, and LO the word LO, never a number", (text) => {
    expect(checkReading(text, "mg/dL")).toEqual({ ok: false, why: "word HI" });
    expect(checkReading(text.replace(/h(i)/i, "lo"), "mmol/L")).toEqual({ ok: false, why: "word LO" });
  });

  it("LO goes to the low walk, and HI, once it stands, to whom to call; neither is a glucose in the book", () => {
    expect(odileAt("reading").send(LO).step()).toBe("low");
    const t = odileAt("reading").send(HI, { do: "change number" }, HI);
    expect(t.step()).toBe("ill");
    expect(lines(t)).toContain("Call Harbour Clinic: 555 0142 now.");
    expect(walk(t).reading).toMatchObject({ glucose: null, word: "HI" });
    expect(t.types()).not.toContain("reading taken");
  });
});

// ISO 15197:2013: within 15 mg/dL of a reference below 100, within 15 in 100 above (J Diabetes Sci Technol 2015, table 1).
// The tool has no such rule, and must not have one: it never sees a laboratory's value, a single reading cannot be judged by itself, and a reading that was
// put right would be a number that no meter showed. A reading counts as the meter shows it, wherever in the norm it lies, and a meter in doubt is a question
// for the care team.
describe.each([
  ["O11", 80, [64, 65, 95, 96], [false, true, true, false]],
  ["O12", 150, [127, 128, 130, 170, 172, 173], [false, true, true, true, true, false]],
] as const)("%s: reference %i (ISO 15197:2013)", (_id, reference, readings, inside) => {
  it("the norm itself: out and in as the facts say", () => {
    const allowed = reference < 100 ? 15 : reference * 0.15;
    expect(readings.map((n) => Math.abs(n - reference) <= allowed)).toEqual(inside);
  });

  it("is no rule of the tool: inside the norm or outside, the reading stands as it was given", () => {
    for (const n of readings) {
      const t = n < 80 ? twice(odileAt("reading"), "reading", String(n)) : odileAt("reading").number("reading", String(n));
      expect(walk(t).reading?.glucose).toEqual(mg(n));
      // The card's edge decides, and nothing else does.
      expect(t.step()).toBe(n <= 70 ? "low" : "plate");
    }
  });

  it("and a meter in doubt is measured again, or somebody is called: at every step there is a number", () => {
    const t = odileAt("reading").send({ do: "report", mishap: "something else" });
    expect(lines(t).at(-1)).toBe("Call Harbour Clinic: 555 0142.");
    expect(CAUTIONS).toContain("If number and feeling disagree, measure again.");
    expect(doing(odileAt("plate"))).toContain("back");
  });
});

describe("O13: 62, 15 g, 15 min, 68, 15 g, 15 min, 74 (15-15 rule, ADA leaflet of 2024)", () => {
  it("are two treatments of 15 g, no call, and a snack where the next meal is more than an hour off", () => {
    const t = odileAlone().send({ do: "open low", person: "odile" });
    for (const next of ["68", "74"]) {
      t.send(sugar);
      t.pass(15 * MINUTE);
      twice(t, "recheck after low", next);
    }
    expect(t.types().filter((type) => type === "sugar taken")).toHaveLength(2);
    expect(t.types()).not.toContain("call raised");
    expect(t.step()).toBe("done");
    expect(snackAfterMinutes("US")).toBe(60);
    expect(lines(t).join(" ")).toContain("Is the next meal more than 1 hour away?");
  });

  it("and 14 minutes are not 15: a good number then ends nothing", () => {
    const t = twice(odileAt("reading"), "reading", "62").send(sugar);
    t.pass(14 * MINUTE);
    expect(t.number("recheck after low", "90").step()).toBe("low");
  });
});

describe("O14: cannot swallow, or does not answer (ADA patient page; drug references by generic name for the second kit)", () => {
  it("no food or drink, the call first, then the kit's own steps, and a second kit only anew", () => {
    const t = odileAlone({}, { glucagonSteps: ["Open the orange box."] }).send({ do: "open low", person: "odile" });
    expect(led(t, { do: "cannot swallow" })).toEqual(["call raised"]);
    expect(doing(t)).not.toContain("took sugar");
    expect(lines(t).slice(0, 2)).toEqual(["Call 911 now.", "Put nothing in the mouth. Give no insulin."]);
    t.send({ do: "help step done" });
    expect(lines(t)).toEqual(["Open the orange box."]);
    t.send({ do: "help step done" }, { do: "help step done" });
    expect(lines(t)).toContain("Not awake after 15 minutes? A new kit may be used.");
    expect(doing(t)).not.toContain("help step done");
    expect(odile.glucagonSteps).toBeUndefined();
  });

  it("silence in a low is an answer too: the call comes by itself", () => {
    const t = odileAlone().send({ do: "open low", person: "odile" });
    t.pass(5 * MINUTE);
    expect(led(t, { do: "pass time" })).toEqual(["call raised"]);
  });
});

describe("O15: 4 tablets of 4 g; 3 of 4 g (leaflets after Diabetes Canada, 16 g)", () => {
  it("16 g are enough for 15, 12 g are not: three tablets are never offered", () => {
    const [first] = sugarsOffered([], 15);
    expect(first).toMatchObject({ id: "glucose-tablets", amount: "four tablets", grams: 16 });
    const t = odileAlone().send({ do: "open low", person: "odile" });
    expect(t.try({ do: "took sugar", food: "glucose-tablets", grams: 12 }).refusal).toEqual({ no: "not offered here" });
  });
});

describe("O16: 4 US fluid ounces (definition of the ounce, NIST Handbook 44)", () => {
  it("are 118.29 millilitres", () => expect(millilitres(4)).toBeCloseTo(118.29, 2));
});

describe("O26: 66 with any meal (general teaching: a low before a meal is treated first)", () => {
  it("no dose is checked, told or dialled before a good reading", () => {
    const t = twice(odileAt("reading"), "reading", "66");
    expect(t.step()).toBe("low");
    expect(t.types()).not.toContain("dose told");
    t.send(sugar);
    t.pass(15 * MINUTE);
    t.number("recheck after low", "90");
    expect(t.step()).toBe("plate");
    expect(me(bring(t, "pen")).walk?.told).toMatchObject({ units: 6, correction: 0 });
  });
});
