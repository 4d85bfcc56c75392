// What follows once the advice was heard: nobody is left alone with insulin without food, a meal without insulin, or an illness.
// As facts, so that no restart and no other walk loses them.
import type { Happened } from "#events/happened.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import { HOUR, MINUTE } from "#events/quantity.ts";
import { watchOf } from "#rules/glucose/watch.ts";
import { elapsed } from "#rules/time/elapsed.ts";
import type { Ctx } from "#walk/context.ts";
import { isBackground } from "#walk/insulin.ts";
import { illBegins } from "./ill-begins.ts";
import { isWatched } from "./no-meal.ts";

/** Less food than the insulin was for (design: a reading in an hour; common practice, no source). */
const HALF_EATEN_MS = 60 * MINUTE;

/** Does mealtime insulin of this walk or of an earlier one still work? A time that nobody knows counts as now (promise 14). */
export function insulinWorks(c: Ctx): boolean {
  if (c.walk.injected && !isBackground(c.walk)) return true;
  const ms = watchOf(c.card?.insulin.kind).mainHours * HOUR;
  return c.me.doses.some((dose) => {
    const ago = elapsed(dose.at, c.now, c.sure);
    return ago === null || ago + (dose.agoMinutes ?? 0) * MINUTE < ms;
  });
}

const measureNow: Happened = { type: "wait began", for: "recheck", ms: 0 };

/**
 * Insulin of this walk without a meal: its bell ends, and the watch begins. Insulin of an earlier walk has no bell here, and in a meal walk that has
 * not come to the needle "I am eating" would be taken for the meal to come: there one good reading is enough.
 */
function noFood({ walk }: Ctx): Happened[] {
  if (walk.kind === "meal" && !walk.injected) return [{ type: "low began", because: "half eaten" }];
  const ends: Happened[] = walk.kind === "meal" ? [{ type: "cannot eat" }] : [];
  return [...ends, { type: "low began", because: "cannot eat" }];
}

function watched(c: Ctx, mishap: MishapKind): Happened[] {
  const { walk } = c;
  switch (mishap) {
    case "cannot eat":
      return walk.injected && walk.eat !== "cannot eat" ? noFood(c) : [];
    case "vomiting":
    case "hardly eaten":
      // Sugar may not stay down either, and some food may have: the number comes first.
      return insulinWorks(c) ? [...noFood(c), measureNow] : [];
    case "half eaten":
      // Where the bell of this walk still rings, it is the watch.
      return insulinWorks(c) && (!walk.injected || walk.eat !== null)
        ? [
            { type: "low began", because: "half eaten" },
            { type: "wait began", for: "watch", ms: HALF_EATEN_MS },
          ]
        : [];
    default:
      return [];
  }
}

export function whatFollows(c: Ctx, mishap: MishapKind): Happened[] {
  const { walk } = c;
  if (mishap === "feeling ill") return illBegins("feels ill");
  // Sugar came up in a low: it is due again (fold-low.ts), and whoever is near is called.
  if (mishap === "vomiting" && walk.low && !isWatched(walk) && !walk.low.callRaised) return [{ type: "call raised", why: "still low" }];
  // At the needle its own question comes first (promise 11).
  if (walk.low || (walk.injectOpened && !walk.injected)) return [];
  const watch = watched(c, mishap);
  if (watch.length > 0) return watch;
  // Without insulin in, food that comes up is an ill day.
  if (mishap === "vomiting") return illBegins("feels ill");
  if (walk.kind === "mishap") return [{ type: "walk ended", how: "whole walk" }];
  // The card's row is for insulin before the meal: late, only its own words count, and without any there is no dose.
  if (mishap === "eaten, not injected" && !walk.injectOpened && walk.kind === "meal" && !c.card?.advice.missed)
    return [{ type: "walk ended", how: "no dose" }];
  return [];
}
