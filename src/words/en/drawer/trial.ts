// The trial sheet: what the tablet would tell, for the clinician to tick.
import type { GlucoseUnit } from "#events/quantity.ts";
import type { Trial, TrialDay } from "#keeping/trial.ts";
import { gramsOf, number, unitsOf } from "#words/en/amounts.ts";
import { whySilent, whyTold } from "#words/en/card.ts";

export const TRIAL = {
  open: "Trial sheet for the clinic",
  title: (name: string) => `Trial sheet of ${name}`,
  intro: "The tablet would tell these doses. Tick each one that is right.",
  print: "Print it",
  asked: "Asked",
  told: "The tablet would tell",
  right: "Right?",
  signed: "Name of the clinician, date and signature:",
  none: "No meal on this card has a dose.",
} as const;

const DAY: Readonly<Record<TrialDay, string>> = {
  "as usual": "",
  "just after a dose": ", half an hour after a dose",
  "at bedtime": ", at 10:30 pm",
  "after a low": ", after a low",
  "after hard exercise": ", after hard exercise",
};

/** "180 mg/dL before dinner, with 45 grams, after a low". */
export function askedWords(trial: Trial, unit: GlucoseUnit): string {
  const food = trial.grams === null ? "" : `, with ${gramsOf(trial.grams)}`;
  return `${number(trial.reading)} ${unit} before ${trial.meal}${food}${DAY[trial.day]}`;
}

/** "6 units. 4 units are for 45 grams of food. …" or why there is none. */
export function answerWords({ answer }: Trial): string {
  if (answer.told) {
    const { told: _told, ...dose } = answer;
    const told = { ...dose, rows: [...dose.rows], why: dose.why.map((w) => ({ ...w })), cautions: dose.cautions.map((c) => ({ ...c })) };
    return [`${unitsOf(answer.units)}.`, ...whyTold({ ...told, cardHash: "", by: "card" })].join(" ");
  }
  const { told: _told, why, ...detail } = answer;
  return `No dose. ${whySilent({ why, detail: JSON.stringify(detail) })}`;
}
