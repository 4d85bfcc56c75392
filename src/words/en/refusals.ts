// Every refusal in three parts: what we got, what is wrong, what to do. Nothing is lost by it.

import type { PenReason } from "#rules/pen/check.ts";
import type { Refusal } from "#walk/refusal.ts";
import { digits, number, unitsOf } from "./amounts.ts";
import { dateInWords } from "./when.ts";

export interface SayRefusal {
  heading: string;
  got: string;
  wrong: string;
  todo: string;
}

const say = (heading: string, got: string, wrong: string, todo: string): SayRefusal => ({ heading, got, wrong, todo });

function reading(r: Extract<Refusal, { no: "reading" }>): SayRefusal {
  const got = r.text.trim() === "" ? "I got no number." : `I got ${r.text}.`;
  const other = r.unit === "mg/dL" ? "mmol/L" : "mg/dL";
  const range = r.unit === "mg/dL" ? "Readings go from 20 to 600." : "Readings go from 1.1 to 33.3.";
  switch (r.why) {
    case "empty":
      return say("No number yet", got, "The number is empty.", "Press the numbers, then OK.");
    case "fits only the other unit":
      return say("Another unit", got, `That fits ${other}. Your meter uses ${r.unit}.`, "Look at the meter again. Then give the number.");
    case "too high":
      return say("Number too big", got, range, "Press the numbers again.");
    case "too low":
    case "zero":
      return say("Number too small", got, range, "Press the numbers again.");
    case "too many decimals":
      return say(
        "Too many digits",
        got,
        r.unit === "mg/dL" ? "Your meter shows whole numbers." : "Your meter shows one digit after the point.",
        "Press the numbers again.",
      );
    case "word HI":
      return say("A word", got, "HI is a word, not a number.", "Press It shows HI.");
    case "word LO":
      return say("A word", got, "LO is a word, not a number.", "Press It shows LO.");
    default:
      return say("Not a number", got, "That is not a number.", "Press the numbers again.");
  }
}

function grams(r: Extract<Refusal, { no: "grams" }>): SayRefusal {
  const got = r.text.trim() === "" ? "I got no number." : `I got ${r.text}.`;
  switch (r.why) {
    case "empty":
      return say("No number yet", got, "The number is empty.", "Press the numbers, then OK.");
    case "zero":
      return say("Number too small", got, "A meal has more than that.", "Press the numbers again.");
    case "too many":
      return say("Number too big", got, "No meal has that much.", "Press the numbers again.");
    case "too many decimals":
      return say("Too many digits", got, "One digit after the point is enough.", "Press the numbers again.");
    default:
      return say("Not a number", got, "That is not a number.", "Press the numbers again.");
  }
}

function ketones(r: Extract<Refusal, { no: "ketones" }>): SayRefusal {
  const got = r.text.trim() === "" ? "I got no number." : `I got ${r.text}.`;
  switch (r.why) {
    case "empty":
      return say("No number yet", got, "The number is empty.", "Press the numbers, then OK.");
    case "too high":
      return say("Number too big", got, "No ketone meter shows that much.", "Look for the point. Give the number again.");
    case "too many decimals":
      return say("Too many digits", got, "One digit after the point is enough.", "Look at the meter again.");
    default:
      return say("Not a number", got, "That is not a number.", "Press the numbers again.");
  }
}

function unitsRefused(r: Extract<Refusal, { no: "units" }>): SayRefusal {
  const got = r.text.trim() === "" ? "I got no number." : `I got ${r.text}.`;
  switch (r.why) {
    case "empty":
      return say("No number yet", got, "The number is empty.", "Press the numbers, then OK.");
    case "off the pen's step":
      return say("Not on this pen", got, "Your pen does not stop there.", "Look at the dial again.");
    case "too many":
      return say("Number too big", got, "No pen goes that far.", "Look at the dial again.");
    default:
      return say("Not a number", got, "That is not a number.", "Press the numbers again.");
  }
}

