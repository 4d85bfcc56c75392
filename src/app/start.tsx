// Start-up: look, log, house, voice, page. The real clock, log, ears and voice are plugged together here and nowhere else.
import { render } from "preact";
import { v7 as newId } from "uuid";
import { eastOfUtc, startClock } from "#devices/clock.ts";
import { type Prefs, readPrefs } from "#devices/prefs.ts";
import { keepScreenOn } from "#devices/screen-on.ts";
import { openLog } from "#log/dexie-log.ts";
import { browserTimers } from "#speech/timers.ts";
import { applyLook } from "#ui/look.ts";
import { App } from "./app.tsx";
import { fillDemo } from "./demo.ts";
import { Desk } from "./desk.ts";
import { Notices } from "./notices.tsx";
import { soundParts } from "./parts.ts";
import { Recorder } from "./recorder.ts";
import { watchForUpdates } from "./update.ts";
import "#ui/theme.css";
import "#screens/screens.css";

const DEMO_LOG = "tablebell-demo";
const APP_VERSION = "0.1.0";
const WORDS_VERSION = "en-1";

function look(prefs: Prefs): void {
  applyLook(document.documentElement, { mmPx: prefs.mm ?? 5.9, size: prefs.k, theme: prefs.theme ?? "follow" });
}

export async function start(root: HTMLElement): Promise<void> {
  const prefs = readPrefs();
  look(prefs);
  const clock = startClock();
  const log = await openLog(DEMO_LOG);
  const recorder = await Recorder.open({ log, newId: () => newId(), appVersion: APP_VERSION, wordsVersion: WORDS_VERSION });
  const sound = soundParts(prefs, recorder.state.household?.country === "UK" ? "en-GB" : "en-US");
  const desk = new Desk({
    recorder,
    now: () => clock.now(),
    newId: () => newId(),
    speech: { voice: sound.voice, ears: sound.ears, timers: browserTimers },
    ring: sound.ring,
    applyPrefs: (p) => {
      look(p);
      sound.apply(p);
    },
  });
  if (recorder.state.household === null)
    await fillDemo(recorder, { now: clock.now(), offsetAt: eastOfUtc, idAt: (msecs, seq) => newId({ msecs, seq }) });
  await desk.house.keep([{ person: null, walk: null, event: { type: "tablet started" } }]);

  window.addEventListener("pointerdown", sound.wake, true);
  keepScreenOn();
  void watchForUpdates();
  render(<Page desk={desk} hasVoice={sound.hasVoice} />, root);
  desk.tick();
  setInterval(() => desk.tick(), 1000);
}

function Page({ desk, hasVoice }: { desk: Desk; hasVoice(): boolean }) {
  const speaks = desk.prefs.value.voice === "speaks" || desk.prefs.value.voice === "speaks and listens";
  return (
    <App
      desk={desk}
      notices={<Notices house={desk.state.value} appSpeaks={speaks} hasVoice={hasVoice()} />}
      dayBook={() => null}
      drawer={() => null}
    />
  );
}
