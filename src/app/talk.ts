// Between the screen and the turns of speech: what is said for a scene, and what is done with what was heard.
import type { Intent } from "#events/intent.ts";
import type { NumberSlot } from "#events/told.ts";
import type { HearableScreen } from "#screens/shared/hear.ts";
import { AskedTwice, mistakenFor } from "#speech/asked-twice.ts";
import { readNumber } from "#speech/numbers.ts";
import type { Heard, Sentence } from "#speech/ports.ts";
import type { NumberRange } from "#speech/range.ts";
import type { Turns } from "#speech/turns.ts";
import { type Understood, understand, vocabularyOf } from "#speech/understand.ts";
import type { Offer } from "#walk/context.ts";
import type { HouseState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import type { SayRefusal } from "#words/en/refusals.ts";
import { withoutShapes } from "#words/en/who.ts";
import type { Say } from "#words/say.ts";
import { hearingOf, rangeOf } from "./hearing.ts";
import { type ChromeAct, type Heardable, spokenButtons, spokenOffers } from "./spoken-offers.ts";

export interface Spoken {
  key: string;
  say: Say;
  offers: readonly Offer[];
  refusal: SayRefusal | null;
  /** A small screen that lies over or stands in place of a walk. */
  around: HearableScreen | null;
  /** Somebody has to come: the page for them can be asked for. */
  calls: boolean;
  /** Ms on a clock that never jumps, told again each second. */
  at: number;
}

export interface TalkSettings {
  turns: Turns;
  lang(): Sentence["lang"];
  onIntent(intent: Intent): void;
  onChrome(act: ChromeAct): void;
  /** Two numbers in one breath: shown, nothing is taken. */
  onTwoNumbers(texts: readonly string[]): void;
  /** A number that the ear would not swear to, with its guesses. */
  onDoubt(texts: readonly string[]): void;
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
  "button feels",
];

export class Talk {
  private heardable: Heardable = { offers: [], meant: new Map() };
  private foods = false;
  private key = "";
  private at = 0;
  private range: NumberRange | undefined;
  /** The whole number that is asked for, however it is asked for; null: none, or one digit of it. */
  private whole: string | null = null;
  private readonly twice = new AskedTwice();

  constructor(private readonly settings: TalkSettings) {}

  /** Puts a scene into words once; the same key again changes nothing. */
  show({ key, say, offers, refusal, around, calls, at }: Spoken, house: HouseState): void {
    const lang = this.settings.lang();
    const sentence = (text: string): Sentence => ({ text, lang });
    this.heardable = around ? spokenButtons(around) : spokenOffers(offers, house, calls);
    this.key = key;
    this.at = at;
    this.foods = !around && offers.some((o) => o.offer === "foods");
    const slot = slotOf(offers);
    this.whole = (around ? around.number?.askedBefore : slot) ?? null;
    this.range = around ? around.number?.range : slot && rangeOf(slot, house);
    const lines = refusal ? [refusal.got, refusal.wrong, refusal.todo] : say.lines;
    const presses = around
      ? around.buttons.flatMap((b) => (b.byHand || b.byVoice ? [] : [b.label]))
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
      hearing: hearingOf(this.heardable.offers, this.range, this.foods),
      silent: false,
      deaf: around?.deaf === true,
      unhurried: around ? !around.asksAgain : !offers.some((o) => o.offer === "press" && HURRIED.includes(o.intent.do)),
    });
  }

  /** For the turns of speech: what was heard, as one act or none. A number is only ever a proposal: it is read back (promise 8). */
  heard(said: Heard): "taken" | "turned away" {
    const h = said.unsure && this.saidTwice(said.text) ? { text: said.text, alternatives: [] } : said;
    const understood = understand(h, this.heardable.offers);
    const guesses = this.guesses(h, understood);
    if (guesses.length > 0) {
      this.settings.onDoubt(guesses);
      return "taken";
    }
    // An ear in doubt never presses a button.
    if (h.unsure) return "turned away";
    this.twice.forget();
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
        if (meant?.what === "told") return meant.take(understood.text);
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

  /** Numbers that somebody must be asked about, though one of them was heard; none where it is sure or no number at all. */
  private guesses(h: Heard, understood: Understood): readonly string[] {
    // "Fifty, no, fifteen" is not the ear's doubt but the speaker's.
    if (understood.kind === "two numbers") return readNumber(h.text).kind === "two numbers" && !h.unsure ? [] : understood.texts;
    if (understood.kind !== "number") return [];
    if (h.unsure) return [understood.text];
    const partner = mistakenFor(h.text, understood.text, this.range);
    return partner === null ? [] : [understood.text, partner];
  }

  /** A touch, or the end of the screen: what was said before it is no first half of anything. */
  forget(): void {
    this.twice.forget();
  }

  /** The same in doubt a second time, and something that is only a proposal or takes nothing; a yes, or an answer that is taken at once, never is. */
  private saidTwice(text: string): boolean {
    const understood = understand({ text, alternatives: [] }, this.heardable.offers);
    const guess = this.proposed(understood);
    if (guess === null) {
      this.twice.forget();
      return false;
    }
    // "Which of two?" asks for the same number once more.
    const question =
      understood.kind === "number" && this.whole !== null
        ? `number of ${this.whole}`
        : JSON.stringify([this.key, this.range, vocabularyOf(this.heardable.offers)]);
    return this.twice.same(question, guess, this.at);
  }

  /** What may be proposed of it, in a word of its own. */
  private proposed(understood: Understood): string | null {
    // A teen and its ten are asked about all the same.
    if (understood.kind === "number") return `number ${understood.text}`;
    const meant = understood.kind === "offer" ? this.heardable.meant.get(understood.id) : undefined;
    if (meant?.what === "chrome") return `chrome ${meant.act}`;
    // "No, change it" to a read-back takes a number out; every other "no" opens a way.
    return meant?.what === "intent" && meant.intent.do === "change number" ? "change number" : null;
  }
}

const slotOf = (offers: readonly Offer[]): NumberSlot | undefined => offers.flatMap((o) => (o.offer === "number" ? [o.slot] : []))[0];

const withVoice = (intent: Intent): Intent => (intent.do === "read word" ? { ...intent, via: "voice" } : intent);
