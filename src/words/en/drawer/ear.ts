// "Check the ear", for keepers: which ear listens, what it heard, how sure it was, and how loud the room is.

/** Which ear would listen now, how the ear of Tablebell is, and the browser's own language. */
export interface EarState {
  ear: "own" | "browser" | "none";
  own: "ready" | "off" | "coming" | "broken" | "no microphone" | "microphone refused";
  language: "ready" | "can be fetched" | "not here";
}

export interface EarTry {
  how: "sure" | "not sure" | "not understood" | "too loud" | "nothing" | "no sound";
  /** What was heard, the likeliest first. */
  heard: readonly string[];
  /** The first of it is what was to be said. */
  right: boolean;
  /** Loudness of the room, decibels from full scale, so below zero; null where the ear does not tell. */
  room: number | null;
}

export const EAR = {
  title: "Check the ear",
  say: "Say: one hundred twelve.",
  how: "Stand where the person sits. Press Listen, then say it.",
  listen: "Listen",
  listening: "I am listening.",
  more: "Say it three more times",
  fetch: "Fetch the language",
  fetching: "The browser fetches the language.",
  fetched: "The language is here.",
  notFetched: "The browser did not fetch it.",
  consent: ["The browser has an ear of its own.", "It can fetch a language file once. Nothing you say is sent."],
  score: (right: number, of: number) => `Heard right: ${right} of ${of}.`,
} as const;

/** Which ear listens, or why none does. */
export function sayEar(state: EarState): string[] {
  switch (state.ear) {
    case "own":
      return ["The ear of Tablebell listens. It works on this tablet alone."];
    case "browser":
      return ["The ear of this browser listens. It works on this tablet alone.", WHY[state.own]];
    case "none":
      return ["No ear listens here. Buttons always work.", WHY[state.own]];
    default:
      return state.ear satisfies never;
  }
}

/** Why the ear of Tablebell does not listen. */
const WHY: Readonly<Record<EarState["own"], string>> = {
  ready: "The ear of Tablebell is ready.",
  off: "Nobody chose listening. Choose it in Help, under Who speaks.",
  coming: "The ear of Tablebell is still on its way.",
  broken: "The ear of Tablebell could not be read.",
  "no microphone": "The ear of Tablebell finds no microphone.",
  "microphone refused": "The ear of Tablebell may not use the microphone.",
};

const quoted = (heard: readonly string[]): string => heard.map((text) => `“${text}”`).join(" or ");

/** What came of one try. */
export function sayTry({ how, heard, right }: EarTry): string {
  switch (how) {
    case "sure":
      return right ? `Heard ${quoted(heard)}. That is right. It was sure.` : `Heard ${quoted(heard)}. That is wrong. It was sure.`;
    case "not sure":
      return `Heard perhaps ${quoted(heard)}. It was not sure. It would ask again.`;
    case "not understood":
      return "Heard somebody speak. It understood no number.";
    case "too loud":
      return "It is too loud here.";
    case "nothing":
      return "Heard nothing in 8 seconds.";
    case "no sound":
      return "No sound came from the microphone.";
    default:
      return how satisfies never;
  }
}

/** Above this the ear gives up (as speech/ear/endpoint.ts); the other steps are ours, no source. */
const LOUDNESS: readonly (readonly [number, string])[] = [
  [-50, "The room is quiet."],
  [-40, "The room has some noise."],
  [-30, "The room is loud."],
];

/** `decibels` below full scale; null: this ear does not tell. */
export const sayRoom = (decibels: number | null): string => {
  if (decibels === null) return "This ear does not tell how loud it is.";
  const words = LOUDNESS.find(([most]) => decibels < most)?.[1] ?? "The room is too loud.";
  return `${words} It measures ${Math.round(-decibels)} decibels below the loudest.`;
};
