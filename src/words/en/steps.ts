// What a walk says at its step.

import type { Stamp } from "#events/stamp.ts";
import { type Ctx, contextOf } from "#walk/context.ts";
import type { Guards } from "#walk/guards.ts";
import { clockQuestion, frontPerson } from "#walk/offers.ts";
import { type HouseState, type Step, stepOf } from "#walk/state.ts";
import type { Say } from "#words/say.ts";
import { sayClock } from "./clock-question.ts";
import { sayDone, sayEat, sayNeedleQuestion, sayPutAway } from "./steps/after-needle.ts";
import { sayCard, sayEatFirst, sayPlate, sayReading, sayTaken, sayWash } from "./steps/before-pen.ts";
import { sayIll } from "./steps/ill.ts";
import { sayLow } from "./steps/low.ts";
import { sayMishap } from "./steps/mishap.ts";
import { sayDial, sayInject, sayPen, sayPlaceStep, saySkin } from "./steps/pen-to-needle.ts";

const SAY: Readonly<Record<Step, (c: Ctx) => Say>> = {
  taken: sayTaken,
  wash: sayWash,
  reading: sayReading,
  plate: sayPlate,
  card: sayCard,
  "eat first": sayEatFirst,
  pen: sayPen,
  dial: sayDial,
  place: sayPlaceStep,
  skin: saySkin,
  inject: sayInject,
  "put away": sayPutAway,
  eat: sayEat,
  done: sayDone,
  low: sayLow,
  ill: sayIll,
  mishap: sayMishap,
  "needle question": sayNeedleQuestion,
};

/** After this many clean walks the words become shorter; the steps and checks stay. */
export const FAMILIAR_AFTER = 20;

/** Somebody said that the clock is wrong: who sets it, and whom to ask about a dose meanwhile. */
function clockIsWrong(house: HouseState): string[] {
  if (house.doubt !== "the person said no") return [];
  const clinic = frontPerson(house)?.card?.card.clinic;
  return [
    "A keeper sets this tablet's clock. Until then it tells no dose.",
    `Call ${clinic ? `${clinic.name}: ${clinic.phone}` : "your clinic"}.`,
  ];
}

/** What the walk in front says now; null on the kitchen screen. */
export function sayWalk(house: HouseState, now: Stamp, guards: Guards): Say | null {
  const me = frontPerson(house);
  if (!me?.walk) return null;
  if (clockQuestion(house)) return sayClock(now, clockIsWrong(house));
  const say = SAY[stepOf(me.walk)](contextOf(house, me, me.walk, now, guards));
  return me.cleanWalks >= FAMILIAR_AFTER && say.short ? { ...say, lines: say.short } : say;
}
