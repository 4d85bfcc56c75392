/**
 * The reference of the dose card against every worked example that it was given. Sources are named beside each check: teaching pages of a
 * research study, children's and home-health services, educators and hospitals (E1 to E11), and the oracle figures drawn from them.
 */
import { describe, expect, it } from "vitest";
import { dropByThumb, gramsByThumb, oddDrop, oddGrams, unitOf, unlikeThumb } from "../../reference/card/alarms.ts";
import { check } from "../../reference/card/check.ts";
import { down, figure, nearest } from "../../reference/card/exact.ts";
import { isInside, left, onBoard } from "../../reference/card/on-board.ts";
import { correctionSum } from "../../reference/card/parts.ts";
import type { Card, Correction, Earlier, Line, Mode, Moment, Row } from "../../reference/card/shapes.ts";

const PLAIN: Card = {
  unit: "mg/dL",
  otherUnit: "convert",
  valid: { from: "2026-01-01", until: null },
  timing: "before eating",
  window: "180",
  low: { below: "70", itself: true },
  lines: {},
  background: {},
  insulin: { mayCorrect: true, needsFood: true },
  parts: "as they are",
  step: "1",
  direction: "nearest, half up",
  penStep: "1",
  largest: "30",
  gap: { minutes: "180", inside: "no correction" },
  onBoard: { used: "no" },
  bedtime: null,
  afterExercise: null,
  afterLow: null,
  ill: null,
};

function moment(reading: string, grams: string | null, more: Partial<Moment> = {}): Moment {
  return {
    for: { meal: "dinner" },
    today: "2026-03-01",
    clockIsSure: true,
    eatenFirst: false,
    reading: { value: reading, unit: "mg/dL", minutesOld: "2" },
    grams,
    skipped: false,
    bedtime: false,
    afterExercise: false,
    afterLow: false,
    ill: false,
    earlier: [],
    ...more,
  };
}

function ratio(gramsPerUnit: string, target: string, perUnit: string, mode: Mode = "linear", mayTakeAway = false): Line {
  return {
    kind: "parts",
    food: { by: "ratio", gramsPerUnit },
    correction: { by: "sum", target: { low: target, high: target }, perUnit, mode, mayTakeAway },
  };
}

/** The answer in figures: units, food, correction; or the reason for none. */
function told(card: Partial<Card>, line: Line, at: Moment): string {
  const answer = check({ ...PLAIN, ...card, lines: { dinner: line } }, at);
  if (answer.say === "ask") return answer.why;
  const figures = `${answer.food.toString()} + ${answer.correction.toString()} = ${answer.units.toString()}`;
  return answer.call ? `${figures}, call` : figures;
}

const both = (at: string) => ({ at, counts: true });
const short = (at: string) => ({ at, counts: false });
function row(from: string | null, to: string | null, units: string, call = false): Row {
  return { from: from === null ? null : both(from), to: to === null ? null : both(to), units, call };
}
function rowsOnly(rows: readonly Row[]): Line {
  return { kind: "parts", food: { by: "none" }, correction: { by: "rows", rows } };
}
function steps(mode: Mode, target: string, perUnit: string): Extract<Correction, { by: "sum" }> {
  return { by: "sum", target: { low: target, high: target }, perUnit, mode, mayTakeAway: false };
}

/** E11, hospital inpatient scale (2017), the "insulin-sensitive" column. */
const E11 = [
  row(null, "140", "0"),
  row("141", "180", "2"),
  row("181", "220", "4"),
  row("221", "260", "6"),
  row("261", "300", "8"),
  row("301", "350", "10"),
  row("351", "400", "12"),
  { ...row("401", null, "14"), call: true },
];
/** The same rows with decimal edges: each ends just short of where the next begins. */
const E11_DECIMAL = E11.map((each, index) => {
  const next = E11[index + 1];
  return next?.from ? { ...each, to: short(next.from.at) } : each;
});

