// The drawer in words: where keepers set things up. A person's screens have their own.
import type { DoseCard } from "#events/card.ts";
import type { Of } from "#events/happened.ts";
import type { NotFor } from "#keeping/problem.ts";
import type { SignRefusal } from "#keeping/sign.ts";
import { NOT_FOR } from "./fixed.ts";
import { dateInWords } from "./when.ts";

export const DRAWER = {
  title: "Drawer",
  close: "Close the drawer",
  back: "Back to the drawer",
  save: "Save",
  saved: "Saved.",
  notStoredHeading: "Nothing was saved",
  notStored: (detail: string) => ({
    got: "Your entries are still here.",
    wrong: `The tablet could not store them: ${detail}.`,
    todo: "Press Save again. If it stays, restart the tablet.",
  }),
  looksHeading: (n: number) => (n === 1 ? "1 answer needs another look" : `${n} answers need another look`),
  looks: { got: "Everything you typed is still here.", wrong: "The marked answers cannot be used yet.", todo: "Change them. Then go on." },

  // The way in
  who: "Who are you?",
  pinTitle: (name: string) => `${name}, your PIN`,
  pin: "PIN",
  open: "Open the drawer",
  another: "Another keeper",
  wrongPin: "Wrong PIN",
  wrongPinParts: (left: string | null) => ({
    got: "The PIN was read.",
    wrong: "It is not the PIN of this keeper.",
    todo: left ?? "Type it again.",
  }),
  waitFor: (left: string) => `Wait ${left}. Then type it again.`,
  noCheckHeading: "No PIN can be checked here",
  noCheck: { got: "The PIN was typed.", wrong: "This address is not secure.", todo: "Open Tablebell at its secure address." },
  checking: "The PIN is being checked.",

  // A new household
  householdTitle: "Your household",
  householdIntro: "Two answers, then the first keeper.",
  householdChange: "Household and emergency number",
  firstKeeperTitle: "The first keeper",
  firstKeeperIntro: "A keeper sets up people, cards and pens.",
  keeperTitle: "A new keeper",
  addKeeper: "Add a keeper",
  keeperSave: "Make this keeper",

  // The menu
  menuIntro: (name: string) => `${name}, what do you want to do?`,
  missing: "Still missing",
  noPerson: "Nobody is set up yet. Add a person first.",
  noCard: (name: string) => `${name} has no signed card.`,
  noPen: (name: string) => `${name} has no mealtime pen.`,
  addPerson: "Add a person",
  editPerson: (name: string) => `Settings of ${name}`,
  card: (name: string) => `Dose card of ${name}`,
  pens: (name: string) => `Pens of ${name}`,
  sizes: "Letters and screen size",
  startOwn: "Start our own household",
  emptyDemo: "Begin the demo anew",
  demoPin: (pin: string) => `Its PIN is ${pin}.`,
  demoLine: "This is the demo. Nobody here is real.",

  // A person
  personTitle: "A new person",
  notForHeading: "Not for this",

  // Pens
  penTitle: (name: string) => `A new pen of ${name}`,
  penAdd: "Add a pen",
  penNone: "No pen is set up.",
  putAside: "Put aside",
  putAsideOf: (mark: string) => `Put aside: ${mark}`,
  putAsideTitle: (mark: string) => `Why is “${mark}” put aside?`,

  // Sizes
  sizesTitle: "Letters and screen size",
  sizesIntro: "Sizes are true once a bank card was held up.",
  mmUnknown: "The screen was not measured yet.",
  mmKnown: "The screen was measured.",
  measure: "Measure the screen",
  letters: (k: 1 | 1.4 | 2) => ({ 1: "Usual letters", 1.4: "Larger letters", 2: "Largest letters" })[k],
  light: "Light screen",
  dark: "Dark screen",
  calibration: {
    title: "Hold a bank card to the screen",
    todo: "Lay any bank card on the outline. Press until both have the same width.",
    outlineLabel: "Outline of a bank card, 85.6 by 54 millimeters",
    backLabel: "Back",
    narrowerLabel: "Narrower",
    widerLabel: "Wider",
    doneLabel: "It fits",
  },
} as const;

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

/** In one sentence what the tool is not for. */
export const notFor = (what: NotFor): string => {
  const [children = "", pumps = "", syringes = ""] = NOT_FOR;
  return { children, pumps, syringes }[what];
};
export const NOT_FOR_TODO = "Use what your clinic gave you for that.";

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

export const RETIRE: Readonly<Record<Of<"pen retired">["why"], string>> = {
  empty: "It is empty",
  "too old": "It is too old",
  clumped: "It has clumps",
  frozen: "It was frozen",
  overheated: "It was too hot",
  lost: "It is lost",
  other: "Another reason",
};

/** "40 seconds", "2 minutes". */
export function waitWords(ms: number): string {
  const seconds = Math.ceil(ms / 1000);
  if (seconds < 90) return seconds === 1 ? "1 second" : `${seconds} seconds`;
  const minutes = Math.ceil(seconds / 60);
  return `${minutes} minutes`;
}
