// Any card and any situation, for the promises: lifelike numbers in lifelike steps, with every blank and every slip a keeper may leave.
import fc from "fast-check";
import type { Band, DoseCard, MealRule, OnBoardRule } from "#events/card.ts";
import { type Glucose, type GlucoseUnit, grams, units } from "#events/quantity.ts";
import type { RecentDose, Situation } from "#rules/card/told.ts";
import { CARD } from "./sample-card.ts";

const orNull = <T>(value: fc.Arbitrary<T>, freq = 4) => fc.option(value, { nil: null, freq });
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
/** Printed doses: mostly on the step of a pen, sometimes not. */
const dose = fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 0, max: 30 }) }, tenths(0, 30)).map(units);
const glucoseIn = (unit: GlucoseUnit) =>
  unit === "mg/dL" ? fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 60, max: 400 }) }, tenths(20, 600)) : tenths(3, 25);

/** Rows side by side with the holes that printed whole numbers leave, now and then torn apart or pushed together. */
function bands(unit: GlucoseUnit): fc.Arbitrary<Band[]> {
  const width = unit === "mg/dL" ? fc.integer({ min: 20, max: 80 }) : tenths(1, 5);
  const begin = unit === "mg/dL" ? 71 : 4;
  const gap = unit === "mg/dL" ? fc.constantFrom(1, 1, 1, 0, 5, -3) : fc.constantFrom(0.1, 0.1, 0, 0.5, -0.3);
  return fc.array(fc.tuple(width, gap, dose, fc.boolean()), { minLength: 1, maxLength: 6 }).chain((rows) =>
    fc.tuple(fc.boolean(), fc.boolean(), fc.constantFrom(0, 0, 0, 1)).map(([openBelow, openAbove, later]) => {
      let from = begin + later * (unit === "mg/dL" ? 20 : 1);
      return rows.map(([wide, between, given, call], i) => {
        const to = Number((from + wide).toFixed(1));
        const row = { from: i === 0 && openBelow ? null : from, to: i === rows.length - 1 && openAbove ? null : to, units: given, call };
        from = Number((to + between).toFixed(1));
        return row;
      });
    }),
  );
}

/** Rows as of a table of bands; columns side by side, now and then torn apart or pushed together. */
function grid(unit: GlucoseUnit): fc.Arbitrary<MealRule> {
  const edges = fc.constantFrom("as printed" as const, "up to the next" as const);
  const columns = fc.constantFrom(
    [
      [0, 30],
      [31, 60],
      [61, null],
    ] as const,
    [
      [null, 40],
      [41, 80],
    ] as const,
    [
      [0, 40],
      [35, 90],
    ] as const,
    [[null, null]] as const,
  );
  return fc.tuple(columns, bands(unit), edges, edges, fc.boolean()).chain(([spans, rows, columnEdges, rowEdges, named]) => {
    const cells = fc.array(dose, { minLength: spans.length, maxLength: spans.length });
    return fc.tuple(fc.array(cells, { minLength: rows.length, maxLength: rows.length }), cells).map(([all, foodOnly]) => ({
      kind: "grid" as const,
      columns: spans.map(([from, to]) => ({ from, to })),
      columnEdges,
      rows: rows.map(({ from, to, call }, i) => ({ from, to, call, units: all[i] ?? [] })),
      edges: rowEdges,
      foodOnly: named ? foodOnly : null,
    }));
  });
}

function mealRule(unit: GlucoseUnit): fc.Arbitrary<MealRule> {
  const target = glucoseIn(unit).chain((low) =>
    fc.constantFrom(0, 0, unit === "mg/dL" ? 40 : 2).map((wide) => ({ low, high: low + wide })),
  );
  const correction = fc.record({
    target,
    perUnit: unit === "mg/dL" ? fc.integer({ min: 10, max: 120 }) : tenths(0.5, 6),
    mode: fc.constantFrom("linear" as const, "nearest" as const, "down" as const, "each started step" as const),
    mayReduce: fc.boolean(),
  });
  const edges = fc.constantFrom("as printed" as const, "up to the next" as const);
  const roundParts = fc.constantFrom("none" as const, "tenths" as const, "whole" as const);
  /** None, by a target, or by a table of its own. */
  const added = fc.oneof(
    { weight: 1, arbitrary: fc.constant({ correction: null }) },
    { weight: 3, arbitrary: correction.map((rule) => ({ correction: rule })) },
    { weight: 2, arbitrary: fc.record({ bands: bands(unit), edges }).map((table) => ({ correction: null, table })) },
  );
  return fc.oneof(
    { weight: 1, arbitrary: fc.record({ kind: fc.constant("fixed units" as const), units: dose }) },
    {
      weight: 2,
      arbitrary: fc.tuple(dose, added, roundParts).map(([given, { correction: rule, ...table }, round]) => ({
        kind: "fixed units" as const,
        units: given,
        ...(rule ? { correction: rule, roundParts: round } : {}),
        ...table,
      })),
    },
    {
      weight: 2,
      arbitrary: fc
        .tuple(fc.constantFrom(0.5, 1, 1.5, 2, 0.75), fc.constantFrom(10, 12, 15), added, roundParts)
        .chain(([unitsPerServing, gramsPerServing, plus, round]) =>
          fc.constantFrom("exactly" as const, "nearest half" as const, "nearest whole" as const).map((count) => ({
            kind: "servings" as const,
            unitsPerServing,
            gramsPerServing,
            count,
            ...plus,
            roundParts: round,
          })),
        ),
    },
    {
      weight: 1,
      arbitrary: fc.tuple(added, roundParts).map(([plus, round]) => ({ kind: "correction only" as const, ...plus, roundParts: round })),
    },
    { weight: 2, arbitrary: grid(unit) },
    {
      weight: 3,
      arbitrary: fc.record({
        kind: fc.constant("bands" as const),
        bands: bands(unit),
        edges: fc.constantFrom("as printed" as const, "up to the next" as const),
        foodOnly: orNull(dose),
      }),
    },
    {
      weight: 4,
      arbitrary: fc.record({
        kind: fc.constant("ratio" as const),
        gramsPerUnit: fc.oneof(fc.integer({ min: 3, max: 40 }), tenths(3, 40)),
        correction: orNull(correction, 8),
        roundParts: fc.constantFrom("none" as const, "tenths" as const, "whole" as const),
      }),
    },
  );
}