describe("the reference agrees with the worked examples", () => {
  it("E1, O17: research-study dose guide, 1 unit for 10 g, target 100, 50 a unit: 200 and 60 g give 6 and 2, 8 units", () => {
    expect(told({}, ratio("10", "100", "50"), moment("200", "60"))).toBe("6 + 2 = 8");
  });

  it("E2, O18: children's-hospital worksheet, 15, 120, 30: 214 and 68 g give 4.5 and 3.1 in tenths, then 7.5 or 8", () => {
    const line = ratio("15", "120", "30");
    expect(told({ parts: "tenths", step: "0.5", penStep: "0.5" }, line, moment("214", "68"))).toBe("4.5 + 3.1 = 7.5");
    expect(told({ parts: "tenths" }, line, moment("214", "68"))).toBe("4.5 + 3.1 = 8");
  });

  it("E3, O19: home-health nurse page, 50 g at 1 for 10, 1 for every 30 above 150: 190 gives 2 where each started 30 counts", () => {
    expect(told({}, ratio("10", "150", "30", "each started step"), moment("190", "50"))).toBe("5 + 2 = 7");
    expect(told({}, ratio("10", "150", "30", "nearest"), moment("190", "50"))).toBe("5 + 1 = 6");
    expect(told({}, ratio("10", "150", "30", "down"), moment("190", "50"))).toBe("5 + 1 = 6");
    expect(correctionSum(steps("linear", "150", "30"), figure("190")).toFraction()).toBe("4/3");
  });

  it.each([
    ["120", "0"],
    ["121", "1"],
    ["170", "1"],
    ["171", "2"],
    ["220", "2"],
    ["221", "3"],
    ["270", "3"],
  ])("E4, O20: lay explanation, 1 unit for each started 50 above 120: %s gives %s", (reading, units) => {
    expect(correctionSum(steps("each started step", "120", "50"), figure(reading)).toString()).toBe(units);
  });

  it("E5, O21: class handout, 1 for 5 g, target 120, 20 a unit: 220 and 70 g give 14 and 5, 19 units; with 500/90 it is 17.6", () => {
    expect(told({}, ratio("5", "120", "20"), moment("220", "70"))).toBe("14 + 5 = 19");
    expect(told({ step: "0.1", penStep: "0.1" }, ratio("500/90", "120", "20"), moment("220", "70"))).toBe("12.6 + 5 = 17.6");
    expect(dropByThumb("90", "1800").toString()).toBe("20");
    expect(gramsByThumb("90").toFraction()).toBe("50/9");
  });

  it("E6: patient page, 220 less 120 by 50 gives 2", () => {
    expect(correctionSum(steps("linear", "120", "50"), figure("220")).toString()).toBe("2");
  });

  it("E7: teaching hospital's text, ratios of 6 to 30 g and drops of 30 to 100 are in use and raise no alarm; far ones do", () => {
    expect(["6", "12", "15", "30"].some(oddGrams)).toBe(false);
    expect(["30", "50", "100"].some((drop) => oddDrop(drop, "mg/dL"))).toBe(false);
    expect(["2.9", "50.1"].every(oddGrams)).toBe(true);
    expect(oddDrop("9", "mg/dL") && oddDrop("201", "mg/dL") && oddDrop("0.5", "mmol/L") && oddDrop("11.1", "mmol/L")).toBe(true);
  });

  it("E8, O27: Canadian educator manual, 100 by a day's 40 units is 2.5 mmol/L a unit", () => {
    expect(dropByThumb("40", "100").toString()).toBe("2.5");
  });

  it("E9, O27: Melbourne hospital, 500 by 50 units is 10 g, which is 1.5 units for 15 g; 1800 and 1500 by 50 are 36 and 30", () => {
    expect(gramsByThumb("50").toString()).toBe("10");
    const servings: Line = {
      kind: "parts",
      food: { by: "servings", units: "1.5", grams: "15", count: "exactly" },
      correction: { by: "none" },
    };
    expect(told({}, servings, moment("110", "40"))).toBe("4 + 0 = 4");
    expect(dropByThumb("50", "1800").toString()).toBe("36");
    expect(dropByThumb("50", "1500").toString()).toBe("30");
    expect(unlikeThumb("5", gramsByThumb("50")) || unlikeThumb("20", gramsByThumb("50"))).toBe(false);
    expect(unlikeThumb("4.9", gramsByThumb("50")) && unlikeThumb("20.1", gramsByThumb("50"))).toBe(true);
  });

  it.each([
    ["250", "0 + 0 = 0"],
    ["251", "0 + 2 = 2"],
    ["350", "0 + 2 = 2"],
    ["351", "0 + 4 = 4"],
  ])("E10, O24: ADA older-adult simplification, above 250 two units, above 350 four: %s gives %s", (reading, expected) => {
    const rows = [row(null, "250", "0"), { ...row(null, "350", "2"), from: short("250") }, { ...row(null, null, "4"), from: short("350") }];
    expect(told({}, rowsOnly(rows), moment(reading, null))).toBe(expected);
  });

  it.each([
    ["140", "0 + 0 = 0"],
    ["141", "0 + 2 = 2"],
    ["180", "0 + 2 = 2"],
    ["181", "0 + 4 = 4"],
    ["260", "0 + 6 = 6"],
    ["261", "0 + 8 = 8"],
    ["350", "0 + 10 = 10"],
    ["351", "0 + 12 = 12"],
    ["400", "0 + 12 = 12"],
    ["401", "0 + 14 = 14, call"],
  ])("E11, O22: hospital inpatient scale (2017): %s gives %s", (reading, expected) => {
    expect(told({}, rowsOnly(E11), moment(reading, null))).toBe(expected);
  });

  it("O23: 10.0 mmol/L is 180.156 and 180.5 is 180.5: both stand in the hole of whole-number rows, and in no hole of decimal ones", () => {
    const mmol = moment("0", null, { reading: { value: "10.0", unit: "mmol/L", minutesOld: "1" } });
    expect(told({}, rowsOnly(E11), mmol)).toBe("hole between rows");
    expect(told({}, rowsOnly(E11), moment("180.5", null))).toBe("hole between rows");
    expect(told({}, rowsOnly(E11_DECIMAL), mmol)).toBe("0 + 2 = 2");
    expect(told({}, rowsOnly(E11_DECIMAL), moment("180.5", null))).toBe("0 + 2 = 2");
  });

  it("O25: general algebra, target 120, 50 a unit, 95 with 60 g at 1 for 10: 5.5 where a reading may take away, 6 where not", () => {
    const half: Partial<Card> = { step: "0.5", penStep: "0.5" };
    expect(told(half, ratio("10", "120", "50", "linear", true), moment("95", "60"))).toBe("6 + -0.5 = 5.5");
    expect(told(half, ratio("10", "120", "50"), moment("95", "60"))).toBe("6 + 0 = 6");
  });

  it("O26: a reading of 66 gives no dose with any meal: the low comes first", () => {
    expect(told({}, ratio("10", "100", "50"), moment("66", "60"))).toBe("low: treat first");
    expect(told({}, rowsOnly(E11), moment("66", null))).toBe("low: treat first");
  });

  it("O28: to halves, 2.25 and 2.75 are 2.5 and 3 half up, 2 and 2.5 down", () => {
    const half = figure("0.5");
    expect(["2.25", "2.75"].map((value) => nearest(figure(value), half).toString())).toEqual(["2.5", "3"]);
    expect(["2.25", "2.75"].map((value) => down(figure(value), half).toString())).toEqual(["2", "2.5"]);
  });

  it("O29: last rapid dose at 08:00, gap 3 hours: no correction at 10:59, one at 11:00", () => {
    const ago = (minutes: string): Earlier => ({ units: { least: "4", most: "4" }, minutesAgo: { least: minutes, most: minutes } });
    const line = ratio("10", "100", "50");
    expect(told({}, line, moment("200", "60", { earlier: [ago("179")] }))).toBe("6 + 0 = 6");
    expect(told({}, line, moment("200", "60", { earlier: [ago("180")] }))).toBe("6 + 2 = 8");
    expect(told({}, rowsOnly(E11), moment("200", null, { earlier: [ago("179")] }))).toBe("0 + 0 = 0");
    expect(told({}, rowsOnly(E11), moment("200", null, { earlier: [ago("180")] }))).toBe("0 + 4 = 4");
  });

  it("O30: 6 units 90 minutes ago leave 3.75 on the straight line of 4 hours and 3.08 on two compartments of 55 minutes", () => {
    const six: Earlier[] = [{ units: { least: "6", most: "6" }, minutesAgo: { least: "90", most: "90" } }];
    expect(onBoard({ by: "linear", lasts: "240" }, six).toString()).toBe("3.75");
    expect(Number(onBoard({ by: "two compartments", tau: "55" }, six))).toBeCloseTo(3.08, 2);
  });

  it.each([
    [0, "1", "1", 1, "1"],
    [30, "0.875", "0.9", 0.8957, "0.96"],
    [60, "0.75", "0.8", 0.7024, "0.84"],
    [90, "0.625", "0.7", 0.5133, "0.6533"],
    [120, "0.5", "0.6", 0.359, "0.48"],
    [180, "0.25", "0.4", 0.1619, "0.2133"],
    [240, "0", "0.2", 0.0683, "0.0533"],
    [300, "0", "0", 0.0276, "0"],
  ])("the table of fractions left: %s minutes", (minutes, four, five, two, triangle) => {
    const t = figure(String(minutes));
    expect(left({ by: "linear", lasts: "240" }, t).toString()).toBe(four);
    expect(left({ by: "linear", lasts: "300" }, t).toString()).toBe(five);
    expect(left({ by: "two compartments", tau: "55" }, t).valueOf()).toBeCloseTo(two, 4);
    expect(left({ by: "triangle", peak: "75", lasts: "300" }, t).valueOf()).toBeCloseTo(Number(triangle), 4);
  });

  it("halves each hour on one compartment (pharmacokinetic textbook form)", () => {
    const curve = { by: "one compartment", half: "60" } as const;
    expect(left(curve, figure("120")).toString()).toBe("0.25");
    expect(left(curve, figure("30")).valueOf()).toBeCloseTo(Math.SQRT1_2, 6);
  });
});

