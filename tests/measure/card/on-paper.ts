/** The app's card and moment written down in the reference's own shapes. Nothing is worked out here but which times are bedtime. */
import type { DoseCard, GridColumn, MealRule, OnBoardRule } from "#events/card.ts";
import type { Situation } from "#rules/card/told.ts";
import type { Card, Correction, Curve, Earlier, Edge, Food, Line, Moment, Range, Row } from "../../reference/card/shapes.ts";

/** A number as a person writes it, without an exponent. */
function figureOf(value: number): string {
  const [digits = "0", exponent] = String(value).split("e");
  if (exponent === undefined) return digits;
  const [whole = "0", decimals = ""] = digits.split(".");
  const power = Number(exponent) - decimals.length;
  return power >= 0 ? `${whole}${decimals}${"0".repeat(power)}` : `${whole}${decimals}/1${"0".repeat(-power)}`;
}

const at = (value: number | null, counts: boolean): Edge | null => (value === null ? null : { at: figureOf(value), counts });

type Span = { from: number | null; to: number | null };
type Edges = "as printed" | "up to the next";

const below = (a: number | null, b: number | null) => (a ?? Number.NEGATIVE_INFINITY) < (b ?? Number.NEGATIVE_INFINITY);

const smaller = (a: number | null, b: number | null) => (a === null ? b : b === null ? a : Math.min(a, b));

/** Where two printed rows both take a number in: entered twice, so that two rows fit there, whatever reaches up to what. */
function contested(spans: readonly Span[]): Range[] {
  const claimed = spans.filter((span, i) => {
    const next = spans[i + 1];
    return span.to !== null || next === undefined || !below(span.from, next.from);
  });
  const ranges: Range[] = [];
  for (const [i, one] of claimed.entries()) {
    for (const other of claimed.slice(i + 1)) {
      const from = one.from === null ? other.from : other.from === null ? one.from : Math.max(one.from, other.from);
      const to = smaller(one.to, other.to);
      if (to !== null && from !== null && from >= to) continue;
      ranges.push({ from: at(from, true), to: at(to, false) }, { from: at(from, true), to: at(to, false) });
    }
  }
  return ranges;
}

/** As printed, both edges belong to a row. Up to the next, a row ends just short of where the next begins; the last one as printed. */
function ranges<S extends Span>(spans: readonly S[], edges: Edges): { ranges: (Range & { of: S })[]; contested: Range[] } {
  if (edges === "as printed") {
    return { ranges: spans.map((of) => ({ from: at(of.from, true), to: at(of.to, true), of })), contested: [] };
  }
  const inOrder = [...spans].sort((a, b) => (below(a.from, b.from) ? -1 : below(b.from, a.from) ? 1 : 0));
  const reaching = inOrder.map((of, i) => {
    const next = inOrder[i + 1];
    return { from: at(of.from, true), to: next ? (at(next.from, false) ?? { at: "-1", counts: false }) : at(of.to, true), of };
  });
  return { ranges: reaching, contested: contested(inOrder) };
}

function rowsOf(bands: Extract<MealRule, { kind: "bands" }>["bands"], edges: Edges): Row[] {
  const table = ranges(bands, edges);
  return [
    ...table.ranges.map(({ from, to, of }) => ({ from, to, units: figureOf(of.units), call: of.call })),
    ...table.contested.map((range) => ({ ...range, units: "ask" as const, call: false })),
  ];
}

function correctionOf(rule: Exclude<MealRule, { kind: "bands" | "grid" }>): Correction {
  if (rule.table) return { by: "rows", rows: rowsOf(rule.table.bands, rule.table.edges) };
  if (!rule.correction) return { by: "none" };
  const { target, perUnit, mode, mayReduce } = rule.correction;
  return {
    by: "sum",
    target: { low: figureOf(target.low), high: figureOf(target.high) },
    perUnit: figureOf(perUnit),
    mode,
    mayTakeAway: mayReduce,
  };
}

function foodOf(rule: Exclude<MealRule, { kind: "bands" | "grid" }>): Food {
  switch (rule.kind) {
    case "fixed units":
      return { by: "fixed", units: figureOf(rule.units) };
    case "servings":
      return { by: "servings", units: figureOf(rule.unitsPerServing), grams: figureOf(rule.gramsPerServing), count: rule.count };
    case "ratio":
      return { by: "ratio", gramsPerUnit: figureOf(rule.gramsPerUnit) };
    case "correction only":
      return { by: "none" };
  }
}

const written = (units: number | undefined) => (units === undefined ? null : figureOf(units));

