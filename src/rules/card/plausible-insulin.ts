// Does the kind of insulin fit what the card does with it?
import type { DoseCard, MealName, MealRule } from "#events/card.ts";
import type { Alarm } from "./alarm.ts";
import { INSULIN } from "./insulin-kind.ts";

/** Does this rule add units for a high reading? A table of bands holds both, unless every row has the same units. */
function corrects(rule: MealRule): boolean {
  switch (rule.kind) {
    case "bands":
      return rule.bands.some((row) => row.units !== rule.bands[0]?.units);
    case "grid":
      return rule.rows.some((row) => row.units.some((cell, i) => cell !== rule.rows[0]?.units[i]));
    default:
      return Boolean(rule.correction) || rule.table !== undefined;
  }
}

function ofMeals(card: DoseCard, meals: readonly (readonly [MealName, MealRule])[]): Alarm[] {
  const { kind } = card.insulin;
  if (kind === undefined || meals.length === 0) return [];
  const { mayCorrect, usualLatestMinutes: usual } = INSULIN[kind];
  if (usual === null) return [{ alarm: "this insulin is not for meals", kind }];
  const { latestMinutes: minutes } = card.timing;
  return [
    ...(mayCorrect
      ? []
      : meals.filter(([, rule]) => corrects(rule)).map(([meal]): Alarm => ({ alarm: "this insulin does not correct", meal, kind }))),
    ...(minutes > usual ? [{ alarm: "eating late for this insulin", minutes, usual } as const] : []),
  ];
}

export function insulinAlarms(card: DoseCard, meals: readonly (readonly [MealName, MealRule])[]): Alarm[] {
  const background = card.background ?? [];
  return [
    ...ofMeals(card, meals),
    ...background
      .filter(({ insulin }) => INSULIN[insulin.kind].needsFood)
      .map(({ insulin, at }): Alarm => ({ alarm: "mealtime insulin by the clock", name: insulin.name, at })),
    ...background
      .filter(({ at }, i) => background.findIndex((other) => other.at === at) !== i)
      .map(({ at }): Alarm => ({ alarm: "two background doses at one time", at })),
  ];
}