describe("the reference fills nothing in", () => {
  const line = ratio("10", "100", "50");
  const bands: Line = { kind: "bands", rows: [row(null, "150", "4"), row("151", null, "6")], foodOnly: "4" };
  const ago: Earlier = { units: { least: "2", most: "4" }, minutesAgo: { least: "60", most: "240" } };

  it("asks where two rows fit, where the grams are not known and where the reading is a word, missing or stale", () => {
    expect(told({}, rowsOnly([row(null, "150", "1"), row("150", null, "2")]), moment("150", null))).toBe("two rows fit");
    expect(told({}, line, moment("150", null))).toBe("grams are not known");
    expect(told({}, line, moment("150", "60", { reading: "HI" }))).toBe("reading is a word");
    expect(told({}, line, moment("150", "60", { reading: "LO" }))).toBe("low: treat first");
    expect(told({}, line, moment("150", "60", { reading: null }))).toBe("no reading");
    const old = (minutesOld: string) => moment("150", "60", { reading: { value: "150", unit: "mg/dL", minutesOld } });
    expect(told({}, line, old("15"))).toBe("6 + 1 = 7");
    expect(told({}, line, old("15.1"))).toBe("reading is too old");
  });

  it("asks at each blank that the moment needs, and takes a blank bedtime for no correction", () => {
    for (const blank of [{ parts: null }, { step: null }, { direction: null }, { largest: null }]) {
      expect(told(blank, line, moment("200", "60"))).toBe("blank on the card");
    }
    expect(told({ gap: null }, line, moment("200", "60", { earlier: [ago] }))).toBe("blank on the card");
    for (const now of [{ afterExercise: true }, { afterLow: true }, { ill: true }]) {
      expect(told({}, line, moment("200", "60", now))).toBe("blank on the card");
    }
    expect(told({}, line, moment("200", "60", { bedtime: true }))).toBe("6 + 0 = 6");
    expect(told({ bedtime: "as usual" }, line, moment("200", "60", { bedtime: true }))).toBe("6 + 2 = 8");
  });

  it("tells the food-only row of bands inside the gap, and asks where it is blank", () => {
    const soon = moment("200", null, { earlier: [ago] });
    expect(told({}, bands, moment("200", null))).toBe("4 + 2 = 6");
    expect(told({}, bands, soon)).toBe("4 + 0 = 4");
    expect(told({}, { ...bands, foodOnly: null }, soon)).toBe("blank on the card");
    expect(told({}, { ...bands, foodOnly: null }, moment("200", null))).toBe("6 + 0 = 6");
  });

  it("reckons a dose of unknown size and time at its worst", () => {
    expect(onBoard({ by: "linear", lasts: "240" }, [ago]).toString()).toBe("3");
    expect([isInside("60", [ago]), isInside("61", [ago])]).toEqual([false, true]);
    const onBoardCounts: Partial<Card> = {
      gap: { minutes: "0", inside: "no correction" },
      onBoard: { used: "taken off the correction", curve: { by: "linear", lasts: "240" } },
    };
    expect(told(onBoardCounts, line, moment("300", "60", { earlier: [ago] }))).toBe("6 + 1 = 7");
    expect(told(onBoardCounts, line, moment("200", "60", { earlier: [ago] }))).toBe("6 + 0 = 6");
  });

  it("never goes above the largest dose, off the pen's step or below nothing", () => {
    expect(told({ largest: "8" }, line, moment("200", "60"))).toBe("6 + 2 = 8");
    expect(told({ largest: "7" }, line, moment("200", "60"))).toBe("more than the largest dose");
    expect(told({ penStep: "5" }, line, moment("200", "60"))).toBe("the pen cannot give it");
    expect(told({}, ratio("10", "200", "10", "linear", true), moment("100", "20"))).toBe("2 + -10 = 0");
  });

  it("tells background insulin without a reading, never in a low, and asks for a meal that is not on the card", () => {
    const card: Card = { ...PLAIN, background: { night: "18" } };
    const night = moment("100", null, { for: { background: "night" } });
    expect(check(card, { ...night, reading: null })).toMatchObject({ say: "units" });
    expect(check(card, { ...night, reading: { value: "70", unit: "mg/dL", minutesOld: "0" } })).toMatchObject({ why: "low: treat first" });
    expect(check(card, moment("100", "30"))).toMatchObject({ why: "the card has no such line" });
    expect(told({}, { kind: "premixed", units: "12" }, moment("300", null))).toBe("12 + 0 = 12");
    expect(told({}, { kind: "premixed", units: "12" }, moment("300", null, { skipped: true }))).toBe("nothing is eaten");
  });

  it("finds the cell of a grid by row and column, and its food-only figure by column", () => {
    const grid: Line = {
      kind: "grid",
      rows: [
        { from: null, to: both("150"), call: false },
        { from: short("150"), to: null, call: true },
      ],
      columns: [
        { from: null, to: both("30") },
        { from: short("30"), to: both("60") },
      ],
      cells: [
        ["2", "4"],
        ["3", "6"],
      ],
      foodOnly: ["2", "4"],
    };
    expect(told({}, grid, moment("150", "30"))).toBe("2 + 0 = 2");
    expect(told({}, grid, moment("150.1", "30.1"))).toBe("4 + 2 = 6, call");
    expect(told({}, grid, moment("200", "60", { earlier: [ago] }))).toBe("4 + 0 = 4, call");
    expect(told({}, grid, moment("200", "61"))).toBe("hole between rows");
  });

  it("takes a number that fits both units for a question, and one that fits only the other for a slip", () => {
    expect(unitOf("5.5", "mg/dL")).toBe("the other unit");
    expect(unitOf("110", "mmol/L")).toBe("the other unit");
    expect(unitOf("20", "mg/dL")).toBe("ask");
    expect(unitOf("33.3", "mmol/L")).toBe("ask");
    expect(unitOf("34", "mg/dL")).toBe("fits");
  });
});

