// What looks odd on a card that was typed in. An alarm asks "is this what the paper says?" and never blocks.
import type { InsulinKind, MealName } from "#events/card.ts";
import type { KetoneTest } from "#events/ill-rules.ts";
import type { Units } from "#events/quantity.ts";

/** Where in a meal's rule: column counts from 1, for a grid only; table: the one for the correction alone. */
interface Place {
  readonly meal: MealName;
  readonly column?: number;
}

/** Glucose numbers are in the card's unit. null edges are open. */
export type Alarm =
  | { readonly alarm: "row is upside down"; readonly meal: MealName; readonly from: number; readonly to: number }
  | { readonly alarm: "gap between rows"; readonly meal: MealName; readonly after: number; readonly before: number }
  | { readonly alarm: "rows overlap"; readonly meal: MealName; readonly from: number | null; readonly to: number | null }
  | (Place & { readonly alarm: "dose falls as glucose rises"; readonly before: Units; readonly units: Units })
  | (Place & { readonly alarm: "large step"; readonly before: Units; readonly units: Units })
  /** A slipped digit, or a written U read as 0. */
  | (Place & { readonly alarm: "tenfold step"; readonly before: Units; readonly units: Units })
  | (Place & { readonly alarm: "food-only above every row"; readonly units: Units })
  | { readonly alarm: "dose falls as the meal grows"; readonly meal: MealName; readonly before: Units; readonly units: Units }
  | { readonly alarm: "tenfold step between columns"; readonly meal: MealName; readonly before: Units; readonly units: Units }
  | { readonly alarm: "column is upside down"; readonly meal: MealName; readonly from: number; readonly to: number }
  | { readonly alarm: "gap between columns"; readonly meal: MealName; readonly after: number; readonly before: number }
  | { readonly alarm: "columns overlap"; readonly meal: MealName; readonly from: number | null; readonly to: number | null }
  | { readonly alarm: "grams per serving unusual"; readonly meal: MealName; readonly grams: number }
  | { readonly alarm: "this insulin is not for meals"; readonly kind: InsulinKind }
  | { readonly alarm: "this insulin does not correct"; readonly meal: MealName; readonly kind: InsulinKind }
  | { readonly alarm: "eating late for this insulin"; readonly minutes: number; readonly usual: number }
  | { readonly alarm: "mealtime insulin by the clock"; readonly name: string; readonly at: string }
  | { readonly alarm: "two background doses at one time"; readonly at: string }
  | { readonly alarm: "tenfold between meals"; readonly meal: MealName; readonly other: MealName }
  | { readonly alarm: "grams per unit unusual"; readonly meal: MealName; readonly gramsPerUnit: number }
  | { readonly alarm: "glucose per unit unusual"; readonly meal: MealName; readonly perUnit: number }
  | {
      readonly alarm: "grams per unit far from the rule of thumb";
      readonly meal: MealName;
      readonly gramsPerUnit: number;
      readonly usual: number;
    }
  | {
      readonly alarm: "glucose per unit far from the rule of thumb";
      readonly meal: MealName;
      readonly perUnit: number;
      readonly usual: number;
    }
  | { readonly alarm: "target is low"; readonly meal: MealName; readonly target: number }
  | { readonly alarm: "target is upside down"; readonly meal: MealName; readonly low: number; readonly high: number }
  /** The number cannot be shown by a meter in this unit: 5.5 on a card in mg/dL. */
  | { readonly alarm: "looks like the other unit"; readonly where: "low" | "high" | "target" | "row" | "ketones"; readonly value: number }
  | { readonly alarm: "off the pen's step"; readonly meal: MealName; readonly units: Units }
  | { readonly alarm: "above the largest dose"; readonly meal: MealName; readonly units: Units }
  /** A test for ketones at a glucose that no published sheet names. */
  | { readonly alarm: "ketone check unusual"; readonly from: number }
  /** 0.6 typed as 6. */
  | { readonly alarm: "ketone line unusual"; readonly from: number }
  | { readonly alarm: "ketone lines out of order"; readonly before: number; readonly from: number; readonly test: KetoneTest }
  /** At a number at which every published sheet calls somebody, this card calls nobody. */
  | { readonly alarm: "no call at high ketones"; readonly from: number; readonly test: KetoneTest }
  /** 3 hours typed as 0.3, and the like. */
  | { readonly alarm: "time unusual"; readonly of: "spacing" | "window"; readonly minutes: number }
  | { readonly alarm: "bell ends before it begins"; readonly earliest: number; readonly latest: number }
  | { readonly alarm: "dates in the wrong order"; readonly earlier: string; readonly later: string };
