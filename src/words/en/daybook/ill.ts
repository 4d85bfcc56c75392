// Facts of an ill day as the day book writes them.
import type { Of } from "#events/happened.ts";
import { howKnown } from "#words/en/daybook.ts";
import { ketonesWords } from "#words/en/ketones.ts";

type IllFact = Of<"ill began" | "danger signs answered" | "ketones read" | "cannot test ketones" | "ill advice heard" | "ill ended">;

export function sayIllFact(event: IllFact): string {
  switch (event.type) {
    case "ill began":
      return {
        "feels ill": "Felt ill.",
        "high reading": "The reading was high. Ketones were asked for.",
        "HI again": "The meter showed HI two times.",
      }[event.because];
    case "danger signs answered":
      return event.any ? "A danger sign was told." : "No danger sign was told.";
    case "ketones read":
      return `Ketones: ${ketonesWords(event.test, event.value)}${howKnown(event.via, event.helper)}.`;
    case "cannot test ketones":
      return "There was no strip for ketones.";
    case "ill advice heard":
      return {
        high: "The card's words for high readings were heard.",
        ketones: "The card's words for these ketones were heard.",
        rule: `Rule ${event.rules} for ill days was heard.`,
      }[event.what];
    case "ill ended":
      return "The questions for an ill day were done.";
  }
}
