// Start-up: look, log, house, voice, page. The real clock, log, ears and voice are plugged together here and nowhere else.
import { render } from "preact";
import { v7 as newId } from "uuid";
import { startClock } from "#devices/clock.ts";
import { type Prefs, readPrefs } from "#devices/prefs.ts";
import { openLog } from "#log/dexie-log.ts";
import { applyLook } from "#ui/look.ts";
import { BrowserVoice, browserSpeech } from "#speech/voice-browser.ts";
import { BrowserEars, browserHearing } from "#speech/ears-browser.ts";
import { browserTimers } from "#speech/timers.ts";
import { textVoice } from "#speech/voice-text.ts";
import { voiceChain } from "#speech/voice-chain.ts";
import { App } from "./app.tsx";
import { demoSetUp } from "./demo.ts";
import { Desk } from "./desk.ts";
import { Recorder } from "./recorder.ts";
import "#ui/theme.css";
import "#screens/screens.css";

const APP_VERSION = "0.1.0";
const WORDS_VERSION = "en-1";

function look(prefs: Prefs): void {
  applyLook(document.documentElement, { mmPx: prefs.mm ?? 5.9, size: prefs.k, theme: prefs.theme ?? "follow" });
}

export async function start(root: HTMLElement): Promise<void> {
  const prefs = readPrefs();
  look(prefs);
  const clock = startClock();
  const log = await openLog("tablebell-demo");
  const recorder = await Recorder.open({ log, newId: () => newId(), appVersion: APP_VERSION, wordsVersion: WORDS_VERSION });

  const speech = browserSpeech(window, browserTimers);
  const voices = [...(speech ? [new BrowserVoice(speech)] : []), textVoice(browserTimers)];
  const voice = voiceChain(voices, browserTimers);
  voice.setRate(prefs.rate);
  voice.setVolume(prefs.volume);
  const ears = prefs.voice === "speaks and listens" ? new BrowserEars(browserHearing(window, browserTimers), "en-US") : null;
  const desk = new Desk({
    recorder,
    now: () => clock.now(),
    newId: () => newId(),
    speech: { voice, ears, timers: browserTimers },
    ring: async () => undefined,
    applyPrefs: (p) => {
      look(p);
      voice.setRate(p.rate);
      voice.setVolume(p.volume);
    },
  });
  if (recorder.state.household === null) await desk.house.keep(demoSetUp(clock.now()));
  await desk.house.keep([{ person: null, walk: null, event: { type: "tablet started" } }]);
  render(<App desk={desk} notices={null} dayBook={() => null} drawer={() => null} />, root);
  desk.tick();
  setInterval(() => desk.tick(), 1000);
}
