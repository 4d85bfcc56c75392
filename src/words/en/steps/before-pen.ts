// What the steps say from "taken already?" to the dose.
import { plateTotal } from "#rules/food/plate.ts";
import { isAfterLow } from "#walk/after-low.ts";
import type { Ctx } from "#walk/context.ts";
import { waitOver } from "#walk/context.ts";
import { insulinOf, isBackground } from "#walk/insulin.ts";
import { cardStage } from "#walk/steps/card.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { plateStage } from "#walk/steps/plate.ts";
import { asksAfterCall, windowNow } from "#walk/steps/taken.ts";
import { ago, unitsOf } from "#words/en/amounts.ts";
import { whySilent, whyTold } from "#words/en/card.ts";
import { MEALS } from "#words/en/labels.ts";
import { plateWords } from "#words/en/plate.ts";
import type { Say } from "#words/say.ts";
import { backgroundLead, lateLines, sayBackgroundReading, sayBackgroundTaken } from "./background.ts";
import { sayDraft } from "./draft.ts";

const callClinic = (c: Ctx): string => (c.card ? `Call ${c.card.clinic.name}: ${c.card.clinic.phone}.` : "Call your clinic.");

const sayTakenAfterCall = (c: Ctx): Say => ({
  title: "Taken already?",
  lines: [
    "I called for it. Nothing is in the book.",
    `If you do not know: no dose. ${callClinic(c)}`,
    `Did you take ${insulinOf(c).name} without me?`,
  ],
});

export function sayTaken(c: Ctx): Say {
  if (isBackground(c.walk)) return asksAfterCall(c) ? sayTakenAfterCall(c) : sayBackgroundTaken(c);
  const window = windowNow(c);
  if (window.is === "a dose inside") {
    const much = window.units === null ? "Mealtime insulin" : unitsOf(window.units);
    const when = window.minutesAgo === null ? "at a time nobody knows" : `${ago(window.minutesAgo)} ago`;
    const sure = window.certain ? "" : " It is not certain how much went in.";
    return {
      title: "Taken already?",
      // Not "is this the same meal?": a no to that was pressed as "No. The first was not taken".
      lines: [`${much} went in ${when}.${sure}`, `For another meal, or in doubt: no dose. ${callClinic(c)}`, "Did you take that dose?"],
    };
  }
  return {
    title: "Taken already?",
    lines: [
      "The tablet was not here all the time.",
      `If you do not know: no dose. ${callClinic(c)}`,
      "Did you take mealtime insulin in the last hours?",
    ],
  };
}

export function sayWash(c: Ctx): Say {
  if (!c.walk.wait) return { title: "Wash your hands", lines: ["Wash your hands with soap and warm water."], short: ["Wash your hands."] };
  if (waitOver(c.walk, c.now, c.sure)) return { title: "Dry your hands", lines: ["Dry them well."], short: [] };
  return { title: `Wash for ${careNumber(c.card, "washSeconds")} seconds`, lines: [] };
}

export function sayReading(c: Ctx): Say {
  if (c.walk.draft) return sayDraft(c);
  if (c.walk.reading?.word === "HI") {
    return {
      title: "The meter shows HI",
      lines: [
        "HI means very high. It is not a number.",
        "Wash your hands. Test again with a new strip.",
        `If it is HI again: ${callClinic(c)}`,
        ...(isBackground(c.walk) ? ["Or press No reading now."] : []),
      ],
    };
  }
  if (isBackground(c.walk)) return sayBackgroundReading();
  const title = "Your glucose";
  const old = c.walk.told === null && c.walk.plate?.ready ? ["The reading is too old now."] : [];
  return {
    title,
    lines: [...old, "Measure your glucose, and tell me."],
    short: [...old, "Your glucose?"],
  };
}

export function sayPlate(c: Ctx): Say {
  switch (plateStage(c)) {
    case "high advice":
      return {
        title: "The reading is high",
        lines: ["Your reading is high. Your card says:", c.card?.high?.advice ?? "", "Do you feel ill? Press I feel ill."],
      };
    case "exercise":
      return { title: "Hard exercise?", lines: ["Hard exercise today?"], short: ["Hard exercise?"] };
    case "number":
      return sayDraft(c);
    case "count":
      return {
        title: "What is on your plate?",
        lines: [
          // Mistake 32: sugar that treated a low is not dosed for, and grams typed by hand do not say what they are.
          ...(isAfterLow(c) ? ["Do not count the sugar for your low."] : []),
          ...(c.walk.lines.length > 0 ? plateWords.soFar(plateTotal(c.walk.lines)) : ["What will you eat?"]),
        ],
      };
    case "ready": {
      const grams = c.walk.plate?.grams;
      const big = typeof grams === "number" ? { big: { value: String(grams), unit: "grams" } } : {};
      return { title: "Is the meal ready?", lines: ["Is the meal ready?"], ...big };
    }
  }
}

/** Background insulin is never blocked; HI is still told to somebody. */
const hiLines = (c: Ctx): string[] => (c.walk.reading?.word === "HI" ? ["The meter showed HI.", callClinic(c)] : []);

export function sayCard(c: Ctx): Say {
  const clinic = callClinic(c);
  switch (cardStage(c)) {
    case "number":
      return sayDraft(c);
    case "say first":
      return { title: "Your own number first", lines: ["Look at your paper card.", "How many units does it say?"] };
    case "silent":
      return {
        title: "No dose is told",
        lines: [
          c.walk.silent ? whySilent(c.walk.silent) : "",
          `Do not inject ${isBackground(c.walk) ? insulinOf(c).name : "mealtime insulin"} now.`,
          clinic,
        ],
      };
    case "told": {
      const told = c.walk.told;
      if (!told) return { title: "The card has changed", lines: ["A keeper changed your card.", "Press Stop here, then carry on."] };
      const own = c.walk.ownNumber;
      const compare = own
        ? [own.matches ? "Your number and the card agree." : `You said ${unitsOf(own.units)}. The card says another number.`]
        : [];
      // The meal and, in a house of two, the person are named: the row of another meal or person is heard before it is dialled.
      const meal = c.walk.meal ? MEALS[c.walk.meal] : "This meal";
      const who = Object.keys(c.house.people).length > 1 ? `${c.me.person.name}. ` : "";
      const lead = isBackground(c.walk)
        ? backgroundLead(c, who)
        : told.by === "card"
          ? `${who}${meal}: your card says ${unitsOf(told.units)}.`
          : `The number is ${unitsOf(told.units)}.`;
      const zero = told.units === 0 ? ["No insulin is needed for this meal."] : [];
      return {
        title: "Your dose",
        lines: [...compare, lead, ...hiLines(c), ...whyTold(told), ...lateLines(c), ...zero],
        short: [...compare, lead, ...hiLines(c), ...lateLines(c), ...zero],
        big: { value: String(told.units), unit: told.units === 1 ? "unit" : "units" },
      };
    }
  }
}

export const sayEatFirst = (): Say => ({
  title: "Eat first",
  lines: ["Eat your meal now. Insulin comes after.", "Press Eaten when you are done."],
});