const onBoard: fc.Arbitrary<OnBoardRule> = fc.oneof(
  fc.constant({ model: "not used" as const }),
  fc.record({ model: fc.constant("linear" as const), hours: tenths(2, 6) }),
  fc.record({ model: fc.constant("two compartments" as const), minutes: fc.integer({ min: 40, max: 90 }) }),
  fc.record({
    model: fc.constant("triangle" as const),
    peakMinutes: fc.integer({ min: 0, max: 120 }),
    endMinutes: fc.integer({ min: 100, max: 400 }),
  }),
);
const oftenSet = <T>(value: fc.Arbitrary<T>) => orNull(value, 25);

export const anyCard: fc.Arbitrary<DoseCard> = fc.constantFrom("mg/dL" as const, "mmol/L" as const).chain((glucoseUnit) =>
  fc
    .record({
      dinner: orNull(mealRule(glucoseUnit), 20),
      rounding: fc.record({
        step: fc.constantFrom("0.5" as const, "1" as const, "1" as const, "2" as const, "5" as const),
        direction: fc.constantFrom("nearest, half up" as const, "down" as const),
      }),
      largestDose: oftenSet(fc.integer({ min: 3, max: 60 }).map(units)),
      spacingMinutes: oftenSet(fc.integer({ min: 0, max: 300 })),
      windowMinutes: oftenSet(fc.integer({ min: 0, max: 300 })),
      onBoard: oftenSet(onBoard),
      bedtime: orNull(
        fc.constantFrom({ from: "21:00", until: "05:00", correction: false }, { from: "22:30", until: "06:00", correction: true }),
      ),
      afterExercise: oftenSet(fc.constantFrom("as usual" as const, "food part only" as const, "ask" as const)),
      afterLow: oftenSet(fc.constantFrom("as usual" as const, "food part only" as const, "inject after eating" as const, "ask" as const)),
      counts: fc.constantFrom("at or below" as const, "below" as const),
      kind: fc.constantFrom("rapid analogue" as const, "rapid analogue" as const, undefined, "regular" as const, "premixed" as const),
      validUntil: orNull(fc.constantFrom("2026-02-28", "2026-03-01", "2026-12-31", "2026-12-31"), 3),
    })
    .map(({ dinner, counts, kind, ...fields }) => ({
      ...CARD,
      insulin: { ...CARD.insulin, ...(kind ? { kind } : {}) },
      ...fields,
      glucoseUnit,
      meals: { ...CARD.meals, dinner },
      low: { value: glucoseUnit === "mg/dL" ? 70 : 4, counts },
    })),
);

const recentDose: fc.Arbitrary<RecentDose> = fc.record({
  minutesAgo: oftenSet(fc.integer({ min: -10, max: 900 })),
  units: oftenSet(fc.integer({ min: 1, max: 60 }).map((n) => units(n / 2))),
});

const anyReading: fc.Arbitrary<Glucose> = fc
  .constantFrom("mg/dL" as const, "mmol/L" as const)
  .chain((unit) => glucoseIn(unit).map((value) => ({ value, unit })));

const seldom = fc.constantFrom(false, false, true);

/** Any reading in either unit, or none; mostly one that fits the card. */
export const situationFor = (card: DoseCard): fc.Arbitrary<Situation> =>
  fc.record({
    meal: fc.constantFrom(...Array<"dinner">(9).fill("dinner"), "lunch" as const),
    reading: fc.oneof(
      { weight: 12, arbitrary: glucoseIn(card.glucoseUnit).map((value) => ({ value, unit: card.glucoseUnit })) },
      { weight: 1, arbitrary: anyReading },
      { weight: 1, arbitrary: fc.constant(null) },
    ),
    readingWord: fc.constantFrom(...Array<null>(30).fill(null), "HI" as const, "LO" as const),
    grams: oftenSet(fc.oneof(fc.integer({ min: 0, max: 150 }), tenths(0, 150)).map(grams)),
    minuteOfDay: oftenSet(fc.integer({ min: 0, max: 1439 })),
    today: oftenSet(fc.constantFrom(...Array<string>(9).fill("2026-03-01"), "2025-12-31")),
    recent: fc.array(recentDose, { maxLength: 3 }),
    afterLow: seldom,
    hardExercise: seldom,
  });

export const anyCase: fc.Arbitrary<{ card: DoseCard; s: Situation }> = anyCard.chain((card) =>
  situationFor(card).map((s) => ({ card, s })),
);
