// Near misses as facts: what was met and that it went no further. Never as somebody's failure.
import type { Of } from "#events/happened.ts";

const PENS: Readonly<Record<string, string>> = {
  "another person's pen": "Another person's pen was picked up.",
  "not mealtime insulin": "A long-acting pen was picked up.",
  "another insulin than the card's": "A pen with another insulin was picked up.",
  expired: "A pen past its date was picked up.",
  "open too long": "A pen open too long was picked up.",
  "put aside": "A pen put aside was picked up.",
  "too little left": "A nearly empty pen was picked up.",
  "insulin clumped": "The insulin had clumps.",
  "insulin frozen": "The insulin had been frozen.",
  "insulin overheated": "The insulin had been too hot.",
};

/** One or two short sentences. null where the next fact says the same thing. */
export function saySlip(slip: Of<"near miss">): string | null {
  const { what, detail } = slip;
  const pen = PENS[what];
  if (pen !== undefined) return `${pen} It was not used.`;
  switch (what) {
    case "dialled is not the card": {
      const [dialled = "", told = ""] = (detail ?? "").split(" for ");
      return `The dial showed ${dialled}, the card said ${told}. It was turned back.`;
    }
    case "own number is not the card's":
      return `Their own number was ${detail ?? "another one"}. The card said another.`;
    case "telephoned number above the largest dose":
      return `A telephoned ${detail ?? "number"} was above the largest dose. It was not used.`;
    case "sugar for a low on the plate":
      return "Sugar for a low was put on the plate. It was not counted.";
    case "second dose":
      return "A second dose was not started.";
    case "two numbers differ": {
      const [first = "", second = ""] = (detail ?? "").split(" ");
      return `Two numbers differed: ${first} and ${second}. Neither was used.`;
    }
    case "wrong unit":
      return `A reading of ${detail ?? "another unit"} was not used.`;
    case "washing skipped":
    case "drying cut short":
    case "needle out early":
      return null;
    default:
      // A number that was refused: "reading: reading", "dial: units" and the like; the detail is what was typed.
      return what.includes(": ") ? `“${detail ?? ""}” was not taken as a number.` : `Noted: ${what}.`;
  }
}
