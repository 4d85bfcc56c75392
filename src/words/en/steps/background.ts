// What the background walk says where it differs from a meal's: the insulin by its name, a reading that may be left out, the other pen, the end.
import { minuteOf } from "#rules/time/local.ts";
import { askedAgain } from "#walk/asked-again.ts";
import type { Ctx } from "#walk/context.ts";
import { insulinOf } from "#walk/insulin.ts";
import { windowNow } from "#walk/steps/taken.ts";
import { ago, unitsOf } from "#words/en/amounts.ts";
import { sayCautions } from "#words/en/cautions.ts";
import { sayStillWatched } from "#words/en/insulin-watch.ts";
import { placeName } from "#words/en/places.ts";
import { timeOfDay } from "#words/en/when.ts";
import type { Say } from "#words/say.ts";
import { clinicOf, emergencyOf } from "./whom.ts";

const callClinic = (c: Ctx): string => (c.card ? `Call ${c.card.clinic.name}: ${c.card.clinic.phone}.` : "Call your clinic.");

/** "9:30 in the evening" of "21:30". */
export const hourWords = (at: string): string => timeOfDay({ wall: minuteOf(at) * 60_000, offset: 0 });

export function sayBackgroundTaken(c: Ctx): Say {
  const { name } = insulinOf(c);
  const window = windowNow(c);
  const title = "Taken already?";
  if (window.is !== "a dose inside")
    return {
      title,
      lines: [
        "The tablet was not here all the time.",
        `If you do not know: no dose. ${callClinic(c)}`,
        `Did you take ${name} in the last hours?`,
      ],
    };
  const much = window.units === null ? `${name.charAt(0).toUpperCase()}${name.slice(1)}` : `${unitsOf(window.units)} of ${name}`;
  const when = window.minutesAgo === null ? "at a time nobody knows" : `${ago(window.minutesAgo)} ago`;
  const sure = window.certain ? [] : ["It is not certain how much went in."];
  return { title, lines: [`${much} went in ${when}.`, ...sure, `In doubt: no dose. ${callClinic(c)}`, "Did you take that dose?"] };
}

export const sayBackgroundReading = (): Say => ({
  title: "Your glucose",
  lines: ["Measure your glucose, and tell me.", "Or press No reading now."],
  short: ["Your glucose? Or no reading now?"],
});

/** The hour is named, so that the dose of another hour is heard before it is dialled. */
export function backgroundLead(c: Ctx, who: string): string {
  const told = c.walk.told;
  const at = c.walk.background ? `, ${hourWords(c.walk.background.at)}` : "";
  return `${who}Long-acting${at}: your card says ${unitsOf(told?.units ?? 0)}.`;
}

/** Said once the dose is told far from its hour. What a late dose means is the clinic's alone. */
export function lateLines(c: Ctx): string[] {
  if (!c.walk.told?.cautions.some(({ caution }) => caution === "not at its hour")) return [];
  const own = c.card?.advice.missed;
  return own ? [`Your card says: ${own}`] : [`In doubt: no dose. ${callClinic(c)}`];
}

const ownPenLeft = (c: Ctx): boolean => c.me.pens.some((p) => !p.retired && p.pen.insulinId === insulinOf(c).id);

export function sayBackgroundPick(c: Ctx): Say {
  const { name } = insulinOf(c);
  if (!ownPenLeft(c))
    return {
      title: "No pen is left",
      lines: [`No ${name} pen of yours is left here.`, "A keeper adds a new pen.", callClinic(c)],
    };
  const again = c.walk.penCheck.again ? ["The pen was ready too long ago.", "Take the old needle off."] : [];
  return {
    title: "Your long-acting pen",
    lines: [...again, `Take your ${name} pen.`, "It is the long-acting one. Never for a meal.", "Which mark do you feel?"],
    short: [...again, "The long-acting pen, not for a meal. Which mark?"],
  };
}

export const sayPenName = (c: Ctx): Say => ({
  title: "The name on the pen",
  lines: ["Read the name, or have it read.", `Does the pen say ${insulinOf(c).name}?`],
  short: [`Does it say ${insulinOf(c).name}?`],
});

export function sayBackgroundDone(c: Ctx): Say {
  const { name } = insulinOf(c);
  const units = c.walk.injected?.units ?? null;
  const amount = units === null ? `An unknown amount of ${name} went in` : `${unitsOf(units)} of ${name} went in`;
  const wrong = c.walk.mishapsHeard.includes("wrong insulin");
  if (askedAgain(c) > 0 && !wrong) return { title: "Done", lines: [`${amount}.`, "Are you done? Press Done."] };
  const reading = c.walk.reading?.glucose;
  const where = c.walk.place ? [`Place: ${placeName(c.walk.place)}.`] : [];
  // A mealtime pen taken for this one needs food, whatever the book says of the dose.
  if (wrong)
    return {
      title: "Done",
      lines: [
        "The wrong insulin may be in.",
        "Eat now. Keep sugar near.",
        "Measure now. Measure again each hour.",
        `Call ${clinicOf(c)}.`,
        `Drowsy or mixed up? Call ${emergencyOf(c)}.`,
        ...sayCautions(c),
      ],
    };

  return {
    title: "Done",
    lines: [
      ...(reading ? [`Reading ${reading.value}.`] : ["There was no reading."]),
      `${amount}.`,
      ...where,
      "No meal has to follow.",
      ...sayCautions(c),
    ],
    short: [`${amount}.`, ...sayCautions(c)],
  };
}

export function sayReadingDone(c: Ctx): Say {
  const reading = c.walk.reading?.glucose;
  return { title: "Saved", lines: [reading ? `Saved. Reading ${reading.value}.` : "Saved.", ...sayStillWatched(c), ...sayCautions(c)] };
}
