// A dose card in words: typing it, comparing, reading back, signing, looking at old ones.
import type { DoseCard } from "#events/card.ts";
import type { SignRefusal } from "#keeping/sign.ts";
import { dateInWords } from "#words/en/when.ts";

/** The steps of signing a card. */
export const CARD = {
  inForce: (signed: { keeperName: string; signedOn: string }) =>
    `A card is in force. ${signed.keeperName} signed it on ${dateInWords(signed.signedOn)}.`,
  next: (from: string) => `A new card is signed. It begins on ${dateInWords(from)}.`,
  none: "No card is in force.",
  typeNew: "Type a new card",
  readIt: "Read the card in force",
  readNext: "Read the next card",
  oldCards: "Old cards",
  oldTitle: (name: string) => `Old cards of ${name}`,
  oldCard: (card: DoseCard, signed: { signedOn: string }) =>
    `From ${dateInWords(card.validFrom)}, signed on ${dateInWords(signed.signedOn)}`,
  signedBy: (signed: { keeperName: string; signedOn: string }) => `${signed.keeperName} signed it on ${dateInWords(signed.signedOn)}.`,
  days: (card: DoseCard) =>
    `It begins on ${dateInWords(card.validFrom)}${card.validUntil === null ? "." : ` and ends on ${dateInWords(card.validUntil)}.`}`,
  firstTitle: "First typing",
  firstIntro: "Type every answer from the clinic's paper.",
  secondTitle: "Second typing",
  secondIntro: "Type all of it again from the paper. This catches slips.",
  blankRule: "Leave blank what the clinic left blank.",
  firstDone: "First typing is done",
  secondDone: "Compare both typings",
  otherRow: "Another row",
  otherColumn: "Another column",
  otherBackground: "Another background dose",
  differTitle: "The two typings differ",
  differIntro: "Look at the paper. Then change the wrong one.",
  field: "Answer",
  first: "First typing",
  second: "Second typing",
  changeFirst: "Change the first typing",
  changeSecond: "Change the second typing",
  alarmTitle: "Is that what the paper says?",
  alarmIntro: "These look unusual. The clinic may have its reasons.",
  paperSaysSo: "The paper says so",
  allConfirmed: "Go on",
  alarmOpenHeading: "Not all confirmed",
  alarmOpen: {
    got: "Some lines are not ticked.",
    wrong: "Each unusual line needs a look at the paper.",
    todo: "Tick it, or change the card.",
  },
  overlapTodo: "Ask the clinic whether the old card ends.",
  endsOld: (from: string) => `The old card ends before ${dateInWords(from)}`,
  readPart: (part: string, n: number, of: number) => `Read aloud: ${part} (${n} of ${of})`,
  readIntro: "Read each line aloud against the paper.",
  partMatches: "I read it. It matches",
  readTitle: "Sign the card",
  readDone: "Every part was read and matches the paper.",
  readAgain: "Read it again",
  sign: "Sign the card",
  change: "Something differs. Change it",
  signedTitle: "Signed",
  signedLine: (card: DoseCard) => `The card holds from ${dateInWords(card.validFrom)}.`,
} as const;

/** Why a card was not signed, in three parts. Differences and alarms have screens of their own. */
export function saySignRefusal(r: SignRefusal): { heading: string; got: string; wrong: string; todo: string } {
  const say = (heading: string, got: string, wrong: string, todo: string) => ({ heading, got, wrong, todo });
  switch (r.refused) {
    case "no keeper":
      return say("No keeper", "The card is ready.", "Nobody is here to sign it.", "Open the drawer with your PIN.");
    case "not a card":
      return say(
        "Not a whole card",
        `The ${r.typing} typing was read.`,
        "It is not a whole card.",
        `Look at the ${r.typing} typing again.`,
      );
    case "another person's card":
      return say("Another person's card", "The card was read.", "It belongs to somebody else.", "Go back and choose the right person.");
    case "typings differ":
      return say(CARD.differTitle, "Both typings were read.", "They are not the same.", "Look at the paper. Change the wrong one.");
    case "another unit than the meter's":
      return say(
        "Another unit",
        `The card uses ${r.card}.`,
        `This person's meter shows ${r.meter}.`,
        "Ask the clinic, or change the person's settings.",
      );
    case "dates in the wrong order":
      return say(
        "Dates in the wrong order",
        `It begins on ${dateInWords(r.from)}.`,
        `It ends before that, on ${dateInWords(r.until)}.`,
        "Look at the dates again.",
      );
    case "already over":
      return say("The card has ended", `It held until ${dateInWords(r.until)}.`, "That day has passed.", "Ask the clinic for a new card.");
    case "overlaps": {
      const [old] = r.old;
      const until = old?.validUntil ? `It holds until ${dateInWords(old.validUntil)}.` : "It has no last day.";
      return say(
        "Two cards for the same days",
        `A card holds from ${old ? dateInWords(old.validFrom) : ""}. ${until}`,
        `The new one begins on ${dateInWords(r.from)}.`,
        CARD.overlapTodo,
      );
    }
    case "alarms not confirmed":
      return say(CARD.alarmOpenHeading, CARD.alarmOpen.got, CARD.alarmOpen.wrong, CARD.alarmOpen.todo);
    case "not read back":
      return say(
        "Not read back",
        "Both typings are the same.",
        "Nobody has read it against the paper.",
        "Read every line aloud. Then sign.",
      );
  }
}