function gridOf(rule: Extract<MealRule, { kind: "grid" }>): Line {
  const rows = ranges(rule.rows, rule.edges);
  const columns = ranges<GridColumn>(rule.columns, rule.columnEdges);
  const column = columns.ranges.map(({ of }) => rule.columns.indexOf(of));
  return {
    kind: "grid",
    rows: [
      ...rows.ranges.map(({ from, to, of }) => ({ from, to, call: of.call })),
      ...rows.contested.map((range) => ({ ...range, call: false })),
    ],
    columns: [...columns.ranges.map(({ from, to }) => ({ from, to })), ...columns.contested],
    cells: rows.ranges.map(({ of }) => column.map((i) => written(of.units[i]))),
    foodOnly: rule.foodOnly === null ? null : column.map((i) => written(rule.foodOnly?.[i])),
  };
}

function lineOf(rule: MealRule): Line {
  if (rule.kind === "grid") return gridOf(rule);
  if (rule.kind === "bands") {
    return { kind: "bands", rows: rowsOf(rule.bands, rule.edges), foodOnly: rule.foodOnly === null ? null : figureOf(rule.foodOnly) };
  }
  return { kind: "parts", food: foodOf(rule), correction: correctionOf(rule) };
}

function curveOf(rule: Exclude<OnBoardRule, { model: "not used" }>): Curve {
  switch (rule.model) {
    case "linear":
      return { by: "linear", lasts: `${Math.round(rule.hours * 6000)}/100` };
    case "two compartments":
      return { by: "two compartments", tau: figureOf(rule.minutes) };
    case "triangle":
      return { by: "triangle", peak: figureOf(rule.peakMinutes), lasts: figureOf(rule.endMinutes) };
  }
}

const NO_CORRECTION = ["premixed", "intermediate", "long-acting"];

export function cardOnPaper(card: DoseCard, rule: MealRule | null): Card {
  const whole = (value: number | null) => (value === null ? null : figureOf(value));
  const roundParts = rule === null || rule.kind === "bands" || rule.kind === "grid" ? "none" : (rule.roundParts ?? "none");
  return {
    unit: card.glucoseUnit,
    otherUnit: "ask",
    valid: { from: card.validFrom, until: card.validUntil },
    timing: card.timing.when,
    window: whole(card.windowMinutes),
    low: { below: figureOf(card.low.value), itself: card.low.counts === "at or below" },
    lines: rule === null ? {} : { asked: lineOf(rule) },
    background: {},
    insulin: { mayCorrect: !NO_CORRECTION.includes(card.insulin.kind ?? "rapid analogue"), needsFood: true },
    parts: roundParts === "none" ? "as they are" : roundParts,
    step: card.rounding.step,
    direction: card.rounding.direction === "down" ? "down" : "nearest, half up",
    penStep: card.rounding.step,
    largest: whole(card.largestDose),
    gap: card.spacingMinutes === null ? null : { minutes: figureOf(card.spacingMinutes), inside: "no correction" },
    onBoard:
      card.onBoard === null
        ? null
        : card.onBoard.model === "not used"
          ? { used: "no" }
          : { used: "taken off the correction", curve: curveOf(card.onBoard) },
    bedtime: card.bedtime === null ? null : card.bedtime.correction ? "as usual" : "food only",
    afterExercise: card.afterExercise === "food part only" ? "food only" : card.afterExercise,
    afterLow: card.afterLow === "food part only" ? "food only" : card.afterLow,
    ill: "as usual",
  };
}

/** Minutes of a clock time. */
const minute = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));

/** A blank bedtime is 21:00 to 05:00. The first minute belongs to it, the last does not; alike means all day. */
function isBedtime(card: DoseCard, now: number | null): boolean {
  if (now === null) return false;
  const from = minute(card.bedtime?.from ?? "21:00");
  const until = minute(card.bedtime?.until ?? "05:00");
  const since = (now - from + 1440) % 1440;
  const long = (until - from + 1440) % 1440 || 1440;
  return since < long;
}

/** A time to come is no time that is known (the clock went back). Unknown sizes stay unknown. */
function earlierOf(recent: Situation["recent"]): Earlier[] {
  return recent.map(({ minutesAgo, units }) => ({
    units: { least: units === null ? "0" : figureOf(units), most: units === null ? "unknown" : figureOf(units) },
    minutesAgo: minutesAgo === null || minutesAgo < 0 ? "unknown" : { least: figureOf(minutesAgo), most: figureOf(minutesAgo) },
  }));
}

export function momentOnPaper(card: DoseCard, s: Situation): Moment {
  return {
    for: { meal: "asked" },
    today: s.today,
    clockIsSure: s.minuteOfDay !== null,
    eatenFirst: s.eatenFirst ?? false,
    reading: s.readingWord ?? (s.reading === null ? null : { value: figureOf(s.reading.value), unit: s.reading.unit, minutesOld: "0" }),
    grams: s.grams === null ? null : figureOf(s.grams),
    skipped: false,
    bedtime: isBedtime(card, s.minuteOfDay),
    afterExercise: s.hardExercise,
    afterLow: s.afterLow,
    ill: false,
    earlier: earlierOf(s.recent),
  };
}
