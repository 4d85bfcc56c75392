// The page for whoever comes when the person does not answer: a neighbour or a grandchild, who reads from top to bottom. What is not known is said so.
// Order and acts: general first-aid teaching and the ADA's patient page (nothing by mouth and no insulin for who does not wake; on the side; call).
import type { Stamp } from "#events/stamp.ts";
import { hasEaten, type InsulinInBook, insulinsInBook, lastReading } from "#walk/helper-case.ts";
import type { HouseState, PersonState } from "#walk/state.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { minutesOf, unitSaid, unitsOf } from "./amounts.ts";
import { notInBook } from "./did-i.ts";
import { sayWatchToHelper } from "./insulin-watch.ts";
import { sugarsToGive } from "./low-labels.ts";
import { timeOfDay, whichDay } from "./when.ts";

export const HELPER = {
  title: "For the helper",
  button: "For the helper",
  next: "Next line",
  first: "From the top",
} as const;

const EATEN = { yes: "Eaten: yes.", no: "Eaten: no.", "not known": "Eaten: not known." } as const;

const injected = ({ units }: InsulinInBook["doses"][number], name: string): string =>
  units === null ? `amount not known of ${name}` : `${unitsOf(units)} of ${name}`;

const when = ({ at }: InsulinInBook["doses"][number], now: Stamp): string =>
  at === null ? "When: not known." : `When: ${whichDay(at, now)}, ${timeOfDay(at)}.`;

/** Behind a newest dose in doubt, the one before it is said too: it is the one that was seen. */
function sayInsulin({ name, doses, older }: InsulinInBook, now: Stamp): string[] {
  const [dose, before] = doses;
  if (!dose) return [older ? `No ${name} in this book for 2 days.` : `No ${name} is in this book.`];
  return [
    `Injected: ${injected(dose, name)}.`,
    ...(dose.certain && dose.units !== 0 ? [] : [dose.told ? "That was told, and not seen." : "Nobody is sure how much went in."]),
    when(dose, now),
    ...(before ? [`Before it: ${injected(before, name)}.`, when(before, now)] : []),
  ];
}

function sayLastReading(me: PersonState, now: Stamp): string {
  const reading = lastReading(me);
  if (!reading) return "Last reading: not known.";
  const { glucose, word } = reading;
  const value = glucose ? `${glucose.value} ${unitSaid[glucose.unit]}` : (word ?? "not known");
  return `Last reading: ${value}, ${whichDay(reading, now)}, ${timeOfDay(reading)}.`;
}

/** In the measures of the kitchen that the helper stands in. */
function saySugar(me: PersonState): string[] {
  const [first = "sugar", second] = sugarsToGive(me);
  return [
    "Awake, and can swallow? Sugar first.",
    `Give ${first}.`,
    ...(second ? [`Or give ${second}.`] : []),
    "Then open the front door.",
    `Wait ${minutesOf(careNumber(me.card?.card ?? null, "recheckMinutes"))}. Then measure again.`,
  ];
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
      ...insulinsInBook(me, now, house.doubt === null).flatMap((insulin) => sayInsulin(insulin, now)),
      ...sayWatchToHelper(me, now, house.doubt === null),
      ...notInBook(me),
      EATEN[hasEaten(me)],
      sayLastReading(me, now),
      ...(house.doubt === null ? [] : ["The tablet's clock is not sure."]),
    ],
    todo: [
      `Not awake? Call ${call} first.`,
      ...(ill ? ["Awake? Measure the glucose.", "Open the front door."] : saySugar(me)),
      "Not awake? Nothing by mouth. No insulin.",
      "Turn them on their side.",
      ...kit,
      `Call ${call}.`,
    ],
  };
}
