// Step 5: what will be eaten, and is it ready? A card that counts no carbohydrate asks only for the second.

import type { Intent } from "#events/intent.ts";
import type { PlateHow } from "#events/plate.ts";
import { grams } from "#events/quantity.ts";
import type { NumberSlot } from "#events/told.ts";
import { foodById } from "#rules/food/foods.ts";
import { fromServings } from "#rules/food/grams.ts";
import { onlyForLows } from "#rules/food/groups.ts";
import { lineFor, plateTotal } from "#rules/food/plate.ts";
import { isAfterLow } from "#walk/after-low.ts";
import { type Ctx, happen, type Offer, type Outcome, press, refuse, type StepRules } from "#walk/context.ts";
import { decideNumber, isNumberIntent, numberOffers } from "./number.ts";

/** Does this meal's rule on the card count carbohydrate? */
export function countsCarbohydrate(c: Ctx): boolean {
  const rule = c.walk.meal ? c.card?.meals[c.walk.meal] : null;
  return rule?.kind === "ratio" || rule?.kind === "servings" || rule?.kind === "grid";
}

export function plateStage(c: Ctx): "high advice" | "exercise" | "count" | "number" | "ready" {
  const glucose = c.walk.reading?.glucose;
  if (glucose && c.card?.high && glucose.value >= c.card.high.value && !c.walk.highHeard) return "high advice";
  if (c.walk.exercise === null) return "exercise";
  if (c.walk.draft) return "number";
  return c.walk.plate ? "ready" : "count";
}

const locale = (c: Ctx): "US" | "UK" => (c.me.person.language === "en-GB" ? "UK" : "US");

function usualOffers(c: Ctx): Offer[] {
  return c.me.person.usualMeals.flatMap((m, index) => (m.meal === c.walk.meal ? [press("choice", { do: "usual meal", index })] : []));
}

function offers(c: Ctx): Offer[] {
  switch (plateStage(c)) {
    case "high advice":
      return [
        press("main", { do: "heard high advice" }),
        press("choice", { do: "report", mishap: "feeling ill" }),
        press("stop", { do: "leave" }),
      ];
    case "exercise":
      return [press("choice", { do: "exercise", hard: false }), press("choice", { do: "exercise", hard: true })];
    case "number":
      return numberOffers(c, []);
    case "count": {
      const lines = c.walk.lines.map((_, index) => press("choice", { do: "remove food", index }));
      const done = c.walk.lines.length > 0 ? [press("main", { do: "plate is complete" })] : [];
      return [{ offer: "foods" }, ...numberOffers(c, ["grams", "servings"]), ...usualOffers(c), ...lines, ...done];
    }
    case "ready":
      return [press("main", { do: "meal is ready" }), press("no", { do: "meal is not ready" })];
  }
}

function howOf(c: Ctx, slot: NumberSlot): PlateHow {
  if (c.walk.lines.length > 0) return "foods";
  return slot === "servings" ? "servings" : c.walk.draft?.helper === "usual meal" ? "usual meal" : "grams";
}

function accept(c: Ctx, slot: NumberSlot, text: string): Outcome {
  const total = slot === "servings" ? fromServings(Number(text)) : grams(Number(text));
  return happen({ type: "plate agreed", grams: total, how: howOf(c, slot) });
}

function giveTotal(c: Ctx, total: number, from: string | null): Outcome {
  return decideNumber(c, { do: "give number", slot: "grams", text: String(total), via: "touch", helper: from }, plate);
}

function addFood(c: Ctx, intent: Extract<Intent, { do: "add food" }>): Outcome {
  const food = foodById(intent.food);
  if (!food) return refuse({ no: "food", why: "not in the table", food: intent.food });
  // Sugar that treated a low is never dosed for (mistake 32): after one, juice and honey are taken for it too.
  if (onlyForLows(food) || (food.group === "fast sugar" && isAfterLow(c)))
    return refuse(
      { no: "food", why: "treats a low", food: intent.food },
      { type: "near miss", step: "plate", what: "sugar for a low on the plate", detail: intent.food },
    );
  const line = lineFor(food, intent.portions, c.card?.carbohydrate ?? "total", locale(c));
  if ("refused" in line) return refuse({ no: "food", why: line.refused, food: intent.food });
  return happen({ type: "food put on the plate", line });
}

export const plate: StepRules = {
  offers,
  arrive(c) {
    return plateStage(c) === "count" && !countsCarbohydrate(c) ? [{ type: "plate agreed", grams: null, how: "fixed meal" }] : [];
  },
  decide(c: Ctx, intent: Intent) {
    switch (intent.do) {
      case "heard high advice":
        return happen({ type: "high advice heard" });
      case "exercise":
        return happen({ type: "exercise answered", hard: intent.hard });
      case "add food":
        return addFood(c, intent);
      case "remove food":
        return happen({ type: "food taken off the plate", index: intent.index });
      case "plate is complete":
        // Meat and water have no carbohydrate: a plate of foods may come to nothing, a number typed by hand may not.
        return plateTotal(c.walk.lines) === 0
          ? happen({ type: "plate agreed", grams: grams(0), how: "foods" })
          : giveTotal(c, plateTotal(c.walk.lines), null);
      case "usual meal":
        return giveTotal(c, c.me.person.usualMeals[intent.index]?.grams ?? 0, "usual meal");
      case "meal is ready":
        return happen({ type: "food is ready" });
      case "meal is not ready":
        // Nothing was injected: the walk waits until the food is near.
        return happen({ type: "walk left", step: "plate", why: "meal not ready" });
      default:
        return isNumberIntent(intent) ? decideNumber(c, intent, plate) : happen();
    }
  },
  accept,
};
