// A voice and an ear for the page, put in before the app starts: the voice "speaks" quickly and remembers every sentence, the ear hears what the
// test says to it. Runs inside the page, so it may use nothing from outside itself.

/** A sentence that the app gave to the voice. */
export interface Said {
  text: string;
  /** Page clock, ms. */
  at: number;
  /** The same words stood on the glass, whole and uncovered, while it was spoken. Null while it still speaks. */
  shown: boolean | null;
  /** It was cut off before its end. */
  cut: boolean;
}

export interface FakeSpeech {
  said: Said[];
  /** Fundamentals and harmonics of every tone that was started. */
  tones: { at: number; hz: number }[];
  speaking(): boolean;
  listening(): boolean;
  /** One utterance as the recogniser would give it, best guess first. False if the ear is shut. */
  hear(guesses: string[]): boolean;
}

/** The page's own global, with what `fakeSpeech` put there. */
export type SpeechGlobal = typeof globalThis & { fakeSpeech: FakeSpeech };

/** For `addInitScript`. Each sentence takes `ms` of the page clock, however long it is. */
export function fakeSpeech({ ms }: { ms: number }): void {
  const said: Said[] = [];
  const tones: { at: number; hz: number }[] = [];
  const ears: { onresult: ((e: unknown) => void) | null }[] = [];
  let now: { utterance: EventTarget; entry: Said; timers: number[] } | null = null;

  /** Whether a person could read these words now: every line of them inside the glass and under nothing else. */
  const readable = (text: string): boolean => {
    const holders = [...document.querySelectorAll("main *, .banner, .banner *")].filter(
      (element) => !element.closest(".for-ears, [aria-hidden=true]") && (element.textContent ?? "").replace(/\s+/g, " ").includes(text),
    );
    return holders.some((element) => {
      if ([...element.children].some((child) => (child.textContent ?? "").includes(text))) return false;
      const range = document.createRange();
      range.selectNodeContents(element);
      const lines = [...range.getClientRects()].filter((line) => line.width > 1 && line.height > 1);
      return (
        lines.length > 0 &&
        lines.every((line) => {
          const x = (line.left + line.right) / 2;
          const y = (line.top + line.bottom) / 2;
          const top = document.elementFromPoint(x, y);
          return top !== null && (element.contains(top) || top.contains(element));
        })
      );
    });
  };

  const engine = {
    pending: false,
    get speaking() {
      return now !== null;
    },
    getVoices: () => [{ lang: "en-US", localService: true, default: true, name: "test" }],
    speak(utterance: EventTarget & { text: string }) {
      const entry: Said = { text: utterance.text, at: Date.now(), shown: null, cut: false };
      said.push(entry);
      const start = setTimeout(() => utterance.dispatchEvent(new Event("start")), ms / 10);
      // Seen once is enough: a caption may come a frame after the voice.
      const looks = [0.3, 0.6, 0.9].map((part) =>
        window.setTimeout(() => {
          entry.shown = entry.shown === true || readable(utterance.text);
        }, ms * part),
      );
      const end = window.setTimeout(() => {
        now = null;
        utterance.dispatchEvent(new Event("end"));
      }, ms);
      now = { utterance, entry, timers: [Number(start), ...looks, end] };
    },
    cancel() {
      if (now === null) return;
      for (const timer of now.timers) clearTimeout(timer);
      now.entry.cut = true;
      now = null;
    },
  };
  Object.defineProperty(window, "speechSynthesis", { configurable: true, value: engine });
  Object.defineProperty(window, "SpeechSynthesisUtterance", {
    configurable: true,
    value: class extends EventTarget {
      text: string;
      constructor(text: string) {
        super();
        this.text = text;
      }
    },
  });

  // No microphone: the ear that ships with the app stands back, and this one hears.
  Object.defineProperty(navigator, "mediaDevices", { configurable: true, value: undefined });
  Object.defineProperty(window, "SpeechRecognition", {
    configurable: true,
    value: class {
      static available() {
        return Promise.resolve("available");
      }
      processLocally = false;
      onresult: ((e: unknown) => void) | null = null;
      start() {
        ears.push(this);
      }
      abort() {
        const place = ears.indexOf(this);
        if (place >= 0) ears.splice(place, 1);
      }
    },
  });

  const { start } = OscillatorNode.prototype;
  OscillatorNode.prototype.start = function (when) {
    tones.push({ at: Date.now(), hz: this.frequency.value });
    start.call(this, when);
  };

  Object.assign(globalThis, {
    fakeSpeech: {
      said,
      tones,
      speaking: () => now !== null,
      listening: () => ears.length > 0,
      hear(guesses: string[]) {
        const ear = ears.at(-1);
        if (ear?.onresult == null) return false;
        const result = Object.assign(
          guesses.map((transcript) => ({ transcript })),
          { isFinal: true },
        );
        ear.onresult({ resultIndex: 0, results: [result] });
        return true;
      },
    },
  });
}
