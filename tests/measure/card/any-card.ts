/** Random cards of every kind, lifelike in their steps, with the blanks and slips a keeper may leave. */
import type { Band, CorrectionRule, CorrectionTable, DoseCard, MealRule, OnBoardRule } from "#events/card.ts";
import { type GlucoseUnit, units } from "#events/quantity.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Dice } from "../voice/dice.ts";

export const KINDS = [
  "fixed units",
  "fixed units with a rule",
  "fixed units with a table",
  "bands",
  "grid",
  "servings",
  "servings with a table",
  "ratio alone",
  "ratio with a rule",
  "ratio with a table",
  "correction only by a rule",
  "correction only by a table",
  "premixed",
  "background only",
] as const;
export type Kind = (typeof KINDS)[number];

type Step = DoseCard["rounding"]["step"];
const STEPS: readonly Step[] = ["0.5", "1", "1", "1", "2", "5"];
const ROUND_PARTS = ["none", "none", "tenths", "whole"] as const;

const tidy = (n: number) => Number(n.toFixed(2));
const often = (dice: Dice, share: number) => dice.roll() < share;
const orBlank = <T>(dice: Dice, value: T, share = 0.04): T | null => (often(dice, share) ? null : value);

/** A printed dose: mostly one that the pen can give. */
function dose(dice: Dice, step: Step, most = 16) {
  if (often(dice, 0.04)) return units(tidy(dice.between(0, most)));
  return units(tidy(dice.whole(0, Math.max(1, Math.floor(most / Number(step)))) * Number(step)));
}

interface Scale {
  readonly unit: GlucoseUnit;
  /** A random reading's size, and the smallest step between two. */
  readonly any: () => number;
  readonly grain: number;
  readonly width: () => number;
}

function scaleOf(dice: Dice, unit: GlucoseUnit): Scale {
  const mg = unit === "mg/dL";
  return {
    unit,
    any: () => (mg ? dice.whole(60, 400) : tidy(dice.whole(33, 222) / 10)),
    grain: mg ? 1 : 0.1,
    width: () => (mg ? dice.pick([20, 25, 30, 40, 50, 50, 100]) : dice.pick([1, 1.5, 2, 2.5, 3, 5])),
  };
}

/** Rows side by side, now and then with a hole, an overlap, a shared edge, or typed in another order. */
function spans(dice: Dice, begin: number, width: () => number, grain: number): { from: number | null; to: number | null }[] {
  const count = dice.whole(1, 6);
  const between = dice.pick([grain, grain, grain, grain, 0, 0, 2 * grain]);
  const openBelow = often(dice, 0.6);
  const openAbove = often(dice, 0.7);
  let from = begin;
  const all = Array.from({ length: count }, (_, i) => {
    const to = tidy(from + width());
    const row = { from: i === 0 && openBelow ? null : from, to: i === count - 1 && openAbove ? null : to };
    from = tidy(to + (often(dice, 0.03) ? dice.pick([-7, 9, 30]) * grain : between));
    return row;
  });
  if (often(dice, 0.05)) all.reverse();
  const slip = all[dice.whole(0, count - 1)];
  if (slip && often(dice, 0.03)) Object.assign(slip, dice.pick([{ from: null }, { to: null }, { to: slip.from, from: slip.to }]));
  return all;
}

function bands(dice: Dice, scale: Scale, step: Step): Band[] {
  const begin = scale.unit === "mg/dL" ? dice.pick([71, 80, 100, 141]) : dice.pick([4, 4.1, 5, 7.8]);
  let given = often(dice, 0.4) ? 0 : Number(dose(dice, step, 8));
  return spans(dice, begin, scale.width, scale.grain).map((span) => {
    const row = { ...span, units: often(dice, 0.03) ? dose(dice, step) : units(tidy(given)), call: often(dice, 0.1) };
    given += dice.pick([1, 1, 2, 3]) * Number(step);
    return row;
  });
}

const edges = (dice: Dice) => dice.pick(["as printed", "up to the next"] as const);

function rule(dice: Dice, scale: Scale): CorrectionRule {
  const low = scale.unit === "mg/dL" ? dice.pick([80, 90, 100, 120, 150, 155]) : dice.pick([5, 5.5, 6, 7, 8.3]);
  const wide = often(dice, 0.5) ? 0 : scale.unit === "mg/dL" ? dice.pick([20, 30, 50]) : dice.pick([1, 2, 3]);
  return {
    target: { low, high: tidy(low + wide) },
    perUnit: scale.unit === "mg/dL" ? dice.pick([10, 18, 20, 25, 30, 40, 50, 60, 100]) : dice.pick([0.6, 1, 1.5, 2, 2.5, 3, 4.5]),
    mode: dice.pick(["linear", "nearest", "down", "each started step"] as const),
    mayReduce: often(dice, 0.4),
  };
}

const table = (dice: Dice, scale: Scale, step: Step): CorrectionTable => ({ bands: bands(dice, scale, step), edges: edges(dice) });

function grid(dice: Dice, scale: Scale, step: Step): MealRule {
  const columns = spans(dice, dice.pick([1, 10, 15]), () => dice.pick([10, 15, 20, 30]), often(dice, 0.5) ? 1 : 0.1);
  const foodOnly = columns.map((_, i) => units((i + 1) * Number(step)));
  return {
    kind: "grid",
    columns,
    columnEdges: edges(dice),
    rows: bands(dice, scale, step).map(({ from, to, units: more, call }) => ({
      from,
      to,
      units: foodOnly.map((food) => (often(dice, 0.03) ? dose(dice, step) : units(tidy(food + more)))),
      call,
    })),
    edges: edges(dice),
    foodOnly: orBlank(dice, foodOnly, 0.2),
  };
}

