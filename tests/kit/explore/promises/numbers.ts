// Promise 8: how a number comes to be used.
import type { NumberSlot } from "#events/told.ts";
import type { Turn } from "../world.ts";
import { firstBroken, type PromiseCheck, type Seen, wanted } from "./shape.ts";

interface Use {
  slots: readonly NumberSlot[];
  number: number;
  /** Its digits are needed a second time. */
  twice: boolean;
}

/** What number a fact uses; null: none that somebody gave. */
function useOf(s: Seen): Use | null {
  const { event, a } = s;
  switch (event.type) {
    case "reading taken": {
      const { low, high } = a.person.usualBand;
      const { value } = event.glucose;
      return { slots: ["reading", "recheck after low", "reading when ill"], number: value, twice: value < low || value > high };
    }
    case "dose dialled": {
      const voice = s.w?.number?.given[0]?.voice ?? false;
      return { slots: ["dial"], number: event.units, twice: voice || a.person.dialBy === "counts twice" };
    }
    case "plate agreed":
      if (event.grams === null || (event.how === "foods" && event.grams === 0)) return null;
      return { slots: ["grams", "servings"], number: event.grams, twice: false };
    case "ketones read":
      return { slots: ["ketones"], number: event.value, twice: false };
    case "own number given":
      return { slots: ["own number"], number: event.units, twice: false };
    case "dose told":
      return event.told.by === "card" ? null : { slots: ["telephoned number"], number: event.told.units, twice: true };
    case "injected": {
      // Nought is one press; said or typed it is a number like any other.
      const given = s.w?.number?.slot === "left in window";
      return event.left === null || (event.left === 0 && !given) ? null : { slots: ["left in window"], number: event.left, twice: false };
    }
    default:
      return null;
  }
}

function fault(turn: Turn, s: Seen, use: Use): string | null {
  // The last of the numbers may be given and used in this very turn: look after the turn's own "number given".
  const number = s.w?.number;
  if (!number || !use.slots.includes(number.slot)) return "that nobody gave";
  const texts = number.given.map((g) => (number.slot === "servings" ? Number(g.text) * 15 : Number(g.text)));
  const now = turn.after.ledger.turn;
  if (texts.at(-1) !== use.number) return `${use.number} though ${texts.at(-1)} was given`;
  if (number.askedAgain === null) {
    if (use.twice) return `${use.number} without its digits a second time`;
    if (number.given.some((g) => g.turn === now) || wanted(turn)?.do !== "agree number")
      return `${use.number} without a yes in a later turn`;
    return null;
  }
  const [one, two] = texts.slice(-2);
  const turns = number.given.slice(-2).map((g) => g.turn);
  if (one !== two || turns[0] === turns[1]) return `${use.number} though the two numbers were ${one} and ${two}`;
  return (turns[0] ?? 0) < number.askedAgain && number.askedAgain < (turns[1] ?? 0) ? null : `${use.number} without a yes between`;
}

/** Facts that silence may lead to: the clocks, the bell, an unanswered low or needle, and what grew old. Never an answer. */
const ON_SILENCE: readonly string[] = [
  "clock doubted",
  "bell not answered",
  "call raised",
  "reading grew old",
  // A keeper signed it for this day.
  "card began",
  "pen check grew old",
  "needle asked about",
  // It asks, and frees nothing.
  "reminder called",
];

const eighth: PromiseCheck = {
  number: 8,
  says: "A number is never used before it was read back and agreed in a later turn; some need their digits twice. Silence is never yes. No wins.",
  broken: (turn) => {
    if (turn.move.kind === "pass" || turn.move.kind === "set clock") {
      const answered = turn.decision.facts.find((f) => !ON_SILENCE.includes(f.event.type));
      if (answered) return `silence led to "${answered.event.type}"`;
    }
    if (
      wanted(turn)?.do === "change number" &&
      turn.decision.facts.some((f) =>
        ["reading taken", "ketones read", "dose dialled", "plate agreed", "own number given"].includes(f.event.type),
      )
    )
      return "no was taken for yes";
    return firstBroken(turn, (s) => {
      const use = useOf(s);
      const found = use && fault(turn, s, use);
      return found ? `${s.event.type}: ${found}` : null;
    });
  },
};

export const numberPromises = [eighth];
