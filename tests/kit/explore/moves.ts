// Which moves are tried in a state: every press on offer, and for every number on offer the published boundary texts.
import type { Intent } from "#events/intent.ts";
import type { NumberSlot, Via } from "#events/told.ts";
import type { Offer } from "#walk/context.ts";
import type { NewFact } from "#walk/decide.ts";
import { frontPerson } from "#walk/offers.ts";
import type { Move, World } from "./world.ts";

/** Time steps: at once, past the drying wait, inside the reading's age, past it, the window, more than a day. */
export const TIMES: readonly Move[] = [0, 21, 4 * 60, 16 * 60, 3 * 3600, 25 * 3600].map((seconds) => ({ kind: "pass", seconds }));

/** Clock jumps: an hour back, two hours on, three days on; and sleeps, which look the same to the tablet. */
export const JUMPS: readonly Move[] = [-3600, 2 * 3600, 3 * 24 * 3600].map((seconds) => ({ kind: "set clock", seconds }));

export const STARTS: readonly Move[] = [
  { kind: "start again", afterSeconds: 5, rowLost: null },
  { kind: "start again", afterSeconds: 16 * 60, rowLost: null },
];
export const LOST_ROWS: readonly Move[] = [
  { kind: "start again", afterSeconds: 5, rowLost: "time known" },
  { kind: "start again", afterSeconds: 5, rowLost: "time not known" },
];

/** Numbers that a hand, an eye or an ear may make of the dose: itself, one off each way, nothing, digits swapped, a digit too many. */
export function dialTexts(told: number): string[] {
  const swapped = [...String(told)].reverse().join("");
  return [
    ...new Set([
      String(told),
      String(Math.max(0, told - 1)),
      String(told + 1),
      "0",
      swapped === String(told) ? String(told + 10) : swapped,
      String(told * 10),
    ]),
  ];
}

export interface Exploration {
  name: string;
  /** What it is for, in a line. */
  looksAt: string;
  facts: readonly NewFact[];
  /** Hours of recording before the first move. */
  hours: number;
  /** Boundary texts of each number; a slot without any is never answered. */
  texts: Partial<Record<NumberSlot, readonly string[]>>;
  /** Foods put on the plate. */
  foods?: readonly string[];
  vias: readonly Via[];
  around: readonly Move[];
  /** Moves only while the kitchen screen stands: long absences, where their effect within a walk is for another exploration. */
  atRest?: readonly Move[];
  /** Runs by chance that look for what the first state of a key did not lead to; more where many ages lie hidden in one key. */
  scouts?: number;
  /** Which of the presses on offer are followed; all, unless it says otherwise. Each that is not is left out for a reason given there. */
  follows: (intent: Intent, world: World) => boolean;
  /** The same press with other numbers in it. */
  extra?: (intent: Intent) => readonly Intent[];
}

function textsFor(x: Exploration, slot: NumberSlot, world: World): readonly string[] {
  if (slot !== "dial") return x.texts[slot] ?? [];
  const told = frontPerson(world.house)?.walk?.told?.units;
  return told === undefined ? [] : (x.texts.dial ?? dialTexts(told));
}

function movesOf(offer: Offer, x: Exploration, world: World): Move[] {
  switch (offer.offer) {
    case "press":
      return x.follows(offer.intent, world)
        ? [offer.intent, ...(x.extra?.(offer.intent) ?? [])].map((intent) => ({ kind: "want", intent }))
        : [];
    case "foods":
      return (x.foods ?? []).map((food) => ({ kind: "want", intent: { do: "add food", food, portions: 1 } }));
    case "number":
      return textsFor(x, offer.slot, world).flatMap((text) =>
        x.vias.map(
          (via): Move => ({
            kind: "want",
            intent: { do: "give number", slot: offer.slot, text, via, helper: offer.slot === "telephoned number" ? "Nurse Adeyemi" : null },
          }),
        ),
      );
  }
}

export function movesAt(world: World, x: Exploration): Move[] {
  return [
    ...world.offers.flatMap((offer) => movesOf(offer, x, world)),
    ...x.around,
    ...(world.house.front === null ? (x.atRest ?? []) : []),
  ];
}
