// Every fact of a walk as a short sentence of its own, for whoever wants all the steps.
import type { Happened } from "#events/happened.ts";
import { foodById, nameOf } from "#rules/food/foods.ts";
import { gramsOf, minutesOf, unitsOf } from "#words/en/amounts.ts";
import { whySilent, whyTold } from "#words/en/card.ts";
import { ATE, howKnown, MEAL_NAME, sayInjected, sayMeterWord, sayReading, WALK_LINE } from "#words/en/daybook.ts";
import { placeName } from "#words/en/places.ts";
import { lineLabel } from "#words/en/plate.ts";
import { sayReminderFact } from "#words/en/reminders.ts";
import { sayHouse } from "./house.ts";
import { sayIllFact } from "./ill.ts";
import { MISHAP_WORDS, SLOT_WORDS, stepWords } from "./names.ts";
import { saySlip } from "./slips.ts";

export interface Names {
  /** Mark and insulin of a pen. */
  pen(id: string): string;
  language: "en-US" | "en-GB";
}

const WAIT = {
  wash: "The wash",
  skin: "The drying wait",
  hold: "The count",
  recheck: "The wait after sugar",
  watch: "The watch without a meal",
  ready: "The wait for the meal",
} as const;

const lasting = (ms: number): string => (ms >= 120_000 ? minutesOf(Math.round(ms / 60_000)) : `${Math.round(ms / 1000)} seconds`);

export function foodWords(id: string, language: Names["language"]): string {
  const food = foodById(id);
  return food ? nameOf(food, language === "en-GB" ? "UK" : "US") : "sugar";
}

