// What the steps say after the needle: put away, eat, done; and when something went wrong.
import type { MishapKind } from "#events/happened-walk.ts";
import { askedAgain } from "#walk/asked-again.ts";
import { bellNow } from "#walk/bell.ts";
import type { Ctx } from "#walk/context.ts";
import { mealQuestionDue } from "#walk/offers.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { lowStage } from "#walk/steps/low.ts";
import { isPenTrouble } from "#walk/steps/mishap.ts";
import { gramsOf, minutesOf, unitsOf } from "#words/en/amounts.ts";
import { placeName } from "#words/en/places.ts";
import { timeOfDay } from "#words/en/when.ts";
import type { Say } from "#words/say.ts";
import { sayDraft } from "./draft.ts";

const clinicOf = (c: Ctx): string => (c.card ? `${c.card.clinic.name}: ${c.card.clinic.phone}` : "your clinic");
const emergencyOf = (c: Ctx): string => c.house.household?.emergencyNumber ?? "the emergency number";

export const sayPutAway = (c: Ctx): Say =>
  askedAgain(c) > 0
    ? { title: "Put away", lines: ["Is the pen put away? Press Put away."] }
    : { title: "Put away", lines: ["Needle off, into the sharps box.", "Pen in its place."], short: ["Needle off."] };

/** For whoever comes when the bell was not answered: what, how much, when, and what to do. */
function forTheHelper(c: Ctx): string[] {
  const units = c.walk.injected?.units ?? null;
  const at = c.walk.injectOpened;
  const what = `${units === null ? "An unknown amount" : unitsOf(units)} of ${c.card?.insulin.name ?? "mealtime insulin"}`;
  return [`${what} went in${at ? ` at ${timeOfDay(at)}` : ""}. No meal yet.`, "Bring food or sugar.", `If drowsy, call ${emergencyOf(c)}.`];
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
    return { title: "Eat now", lines: [`${c.me.person.name}, eat now. Insulin is working.`, ...forTheHelper(c)] };
  }
  return {
    title: "Time to eat",
    lines: [`${c.me.person.name}, time to eat.`],
    short: ["Time to eat."],
  };
}

export function sayDone(c: Ctx): Say {
  if (c.walk.kind === "low" && c.walk.reading?.word === "HI")
    return { title: "The meter shows HI", lines: ["The meter shows HI again. HI means very high.", `Call ${clinicOf(c)}.`] };
  if (c.walk.kind === "low") return { title: "Better", lines: ["The low is over.", "Eat something if the next meal is far."] };
  const injected = c.walk.injected;
  const units = injected?.units ?? null;
  const amount = units === null ? "An unknown amount went in" : `${unitsOf(units)} went in`;
  // Fifteen grams do not outlast a meal's insulin (rapid insulin works for hours: facts of its printed action).
  if (c.walk.eat === "cannot eat") {
    const own = c.card?.advice.cannotEat;
    return {
      title: "No meal came",
      lines: [
        `${amount}, and no meal came. It works for hours.`,
        ...(own ? [`Your card says: ${own}`] : ["Measure again every hour. Keep sugar near.", "Do not stay alone."]),
        `Call ${clinicOf(c)}.`,
      ],
    };
  }
  if (c.walk.eat === "eating" && mealQuestionDue(c.me, c.now, c.sure))
    return { title: "The meal", lines: ["How much of the meal did you eat?"] };
  if (askedAgain(c) > 0) return { title: "Done", lines: [`${amount}.`, "Are you done? Press Done."] };
  const where = c.walk.place ? `, ${placeName(c.walk.place)}` : "";
  const ate = c.walk.eat === "eating" ? ["You are eating."] : [];
  const reading = c.walk.reading?.glucose;
  const glucose = reading ? [`Reading ${reading.value}.`] : [];
  return {
    title: "Done",
    lines: [...glucose, `${amount}${where}.`, ...ate, `I ask about the meal in ${minutesOf(careNumber(c.card, "askEatenMinutes"))}.`],
    short: [`${amount}.`],
  };
}

