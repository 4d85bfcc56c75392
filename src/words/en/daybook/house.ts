// Facts of the household in words: people, keepers, cards, pens, marks, the tablet and its clock.
import type { HappenedType, Of } from "#events/happened.ts";
import { STARTED, sayToldLater } from "#words/en/daybook.ts";
import { placeName } from "#words/en/places.ts";
import { dateInWords } from "#words/en/when.ts";
import { NO_GO_WORDS } from "./names.ts";

type HouseType =
  | "household begun"
  | "person added"
  | "person changed"
  | "keeper added"
  | "keeper PIN changed"
  | "recovery code made"
  | "card signed"
  | "card began"
  | "card photographed"
  | "pen added"
  | "pen opened"
  | "pen retired"
  | "no-go place marked"
  | "no-go place cleared"
  | "felt for lumps"
  | "tablet started"
  | "clock doubted"
  | "clock agreed"
  | "dose told later";
/** Fails to compile when a fact of the household has no sentence. */
type HouseEvent = Of<HouseType & HappenedType>;

const DOUBT: Readonly<Record<Of<"clock doubted">["why"], string>> = {
  "behind the last entry": "The tablet's clock was behind its last entry.",
  "forward jump": "The tablet's clock jumped forward.",
  "another time zone": "The tablet moved to another time zone.",
  "the person said no": "Said: day and time are not right.",
};

const RETIRED: Readonly<Record<Of<"pen retired">["why"], string>> = {
  empty: "it was empty",
  "too old": "it was too old",
  clumped: "it had clumps",
  frozen: "it had been frozen",
  overheated: "it had been too hot",
  lost: "it was lost",
  other: "as the keeper decided",
};

export function sayHouse(event: HouseEvent, names: { pen(id: string): string }): string {
  switch (event.type) {
    case "household begun":
      return `The household was set up. Emergency number: ${event.household.emergencyNumber}.`;
    case "person added":
      return `${event.person.name} was added.`;
    case "person changed":
      return `The settings of ${event.person.name} were changed.`;
    case "keeper added":
      return `${event.keeper.name} became a keeper.`;
    case "keeper PIN changed":
      return event.by === "PIN" ? "A keeper chose a new PIN." : "A keeper chose a new PIN, by the printed code.";
    case "recovery code made":
      return "A keeper made a new printed code.";
    case "card signed": {
      const until = event.card.validUntil === null ? "" : ` until ${dateInWords(event.card.validUntil)}`;
      const ends = event.ends ? " The card before it ends then." : "";
      return `${event.signature.keeperName} signed a new card. It holds from ${dateInWords(event.card.validFrom)}${until}.${ends}`;
    }
    case "card began":
      return "The card that was signed before begins today.";
    case "card photographed":
      return "The paper of a card was photographed.";
    case "pen added":
      return `New pen: ${event.pen.insulinName}, ${event.pen.mark}.`;
    case "pen opened":
      return `Pen opened: ${names.pen(event.pen)}.`;
    case "pen retired":
      return `Pen put aside, ${RETIRED[event.why]}: ${names.pen(event.pen)}.`;
    case "no-go place marked":
      return `A ${NO_GO_WORDS[event.noGo.kind]} was marked, ${placeName(event.noGo.spot)}.`;
    case "no-go place cleared":
      return "A marked place was cleared.";
    case "felt for lumps":
      return {
        none: "Felt for lumps: no new one.",
        found: "Felt for lumps: one was found.",
        "not now": "The question about lumps was put off.",
      }[event.found];
    case "tablet started":
      return STARTED;
    case "clock doubted":
      return DOUBT[event.why];
    case "clock agreed":
      return "Day and time were agreed.";
    case "dose told later":
      return sayToldLater(event);
    default:
      return event satisfies never;
  }
}
