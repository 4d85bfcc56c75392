// Whose turn it is: the tablet speaks, then listens, never both at once, since an open ear would hear the tablet's own yes and no.
import { EarGate } from "./ear-gate.ts";
import { climbed, earGivenUp, freshPatience, nextRung, onNextScreen } from "./ladder.ts";
import { pauseBetween } from "./pace.ts";
import type { Heard, Sentence } from "./ports.ts";
import type { Passage, SpeechMode, SpokenScreen, TurnsWith } from "./turns-shapes.ts";

/** From the last sentence to the open ear, so that the room's echo has gone. */
const EAR_AFTER_MS = 300;
/** After an answer was taken the ear rests, so that a "yes, yes" is one answer; the buttons rest as long. */
const EAR_RESTS_MS = 700;

type Unfinished = { of: Passage; list: readonly Sentence[]; index: number };

export class Turns {
  readonly #with: TurnsWith;
  readonly #ear: EarGate;
  #mode: SpeechMode = "app speaks";
  #screen: SpokenScreen | null = null;
  #quiet = false;
  #silent = false;
  /** Counts turns; whatever waited for an older one finds its number gone and does nothing. */
  #turn = 0;
  #cancelTimer: () => void = () => {};
  /** What is being said or was cut off; null once all of it was said. */
  #saying: Unfinished | null = null;
  #speaking = false;
  #cutByTouch = false;
  #urgent: Sentence[] = [];
  #patience = freshPatience;

