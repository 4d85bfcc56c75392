// Cards as a keeper types them, for tests.
import type { Band, CorrectionRule, CorrectionTable, DoseCard, MealRule } from "#events/card.ts";
import { STRIP_LEVELS } from "#events/ill-rules.ts";
import { EMPTY_CARD } from "#keeping/card-draft.ts";
import type { Draft } from "#keeping/problem.ts";

const yes = (is: boolean): string => (is ? "yes" : "no");
const orBlank = (value: string | number | null | undefined): string => (value === null || value === undefined ? "" : String(value));

function rowsDraft(at: string, rows: readonly Band[]): Draft {
  return Object.fromEntries(
    rows.flatMap((row, i) => [
      [`${at}.bands.${i}.from`, orBlank(row.from)],
      [`${at}.bands.${i}.to`, orBlank(row.to)],
      [`${at}.bands.${i}.units`, String(row.units)],
      [`${at}.bands.${i}.call`, yes(row.call)],
    ]),
  );
}

function addedDraft(at: string, rule: { correction?: CorrectionRule | null | undefined; table?: CorrectionTable | undefined }): Draft {
  const { correction: c, table } = rule;
  if (table) return { [`${at}.correction`]: "table", ...rowsDraft(`${at}.table`, table.bands), [`${at}.table.edges`]: table.edges };
  if (!c) return { [`${at}.correction`]: "no" };
  return {
    [`${at}.correction`]: "yes",
    [`${at}.correction.target.low`]: String(c.target.low),
    [`${at}.correction.target.high`]: String(c.target.high),
    [`${at}.correction.perUnit`]: String(c.perUnit),
    [`${at}.correction.mode`]: c.mode,
    [`${at}.correction.mayReduce`]: yes(c.mayReduce),
  };
}

function gridDraft(at: string, rule: Extract<MealRule, { kind: "grid" }>): Draft {
  const cells = (field: string, units: readonly number[]) => units.map((n, c) => [`${field}.${c}`, String(n)]);
  return {
    [`${at}.edges`]: rule.edges,
    [`${at}.columnEdges`]: rule.columnEdges,
    ...Object.fromEntries([
      ...rule.columns.flatMap(({ from, to }, c) => [
        [`${at}.columns.${c}.from`, orBlank(from)],
        [`${at}.columns.${c}.to`, orBlank(to)],
      ]),
      ...rule.rows.flatMap((row, i) => [
        [`${at}.rows.${i}.from`, orBlank(row.from)],
        [`${at}.rows.${i}.to`, orBlank(row.to)],
        [`${at}.rows.${i}.call`, yes(row.call)],
        ...cells(`${at}.rows.${i}.units`, row.units),
      ]),
      ...(rule.foodOnly ? cells(`${at}.foodOnly`, rule.foodOnly) : []),
    ]),
  };
}

function mealDraft(at: string, rule: MealRule | null): Draft {
  const kind = { [`${at}.kind`]: rule?.kind ?? "none" };
  if (rule === null) return kind;
  switch (rule.kind) {
    case "fixed units":
      return { ...kind, [`${at}.units`]: String(rule.units), ...addedDraft(at, rule), [`${at}.roundParts`]: orBlank(rule.roundParts) };
    case "bands":
      return { ...kind, [`${at}.edges`]: rule.edges, [`${at}.foodOnly`]: orBlank(rule.foodOnly), ...rowsDraft(at, rule.bands) };
    case "grid":
      return { ...kind, ...gridDraft(at, rule) };
    case "servings":
      return {
        ...kind,
        [`${at}.unitsPerServing`]: String(rule.unitsPerServing),
        [`${at}.gramsPerServing`]: String(rule.gramsPerServing),
        [`${at}.count`]: rule.count,
        ...addedDraft(at, rule),
        [`${at}.roundParts`]: rule.roundParts,
      };
    case "ratio":
      return { ...kind, [`${at}.gramsPerUnit`]: String(rule.gramsPerUnit), ...addedDraft(at, rule), [`${at}.roundParts`]: rule.roundParts };
    case "correction only":
      return { ...kind, ...addedDraft(at, rule), [`${at}.roundParts`]: rule.roundParts };
  }
}