/**
 * Where teaching is silent the project's own promises decide, and they decide for less insulin or for asking. Each such choice is named here,
 * so that nobody takes it for something that was taught.
 */
describe("the reference's choices where teaching is silent", () => {
  const line = ratio("10", "100", "50");
  const rows: Line = { kind: "parts", food: { by: "fixed", units: "3" }, correction: { by: "rows", rows: [row(null, null, "1")] } };

  it("rounds a part below nothing by its size, so that it takes more off", () => {
    const below = (mode: Mode) => correctionSum({ ...steps(mode, "120", "50"), mayTakeAway: true }, figure("95")).toString();
    expect([below("linear"), below("nearest"), below("down"), below("each started step")]).toEqual(["-0.5", "-1", "-1", "-1"]);
  });

  it("gives the food alone after eating, by a clock in doubt, and with insulin that does not correct", () => {
    expect(told({ timing: "after eating" }, line, moment("200", "60"))).toBe("6 + 0 = 6");
    expect(told({ afterLow: "inject after eating" }, line, moment("200", "60", { afterLow: true }))).toBe("6 + 0 = 6");
    expect(told({}, line, moment("200", "60", { eatenFirst: true }))).toBe("6 + 0 = 6");
    expect(told({}, line, moment("200", "60", { clockIsSure: false }))).toBe("6 + 0 = 6");
    expect(told({ insulin: { mayCorrect: false, needsFood: true } }, line, moment("200", "60"))).toBe("6 + 0 = 6");
  });

  it("keeps what a reading takes away even then", () => {
    const half: Partial<Card> = { step: "0.5", penStep: "0.5" };
    expect(told(half, ratio("10", "120", "50", "linear", true), moment("95", "60", { eatenFirst: true }))).toBe("6 + -0.5 = 5.5");
  });

  it("wants every printed figure that is used to be one that the pen can give", () => {
    expect(told({ step: "2", penStep: "2" }, rows, moment("150", null))).toBe("the pen cannot give it");
    expect(told({}, rows, moment("150", null))).toBe("3 + 1 = 4");
  });

  it("asks about a reading in the other unit where the card does not convert", () => {
    const mmol = moment("0", "60", { reading: { value: "10", unit: "mmol/L", minutesOld: "1" } });
    expect(told({ otherUnit: "ask" }, line, mmol)).toBe("reading is in the other unit");
    expect(told({}, line, mmol)).toBe("6 + 1.60312 = 8");
  });

  it("is in force from its first day to its last, and on no day that is not known", () => {
    const valid = { from: "2026-03-01", until: "2026-03-31" };
    const on = (today: string | null) => told({ valid }, line, moment("150", "60", { today }));
    expect([on("2026-02-28"), on("2026-04-01"), on(null)]).toEqual(Array(3).fill("the card is not in force"));
    expect([on("2026-03-01"), on("2026-03-31")]).toEqual(Array(2).fill("6 + 1 = 7"));
  });

  it("lets a dose of unknown size leave nothing of a correction while its curve still runs", () => {
    const curve = { by: "linear", lasts: "240" } as const;
    const dose = (minutes: string): Earlier => ({ units: { least: "0", most: "unknown" }, minutesAgo: { least: minutes, most: minutes } });
    const card: Partial<Card> = { gap: { minutes: "60", inside: "no correction" }, onBoard: { used: "taken off the correction", curve } };
    expect(told(card, line, moment("200", "60", { earlier: [dose("239")] }))).toBe("6 + 0 = 6");
    expect(told(card, line, moment("200", "60", { earlier: [dose("240")] }))).toBe("6 + 2 = 8");
  });

  it("takes a dose of unknown time for one just now, inside every gap", () => {
    const dose: Earlier = { units: { least: "2", most: "2" }, minutesAgo: "unknown" };
    expect([isInside("0", [dose]), isInside("0", [{ ...dose, minutesAgo: { least: "0", most: "0" } }])]).toEqual([true, false]);
    expect(onBoard({ by: "linear", lasts: "240" }, [dose]).toString()).toBe("2");
  });

  it("asks about a blank gap or a blank on-board field for twelve hours, and about a blank window always", () => {
    const dose = (minutes: string): Earlier => ({ units: { least: "2", most: "2" }, minutesAgo: { least: minutes, most: minutes } });
    for (const blank of [{ gap: null }, { onBoard: null }]) {
      expect(told(blank, line, moment("200", "60", { earlier: [dose("719")] }))).toBe("blank on the card");
      expect(told(blank, line, moment("200", "60", { earlier: [dose("720")] }))).toBe("6 + 2 = 8");
    }
    expect(told({ window: null }, line, moment("200", "60"))).toBe("blank on the card");
  });

  it("counts servings exactly, or to the nearest half or whole one", () => {
    const servings = (count: "exactly" | "nearest half" | "nearest whole") =>
      told(
        { step: "0.1", penStep: "0.1" },
        { kind: "parts", food: { by: "servings", units: "3", grams: "15", count }, correction: { by: "none" } },
        moment("110", "40"),
      );
    expect((["exactly", "nearest half", "nearest whole"] as const).map(servings)).toEqual(["8 + 0 = 8", "7.5 + 0 = 7.5", "9 + 0 = 9"]);
  });
});