  constructor(parts: TurnsWith) {
    this.#with = parts;
    this.#ear = new EarGate(parts, (trouble) => {
      if (this.#maySpeak()) for (const sentence of parts.inTheWay(trouble)) this.interrupt(sentence);
    });
  }

  /** Puts a screen in front: says its sentences in order, then opens the ear. */
  present(screen: SpokenScreen): void {
    const before = this.#screen;
    this.#screen = screen;
    if (before?.key === screen.key) {
      if (before.silent !== screen.silent) this.#silenceChanged(before.silent || this.#silent);
      else if (this.#ear.isOpen() && before.vocabulary.join("\n") !== screen.vocabulary.join("\n"))
        void this.#ear.expect(screen.vocabulary, this.#heard, screen.hearing);
      return;
    }
    this.#hush();
    this.#cutByTouch = false;
    this.#patience = onNextScreen(this.#patience);
    this.#ear.nextScreen();
    this.#saying = { of: "sentences", list: screen.sentences, index: 0 };
    this.#goOn();
  }

  /** Any touch: speech stops at once, and the rest of it is not said, unless the touch was Quiet and "Go on" follows. */
  touch(): void {
    if (this.#speaking) {
      this.#hush();
      this.#cutByTouch = true;
      this.#earSoon(EAR_AFTER_MS);
    } else if (this.#ear.isOpen()) this.#armLadder();
  }

  /** Says the screen again, or its question alone; in quiet too, since it was asked for. Nothing in silence. */
  again(what: "screen" | "question" = "screen"): void {
    if (this.#screen === null || !this.#maySpeak(true)) return;
    this.#hush();
    const of = what === "question" && this.#screen.short.length > 0 ? "short" : "sentences";
    void this.#say({ of, list: this.#screen[of], index: 0 });
  }

  /** On: speech stops at once and nobody is reprompted, the ear listens. Off: goes on with the sentence that was cut off. */
  quiet(on: boolean): void {
    if (this.#quiet === on) return;
    this.#quiet = on;
    this.#hush();
    if (!on) this.#cutByTouch = false;
    this.#goOn();
  }

  /** While dialling: nothing at all is spoken. Afterwards it goes on where it was cut off. */
  setSilent(on: boolean): void {
    const before = this.#silentNow();
    this.#silent = on;
    this.#silenceChanged(before);
  }

  /** Says one urgent sentence now, in quiet too, then goes on with what it cut off. False where it could not be said: show and ring it instead. */
  interrupt(s: Sentence): boolean {
    if (!this.#maySpeak(true)) return false;
    if (this.#urgent.length > 0) {
      this.#urgent.push(s);
      return true;
    }
    this.#hush();
    this.#urgent = [s];
    void this.#sayUrgent();
    return true;
  }

  setMode(mode: SpeechMode): void {
    if (this.#mode === mode) return;
    this.#mode = mode;
    this.#hush();
    this.#cutByTouch = false;
    this.#saying = this.#screen && { of: "sentences", list: this.#screen.sentences, index: 0 };
    this.#goOn();
  }

  /** An ear that was not there when this screen asked for it is there now. */
  earCame(): void {
    if (!this.#speaking && !this.#ear.isOpen()) this.#earSoon(EAR_AFTER_MS);
  }

  /** Gives the ear another chance after a walk in which it was given up. */
  newWalk(): void {
    this.#patience = freshPatience;
    this.#ear.newWalk();
  }

  /** Silent and deaf until the next screen. */
  end(): void {
    this.#hush();
    this.#screen = null;
    this.#saying = null;
  }

  #silentNow(): boolean {
    return this.#silent || this.#screen?.silent === true;
  }

  #maySpeak(evenInQuiet = false): boolean {
    return this.#mode === "app speaks" && !this.#silentNow() && (evenInQuiet || !this.#quiet);
  }

  #silenceChanged(before: boolean): void {
    if (before === this.#silentNow()) return;
    this.#hush();
    this.#goOn();
  }

  /** Ends the turn at once: no voice, no ear, no timer. What was being said stays known. */
  #hush(): void {
    this.#turn++;
    this.#speaking = false;
    this.#urgent = [];
    this.#cancelTimer();
    this.#ear.shut();
    this.#with.voice.stop();
    this.#with.onSentence(null);
  }

  #goOn(): void {
    if (this.#saying !== null && !this.#cutByTouch && this.#maySpeak()) void this.#say(this.#saying);
    else this.#earSoon(EAR_AFTER_MS);
  }

  #after(ms: number, action: () => void): void {
    this.#cancelTimer();
    this.#cancelTimer = this.#with.timers.after(ms, action);
  }

  #pause(ms: number): Promise<void> {
    return new Promise((resolve) => this.#after(ms, resolve));
  }

  async #say(what: Unfinished): Promise<void> {
    const turn = this.#turn;
    this.#speaking = true;
    this.#cutByTouch = false;
    let before: Sentence | null = null;
    for (const [index, sentence] of what.list.entries()) {
      if (index < what.index) continue;
      this.#saying = { ...what, index };
      if (before !== null) await this.#pause(pauseBetween(before.text, sentence.text));
      if (turn !== this.#turn) return;
      this.#with.onSentence({ of: what.of, index, sentence });
      // A sentence that failed stands on the screen all the same; the next one is due.
      await this.#with.voice.speak(sentence);
      if (turn !== this.#turn) return;
      before = sentence;
    }
    this.#saying = null;
    this.#speaking = false;
    this.#with.onSentence(null);
    this.#earSoon(EAR_AFTER_MS);
  }

  async #sayUrgent(): Promise<void> {
    const turn = this.#turn;
    this.#speaking = true;
    for (let sentence = this.#urgent[0]; sentence !== undefined; sentence = this.#urgent[0]) {
      this.#with.onSentence({ of: "urgent", index: 0, sentence });
      await this.#with.voice.speak(sentence);
      if (turn !== this.#turn) return;
      this.#urgent.shift();
      const next = this.#urgent[0] ?? this.#saying?.list[this.#saying.index];
      if (next !== undefined) await this.#pause(pauseBetween(sentence.text, next.text));
      if (turn !== this.#turn) return;
    }
    this.#speaking = false;
    this.#with.onSentence(null);
    this.#goOn();
  }

  #earSoon(ms: number): void {
    const mayListen = this.#screen?.deaf !== true && this.#mode !== "screen reader" && nextRung(this.#patience) !== null;
    if (this.#screen !== null && mayListen) this.#after(ms, () => void this.#openEar());
  }

  async #openEar(): Promise<void> {
    if (this.#screen !== null && (await this.#ear.open(this.#screen.vocabulary, this.#heard, this.#screen.hearing))) this.#armLadder();
  }

  #mayReprompt(): boolean {
    return this.#screen?.unhurried !== true && this.#maySpeak();
  }

  #armLadder(): void {
    const rung = nextRung(this.#patience);
    if (rung === null || !this.#mayReprompt()) this.#cancelTimer();
    else this.#after(rung.afterMs, () => this.#climb());
  }

  #climb(): void {
    const rung = nextRung(this.#patience);
    if (rung === null || this.#screen === null) return;
    this.#patience = climbed(this.#patience);
    const list = [...this.#screen[rung.say], ...(earGivenUp(this.#patience) ? [this.#with.earOff] : [])];
    this.#hush();
    void this.#say({ of: rung.say, list, index: 0 });
  }

  readonly #heard = (h: Heard): void => {
    const turn = this.#turn;
    const fit = this.#with.onHeard(h);
    if (fit === "taken") this.#ear.answered();
    if (turn !== this.#turn) return;
    if (fit === "taken") {
      this.#ear.shut();
      this.#earSoon(EAR_RESTS_MS);
    } else if (this.#mayReprompt()) this.#climb();
  };
}
