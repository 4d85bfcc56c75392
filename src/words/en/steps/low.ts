// What the steps of a low say: sugar, the wait, the new reading, the watch without a meal, the call, and the help for whoever is in the house.
import { BEDTIME } from "#rules/card/correction-limit.ts";
import { snackAfterMinutes } from "#rules/glucose/guidelines.ts";
import { watchOf } from "#rules/glucose/watch.ts";
import { isHeard } from "#rules/time/house-hours.ts";
import { isBetween } from "#rules/time/local.ts";
import { type Ctx, waitOver } from "#walk/context.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { helpStepNow } from "#walk/steps/help-steps.ts";
import { isHighNow } from "#walk/steps/high-now.ts";
import { lowStage } from "#walk/steps/low.ts";
import { ago, gramsOf, minutesOf } from "#words/en/amounts.ts";
import { sayClock } from "#words/en/clock-question.ts";
import { sayStillWatched } from "#words/en/insulin-watch.ts";
import type { Say } from "#words/say.ts";
import { sayDraft } from "./draft.ts";
import { clinicOf, emergencyOf } from "./whom.ts";

function sayTreat(c: Ctx): Say {
  const { low } = c.walk;
  const own = low?.because === "cannot eat" ? c.card?.advice.cannotEat : null;
  const why = low?.noMeter
    ? ["There is no number. Treat it as a low.", "Do not stay alone."]
    : low?.because === "cannot eat" && low.readings.length < 2
      ? ["Insulin is in, and no meal comes."]
      : low?.because === "feels strange" && low.readings.length === 0
        ? ["Treat it as a low."]
        : ["Your glucose is low. No insulin now."];
  return {
    title: "Take sugar now",
    // The act first: upright, between four buttons, one sentence is all that stands on the glass.
    lines: [
      `Take ${gramsOf(careNumber(c.card, "treatGrams"))} of quick sugar now.`,
      ...why,
      ...(own ? [`Your card says: ${own}`] : []),
      "What did you take?",
    ],
  };
}

/** One step a screen. What a keeper typed is said as it stands. */
function sayHelp(c: Ctx): Say {
  const { step } = helpStepNow(c);
  const call = emergencyOf(c);
  const big = { value: call, unit: "" };
  switch (step.say) {
    case "call":
      return {
        title: "Call for help",
        lines: [`Call ${call} now.`, "Put nothing in the mouth. Give no insulin.", "Then press That is done."],
        big,
      };
    case "kit":
      return { title: `Glucagon: ${step.number} of ${step.of}`, lines: [step.text] };
    case "turn on side":
      return { title: "On the side", lines: ["Turn them on their side.", "Bend the upper knee. Tilt the head back a little."] };
    case "stay": {
      // A second dose after 15 minutes, from a new kit only (drug references by generic name).
      const again = c.me.person.glucagonSteps ? ["Not awake after 15 minutes? A new kit may be used."] : [];
      return {
        title: "Stay with them",
        lines: ["Stay with them until help comes.", "Nothing by mouth.", ...again, `Call ${call} if not done.`],
        big,
      };
    }
  }
}

/** Where nobody can hear a call, the number comes first; else whoever is near is quicker there than an ambulance. */
function callWords(c: Ctx): string[] {
  const call = `Call ${emergencyOf(c)} now.`;
  // To be sleepy or short of breath waits for nobody in the house.
  if (c.walk.ill?.danger) return [call, "Tell them that you use insulin."];
  const why = c.walk.low?.noMeter ? "There is no number." : "This low needs help.";
  return isHeard(c.house.household, c.minuteOfDay)
    ? [why, "Call for whoever is in the house.", `Nobody comes? ${call}`]
    : [call, "Open the front door, then sit.", why];
}

/** Help may be far: whoever can swallow goes on with sugar, and the reading after it is still due. */
function sugarOnCall(c: Ctx): string[] {
  const { low, wait } = c.walk;
  if (low?.due === "recheck")
    return wait && c.sure && !waitOver(c.walk, c.now, c.sure)
      ? [`Measure again in ${minutesOf(careNumber(c.card, "recheckMinutes"))}.`]
      : ["Measure again now."];
  const again = low && low.rounds.length > 0 ? " again" : "";
  return [`Can you swallow? Take ${gramsOf(careNumber(c.card, "treatGrams"))}${again} now.`];
}

/** Never "good": sugar no longer helps, and insulin may be missing. */
function highWords(c: Ctx): string[] {
  const own = c.card?.high?.advice;
  const what = c.walk.reading?.word === "HI" ? ["The meter shows HI. HI means very high."] : ["Your reading is high."];
  return [...what, ...(own ? [`Your card says: ${own}`] : []), "Feel ill? Press Something is wrong."];
}

