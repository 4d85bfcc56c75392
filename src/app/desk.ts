// Everything that changes on the screen, as signals, and the acts that change it. One desk a page.
import { type Signal, signal } from "@preact/signals";
import { changePrefs, type Prefs, readPrefs } from "#devices/prefs.ts";
import type { Intent } from "#events/intent.ts";
import { MINUTE } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { HearableScreen, ShownBack } from "#screens/shared/hear.ts";
import type { Sentence } from "#speech/ports.ts";
import type { Trouble } from "#speech/room.ts";
import { Turns } from "#speech/turns.ts";
import type { SayingNow, TurnsWith } from "#speech/turns-shapes.ts";
import { decide } from "#walk/decide.ts";
import { GUARDS } from "#walk/guards.ts";
import { whoCalls } from "#walk/helper-case.ts";
import { frontPerson, offers } from "#walk/offers.ts";
import { sceneKey } from "#walk/scene-key.ts";
import type { HouseState } from "#walk/state.ts";
import { FIXED, IN_THE_WAY } from "#words/en/fixed.ts";
import { afterTaken } from "#words/en/kitchen.ts";
import { NOT_SAVED, twoNumbers } from "#words/en/not-taken.ts";
import type { SayRefusal } from "#words/en/refusals.ts";
import type { Say } from "#words/say.ts";
import { AskedNumber, type AskedScreen, BY_TOUCH } from "./asked-number.ts";
import { type BellParts, Bells } from "./bells.ts";
import { doChrome } from "./chrome.ts";
import type { Held } from "./held.ts";
import { holdCount } from "./hold-count.ts";
import { House, type HouseSettings, type Sent } from "./house.ts";
import { type Overlay, Overlays } from "./overlays.ts";
import type { ChromeAct } from "./spoken-offers.ts";
import { Talk } from "./talk.ts";
import { MODES } from "./voice-setting.ts";
import type { WalkPart } from "./walk-part.ts";

export interface DeskParts extends Omit<HouseSettings, "onChange">, BellParts {
  speech: Omit<TurnsWith, "earOff" | "inTheWay" | "onSentence" | "onListening" | "onRoom" | "onHeard">;
  applyPrefs(prefs: Prefs): void;
  /** Left out: as they are kept on the tablet. */
  prefs?: Prefs;
  /** Where a walk is open already, it must be held before the desk is made. */
  walkPart: Held<WalkPart>;
}

/** Our choice, no source: then the clock and what is due come back. */
const NOTED_MS = 2 * MINUTE;

export class Desk {
  readonly state: Signal<HouseState>;
  readonly now: Signal<Stamp>;
  readonly refusal = signal<SayRefusal | null>(null);
  readonly saying = signal<SayingNow | null>(null);
  readonly listening = signal(false);
  /** What is in the way of the ear on this screen. */
  readonly room = signal<Trouble | null>(null);
  readonly walkPart: Held<WalkPart>;
  readonly quiet = signal(false);
  private readonly overlays = new Overlays();
  readonly overlay = this.overlays.top;
  /** What was noted at the end of a walk that ended early; until it was read, or two minutes long. */
  readonly noted = signal<{ title?: string; lines: readonly string[]; mono: number } | null>(null);
  /** What Back on the screen does now. */
  readonly shownBack: ShownBack = { press: null };
  /** The small screen that asks for a number which was not heard well. */
  readonly asked = signal<AskedScreen | null>(null);
  readonly askedNumber: AskedNumber;
  readonly foodSaid = signal<{ text: string } | null>(null);
  readonly prefs: Signal<Prefs>;
  readonly house: House;
  readonly turns: Turns;
  readonly talk: Talk;
  private readonly bells: Bells;
  private shownKey = "";
  private readonly holdCount = holdCount();
  private ended = false;
  private resting = false;
  private around: HearableScreen | null = null;

  constructor(private readonly parts: DeskParts) {
    this.walkPart = parts.walkPart;
    this.house = new House({ ...parts, onChange: (sent) => this.changed(sent) });
    this.state = signal(this.house.state);
    this.now = signal(parts.now());
    this.prefs = signal(parts.prefs ?? readPrefs());
    const lang = (): Sentence["lang"] =>
      frontPerson(this.state.value)?.person.language ?? (this.state.value.household?.country === "UK" ? "en-GB" : "en-US");
    const sentence = (text: string): Sentence => ({ text, lang: lang() });
    this.turns = new Turns({
      ...parts.speech,
      earOff: sentence(FIXED.earOff),
      inTheWay: (trouble) => IN_THE_WAY[trouble].map(sentence),
      onSentence: (s) => (this.saying.value = s),
      onListening: (open) => (this.listening.value = open),
      onRoom: (trouble) => (this.room.value = trouble),
      onHeard: (h) => this.talk.heard(h),
    });
    this.bells = new Bells(parts, this.turns);
    this.askedNumber = new AskedNumber({
      onIntent: (intent) => void this.send(intent),
      say: (text) => this.sayLabel(text),
      onChange: () => this.refresh(),
    });
    this.talk = new Talk({
      turns: this.turns,
      lang,
      onIntent: (intent) => void this.send(intent),
      onChrome: (act) => this.chrome(act),
      onDoubt: (guesses) => this.askedNumber.doubt(guesses),
      onTwoNumbers: (texts) => {
        if (this.asked.value) return this.askedNumber.doubt([]);
        this.refusal.value = twoNumbers(texts);
        this.refresh();
      },
      onFood: (text) => {
        this.foodSaid.value = { text };
        return true;
      },
    });
    // Nothing talks before somebody chose who does.
    this.turns.setMode(this.prefs.value.chose ? MODES[this.prefs.value.voice] : "text only");
    if (!this.prefs.value.chose) this.overlays.open("voice");
  }

