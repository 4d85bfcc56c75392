// How the injections of one card fall on the body, and the rest that its skin can give: told at set-up, before the first injection.
import type { DoseCard, MealName } from "#events/card.ts";
import type { BodyMeasures, NoGo, Region } from "#events/spot.ts";
import { restThatFits, spotsThatFit } from "./capacity.ts";
import { siteRules } from "./site-rules.ts";

export type DayLoad = {
  /** null: every part that is not kept for a meal of its own. */
  readonly region: Region | null;
  readonly injectionsADay: number;
  readonly spots: number;
  /** Whole days between two uses of a spot when every spot takes its turn. */
  readonly restDays: number;
  /** What the card asks for. */
  readonly askedDays: number;
};

const MEALS: readonly MealName[] = ["breakfast", "lunch", "dinner", "snack"];

/** Background insulin is not walked through here: where it goes nobody writes down. */
const injected = (card: DoseCard): MealName[] => MEALS.filter((meal) => card.meals[meal] !== null && card.meals[meal] !== undefined);

/**
 * One load for each region that the card keeps for meals, and one for the meals that may go anywhere. Where some meals keep a region, the
 * others may use it as well: those spots are counted for both, so that the rest told is the longest that may be hoped for.
 */
export function dayLoads(card: DoseCard, body: BodyMeasures, noGo: readonly NoGo[], leftOut: readonly Region[]): DayLoad[] {
  const rules = siteRules(card.care, body);
  const byRegion = new Map<Region | null, number>();
  for (const meal of injected(card)) {
    const region = card.regions?.[meal] ?? null;
    byRegion.set(region, (byRegion.get(region) ?? 0) + 1);
  }
  return [...byRegion].map(([region, injectionsADay]): DayLoad => {
    const spots = spotsThatFit({ body, noGo, uses: [], rules, region }, leftOut);
    return { region, injectionsADay, spots, restDays: restThatFits(spots, injectionsADay), askedDays: rules.restDays };
  });
}