export function sayLow(c: Ctx): Say {
  const low = c.walk.low;
  const grams = careNumber(c.card, "treatGrams");
  const waits = c.walk.wait?.ms ?? 0;
  const onHands = low?.due === "recheck" && low.readings.at(-1)?.word === "HI" ? ["HI may be sugar on your hands."] : [];
  const unsure = c.sure ? [] : ["The time is not sure."];
  switch (lowStage(c)) {
    case "number":
      return sayDraft(c);
    case "treat": {
      const own = low?.because === "cannot eat" ? c.card?.advice.cannotEat : null;
      const why =
        low?.because === "cannot eat"
          ? ["Insulin is in, and no meal comes."]
          : low?.because === "feels strange"
            ? ["Treat it as a low."]
            : ["Your glucose is low. No insulin now."];
      return {
        title: "Take sugar now",
        lines: [...why, `Take ${gramsOf(grams)} of quick sugar now.`, ...(own ? [`Your card says: ${own}`] : []), "What did you take?"],
      };
    }
    case "wait":
      return {
        title: "Sit and wait",
        lines: [
          ...onHands,
          ...(waits < careNumber(c.card, "recheckMinutes") * 60_000 ? ["It is too early to be sure."] : []),
          `Sit down. Wait ${minutesOf(Math.ceil(waits / 60_000))}.`,
          "Then measure again.",
        ],
      };
    case "recheck":
      return {
        title: "Measure again",
        lines: [...unsure, ...onHands, "Wash the sugar off your hands.", "Measure again. Say or press the number."],
      };
    case "call":
      return {
        title: "Call for help",
        lines: ["This low needs help now.", `Call ${emergencyOf(c)}.`, "If you cannot swallow, take nothing by mouth."],
        big: { value: emergencyOf(c), unit: "" },
      };
  }
}

const ADVICE: Readonly<Record<MishapKind, { said: string; field: keyof NonNullable<Ctx["card"]>["advice"] | null }>> = {
  "too much": { said: "Too much insulin went in, or it may have.", field: "tooMuch" },
  "too little": { said: "Less insulin went in than the card says.", field: "partDose" },
  "wrong insulin": { said: "The wrong insulin went in.", field: "wrongInsulin" },
  "nothing came out": { said: "Nothing came out of the pen.", field: "partDose" },
  "number left in the window": { said: "Part of the dose did not go in.", field: "partDose" },
  "not sure": { said: "Nobody knows if the dose went in.", field: "missed" },
  "it hurt or bled": { said: "Press on the spot. A drop of blood is common.", field: null },
  "button too stiff": { said: "The button did not go down.", field: "partDose" },
  "cannot eat": { said: "The meal does not come.", field: "cannotEat" },
  "feeling ill": { said: "You feel ill.", field: "ill" },
  "something else": { said: "Something is wrong.", field: null },
};

/** Mishaps after which nothing more is injected on doubt. */
const NO_SECOND: readonly MishapKind[] = [
  "too much",
  "too little",
  "wrong insulin",
  "nothing came out",
  "number left in the window",
  "not sure",
  "button too stiff",
];
/** Watched in hospital or told by the card: blank means call now (common practice, no source). */
const CALL_NOW: readonly MishapKind[] = ["too much", "wrong insulin"];

export function sayMishap(c: Ctx): Say {
  const kind = c.walk.mishap ?? "something else";
  const { said, field } = ADVICE[kind];
  const own = field && c.card ? c.card.advice[field] : null;
  if (isPenTrouble(c.walk, kind))
    return {
      title: "Something is wrong",
      lines: [said, "Change the needle. Test the pen again.", "If it fails again, take a new pen.", `Call ${clinicOf(c)}.`],
    };
  const left = kind === "number left in the window" && c.walk.injected?.left ? [`${unitsOf(c.walk.injected.left)} did not go in.`] : [];
  const second = NO_SECOND.includes(kind) ? ["Do not inject again."] : [];
  const advice = own ? [`Your card says: ${own}`] : CALL_NOW.includes(kind) ? [`Call ${emergencyOf(c)} now.`] : [];
  return { title: "Something is wrong", lines: [said, ...left, ...second, ...advice, `Call ${clinicOf(c)}.`] };
}

export const sayNeedleQuestion = (): Say => ({
  title: "Did the needle go in?",
  lines: ["You were at the injection. It may be in already.", "Did the needle go in?"],
});