  /** What the walk says now; the screens around it speak for themselves. */
  say(): Say {
    return this.walkPart.here.value?.sayWalk(this.state.value, this.now.value, GUARDS) ?? { title: "", lines: [] };
  }

  async send(intent: Intent): Promise<Sent> {
    this.refusal.value = null;
    this.noted.value = null;
    const draft = frontPerson(this.state.value)?.walk?.draft;
    if (intent.do === "change number" && draft?.via === "voice") this.askedNumber.turnedDown();
    await this.heldWalk();
    return this.house.send(intent);
  }

  /** Every answer may open a walk, and in a walk nothing is fetched (promise 12): so all that one needs is in memory first. */
  private async heldWalk(): Promise<void> {
    if (this.walkPart.here.value) return;
    this.sayLabel(FIXED.walkComes);
    await this.walkPart.need();
  }

  /** Once a second: the clock moves on, waits end, the bell rings. */
  tick(): void {
    if (this.ended) return;
    this.now.value = this.parts.now();
    const house = this.state.value;
    const { facts } = decide(house, { do: "pass time" }, this.now.value, "");
    if (facts.length > 0) void this.house.send({ do: "pass time" });
    const count = this.holdCount(house, this.now.value);
    if (count) this.sayLabel(count);
    if (this.noted.value && this.now.value.mono - this.noted.value.mono > NOTED_MS) this.noted.value = null;
    this.refresh();
  }

  /** Said at once: the label that one-switch scanning has lit, a number of the count. */
  sayLabel(text: string): void {
    this.turns.interrupt({ text, lang: frontPerson(this.state.value)?.person.language ?? "en-US" });
  }

  /** Nothing more is said or rung: a fault page has taken over. */
  end(): void {
    this.ended = true;
    this.turns.end();
  }

  /** Practice has the glass, the voice and the ear: only what is due in the house is looked after here. */
  rest(on: boolean, prefs = this.prefs.value): void {
    this.resting = on;
    this.prefs.value = prefs;
    this.turns.setMode(on ? "screen reader" : MODES[this.prefs.value.voice]);
    this.refresh();
  }

  /** A small screen around the walk says and hears its own lines and buttons. */
  hearable(screen: HearableScreen | null): void {
    this.around = screen;
    this.refresh();
  }

  chrome(act: ChromeAct): void {
    doChrome(act, this);
  }

  /** Back of an overlay, or of the walk's own step. */
  back(): void {
    if (this.overlay.value) this.close();
    else if (offers(this.state.value, this.now.value).some((o) => o.offer === "press" && o.role === "back")) void this.send({ do: "back" });
  }

  open(overlay: Exclude<Overlay, null>): void {
    this.overlays.open(overlay);
    this.refresh();
  }

  /** Back to the screen from which the overlay was opened; all: an answer was given, none of them is left. */
  close(all?: "all"): void {
    if (all) this.overlays.closeAll();
    else this.overlays.close();
    this.refresh();
  }

  change(prefs: Partial<Prefs>): void {
    this.prefs.value = changePrefs(prefs);
    this.turns.setMode(MODES[this.prefs.value.voice]);
    this.parts.applyPrefs(this.prefs.value);
  }

  /** Shows and says what is true now; called after every change and every second. */
  refresh(): void {
    const house = this.state.value;
    const now = this.now.value;
    if (this.resting) this.bells.look(house, now, false);
    if (this.resting || this.ended) return;
    const list = offers(house, now);
    this.asked.value = this.askedNumber.look(house, list);
    const around = this.around ?? this.asked.value;
    const byTouch = this.askedNumber.padFor() !== null;
    // A minute that passes is no new screen.
    const scene = around
      ? `around ${around.title} ${around.lines.join(" ").replace(/\d+/g, "")}`
      : `${sceneKey(house, now)}${byTouch ? " by touch" : ""}`;
    const edge = scene !== this.shownKey;
    this.shownKey = scene;
    const say = around ? { title: around.title, lines: [...around.lines, ...(around.calm ?? [])] } : byTouch ? BY_TOUCH : this.say();
    const calls = whoCalls(house, now) !== null;
    const refusal = around ? null : this.refusal.value;
    this.talk.show({ key: scene, say, offers: around ? [] : list, refusal, around, calls, at: now.mono }, house);
    this.bells.look(house, now, edge);
  }

  private changed(sent: Sent): void {
    this.now.value = this.parts.now();
    const before = frontPerson(this.state.value);
    this.state.value = this.house.state;
    const noted = before ? afterTaken(before, sent.events) : null;
    if (noted) this.noted.value = { lines: noted, mono: this.now.value.mono };
    this.askedNumber.changed(sent);
    if (sent.notStored !== null) this.refusal.value = NOT_SAVED;
    else if (sent.refusal) this.refusal.value = this.walkPart.here.value?.sayRefusal(sent.refusal) ?? null;
    if (sent.events.some((e) => e.type === "walk opened")) this.turns.newWalk();
    if (sent.events.some((e) => e.type === "wait ended" || e.type === "injected")) this.bells.note();
    if (sent.events.some((e) => e.type === "reminder called")) this.bells.remind(this.state.value, this.now.value);
    this.refresh();
  }
}
