// The tablet's own voice, ear and tones, plugged together once.

import { microphone } from "#devices/microphone.ts";
import { speechPlayer } from "#devices/player.ts";
import type { Prefs } from "#devices/prefs.ts";
import { tones } from "#devices/tones.ts";
import type { FromEar, ToEar } from "#speech/ear/worker-shapes.ts";
import { BrowserEars, browserHearing } from "#speech/ears-browser.ts";
import { OwnEars } from "#speech/ears-own.ts";
import type { EarsPort, VoicePort } from "#speech/ports.ts";
import { browserTimers } from "#speech/timers.ts";
import type { Answer } from "#speech/voice/worker-shapes.ts";
import { BrowserVoice, browserSpeech } from "#speech/voice-browser.ts";
import { type VoiceChain, voiceChain } from "#speech/voice-chain.ts";
import { OwnVoice } from "#speech/voice-own.ts";
import { textVoice } from "#speech/voice-text.ts";

export interface SoundParts {
  voice: VoiceChain;
  ears: EarsPort;
  ring(level: "calling" | "insistent" | "loud" | "note"): Promise<void>;
  wake(): void;
  /** Fetches what is large; to be called once the first screen stands, which never waits for it. */
  fetchLater(): void;
  apply(prefs: Prefs): void;
  /** A tone would be heard now. After a start of the page the browser waits for a touch. */
  hasTones(): boolean;
  /** The browser's own voice works, or was not tried yet; false: only text and tones are left. */
  hasVoice(): boolean;
}

const TONE = { note: "note", calling: "remind", insistent: "soon", loud: "now" } as const;
/** Speech follows a tone after this pause and never over it (style rule 24). */
const AFTER_TONE_MS = 300;

/** Several ears as one: the first that can hear on this device, asked anew at each opening. */
function firstOf(ears: readonly EarsPort[]): EarsPort {
  let open: EarsPort | null = null;
  let able: EarsPort | null = null;
  return {
    name: "ears",
    async available() {
      const answers = await Promise.all(ears.map((ear) => ear.available()));
      const at = answers.indexOf("on the device");
      able = ears[at] ?? null;
      return able ? "on the device" : answers.includes("not allowed") ? "not allowed" : "not on this device";
    },
    listen(vocabulary, onHeard, hearing) {
      if (open !== able) open?.pause();
      open = able;
      open?.listen(vocabulary, onHeard, hearing);
    },
    pause: () => open?.pause(),
  };
}

/** An ear that is there only while somebody wants to be heard. */
function whenWanted(ear: EarsPort, wanted: () => boolean): EarsPort {
  return {
    name: ear.name,
    available: async () => (wanted() ? ear.available() : "not allowed"),
    listen: (vocabulary, onHeard, hearing) => ear.listen(vocabulary, onHeard, hearing),
    pause: () => ear.pause(),
  };
}

/** A worker as its room sees it. */
function talkingTo<To, From>(
  worker: Worker,
): { post(message: To): void; onAnswer(listener: (a: From | { broken: string }) => void): void } {
  return {
    post: (message) => worker.postMessage(message),
    onAnswer(listener) {
      worker.addEventListener("message", (e: MessageEvent<From>) => listener(e.data));
      worker.addEventListener("error", (e) => listener({ broken: e.message }));
    },
  };
}

/** Fetches the ear that ships with the app; without it the browser's own may listen, and buttons always work. */
function openEar(ears: OwnEars): void {
  try {
    const worker = new Worker(new URL("../speech/ear/worker.ts", import.meta.url), { type: "module" });
    ears.open(talkingTo<ToEar, FromEar>(worker), new URL("ear/", document.baseURI).href);
  } catch {
    // An old browser without module workers.
  }
}

/** Fetches the voice that ships with the app. Where no worker can be had, the other voices remain. */
function openShipped(voice: OwnVoice): void {
  try {
    const worker = new Worker(new URL("../speech/voice/worker.ts", import.meta.url), { type: "module" });
    voice.open(talkingTo<unknown, Answer>(worker), new URL("voice/", document.baseURI).href);
  } catch {
    // An old browser without module workers.
  }
}

export function soundParts(prefs: Prefs, lang: string): SoundParts {
  let listens = false;
  const speech = browserSpeech(window, browserTimers);
  const player = speechPlayer();
  const shipped = new OwnVoice(player.play, browserTimers);
  // The tablet's own voice is the person's choice in its settings, so it comes first; ours is there when it is not, or when it fails.
  const own: VoicePort[] = [...(speech ? [new BrowserVoice(speech)] : []), shipped];
  const voice = voiceChain([...own, textVoice(browserTimers)], browserTimers);
  const bell = tones();
  const ears = new OwnEars(microphone());
  const apply = (p: Prefs) => {
    voice.setRate(p.rate);
    voice.setVolume(p.volume);
    bell.setVolume(p.volume);
    listens = p.voice === "speaks and listens";
  };
  apply(prefs);
  return {
    voice,
    ears: whenWanted(firstOf([ears, new BrowserEars(browserHearing(window, browserTimers), lang)]), () => listens),
    async ring(level) {
      await bell.play(TONE[level]);
      await new Promise<void>((done) => browserTimers.after(AFTER_TONE_MS, done));
    },
    wake: () => {
      void bell.wake();
      player.wake();
    },
    fetchLater() {
      openShipped(shipped);
      openEar(ears);
    },
    apply,
    hasTones: () => bell.ready(),
    hasVoice: () => own.some((v) => v.health() === "works" || v.health() === "untried"),
  };
}
