import type { BrowserSpeech, EngineVoice, Synthesiser, Utterance } from "#speech/voice-browser.ts";
import type { FakeTimers } from "./fake-timers.ts";

type Listener = (e: { readonly error?: string }) => void;

export class FakeUtterance implements Utterance {
  lang = "";
  rate = 1;
  volume = 1;
  voice: EngineVoice | null = null;
  readonly text: string;
  #listeners = new Map<string, Listener>();
  constructor(text: string) {
    this.text = text;
  }
  addEventListener(type: "start" | "end" | "error", listener: Listener): void {
    this.#listeners.set(type, listener);
  }
  fire(type: "start" | "end" | "error", error = ""): void {
    this.#listeners.get(type)?.({ error });
  }
}

/** A synthesiser that does only what the test tells it, and writes down the order of calls. */
export class FakeSynthesiser implements Synthesiser {
  speaking = false;
  pending = false;
  voices: EngineVoice[] = [];
  readonly calls: string[] = [];
  readonly said: FakeUtterance[] = [];
  leave: () => void = () => {};
  getVoices(): EngineVoice[] {
    return this.voices;
  }
  speak(u: Utterance): void {
    if (!(u instanceof FakeUtterance)) throw new Error("not an utterance of this test");
    this.calls.push(`speak ${u.text}`);
    this.said.push(u);
    this.speaking = true;
  }
  cancel(): void {
    this.calls.push("cancel");
    this.speaking = false;
  }
  with(timers: FakeTimers): BrowserSpeech {
    return {
      engine: this,
      utterance: (text) => new FakeUtterance(text),
      onLeaving: (action) => {
        this.leave = action;
      },
      timers,
    };
  }
  last(): FakeUtterance {
    const last = this.said.at(-1);
    if (last === undefined) throw new Error("nothing was said");
    return last;
  }
}

export const localVoice = (lang: string, isDefault = false): EngineVoice => ({ lang, localService: true, default: isDefault });
export const remoteVoice = (lang: string): EngineVoice => ({ lang, localService: false, default: true });
