// The number that is asked for now, and how: what the small screens for it show, say and take. What was said is a proposal; the walk reads it back.
import { signal } from "@preact/signals";
import type { Intent } from "#events/intent.ts";
import type { NumberSlot } from "#events/told.ts";
import type { HearableButton, HearableScreen } from "#screens/shared/hear.ts";
import { type Asking, asWhole, doubted, follows, onItsWay, turnedDown, withDigit } from "#speech/asking.ts";
import type { NumberRange } from "#speech/range.ts";
import type { Offer } from "#walk/context.ts";
import { frontPerson } from "#walk/offers.ts";
import type { HouseState } from "#walk/state.ts";
import { ASKING, sayNext, soFar, whichOf } from "#words/en/asking.ts";
import type { Say } from "#words/say.ts";
import { rangeOf } from "./hearing.ts";
import type { Sent } from "./house.ts";

export interface AskedWith {
  onIntent(intent: Intent): void;
  /** Said at once. */
  say(text: string): void;
  /** Another screen is to be shown. */
  onChange(): void;
}

/** A small screen in place of the walk's own question; `soFar`: the digits, for the eye. */
export interface AskedScreen extends HearableScreen {
  soFar: string;
  back(): void;
}

/** Said where nothing but the pad is left. */
export const BY_TOUCH: Say = { title: ASKING.padTitle, lines: [ASKING.pad] };

export class AskedNumber {
  readonly asking = signal<Asking>(asWhole);
  private slot: NumberSlot | null = null;
  private walk = "";
  /** It may be given now; otherwise it is being read back. */
  private open = false;
  private range: NumberRange = { low: 0, high: 0, step: 1 };

  constructor(private readonly parts: AskedWith) {}

  /** Looks which number is asked for; with another one everything begins anew. Gives the small screen that asks for it, if one does. */
  look(house: HouseState, offers: readonly Offer[]): AskedScreen | null {
    const walk = frontPerson(house)?.walk;
    const offered = offers.flatMap((o) => (o.offer === "number" ? [o.slot] : []))[0] ?? null;
    const slot = walk ? (offered ?? walk.draft?.slot ?? null) : null;
    if (slot !== this.slot || walk?.id !== this.walk) this.asking.value = asWhole;
    this.slot = slot;
    this.walk = walk?.id ?? "";
    this.open = offered !== null;
    if (slot === null || offered === null) return null;
    this.range = rangeOf(slot, house);
    return this.screen();
  }

  /** The slot whose pad is to be open, since nothing else has helped. */
  padFor(): NumberSlot | null {
    return this.open && this.asking.value.how === "by touch" ? this.slot : null;
  }

  /** The ear would not swear to what it heard. */
  doubt(guesses: readonly string[]): void {
    const before = this.asking.value;
    const next = doubted(before, guesses);
    this.put(next);
    // The same question once more is no other screen: it has to be said.
    if (next.how === "whole") this.parts.say(ASKING.numberAgain);
    if (next.how === "digits" && before.how === "digits") this.parts.say(ASKING.digitAgain);
  }

  /** A number that came by voice was read back, and somebody says no. */
  turnedDown(): void {
    this.asking.value = turnedDown(this.asking.value);
  }

  /** What became of what was sent. A refusal is the walk's own to show, and asks in its own words. */
  changed({ refusal, events }: Sent): void {
    if ((refusal && refusal.no !== "not offered here") || events.some((e) => e.type === "digits asked again")) this.asking.value = asWhole;
    else if (events.some((e) => e.type === "number given")) this.asking.value = onItsWay(this.asking.value);
  }

  private put(next: Asking): void {
    this.asking.value = next;
    this.parts.onChange();
  }

  private give(text: string): void {
    if (this.slot === null) return;
    this.parts.onIntent({ do: "give number", slot: this.slot, text: String(Number(text)), via: "voice", helper: null });
  }

  private digit(digit: string): "taken" | "turned away" {
    const next = withDigit(this.asking.value, digit, this.range);
    if (next?.how !== "digits") return "turned away";
    const after = follows(next.said, this.range);
    // Nothing can follow: the read-back says the rest.
    if (after.digits.length === 0 && !after.point) this.give(next.said);
    else this.put(next);
    return "taken";
  }

  private screen(): AskedScreen | null {
    const asking = this.asking.value;
    const back = () => this.put(asWhole);
    if (asking.how === "which") return this.which(asking.texts, back);
    return asking.how === "digits" ? this.digits(asking.said, back) : null;
  }

  private which(texts: readonly [string, string], back: () => void): AskedScreen {
    const values = texts.map(Number);
    return {
      title: ASKING.whichTitle,
      lines: [whichOf(...texts)],
      asksAgain: true,
      soFar: "",
      back,
      buttons: [
        { label: ASKING.neither, also: ["no"], press: () => this.put(doubted(this.asking.value, [])) },
        // By voice their digits choose them: "fifteen" is what could not be told apart.
        ...texts.map((text): HearableButton => ({ label: text, byHand: true, press: () => this.give(text) })),
      ],
      number: {
        ...(this.slot === null ? {} : { askedBefore: this.slot }),
        range: { ...this.range, low: Math.min(...values), high: Math.max(...values) },
        take: (text) => {
          if (!texts.includes(text)) return "turned away";
          this.give(text);
          return "taken";
        },
      },
    };
  }

  private digits(said: string, back: () => void): AskedScreen {
    const next = follows(said, this.range);
    const ask = said === "" ? ASKING.first : said.endsWith(".") ? ASKING.afterPoint : sayNext(next);
    return {
      title: ASKING.digitsTitle,
      lines: said === "" ? [ask] : [soFar(said), ask],
      asksAgain: true,
      soFar: said,
      back,
      buttons: [
        // By touch its keys do all that the voice may say here.
        { label: ASKING.keys, press: () => this.put({ how: "by touch" }) },
        ...(said === "" ? [] : [{ label: ASKING.startOver, byVoice: true, press: () => this.put({ how: "digits", said: "", doubts: 0 }) }]),
        ...(next.point ? [{ label: ASKING.point, byVoice: true, press: () => void this.digit(".") }] : []),
        ...(next.done ? [{ label: ASKING.done, also: ["that is all"], press: () => this.give(said) }] : []),
      ],
      number: { range: { low: 0, high: 9, step: 1 }, take: (text) => this.digit(text) },
    };
  }
}
