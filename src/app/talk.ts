// Between the screen and the turns of speech: what is said for a scene, and what is done with what was heard.
import type { Intent } from "#events/intent.ts";
import type { NumberSlot } from "#events/told.ts";
import type { Heard, Sentence } from "#speech/ports.ts";
import type { Turns } from "#speech/turns.ts";
import { understand, vocabularyOf } from "#speech/understand.ts";
import type { Offer } from "#walk/context.ts";
import type { HouseState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import type { SayRefusal } from "#words/en/refusals.ts";
import { withoutShapes } from "#words/en/who.ts";
import type { Say } from "#words/say.ts";
import { hearingOf } from "./hearing.ts";
import { type ChromeAct, type Heardable, spokenButtons, spokenOffers } from "./spoken-offers.ts";

export interface Spoken {
  key: string;
  say: Say;
  offers: readonly Offer[];
  refusal: SayRefusal | null;
  /** Buttons of a small screen that lies over or stands in place of a walk. */
  buttons: readonly { label: string; press(): void }[] | null;
}

export interface TalkSettings {
  turns: Turns;
  lang(): Sentence["lang"];
  onIntent(intent: Intent): void;
  onChrome(act: ChromeAct): void;
  /** Two numbers in one breath: shown, nothing is taken. */
  onTwoNumbers(texts: readonly string[]): void;
  /** A food named while the plate is filled; true if it was known. */
  onFood(text: string): boolean;
}

/** Screens on which hands are busy: nobody is asked again there. */
const HURRIED: readonly Intent["do"][] = [
  "agree number",
  "exercise",
  "meal is ready",
  "agree clock",
  "answer taken",
  "needle went in",
  "window is at zero",
];

export class Talk {
  private heardable: Heardable = { offers: [], meant: new Map() };
  private foods = false;

  constructor(private readonly settings: TalkSettings) {}

  /** Puts a scene into words once; the same key again changes nothing. */
  show({ key, say, offers, refusal, buttons }: Spoken, house: HouseState): void {
    const lang = this.settings.lang();
    const sentence = (text: string): Sentence => ({ text, lang });
    this.heardable = buttons ? spokenButtons(buttons) : spokenOffers(offers, house);
    this.foods = !buttons && offers.some((o) => o.offer === "foods");
    const lines = refusal ? [refusal.got, refusal.wrong, refusal.todo] : say.lines;
    const presses = buttons
      ? buttons.map((b) => b.label)
      : offers.flatMap((o) =>
          o.offer === "press" && (o.role === "main" || o.role === "no" || o.role === "choice") ? [labelOf(o.intent, house).shown] : [],
        );
    const named = presses.slice(0, 3).map(withoutShapes);
    const names = named.length > 0 ? [`${FIXED.press} ${named.join(`, ${FIXED.or} `)}.`] : [];
    const last = lines.at(-1);
    this.settings.turns.present({
      key: refusal ? `${key} ${JSON.stringify(refusal)}` : key,
      sentences: lines.map(sentence),
      short: last === undefined ? [] : [sentence(last)],
      names: names.map(sentence),
      vocabulary: vocabularyOf(this.heardable.offers),
      hearing: hearingOf(this.heardable.offers, buttons ? undefined : slotOf(offers), this.foods, house),
      silent: false,
      unhurried: !offers.some((o) => o.offer === "press" && HURRIED.includes(o.intent.do)),
    });
  }

  /** For the turns of speech: what was heard, as one act or none. A number is only ever a proposal: it is read back (promise 8). */
  heard(h: Heard): "taken" | "turned away" {
    const understood = understand(h, this.heardable.offers);
    // An ear in doubt never presses a button and never proposes a number; it may say that it heard two.
    if (h.unsure && understood.kind !== "two numbers") return "turned away";
    switch (understood.kind) {
      case "offer": {
        const meant = this.heardable.meant.get(understood.id);
        if (meant?.what === "intent") this.settings.onIntent(withVoice(meant.intent));
        if (meant?.what === "button") meant.press();
        if (meant?.what === "chrome") this.settings.onChrome(meant.act);
        return "taken";
      }
      case "number": {
        const meant = this.heardable.meant.get(understood.id);
        if (meant?.what !== "number") return "turned away";
        this.settings.onIntent({ do: "give number", slot: meant.slot, text: understood.text, via: "voice", helper: null });
        return "taken";
      }
      case "two numbers":
        this.settings.onTwoNumbers(understood.texts);
        return "taken";
      case "ask which":
        return "turned away";
      case "nothing":
        return this.foods && this.settings.onFood(h.text) ? "taken" : "turned away";
    }
  }
}

const slotOf = (offers: readonly Offer[]): NumberSlot | undefined => offers.flatMap((o) => (o.offer === "number" ? [o.slot] : []))[0];

const withVoice = (intent: Intent): Intent => (intent.do === "read word" ? { ...intent, via: "voice" } : intent);
