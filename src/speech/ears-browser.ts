// The browser's own recogniser, and only where it runs on this device. A recogniser that would send sound away is never started:
// whether it would is asked again before every start, because a language pack can be removed while the tablet stands there.
import type { EarsPort, Heard, Timers } from "./ports.ts";

/** What is used of the browser's recogniser, so that a test can stand in for it. */
export interface Recogniser {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives: number;
  processLocally?: boolean;
  phrases?: unknown[];
  onresult: ((e: RecognisedEvent) => void) | null;
  onerror: ((e: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  abort(): void;
}
export interface RecognisedEvent {
  readonly resultIndex: number;
  readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }> & { readonly isFinal: boolean }>;
}
export interface RecogniserKind {
  new (): Recogniser;
  available?(options: { langs: string[]; processLocally: boolean }): Promise<string>;
  install?(options: { langs: string[]; processLocally: boolean }): Promise<boolean>;
}
export interface BrowserHearing {
  /** The unprefixed recogniser; a prefixed one cannot say where it runs and is not used. */
  SpeechRecognition?: RecogniserKind | undefined;
  SpeechRecognitionPhrase?: (new (phrase: string, boost: number) => unknown) | undefined;
  /** State of the microphone permission; "unknown" where the browser does not tell. */
  microphone(): Promise<"granted" | "denied" | "prompt" | "unknown">;
  timers: Timers;
}

/** A recogniser ends by itself after a silence; it is opened again after this pause, as long as the ear is to be open. */
const REOPEN_MS = 300;
/** How strongly the phrases on offer are expected, of 0 to 10 (a middle value, not measured). */
const BOOST = 5;
/** After these errors the ear is not opened again by itself. "network" would mean that sound was to leave the tablet. */
const FINAL_ERRORS: ReadonlySet<string> = new Set([
  "not-allowed",
  "service-not-allowed",
  "audio-capture",
  "language-not-supported",
  "network",
]);

export class BrowserEars implements EarsPort {
  readonly name = "browser";
  readonly #with: BrowserHearing;
  readonly #lang: string;
  #turn = 0;
  #recogniser: Recogniser | null = null;
  #cancelReopen: () => void = () => {};
  #refused = false;
  #wentRemote = false;

  constructor(hearing: BrowserHearing, lang: string) {
    this.#with = hearing;
    this.#lang = lang;
  }

  async available(): Promise<"on the device" | "not on this device" | "not allowed"> {
    const kind = this.#with.SpeechRecognition;
    if (this.#wentRemote || kind?.available === undefined) return "not on this device";
    try {
      if ((await kind.available({ langs: [this.#lang], processLocally: true })) !== "available") return "not on this device";
      const microphone = await this.#with.microphone();
      if (microphone === "denied" || (this.#refused && microphone !== "granted")) return "not allowed";
      return "on the device";
    } catch {
      return "not on this device";
    }
  }

  /** Whether the language lies on this device, or the browser could fetch it. */
  async language(): Promise<"ready" | "can be fetched" | "not here"> {
    const kind = this.#with.SpeechRecognition;
    if (kind?.available === undefined || kind.install === undefined) return "not here";
    try {
      const found = await kind.available({ langs: [this.#lang], processLocally: true });
      if (found === "available") return "ready";
      return found === "downloadable" || found === "downloading" ? "can be fetched" : "not here";
    } catch {
      return "not here";
    }
  }

  /** Lets the browser fetch its language, so that it hears on this device; only when a keeper asks for that. True once it is there. */
  async install(): Promise<boolean> {
    try {
      return (await this.#with.SpeechRecognition?.install?.({ langs: [this.#lang], processLocally: true })) === true;
    } catch {
      return false;
    }
  }

  listen(vocabulary: readonly string[], onHeard: (h: Heard) => void): Promise<boolean> {
    this.pause();
    void this.#open(this.#turn, vocabulary, onHeard);
    return Promise.resolve(true);
  }

  pause(): void {
    this.#turn++;
    this.#cancelReopen();
    const recogniser = this.#recogniser;
    this.#recogniser = null;
    recogniser?.abort();
  }

  async #open(turn: number, vocabulary: readonly string[], onHeard: (h: Heard) => void): Promise<void> {
    const where = await this.available();
    const kind = this.#with.SpeechRecognition;
    if (turn !== this.#turn || where !== "on the device" || kind === undefined) return;
    const recogniser = new kind();
    // Where the property is unknown, setting it would change nothing and the sound would go out.
    if (!("processLocally" in recogniser)) {
      this.#wentRemote = true;
      return;
    }
    recogniser.processLocally = true;
    recogniser.lang = this.#lang;
    recogniser.continuous = true;
    recogniser.interimResults = false;
    recogniser.maxAlternatives = 3;
    this.#expect(recogniser, vocabulary);
    recogniser.onresult = (e) => {
      for (const heard of finalsOf(e)) this.#pass(turn, heard, onHeard);
    };
    recogniser.onerror = (e) => {
      if (turn !== this.#turn || !FINAL_ERRORS.has(e.error)) return;
      if (e.error === "network" || e.error === "language-not-supported") this.#wentRemote = true;
      else this.#refused = true;
      this.pause();
    };
    recogniser.onend = () => {
      if (turn === this.#turn) this.#cancelReopen = this.#with.timers.after(REOPEN_MS, () => void this.#open(turn, vocabulary, onHeard));
    };
    this.#recogniser = recogniser;
    try {
      recogniser.start();
    } catch {
      this.pause();
    }
  }

  /** Asked for each utterance: the first one may have led to a pause. */
  #pass(turn: number, heard: Heard, onHeard: (h: Heard) => void): void {
    if (turn === this.#turn) onHeard(heard);
  }

  /** Tells the recogniser what to expect, where it can be told; without it, it hears as well as it can. */
  #expect(recogniser: Recogniser, vocabulary: readonly string[]): void {
    const Phrase = this.#with.SpeechRecognitionPhrase;
    if (Phrase === undefined || !("phrases" in recogniser)) return;
    try {
      recogniser.phrases = vocabulary.map((phrase) => new Phrase(phrase, BOOST));
    } catch {
      // Only a hint was lost.
    }
  }
}

function finalsOf(e: RecognisedEvent): Heard[] {
  return Array.from(e.results)
    .slice(e.resultIndex)
    .filter((result) => result.isFinal)
    .flatMap((result) => {
      const [text, ...alternatives] = Array.from(result, (guess) => guess.transcript.trim());
      return text === undefined ? [] : [{ text, alternatives }];
    });
}

/** What this browser offers for hearing; `page` is the window. */
export function browserHearing(
  page: Window & Partial<Pick<BrowserHearing, "SpeechRecognition" | "SpeechRecognitionPhrase">>,
  timers: Timers,
): BrowserHearing {
  return {
    SpeechRecognition: page.SpeechRecognition,
    SpeechRecognitionPhrase: page.SpeechRecognitionPhrase,
    async microphone() {
      try {
        return (await page.navigator.permissions.query({ name: "microphone" })).state;
      } catch {
        return "unknown";
      }
    },
    timers,
  };
}
