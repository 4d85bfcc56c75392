// The present offers as the ear may hear them: the five constant things first, then the walk's own answers.
import type { Intent } from "#events/intent.ts";
import type { NumberSlot } from "#events/told.ts";
import type { HearableNumber, HearableScreen } from "#screens/shared/hear.ts";
import type { SaidUnit } from "#speech/numbers.ts";
import type { SpokenOffer } from "#speech/understand.ts";
import type { Offer } from "#walk/context.ts";
import type { HouseState } from "#walk/state.ts";
import { HELPER } from "#words/en/helper.ts";
import { labelOf } from "#words/en/labels.ts";
import type { VoiceAct } from "./voice-setting.ts";

export type ChromeAct = "help" | "again" | "quiet" | "go on" | "back" | "wrong" | "voice" | "helper" | VoiceAct;

export type Meant =
  | { what: "intent"; intent: Intent }
  | { what: "button"; press(): void }
  | { what: "number"; slot: NumberSlot }
  /** A number for a small screen: it knows itself what it is for. */
  | { what: "told"; take: HearableNumber["take"] }
  | { what: "chrome"; act: ChromeAct };

const CHROME: readonly { act: ChromeAct; phrases: readonly string[] }[] = [
  { act: "help", phrases: ["help", "help me"] },
  { act: "again", phrases: ["again", "say it again", "repeat"] },
  { act: "quiet", phrases: ["quiet", "be quiet"] },
  { act: "back", phrases: ["back", "go back"] },
  { act: "wrong", phrases: ["something is wrong"] },
  { act: "voice", phrases: ["who speaks"] },
  { act: "louder", phrases: ["louder", "speak louder"] },
  { act: "softer", phrases: ["softer", "speak softer"] },
  { act: "slower", phrases: ["slower", "speak slower"] },
  { act: "faster", phrases: ["faster", "speak faster"] },
];

const UNIT: Partial<Record<NumberSlot, SaidUnit>> = {
  grams: "grams",
  dial: "units",
  "left in window": "units",
  "own number": "units",
  "telephoned number": "units",
};

export interface Heardable {
  offers: SpokenOffer[];
  meant: ReadonlyMap<string, Meant>;
}

/** What may be said at a small screen around the walk: its buttons, its number, and what is always there. */
export function spokenButtons({ buttons, number }: Pick<HearableScreen, "buttons" | "number">): Heardable {
  const meant = new Map<string, Meant>();
  const spoken: SpokenOffer[] = [];
  buttons.forEach((b, i) => {
    if (b.byHand) return;
    const label = b.label.replace(/[^\p{L}\p{N} ]/gu, "").trim();
    const phrases = [label.toLowerCase(), ...(b.also ?? [])].filter(
      (phrase) => phrase !== "" && !spoken.some((o) => "phrases" in o && o.phrases.includes(phrase)),
    );
    if (phrases.length === 0) return;
    meant.set(`button ${i}`, { what: "button", press: b.press });
    spoken.push({ id: `button ${i}`, phrases });
  });
  for (const { act, phrases } of CHROME) {
    if (spoken.some((o) => "phrases" in o && o.phrases.some((p) => phrases.includes(p)))) continue;
    meant.set(act, { what: "chrome", act });
    spoken.push({ id: act, phrases });
  }
  if (number) {
    meant.set("number", { what: "told", take: number.take });
    spoken.push({ id: "number", number: true });
  }
  return { offers: spoken, meant };
}

/** calls: somebody has to come, and the page for them can be asked for. Offers with the same words as an earlier one are left to the buttons, so that no phrase has two meanings. */
export function spokenOffers(list: readonly Offer[], house: HouseState, calls = false): Heardable {
  const meant = new Map<string, Meant>();
  const spoken: SpokenOffer[] = [];
  const taken = new Set<string>();
  const add = (id: string, phrases: readonly string[], means: Meant, refuses: boolean) => {
    const free = phrases.map((p) => p.replace(/[,.:]/g, "").toLowerCase()).filter((p) => p !== "" && !taken.has(p));
    if (free.length === 0) return;
    for (const p of free) taken.add(p);
    meant.set(id, means);
    spoken.push(refuses ? { id, phrases: free, refuses: true } : { id, phrases: free });
  };
  // A voice alone never chooses the person: "carry on" for somebody else is left to the buttons.
  // Back said is Back pressed: on a small screen of the step it leaves that, not the step.
  const presses = list.flatMap((o) => (o.offer === "press" && o.intent.do !== "turn to" && o.intent.do !== "back" ? [o] : []));
  const first = [...presses].sort((a, b) => rank(a.role) - rank(b.role));
  first.forEach((o, i) => {
    add(`press ${i}`, labelOf(o.intent, house).said, { what: "intent", intent: o.intent }, o.role === "no" || isNo(o.intent));
  });
  for (const { act, phrases } of CHROME) add(act, phrases, { what: "chrome", act }, false);
  if (calls) add("helper", [HELPER.button], { what: "chrome", act: "helper" }, false);
  const slot = list.find((o): o is Extract<Offer, { offer: "number" }> => o.offer === "number")?.slot;
  if (slot) {
    meant.set("number", { what: "number", slot });
    const unit = UNIT[slot];
    spoken.push(unit ? { id: "number", number: true, unit } : { id: "number", number: true });
  }
  return { offers: spoken, meant };
}

/** A step's own answers are heard before what is always there. */
function rank(role: Extract<Offer, { offer: "press" }>["role"]): number {
  return { main: 0, no: 1, choice: 2, stop: 3, back: 4, wrong: 5 }[role];
}

/** "No" wins only where it is the careful answer: "not taken" and "it did not go in" open the way to a dose. */
const isNo = (intent: Intent): boolean => (intent.do === "primed" && !intent.stream) || intent.do === "meal is not ready";