function mealRule(dice: Dice, kind: Kind, scale: Scale, step: Step): MealRule | null {
  const roundParts = dice.pick(ROUND_PARTS);
  const servings = {
    kind: "servings",
    unitsPerServing: dice.pick([0.5, 1, 1, 1.5, 2, 2.5, 3]),
    gramsPerServing: dice.pick([15, 15, 15, 10, 12]),
    count: dice.pick(["exactly", "nearest half", "nearest whole"] as const),
    roundParts,
  } as const;
  const ratio = { kind: "ratio", gramsPerUnit: dice.pick([3, 5, 5.56, 7.5, 8, 10, 12, 15, 20, 30]), roundParts } as const;
  switch (kind) {
    case "fixed units":
      return { kind: "fixed units", units: dose(dice, step) };
    case "fixed units with a rule":
      return { kind: "fixed units", units: dose(dice, step), correction: rule(dice, scale), roundParts };
    case "fixed units with a table":
      return { kind: "fixed units", units: dose(dice, step), table: table(dice, scale, step) };
    case "bands":
      return { kind: "bands", bands: bands(dice, scale, step), edges: edges(dice), foodOnly: orBlank(dice, dose(dice, step, 6), 0.25) };
    case "grid":
      return grid(dice, scale, step);
    case "servings":
      return { ...servings, correction: orBlank(dice, rule(dice, scale), 0.3) };
    case "servings with a table":
      return { ...servings, correction: null, table: table(dice, scale, step) };
    case "ratio alone":
      return { ...ratio, correction: null };
    case "ratio with a rule":
      return { ...ratio, correction: rule(dice, scale) };
    case "ratio with a table":
      return { ...ratio, correction: null, table: table(dice, scale, step) };
    case "correction only by a rule":
      return { kind: "correction only", correction: rule(dice, scale), roundParts };
    case "correction only by a table":
      return { kind: "correction only", correction: null, table: table(dice, scale, step), roundParts };
    case "premixed":
      return mealRule(dice, dice.pick(["fixed units", "fixed units", "fixed units with a rule", "bands"] as const), scale, step);
    case "background only":
      return null;
  }
}

function onBoard(dice: Dice): OnBoardRule {
  switch (dice.whole(0, 3)) {
    case 0:
      return { model: "linear", hours: dice.pick([3, 3.5, 4, 5, 4.25]) };
    case 1:
      return { model: "two compartments", minutes: dice.pick([40, 55, 55, 75]) };
    case 2:
      return { model: "triangle", peakMinutes: dice.pick([30, 60, 75, 90]), endMinutes: dice.pick([240, 300, 360]) };
    default:
      return { model: "not used" };
  }
}

const USES = ["as usual", "food part only", "ask"] as const;

export function anyCard(dice: Dice, kind: Kind): DoseCard {
  const glucoseUnit = dice.pick(["mg/dL", "mmol/L"] as const);
  const scale = scaleOf(dice, glucoseUnit);
  const step = dice.pick(STEPS);
  const dinner = mealRule(dice, kind, scale, step);
  const insulinKind = kind === "premixed" ? "premixed" : dice.pick([null, "rapid analogue", "regular"] as const);
  const long = { id: "long", name: "insulin glargine", unitsPerMl: 100, kind: "long-acting" } as const;
  return {
    person: "p1",
    insulin: { id: "meal-insulin", name: "an insulin", unitsPerMl: 100, ...(insulinKind && { kind: insulinKind }) },
    glucoseUnit,
    carbohydrate: "available",
    meals: { breakfast: null, lunch: null, dinner, snack: null },
    ...(kind === "background only" && { background: [{ insulin: long, units: dose(dice, step, 40), at: "22:00", windowMinutes: 720 }] }),
    rounding: { step, direction: dice.pick(["nearest, half up", "down"] as const) },
    largestDose: orBlank(dice, units(often(dice, 0.3) ? dice.whole(1, 12) : dice.pick([20, 25, 30, 40])), 0.02),
    spacingMinutes: orBlank(dice, dice.pick([0, 0, 60, 90, 120, 180, 180, 210, 240])),
    windowMinutes: orBlank(dice, dice.pick([120, 180, 240]), 0.02),
    onBoard: orBlank(dice, onBoard(dice)),
    bedtime: dice.pick([
      null,
      { from: "21:00", until: "05:00", correction: false },
      { from: "22:30", until: "06:00", correction: true },
      { from: "13:00", until: "15:00", correction: false },
      { from: "00:00", until: "00:00", correction: often(dice, 0.8) },
    ]),
    afterExercise: orBlank(dice, dice.pick(USES), 0.15),
    afterLow: orBlank(dice, dice.pick([...USES, "inject after eating"] as const), 0.15),
    low:
      glucoseUnit === "mg/dL"
        ? { value: dice.pick([70, 70, 72, 80]), counts: dice.pick(["at or below", "below"] as const) }
        : { value: dice.pick([4, 4, 3.9]), counts: dice.pick(["at or below", "below"] as const) },
    high: orBlank(dice, { value: glucoseUnit === "mg/dL" ? 300 : 16.7, advice: "Telephone the clinic." }, 0.5),
    timing: {
      when: dice.pick(["before eating", "before eating", "before eating", "with the first bite", "after eating"] as const),
      earliestMinutes: 0,
      latestMinutes: 15,
    },
    telephonedDose: "never",
    regions: null,
    care: fixedCard.care,
    advice: fixedCard.advice,
    clinic: { name: "The clinic", phone: "555 0100" },
    validFrom: "2026-01-01",
    reviewBy: orBlank(dice, "2026-02-01", 0.5),
    validUntil: dice.pick([null, null, "2026-03-01", "2026-12-31"]),
  };
}