/** One fact in words, or null where it says nothing that its neighbours do not say. */
export function sayFact(event: Happened, names: Names): string | null {
  switch (event.type) {
    case "walk opened":
      return {
        meal: event.meal ? `${MEAL_NAME[event.meal]} The walk began.` : "The walk began.",
        low: "A low walk began.",
        mishap: "Something was told that went wrong.",
        background: `Long-acting insulin, ${event.background?.insulinName ?? "name not known"}. The walk began.`,
        reading: "A reading walk began.",
      }[event.kind];
    case "walk turned to":
      return "The walk was taken up again.";
    case "walk left":
      return `${WALK_LINE.stoppedAt(event.step)}${event.why === "meal not ready" ? " The meal was not ready." : ""}`;
    case "walk ended":
      return {
        "whole walk": "The walk was complete.",
        stopped: "The walk was put aside.",
        "no dose": "The walk ended without a dose.",
        "dose already taken": WALK_LINE.alreadyTaken,
      }[event.how];
    case "went back":
      return `Back to ${stepWords(event.to)}. Later answers no longer count.`;
    case "wait began":
      return `${WAIT[event.for]} began: ${lasting(event.ms)}.`;
    case "wait ended":
      return null;
    case "wait jumped":
      return `${WAIT[event.for]} was cut short: ${event.reason}.`;
    case "near miss":
      return saySlip(event);
    case "number given":
      return `${SLOT_WORDS[event.slot]}: ${event.text}${howKnown(event.via, event.slot === "grams" ? null : event.helper)}.`;
    case "digits asked again":
      return "Its digits were asked for again.";
    case "number turned down":
      return "That number was turned down.";
    case "unit agreed":
      return `The unit was agreed: ${event.unit}.`;
    case "taken answered":
      return {
        "log is clear": "The book shows no dose before this one.",
        "said not taken": "Said: not taken yet.",
        "the first was not taken": "Said: the first dose was not taken.",
      }[event.how];
    case "hands washed":
      return event.how === "skipped"
        ? `Hands were not washed: ${event.reason ?? "no reason given"}.`
        : event.how === "counted"
          ? "Hands were washed."
          : "Hands had been washed before.";
    case "reading taken":
      return sayReading(event.glucose).replace(/\.$/, `, ${event.source}${howKnown(event.via, event.helper)}.`);
    case "meter word read":
      return sayMeterWord(event.word);
    case "reading grew old":
      return "Too much time had passed. A reading was asked for again.";
    case "reading left out":
      return "No reading was given. Long-acting insulin goes on without one.";
    case "pen check grew old":
      return "The pen was made ready too long ago. It was checked again.";
    case "high advice heard":
      return "The card's advice for high readings was heard.";
    case "low began":
      return {
        reading: "The reading is low.",
        "meter word": "The meter says low.",
        "feels strange": "Felt low.",
        "cannot eat": "Insulin was in and no meal came.",
        "half eaten": "Insulin was in, and only part was eaten.",
      }[event.because];
    case "sugar taken":
      return WALK_LINE.tookSugar(gramsOf(event.grams), foodWords(event.food, names.language));
    case "cannot measure":
      return "There was no meter, or no strip.";
    case "help step done":
      return `Step ${event.step} of the help was done.`;
    case "low ended":
      return WALK_LINE.lowOver;
    case "call raised":
      return {
        "still low": "Still low. The tablet said: call for help.",
        "no answer": "No answer. The tablet said: call for help.",
        "cannot swallow": "Could not swallow. The tablet said: call for help.",
        "no meter": "No number could be had. The tablet said: call for help.",
        "bell not answered": "The bell was not answered. The tablet called loudly.",
        "danger signs": "A danger sign. The tablet said: call for help.",
        ketones: "Very high ketones. The tablet said: call for help.",
      }[event.why];
    case "ill began":
    case "danger signs answered":
    case "ketones read":
    case "cannot test ketones":
    case "ill advice heard":
    case "ill ended":
      return sayIllFact(event);
    case "exercise answered":
      return event.hard ? "Hard exercise was told." : "No hard exercise.";
    case "food put on the plate":
      return `On the plate: ${lineLabel(event.line)}.`;
    case "food taken off the plate":
      return `Food number ${event.index + 1} was taken off the plate.`;
    case "plate agreed":
      return event.grams === null ? "The meal needs no counting." : `The plate holds ${gramsOf(event.grams)} of carbs.`;
    case "food is ready":
      return "The meal was ready.";
    case "dose told":
      return [
        event.told.by === "card" ? `The card says ${unitsOf(event.told.units)}.` : WALK_LINE.telephoned(event.told.by, event.told.units),
        ...(event.told.by === "card" ? whyTold(event.told) : []),
      ].join(" ");
    case "card silent":
      return `${WALK_LINE.noDose} ${whySilent(event)}`;
    case "own number given":
      return `Their own number: ${unitsOf(event.units)}. ${event.matches ? "The card says the same." : "The card says another."}`;
    case "dose heard":
      return "The dose was heard.";
    case "meal eaten first":
      return "The meal was eaten first.";
    case "helper named":
      return WALK_LINE.helped(event.name);
    case "pen picked":
      return `Pen in hand: ${names.pen(event.pen)}.`;
    case "pen name read":
      return event.fits ? "The name on the pen was read." : "The pen showed another name.";
    case "insulin looked at":
      return event.look === "as it should be" ? "The insulin looked right." : `The insulin looked ${event.look}.`;
    case "insulin mixed":
      return "The insulin was mixed.";
    case "needle fitted":
      return "A new needle was put on.";
    case "pen primed":
      return event.stream ? "The pen was tested. A stream came." : "The pen was tested. No stream came.";
    case "dose dialled":
      return `Dialed ${unitsOf(event.units)}, ${event.helper ? `read by ${event.helper}` : { read: "read on the dial", "counted twice": "counted two times", "read by a helper": "read by a helper" }[event.how]}.`;
    case "spot offered":
      return `Offered: ${placeName(event.spot)}.`;
    case "no spot free":
      return "No spot was free.";
    case "spot declined":
      return `Not there: ${event.reason}.`;
    case "spot chosen":
      return `Chosen: ${placeName(event.spot)}.`;
    case "skin cleaned":
      return event.how === "wiped" ? "The skin was wiped." : "The skin was clean. No wipe was used.";
    case "skin dry":
      return "The skin was dry.";
    case "inject opened":
      return "The needle step began. From here it counts as taken.";
    case "needle question answered":
      return `Did the needle go in? ${{ yes: "Yes.", no: "No.", "not sure": "Not sure." }[event.wentIn]}`;
    case "button pressed down":
      return "The button was down.";
    case "window not seen":
      return "The window was not read.";
    case "injected":
      return sayInjected(event, event.spot).join(" ");
    case "needle out early":
      return "The needle came out before the count ended.";
    case "needle asked about":
      return "No answer at the needle. It was asked about.";
    case "needle did not go in":
      return `${WALK_LINE.notIn} Nothing counts as taken.`;
    case "mishap opened":
      return `Said: ${MISHAP_WORDS[event.kind]}.`;
    case "mishap advice heard":
      return "The advice was heard.";
    case "pen put away":
      return "Needle off, pen put away.";
    case "eating":
      return "Eating began.";
    case "cannot eat":
      return "Said: I cannot eat.";
    case "bell not answered":
      return WALK_LINE.bell(event.minutes);
    case "meal answered":
      return ATE[event.ate];
    case "reminder called":
    case "reminder answered":
      return sayReminderFact(event);
    case "insulin watch began":
      return `Glucose is to be measured each hour, for ${event.hours} hours.`;
    case "insulin watch given over":
      return "Said: a doctor watches now.";
    default:
      return sayHouse(event, names);
  }
}