function backgroundDraft(card: DoseCard): Draft {
  return Object.fromEntries(
    (card.background ?? []).flatMap((dose, i) => [
      [`background.${i}.insulin.name`, dose.insulin.name],
      [`background.${i}.insulin.kind`, dose.insulin.kind],
      [`background.${i}.insulin.unitsPerMl`, String(dose.insulin.unitsPerMl)],
      [`background.${i}.units`, String(dose.units)],
      [`background.${i}.at`, dose.at],
      [`background.${i}.windowMinutes`, hours(dose.windowMinutes)],
    ]),
  );
}

const hours = (minutes: number | null): string => (minutes === null ? "" : String(minutes / 60));

function illDraft({ ketones, sickDay }: DoseCard): Draft {
  const lines = ketones?.lines.flatMap(({ from, says, call }, i) => [
    [`ketones.lines.${i}.from`, ketones.test === "blood" ? String(from) : (STRIP_LEVELS[from] ?? "")],
    [`ketones.lines.${i}.says`, orBlank(says)],
    [`ketones.lines.${i}.call`, call],
  ]);
  return {
    ...(ketones ? { ketones: ketones.test, "ketones.from": orBlank(ketones.from), "ketones.whenIll": yes(ketones.whenIll) } : {}),
    ...Object.fromEntries(lines ?? []),
    ...Object.fromEntries((sickDay?.rules ?? []).map((rule, i) => [`sickDay.rules.${i}`, rule])),
    "sickDay.callWhen": orBlank(sickDay?.callWhen),
  };
}

/** What fingers would type for this card. */
export function typed(card: DoseCard): Draft {
  const { onBoard, bedtime, high } = card;
  return {
    ...EMPTY_CARD,
    "insulin.name": card.insulin.name,
    "insulin.unitsPerMl": String(card.insulin.unitsPerMl),
    "insulin.kind": orBlank(card.insulin.kind),
    unitsADay: orBlank(card.unitsADay),
    ...backgroundDraft(card),
    glucoseUnit: card.glucoseUnit,
    carbohydrate: card.carbohydrate,
    ...mealDraft("meals.breakfast", card.meals.breakfast),
    ...mealDraft("meals.lunch", card.meals.lunch),
    ...mealDraft("meals.dinner", card.meals.dinner),
    ...mealDraft("meals.snack", card.meals.snack),
    "rounding.step": card.rounding.step,
    "rounding.direction": card.rounding.direction,
    largestDose: orBlank(card.largestDose),
    spacingMinutes: hours(card.spacingMinutes),
    windowMinutes: hours(card.windowMinutes),
    onBoard: onBoard?.model ?? "blank",
    ...(onBoard?.model === "linear" ? { "onBoard.hours": String(onBoard.hours) } : {}),
    ...(onBoard?.model === "two compartments" ? { "onBoard.minutes": String(onBoard.minutes) } : {}),
    ...(onBoard?.model === "triangle"
      ? { "onBoard.peakMinutes": String(onBoard.peakMinutes), "onBoard.endMinutes": String(onBoard.endMinutes) }
      : {}),
    bedtime: bedtime ? "times" : "blank",
    ...(bedtime
      ? { "bedtime.from": bedtime.from, "bedtime.until": bedtime.until, "bedtime.correction": bedtime.correction ? "yes" : "no" }
      : {}),
    afterExercise: card.afterExercise ?? "blank",
    afterLow: card.afterLow ?? "blank",
    "low.value": String(card.low.value),
    "low.counts": card.low.counts,
    high: high ? "yes" : "blank",
    ...(high ? { "high.value": String(high.value), "high.advice": high.advice } : {}),
    ...illDraft(card),
    "timing.when": card.timing.when,
    "timing.earliestMinutes": String(card.timing.earliestMinutes),
    "timing.latestMinutes": String(card.timing.latestMinutes),
    telephonedDose: card.telephonedDose,
    ...(card.regions
      ? { regions: "kept", ...Object.fromEntries(Object.entries(card.regions).map(([meal, region]) => [`regions.${meal}`, region])) }
      : {}),
    ...Object.fromEntries(Object.entries(card.care).map(([field, value]) => [`care.${field}`, orBlank(value)])),
    ...Object.fromEntries(Object.entries(card.advice).map(([field, value]) => [`advice.${field}`, orBlank(value)])),
    "clinic.name": card.clinic.name,
    "clinic.phone": card.clinic.phone,
    validFrom: card.validFrom,
    reviewBy: orBlank(card.reviewBy),
    validUntil: orBlank(card.validUntil),
  };
}
