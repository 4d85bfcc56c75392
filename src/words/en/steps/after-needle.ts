// What the steps say after the needle: put away, eat, done; and the question about the needle.
import { askedAgain } from "#walk/asked-again.ts";
import { bellNow } from "#walk/bell.ts";
import type { Ctx } from "#walk/context.ts";
import { mealQuestionDue } from "#walk/offers.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { minutesOf, unitsOf } from "#words/en/amounts.ts";
import { sayCautions } from "#words/en/cautions.ts";
import { sayEatNow } from "#words/en/kitchen.ts";
import { placeName } from "#words/en/places.ts";
import { timeOfDay } from "#words/en/when.ts";
import type { Say } from "#words/say.ts";
import { sayBackgroundDone, sayReadingDone } from "./background.ts";
import { sayLowOver, sayNoMealCame, sayWatchOver } from "./low.ts";
import { emergencyOf } from "./whom.ts";

export const sayPutAway = (c: Ctx): Say =>
  askedAgain(c) > 0
    ? { title: "Put away", lines: ["Is the pen put away? Press Put away."] }
    : { title: "Put away", lines: ["Needle off, into the sharps box.", "Pen in its place."], short: ["Needle off."] };

/** For whoever comes when the bell was not answered: what, how much, when, and what to do. */
function forTheHelper(c: Ctx): string[] {
  const units = c.walk.injected?.units ?? null;
  const at = c.walk.injectOpened;
  const todo = ["Bring food or sugar.", `If drowsy, call ${emergencyOf(c)}.`];
  // Said before this already: nobody is sure how much.
  if (units === 0) return ["No meal yet.", ...todo];
  const what = `${units === null ? "An unknown amount" : unitsOf(units)} of ${c.card?.insulin.name ?? "mealtime insulin"}`;
  return [`${what} went in${at ? ` at ${timeOfDay(at)}` : ""}. No meal yet.`, ...todo];
}

export function sayEat(c: Ctx): Say {
  const bell = c.me.bell;
  if (!bell) return { title: "Time to eat", lines: ["Eat your meal now."] };
  const now = bellNow(bell, c.now, c.sure);
  if (now.level === "quiet") {
    const minutes = Math.max(1, Math.ceil(now.untilCallMs / 60_000));
    return { title: "Soon you eat", lines: [`Saved. Eat in ${minutesOf(minutes)}.`], short: [`Saved. ${minutesOf(minutes)}.`] };
  }
  if (now.level === "loud") {
    return { title: "Eat now", lines: [sayEatNow(c.me), ...forTheHelper(c)] };
  }
  return {
    title: "Time to eat",
    lines: [`${c.me.person.name}, time to eat.`],
    short: ["Time to eat."],
  };
}

export function sayDone(c: Ctx): Say {
  if (c.walk.kind === "low" || (c.walk.kind === "reading" && c.walk.afterLow)) return sayLowOver(c);
  if (c.walk.kind === "mishap") return sayWatchOver(c);
  if (c.walk.kind === "reading") return sayReadingDone(c);
  if (c.walk.kind === "background") return sayBackgroundDone(c);
  const injected = c.walk.injected;
  const units = injected?.units ?? null;
  // A window that shows all of it still there does not prove that nothing went in.
  const amount =
    units === 0 ? "Nobody is sure how much went in" : units === null ? "An unknown amount went in" : `${unitsOf(units)} went in`;
  // Fifteen grams do not outlast a meal's insulin (rapid insulin works for hours: facts of its printed action).
  if (c.walk.eat === "cannot eat") return sayNoMealCame(c, amount);
  if (c.walk.eat === "eating" && mealQuestionDue(c.me, c.now, c.sure))
    return { title: "The meal", lines: ["How much of the meal did you eat?"] };
  if (askedAgain(c) > 0) return { title: "Done", lines: [`${amount}.`, "Are you done? Press Done."] };
  const where = c.walk.place ? `, ${placeName(c.walk.place)}` : "";
  const ate = c.walk.eat === "eating" ? ["You are eating."] : [];
  const reading = c.walk.reading?.glucose;
  const glucose = reading ? [`Reading ${reading.value}.`] : [];
  // The question was answered, and less than all of it was watched: nothing more is asked.
  const asks = c.me.mealQuestion
    ? [`I ask about the meal in ${minutesOf(careNumber(c.card, "askEatenMinutes"))}.`]
    : ["Keep quick sugar near today."];
  return {
    title: "Done",
    lines: [...glucose, `${amount}${where}.`, ...ate, ...asks, ...sayCautions(c)],
    short: [`${amount}.`, ...sayCautions(c)],
  };
}

export const sayNeedleQuestion = (): Say => ({
  title: "Did the needle go in?",
  lines: ["You were at the injection. It may be in already.", "Did the needle go in?"],
});
