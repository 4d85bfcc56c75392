// The first screen of a new household, and the pages that come when something is not as it must be.
import type { Stamp } from "#events/stamp.ts";
import type { HouseState } from "#walk/state.ts";
import { timeOfDay, whichDay } from "./when.ts";

export const FIRST = {
  title: "Tablebell",
  welcome: "Tablebell guides one insulin injection at a time.",
  cautions: "Read this first.",
  demo: "Look at the demo",
  own: "Start our own household",
  ownQuestion: {
    title: "Start your own household?",
    lines: ["The demo goes, with all its days.", "Nothing of a real person is in it.", "Then you set up your own people and cards."],
    yes: "Yes, start our own",
    no: "No, keep the demo",
  },
  demoQuestion: {
    title: "Begin the demo anew?",
    lines: ["All days of the demo go.", "It begins as on the first day."],
    yes: "Yes, begin anew",
    no: "No, keep it",
  },
} as const;

export const INSECURE = {
  title: "Not for use at this address",
  lines: (address: string) => [
    `This address is not secure: ${address}`,
    "Here there is no voice input.",
    "Nothing works without a network here.",
    "Two windows cannot be kept apart here.",
    "What is written here may be lost.",
    "Do not inject by this page.",
    "Open Tablebell at an address that begins with https.",
    "On this tablet itself, localhost works too.",
  ],
  again: "Look again",
} as const;

export const SECOND_WINDOW = {
  title: "Open in another window",
  lines: [
    "Tablebell is open in another window of this tablet.",
    "Only one window may write. Close the other one.",
    "Or use this one. The other then stops.",
  ],
  here: "Use here",
} as const;

export type FaultKind = "stopped" | "not stored" | "no storage";

export const FAULT = {
  stopped: { title: "The app stopped", lines: ["What was saved is still there."] },
  "not stored": { title: "Nothing more can be saved", lines: ["The tablet could not store the last step.", "That step does not count."] },
  "no storage": { title: "No storage here", lines: ["The browser gives no room to save.", "Nothing is remembered here."] },
  last: (step: string) => `Your last saved step: ${step}`,
  paper: [
    "Go on with your paper card.",
    "Write down each dose and its time.",
    "If you do not know that it went in, do not inject.",
    "Then call.",
  ],
  again: "Start again",
  detail: (text: string) => `For the keeper: ${text}`,
} as const;

const STEP: Readonly<Record<string, string>> = {
  "inject opened": "the needle step began. It counts as taken.",
  injected: "insulin went in.",
};

/** The last thing that surely is in the book; null when nothing is. */
export function lastSaved(house: HouseState, now: Stamp): string | null {
  if (house.last === null) return null;
  const when = `${whichDay(house.last, now)} at ${timeOfDay(house.last)}.`;
  const walking = Object.values(house.people).find((p) => p.walk);
  if (!walking?.walk) return when;
  const { walk, person } = walking;
  const what = walk.injected ? STEP.injected : walk.injectOpened ? STEP["inject opened"] : "no insulin went in on this walk.";
  return `${when} ${person.name}: ${what ?? ""}`;
}
