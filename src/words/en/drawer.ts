// The drawer in words: where keepers set things up. A person's screens have their own.
import type { Of } from "#events/happened.ts";
import type { NotFor } from "#keeping/problem.ts";
import { NOT_FOR } from "./fixed.ts";

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

  forgot: "I forgot my PIN",
  codeTitle: (name: string) => `${name}, your printed code`,
  code: "Printed code",
  codeHint: "4 groups of 4 letters and digits.",
  noCodeHeading: "No code was printed",
  noCode: {
    got: "This keeper has no printed code.",
    wrong: "The PIN cannot be replaced here.",
    todo: "Another keeper can add you under a new name.",
  },
  wrongCode: "Wrong code",
  wrongCodeParts: (left: string | null) => ({
    got: "The code was read.",
    wrong: "It is not the code of this keeper.",
    todo: left ?? "Type it again from the paper.",
  }),
  newPinTitle: (name: string) => `${name}, a new PIN`,
  newPinIntro: "Type the new PIN two times.",
  newPinUsed: "The printed code is used up now. Print another one.",
  changePin: "Change my PIN",
  makeCode: "Print a code for a forgotten PIN",
  makeCodeIntro: "It opens the drawer once. Keep the paper away from the tablet.",
  makeCodeOld: "An older printed code will open nothing any more.",
  makeCodeNow: "Make the code",
  codeMade: "Write it down or print it. It is shown once.",
  printCode: "Print it",
  noCodeYet: (name: string) => `${name} has no printed code.`,

  // A new household
  householdTitle: "Your household",
  householdIntro: "A few answers, then the first keeper.",
  householdChange: "Household, hours and emergency number",
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

/** In one sentence what the tool is not for. */
export const notFor = (what: NotFor): string => {
  const [children = "", pumps = "", syringes = ""] = NOT_FOR;
  return { children, pumps, syringes }[what];
};
export const NOT_FOR_TODO = "Use what your clinic gave you for that.";

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