function pen(reason: PenReason, owner: string | null): SayRefusal {
  switch (reason.why) {
    case "another person's pen":
      return say(
        "Stop. Not your pen",
        `This pen belongs to ${owner ?? "somebody else"}.`,
        "Never share a pen.",
        "Put it down. Take your own pen.",
      );
    case "not mealtime insulin":
      return say(
        "Stop. Wrong insulin",
        `Stop. This pen holds ${reason.name}.`,
        "It is long-acting. It is not for the meal.",
        "Put it down. Take the mealtime pen.",
      );
    case "not background insulin":
      return say(
        "Stop. Wrong insulin",
        `Stop. This pen holds ${reason.name}.`,
        "It is for meals. It works fast.",
        "Put it down. Take the long-acting pen.",
      );
    case "does not stop at the dose":
      return say(
        "Pen does not fit",
        `Your dose is ${unitsOf(reason.units)}.`,
        "This pen cannot show that number.",
        "Do not inject. Call your clinic.",
      );
    case "another insulin than the card's":
      return say(
        "Stop. Wrong insulin",
        `Stop. This pen holds ${reason.name}.`,
        "Your card names another insulin.",
        "Put it down. Take the other pen.",
      );
    case "expired":
      return say(
        "Pen too old",
        `This pen was good until ${dateInWords(reason.on)}.`,
        "That day has passed.",
        "Put it aside. Take a new pen.",
      );
    case "open too long":
      return say(
        "Pen open too long",
        `This pen was good until ${dateInWords(reason.lastDay)}.`,
        `It lasts ${reason.days} days once opened.`,
        "Put it aside. Take a new pen.",
      );
    case "put aside":
      return say("Pen put aside", "This pen was put aside.", "It may not be used.", "Take another pen.");
    case "too little left":
      return say(
        "Pen nearly empty",
        `About ${unitsOf(Math.max(0, reason.left))} are left.`,
        "That is too little for this dose.",
        "Take a new pen.",
      );
  }
}

/** Shown and spoken, the same words. */
export function sayRefusal(r: Refusal): SayRefusal {
  switch (r.no) {
    case "not offered here":
      return say("Not now", "I did not do that.", "It does not fit this step.", "Press one of the buttons.");
    case "reading":
      return reading(r);
    case "ketones":
      return ketones(r);
    case "grams":
      return grams(r);
    case "units":
      return unitsRefused(r);
    case "wrong unit":
      return say("Another unit", "The meter shows another unit.", `Here your unit is ${r.unit}.`, "Ask your keeper. Then measure again.");
    case "two numbers differ":
      return say(
        "Two numbers",
        `First I got ${r.first}. Then I got ${r.second}.`,
        "They differ. Neither is used.",
        "Look again. Then give the number.",
      );
    case "pen":
      return pen(r.reason, r.name);
    case "pen name":
      return say(
        "Stop. Wrong insulin",
        "Stop. The pen shows another name.",
        `It must say ${r.name}.`,
        "Put it down. Take the long-acting pen.",
      );
    case "insulin look":
      return say("Stop. Do not use it", "This insulin does not look right.", "It may not work.", "Put the pen aside. Take a new pen.");
    case "no stream":
      return say("No stream", "No stream came.", "The needle may be blocked.", "Test the pen again.");
    case "dial is not the card":
      return say(
        "The numbers differ",
        `You dialed ${number(r.dialled)}. ${digits(number(r.dialled))}`,
        `Your card says ${number(r.told)}. ${digits(number(r.told))}`,
        `Turn back to zero. Dial ${unitsOf(r.told)}.`,
      );
    case "window shows more than was dialled":
      return say("Look again", `I got ${number(r.left)}.`, `Only ${unitsOf(r.dialled)} were dialed.`, "Look at the window again.");
    case "telephoned number":
      return say(
        "Not this number",
        `I got ${unitsOf(r.units)}.`,
        r.why === "above the largest dose" ? "That is above the card's largest dose." : "The card does not allow this here.",
        "Do not inject. Call your clinic again.",
      );
    case "not ready to inject":
      return say("Not yet", "The dose is not ready.", "A check does not hold any more.", "Go on with the step shown.");
    case "wait is not over":
      return say("Not yet", "The wait is not over.", "A little more time is needed.", "Wait for the tone.");
    case "food":
      if (r.why === "treats a low")
        return say(
          "Sugar for a low",
          "This sugar treats a low.",
          "Sugar for a low is never counted for insulin.",
          "Leave it off the plate.",
        );
      return say(
        "Not this food",
        "I do not know this food well enough.",
        "Its carbohydrate is not known.",
        "Read the label. Then give the grams.",
      );
    default:
      return r satisfies never;
  }
}
