// The tablet's own voice, ear and tones, plugged together once.

import { microphone } from "#devices/microphone.ts";
import { speechPlayer } from "#devices/player.ts";
import type { Prefs } from "#devices/prefs.ts";
import { tones } from "#devices/tones.ts";
import type { EarTrial } from "#screens/drawer/ports.ts";
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
import { earTrial } from "./ear-trial.ts";
import { firstOf, whenWanted } from "./ears.ts";

export interface SoundParts {
  voice: VoiceChain;
  ears: EarsPort;
  ring(level: "calling" | "insistent" | "loud" | "note"): Promise<void>;
  wake(): void;
  /**
   * Fetches what is large; to be called once the first screen stands, which never waits for it. The ear comes only for those who chose to be
   * heard, then or later; `onEarReady`: it can hear from now on.
   */
  fetchLater(onEarReady: () => void): void;
  apply(prefs: Prefs): void;
  /** The ears, for a keeper who tries them. */
  trial: EarTrial;
  /** A tone would be heard now. After a start of the page the browser waits for a touch. */
  hasTones(): boolean;
  /** The browser's own voice works, or was not tried yet; false: only text and tones are left. */
  hasVoice(): boolean;
}

const TONE = { note: "note", calling: "remind", insistent: "soon", loud: "now" } as const;
/** Speech follows a tone after this pause and never over it (style rule 24). */
const AFTER_TONE_MS = 300;

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
function openEar(ears: OwnEars, onReady: () => void): void {
  try {
    const worker = new Worker(new URL("../speech/ear/worker.ts", import.meta.url), { type: "module" });
    ears.open(talkingTo<ToEar, FromEar>(worker), new URL("ear/", document.baseURI).href, onReady);
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
  let onEarReady = () => {};
  const speech = browserSpeech(window, browserTimers);
  const player = speechPlayer();
  const shipped = new OwnVoice(player.play, browserTimers);
  // The tablet's own voice is the person's choice in its settings, so it comes first; ours is there when it is not, or when it fails.
  const own: VoicePort[] = [...(speech ? [new BrowserVoice(speech)] : []), shipped];
  const voice = voiceChain([...own, textVoice(browserTimers)], browserTimers);
  const bell = tones();
  const ownEars = new OwnEars(microphone(), browserTimers);
  const browserEars = new BrowserEars(browserHearing(window, browserTimers), lang);
  const ears = whenWanted(firstOf([ownEars, browserEars]), () => openEar(ownEars, () => onEarReady()));
  let wanted = false;
  const apply = (p: Prefs) => {
    voice.setRate(p.rate);
    voice.setVolume(p.volume);
    bell.setVolume(p.volume);
    // Until somebody chose, the preference is only a default.
    wanted = p.chose && p.voice === "speaks and listens";
    ears.want(wanted);
  };
  apply(prefs);
  return {
    voice,
    ears,
    trial: earTrial({ own: ownEars, browser: browserEars }, () => wanted, browserTimers),
    async ring(level) {
      await bell.play(TONE[level]);
      await new Promise<void>((done) => browserTimers.after(AFTER_TONE_MS, done));
    },
    wake: () => {
      void bell.wake();
      player.wake();
    },
    fetchLater(earReady) {
      onEarReady = earReady;
      openShipped(shipped);
      ears.screenStands();
    },
    apply,
    hasTones: () => bell.ready(),
    hasVoice: () => own.some((v) => v.health() === "works" || v.health() === "untried"),
  };
}
