// The page for whoever comes when the person does not answer: a neighbour or a grandchild, who reads from top to bottom. What is not known is said so.
// Order and acts: general first-aid teaching and the ADA's patient page (nothing by mouth and no insulin for who does not wake; on the side; call).
import type { Stamp } from "#events/stamp.ts";
import { hasEaten, lastMealtimeDose, lastReading } from "#walk/helper-case.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { gramsOf, unitsOf } from "./amounts.ts";
import { timeOfDay, whichDay } from "./when.ts";

export const HELPER = {
  title: "For the helper",
  button: "For the helper",
  next: "Next line",
  first: "From the top",
  close: "Go back",
} as const;

const EATEN = { yes: "Eaten: yes.", no: "Eaten: no.", "not known": "Eaten: not known." } as const;

function sayDose(me: PersonState, now: Stamp): string[] {
  const dose = lastMealtimeDose(me);
  if (!dose) return ["Injected: nothing is in this book."];
  const much = dose.units === null ? "amount not known" : unitsOf(dose.units);
  const when = dose.at === null ? "When: not known." : `When: ${whichDay(dose.at, now)}, ${timeOfDay(dose.at)}.`;
  return [`Injected: ${much} of ${dose.name}.`, ...(dose.certain ? [] : ["It is not certain that all went in."]), when];
}

function sayLastReading(me: PersonState, now: Stamp): string {
  const reading = lastReading(me);
  if (!reading) return "Last reading: not known.";
  const value = reading.glucose ? String(reading.glucose.value) : (reading.word ?? "not known");
  return `Last reading: ${value}, ${whichDay(reading, now)}, ${timeOfDay(reading)}.`;
}

/** Who, what, and then what to do, in this order. One sentence a line. */
export function helperPage(house: HouseState, me: PersonState, now: Stamp): { facts: string[]; todo: string[] } {
  const { name } = me.person;
  const call = house.household?.emergencyNumber ?? "the emergency number";
  // On an ill day sugar is for a low reading alone, and the low walk says so then.
  const ill = me.walk?.ill?.callRaised === true && !me.walk.low;
  const kit = me.person.glucagonSteps ? ["A glucagon kit is here. Use it by its leaflet."] : [];
  return {
    facts: [
      `${name} needs help. The number to call: ${call}.`,
      ...(ill ? [`${name} is ill, and may be in danger.`] : []),
      ...sayDose(me, now),
      EATEN[hasEaten(me)],
      sayLastReading(me, now),
      ...(house.doubt === null ? [] : ["The tablet's clock is not sure."]),
    ],
    todo: [
      "Open the front door.",
      ...(ill
        ? ["Awake? Measure the glucose."]
        : [`Awake, and can swallow? Give ${gramsOf(careNumber(me.card?.card ?? null, "treatGrams"))} of sugar.`]),
      "Not awake? Nothing by mouth. No insulin.",
      "Turn them on their side.",
      ...kit,
      `Call ${call}.`,
    ],
  };
}
