/** Random moments for a card, weighted to where it turns: each edge and the numbers beside it, half steps, the spacing's minute, the curve's end. */
import type { CorrectionRule, DoseCard, MealRule } from "#events/card.ts";
import { type Grams, grams, units } from "#events/quantity.ts";
import type { RecentDose, Situation } from "#rules/card/told.ts";
import type { Dice } from "../voice/dice.ts";

const tidy = (n: number) => Number(n.toFixed(4));
const often = (dice: Dice, share: number) => dice.roll() < share;
const edgesOf = (spans: readonly { from: number | null; to: number | null }[]) =>
  spans.flatMap(({ from, to }) => [from, to]).filter((edge) => edge !== null);

/** Where the correction's size changes: targets, whole and half steps above the high one and below the low one. */
function turnsOf(dice: Dice, rule: CorrectionRule): number[] {
  const steps = dice.whole(0, 8) / dice.pick([1, 2, 10]);
  const { target, perUnit } = rule;
  return [target.low, target.high, target.high + steps * perUnit, target.low - steps * perUnit];
}

function glucoseTurns(dice: Dice, card: DoseCard, rule: MealRule | null): number[] {
  const turns = [card.low.value, ...(card.high ? [card.high.value] : [])];
  if (rule === null) return turns;
  if (rule.kind === "bands") return [...turns, ...edgesOf(rule.bands)];
  if (rule.kind === "grid") return [...turns, ...edgesOf(rule.rows)];
  if (rule.table) return [...turns, ...edgesOf(rule.table.bands)];
  return rule.correction ? [...turns, ...turnsOf(dice, rule.correction)] : turns;
}

function reading(dice: Dice, card: DoseCard, rule: MealRule | null): Situation["reading"] {
  const mg = card.glucoseUnit === "mg/dL";
  if (often(dice, 0.01)) return null;
  if (often(dice, 0.01)) return { value: mg ? 10 : 180, unit: mg ? "mmol/L" : "mg/dL" };
  const beside = mg ? [0, 0, -1, 1, 0.5, -0.1] : [0, 0, -0.1, 0.1, 0.05, -0.01];
  const value = often(dice, 0.6)
    ? tidy(dice.pick(glucoseTurns(dice, card, rule)) + dice.pick(beside))
    : mg
      ? dice.whole(60, 420)
      : tidy(dice.whole(33, 230) / 10);
  return { value: value > 0 ? value : dice.whole(1, 5), unit: card.glucoseUnit };
}

/** Grams at which the food part lands on, or just beside, a half or a whole step. */
function gramsFor(dice: Dice, card: DoseCard, rule: MealRule | null): Grams | null {
  if (often(dice, 0.02)) return null;
  const half = Number(card.rounding.step) / 2;
  const count = dice.whole(0, 16);
  const beside = dice.pick([0, 0, 0, -0.1, 0.1, 1]);
  const at = (value: number) => grams(Math.max(0, tidy(value + beside)));
  if (rule !== null && often(dice, 0.6)) {
    if (rule.kind === "ratio") return at(count * half * rule.gramsPerUnit);
    if (rule.kind === "servings")
      return at((count * dice.pick([half, 0.25, 0.5]) * rule.gramsPerServing) / dice.pick([1, rule.unitsPerServing]));
    const edges = rule.kind === "grid" ? edgesOf(rule.columns) : [];
    if (edges.length > 0) return at(dice.pick(edges));
  }
  return grams(often(dice, 0.8) ? dice.whole(0, 120) : tidy(dice.whole(0, 1200) / 10));
}

function minutesTurns(card: DoseCard): number[] {
  const { onBoard } = card;
  const ends = [720, ...(card.spacingMinutes === null ? [] : [card.spacingMinutes])];
  if (onBoard?.model === "linear") ends.push(onBoard.hours * 60);
  if (onBoard?.model === "triangle") ends.push(onBoard.peakMinutes, onBoard.endMinutes);
  return ends;
}

function recent(dice: Dice, card: DoseCard): RecentDose {
  const minutesAgo = often(dice, 0.6) ? Math.round(dice.pick(minutesTurns(card))) + dice.pick([-1, 0, 0, 1]) : dice.whole(0, 900);
  return {
    minutesAgo: often(dice, 0.03) ? null : minutesAgo,
    units: often(dice, 0.04) ? null : units(often(dice, 0.8) ? dice.whole(1, 8) : dice.whole(1, 24) / 2),
  };
}

function minuteOfDay(dice: Dice): number | null {
  if (often(dice, 0.02)) return null;
  return often(dice, 0.3) ? dice.pick([0, 299, 300, 359, 360, 779, 780, 899, 900, 1259, 1260, 1349, 1350, 1439]) : dice.whole(360, 1259);
}

export function anyMoment(dice: Dice, card: DoseCard): Situation {
  const rule = card.meals.dinner;
  return {
    meal: often(dice, 0.01) ? "lunch" : "dinner",
    reading: reading(dice, card, rule),
    readingWord: often(dice, 0.01) ? dice.pick(["HI", "LO"] as const) : null,
    grams: gramsFor(dice, card, rule),
    minuteOfDay: minuteOfDay(dice),
    today: dice.roll() < 0.95 ? "2026-03-01" : dice.pick([null, "2025-12-31", "2026-01-01", "2026-03-02", "2026-12-31", "2027-01-01"]),
    recent: Array.from({ length: dice.pick([0, 0, 1, 1, 1, 2, 3]) }, () => recent(dice, card)),
    afterLow: often(dice, 0.1),
    hardExercise: often(dice, 0.1),
    ...(often(dice, 0.03) && { eatenFirst: true }),
  };
}