const sayHighNow = (c: Ctx): Say => ({ title: "The reading is high", lines: [...highWords(c), `Call ${clinicOf(c)}.`] });

export function sayLow(c: Ctx): Say {
  const { low, wait } = c.walk;
  const waits = wait?.ms ?? 0;
  const onHands = low?.due === "recheck" && low.readings.at(-1)?.word === "HI" ? ["HI may be sugar on your hands."] : [];
  switch (lowStage(c)) {
    case "number":
      return sayDraft(c);
    case "treat":
      return sayTreat(c);
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
    case "clock":
      return sayClock(c.now, [isHighNow(c) ? "Your reading is high." : "That is good now."]);
    case "watch":
      if (low?.because === "half eaten")
        return {
          title: "Keep watch",
          lines: [
            "The insulin was for more food.",
            "Eat more if you can. Keep sugar near.",
            `Measure again in ${minutesOf(Math.ceil(waits / 60_000))}.`,
            `Any trouble? Call ${clinicOf(c)}.`,
          ],
        };
      if (isHighNow(c))
        return {
          title: "Keep watch",
          lines: [
            ...highWords(c),
            "The insulin still works.",
            `Measure again in ${minutesOf(Math.ceil(waits / 60_000))}.`,
            `Call ${clinicOf(c)}.`,
          ],
        };
      return {
        title: "Keep watch",
        lines: [
          "That is good now. The insulin still works.",
          "Eat what you can. Keep sugar near.",
          `Measure again in ${minutesOf(Math.ceil(waits / 60_000))}.`,
          `Any trouble? Call ${clinicOf(c)}.`,
        ],
      };
    case "recheck":
      return {
        title: "Measure again",
        lines: [
          ...(c.sure ? [] : ["The time is not sure."]),
          ...onHands,
          low?.rounds.length === 0 ? "Wash your hands." : "Wash the sugar off your hands.",
          "Measure again. Say or press the number.",
          "No meter or strip? Press No meter here.",
        ],
      };
    case "call":
      return {
        title: "Call for help",
        lines: [
          ...callWords(c),
          ...sugarOnCall(c),
          ...(low?.noMeter ? ["Do not stay alone."] : []),
          "If you cannot swallow, take nothing by mouth.",
        ],
        big: { value: emergencyOf(c), unit: "" },
      };
    case "help":
      return sayHelp(c);
  }
}

/** A clock in doubt counts as bedtime. */
function isBedtime(c: Ctx): boolean {
  const { from, until } = c.card?.bedtime ?? BEDTIME;
  return c.minuteOfDay === null || isBetween(c.minuteOfDay, from, until);
}

/** The snack as it is taught where the household lives: rules/glucose/guidelines.ts. */
export function sayLowOver(c: Ctx): Say {
  if (isHighNow(c)) return sayHighNow(c);
  const after = snackAfterMinutes(c.house.household?.country ?? "US");
  const snack =
    after === 0
      ? ["Eat a snack now, like bread or a biscuit."]
      : [`Is the next meal more than ${ago(after)} away?`, "Then eat a snack, like bread or crackers."];
  // A low before the night may come again in it. The snack above stands: it is taught after any low with no meal near.
  const night = isBedtime(c) ? ["Measure again before you sleep.", "Keep quick sugar by the bed."] : [];
  return { title: "Better", lines: ["The low is over.", ...sayStillWatched(c), ...snack, ...night] };
}

/** What was watched after a meal that was not eaten whole, or did not stay down, was good. */
export const sayWatchOver = (c: Ctx): Say =>
  isHighNow(c)
    ? sayHighNow(c)
    : {
        title: "Good now",
        lines: ["That is good now.", ...sayStillWatched(c), "Keep quick sugar near today.", `Any trouble? Call ${clinicOf(c)}.`],
      };

/** Insulin went in and no meal came; the watch is over, or was never needed. */
export function sayNoMealCame(c: Ctx, amount: string): Say {
  const own = c.card?.advice.cannotEat;
  const hours = watchOf(c.card?.insulin.kind).mainHours;
  return {
    title: "No meal came",
    lines: [
      `${amount}, and no meal came.`,
      `Watch your glucose for ${hours} hours.`,
      ...(own ? [`Your card says: ${own}`] : ["Keep sugar near. Do not stay alone."]),
      `Call ${clinicOf(c)}.`,
    ],
  };
}
