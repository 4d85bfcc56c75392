// What is said when something went wrong: what it is, what not to do, the card's own words or "call now", how long to watch, and a number to call.
import type { DoseCard } from "#events/card.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import { oldestAge } from "#rules/time/elapsed.ts";
import type { Ctx } from "#walk/context.ts";
import { insulinWatchHours } from "#walk/insulin-watch.ts";
import { careMinutesMs } from "#walk/steps/care-ms.ts";
import { isHighNow } from "#walk/steps/high-now.ts";
import { isPenTrouble } from "#walk/steps/mishap-doses.ts";
import { isWatched } from "#walk/steps/no-meal.ts";
import { unitsOf } from "#words/en/amounts.ts";
import type { Say } from "#words/say.ts";
import { clinicOf, emergencyOf } from "./whom.ts";

interface Advice {
  said: string;
  /** The card's own words for it. */
  field: keyof DoseCard["advice"] | null;
  /** Where the card is silent. */
  blank?: (c: Ctx) => readonly string[];
  /** Said before the number to call, whatever the card says. */
  last?: readonly string[];
  /** Nothing more is injected on doubt. */
  noSecond?: true;
}

const noMore = (said: string, field: Advice["field"], last: readonly string[] = []): Advice => ({
  said,
  last,
  field,
  noSecond: true,
  // Spacing is the card's; a high reading is no reason against it.
  blank: () => ["Still high later? Inject no more on your own."],
});

/** A low, or a number of these minutes that is not high. Without one, sugar may feed ketones. */
function mayDrinkSugar(c: Ctx): boolean {
  const { low, reading } = c.walk;
  if (low && !isWatched(c.walk)) return !isHighNow(c);
  const age = reading?.glucose ? oldestAge(reading.at, c.now, c.sure) : null;
  return age !== null && age <= careMinutesMs(c.card, "readingAgeMinutes") && !isHighNow(c);
}

const insulinIsIn = (c: Ctx): boolean => c.walk.injectOpened !== null;

const ADVICE: Readonly<Record<MishapKind, Advice>> = {
  // A double or triple dose is watched in hospital (common practice, no source); the card may give units for it.
  "too much": {
    said: "Too much insulin may be in.",
    field: "tooMuch",
    noSecond: true,
    blank: (c) => [`Call ${emergencyOf(c)} now.`, "A double or triple dose is watched in hospital."],
  },
  "wrong insulin": {
    said: "The wrong insulin went in.",
    field: "wrongInsulin",
    noSecond: true,
    blank: (c) => [`Call ${emergencyOf(c)} now.`],
  },
  "too little": noMore("Less insulin went in than the card says.", "partDose"),
  "nothing came out": noMore("Nothing came out of the pen.", "partDose"),
  "number left in the window": noMore("Part of the dose did not go in.", "partDose"),
  "button too stiff": noMore("The button did not go down.", "partDose"),
  "pen ran out": noMore("The pen ran out. Part of the dose went in.", "partDose"),
  "not sure": noMore("Nobody knows if the dose went in.", "missed", ["Count it as in. Keep sugar near."]),
  "it hurt or bled": { said: "Press on the spot. A drop of blood is common.", field: null },
  "cannot eat": {
    said: "The meal does not come.",
    field: "cannotEat",
    blank: (c) => (insulinIsIn(c) ? ["Insulin is in. Sugar comes next."] : ["Then inject nothing for this meal."]),
  },
  "half eaten": {
    said: "You ate less than planned.",
    field: "halfEaten",
    blank: () => ["Keep quick sugar near.", "Measure again in 1 hour."],
  },
  "hardly eaten": {
    said: "You ate hardly any of the meal.",
    field: "halfEaten",
    blank: () => ["Keep quick sugar near.", "Measure your glucose next."],
  },
  // Sick-day leaflets differ on the hours before calling (4, 6, 8); with insulin in, none are waited.
  vomiting: {
    said: "Food did not stay down.",
    field: "ill",
    blank: (c) => [
      ...(mayDrinkSugar(c) ? ["Take small sips of a sugary drink."] : ["Measure next. Sip water."]),
      "Never stop long-acting insulin.",
    ],
  },
  "eaten, not injected": {
    said: "You ate, and no insulin went in.",
    field: "missed",
    blank: () => ["Inject nothing for it on your own."],
  },
  // First aid after a needle stick as health services teach it, from memory.
  "needle stick": {
    said: "A used needle pricked somebody.",
    field: null,
    blank: () => ["Let it bleed. Wash it with soap and water.", "Do not suck it.", "Whoever was pricked calls a doctor today."],
  },
  // Never stop background insulin, keep drinking: sick-day leaflets agree on both.
  "feeling ill": {
    said: "You feel ill.",
    field: "ill",
    blank: () => ["Drink water often.", "Never stop long-acting insulin."],
  },
  "something else": { said: "Something is wrong.", field: null },
};

/** Does the card say what to do with an amount, or only in general? */
const givesUnits = (text: string): boolean => /\d/.test(text);

/** More insulin may be in, or another one: how long it is watched. */
function watch(c: Ctx, kind: MishapKind): string[] {
  const hours = insulinWatchHours(kind, c.card, c.walk);
  if (hours === null) return [];
  return [`Watch your glucose for ${hours} hours.`, "Measure now. Measure again each hour.", "Keep sugar near. Do not stay alone."];
}

function callLines(c: Ctx): string[] {
  return c.card ? [`Call ${clinicOf(c)}.`] : ["Call your clinic.", `In danger, call ${emergencyOf(c)}.`];
}

export function sayMishap(c: Ctx): Say {
  const kind = c.walk.mishap ?? "something else";
  const { said, field, blank, noSecond, last = [] } = ADVICE[kind];
  if (isPenTrouble(c.walk, kind)) {
    const empty = kind === "pen ran out";
    return {
      title: "Something is wrong",
      lines: [
        empty ? "The pen ran out." : said,
        ...(empty ? ["Take a new pen."] : ["Change the needle. Test the pen again.", "If it fails again, take a new pen."]),
        ...callLines(c),
      ],
    };
  }
  const own = (field ? c.card?.advice[field] : null) ?? null;
  const left = kind === "number left in the window" && c.walk.injected?.left ? [`${unitsOf(c.walk.injected.left)} did not go in.`] : [];
  const second = noSecond ? ["Do not inject again."] : [];
  // "Unless the card gives units": words without any do not take the place of the hospital.
  const plain = own === null || (kind === "too much" && !givesUnits(own)) ? (blank?.(c) ?? []) : [];
  return {
    title: "Something is wrong",
    lines: [said, ...left, ...second, ...(own ? [`Your card says: ${own}`] : []), ...plain, ...watch(c, kind), ...last, ...callLines(c)],
  };
}
