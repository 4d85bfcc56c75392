// Cards as a keeper types them, for tests.
import type { DoseCard, MealRule } from "#events/card.ts";
import { EMPTY_CARD } from "#keeping/card-draft.ts";
import type { Draft } from "#keeping/problem.ts";

function mealDraft(at: string, rule: MealRule | null): Draft {
  if (rule === null) return { [`${at}.kind`]: "none" };
  if (rule.kind === "fixed units") return { [`${at}.kind`]: rule.kind, [`${at}.units`]: String(rule.units) };
  if (rule.kind === "bands") {
    const rows = rule.bands.flatMap((row, i) => [
      [`${at}.bands.${i}.from`, row.from === null ? "" : String(row.from)],
      [`${at}.bands.${i}.to`, row.to === null ? "" : String(row.to)],
      [`${at}.bands.${i}.units`, String(row.units)],
      [`${at}.bands.${i}.call`, row.call ? "yes" : "no"],
    ]);
    return {
      [`${at}.kind`]: rule.kind,
      [`${at}.edges`]: rule.edges,
      [`${at}.foodOnly`]: rule.foodOnly === null ? "" : String(rule.foodOnly),
      ...Object.fromEntries(rows),
    };
  }
  const c = rule.correction;
  return {
    [`${at}.kind`]: rule.kind,
    [`${at}.gramsPerUnit`]: String(rule.gramsPerUnit),
    [`${at}.roundParts`]: rule.roundParts,
    [`${at}.correction`]: c ? "yes" : "no",
    ...(c
      ? {
          [`${at}.correction.target.low`]: String(c.target.low),
          [`${at}.correction.target.high`]: String(c.target.high),
          [`${at}.correction.perUnit`]: String(c.perUnit),
          [`${at}.correction.mode`]: c.mode,
          [`${at}.correction.mayReduce`]: c.mayReduce ? "yes" : "no",
        }
      : {}),
  };
}

const hours = (minutes: number | null): string => (minutes === null ? "" : String(minutes / 60));
const orBlank = (value: string | number | null): string => (value === null ? "" : String(value));

/** What fingers would type for this card. */
export function typed(card: DoseCard): Draft {
  const { onBoard, bedtime, high } = card;
  return {
    ...EMPTY_CARD,
    "insulin.name": card.insulin.name,
    "insulin.unitsPerMl": String(card.insulin.unitsPerMl),
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
