// Start-up: look, lock, log, house, voice, page. The real clock, log, ears and voice are plugged together here and nowhere else.
import { type ComponentChildren, render } from "preact";
import { v7 as newId } from "uuid";
import { eastOfUtc, startClock } from "#devices/clock.ts";
import { type Prefs, readPrefs } from "#devices/prefs.ts";
import { keepScreenOn } from "#devices/screen-on.ts";
import { isSecure } from "#devices/secure.ts";
import { holdTabLock, takeOver } from "#devices/tab-lock.ts";
import { openLog } from "#log/dexie-log.ts";
import { browserTimers } from "#speech/timers.ts";
import { applyLook, firstLook } from "#ui/look.ts";
import { FIXED } from "#words/en/fixed.ts";
import { Desk } from "./desk.ts";
import { faults } from "./faults.tsx";
import { held } from "./held.ts";
import { homeOfTablet, logNameOf } from "./home.ts";
import { Page } from "./page.tsx";
import { soundParts } from "./parts.ts";
import { Practice } from "./practice.ts";
import { Recorder } from "./recorder.ts";
import { watchForUpdates } from "./update.ts";
import { APP_VERSION } from "./version.ts";
import type { WalkPart } from "./walk-part.ts";
import "#ui/theme.css";
import "#screens/screens.css";

const WORDS_VERSION = "en-1";
const WINDOW_LOCK = "tablebell window";

function look(prefs: Prefs): void {
  applyLook(document.documentElement, { mmPx: prefs.mm ?? firstLook.mmPx, size: prefs.k, theme: prefs.theme ?? "follow" });
}

export async function start(root: HTMLElement): Promise<void> {
  look(readPrefs());
  const show = (screen: ComponentChildren) => render(screen, root);
  const stops = () => import("#screens/first/stop-screens.tsx");
  if (!isSecure()) {
    const { InsecureScreen } = await stops();
    show(<InsecureScreen address={location.origin} onAgain={() => location.reload()} />);
    return;
  }
  const secondWindow = async () => {
    const { SecondWindowScreen } = await stops();
    show(<SecondWindowScreen onUseHere={() => void takeOver(WINDOW_LOCK, () => location.reload()).then(() => open(root))} />);
  };
  // The window that loses the lock begins again, and then finds that it is the second one.
  if ((await holdTabLock(WINDOW_LOCK, () => location.reload())) === "elsewhere") await secondWindow();
  else await open(root);
}

/** Opens the household of this tablet and puts it on the page. */
async function open(root: HTMLElement): Promise<void> {
  const prefs = readPrefs();
  const clock = startClock();
  const fault = faults(root, () => clock.now());
  try {
    const home = homeOfTablet();
    const log = await openLog(logNameOf(home));
    const recorder = await Recorder.open({ log, newId: () => newId(), appVersion: APP_VERSION, wordsVersion: WORDS_VERSION });
    const walkPart = held(fetchWalk, browserTimers);
    const sound = soundParts(prefs, recorder.state.household?.country === "UK" ? "en-GB" : "en-US");
    const parts = {
      now: () => clock.now(),
      newId: () => newId(),
      speech: { voice: sound.voice, ears: sound.ears, timers: browserTimers },
      walkPart,
      applyPrefs: (p: Prefs) => {
        look(p);
        sound.apply(p);
      },
    };
    const desk = new Desk({ ...parts, recorder, ring: (level) => practice.ring(level) });
    const practice = new Practice({ ...parts, real: desk, ring: sound.ring });
    fault.knows({ state: desk.state, end: () => [practice.end("called"), desk.end()] });
    log.onLost((why) => fault.show("not stored", why));
    if (recorder.state.household === null && home === "demo") {
      // Ninety days take a moment the first time; the screen says so meanwhile.
      render(<p class="one-moment">{FIXED.oneMoment}</p>, root);
      const { fillDemo } = await import("./demo.ts");
      await painted();
      await fillDemo(recorder, { now: clock.now(), offsetAt: eastOfUtc, idAt: (msecs, seq) => newId({ msecs, seq }) });
    }
    // Whoever was stopped in a walk finds it again at once.
    if (Object.values(recorder.state.people).some(({ walk }) => walk)) await walkPart.hold();
    await desk.house.keep([{ person: null, walk: null, event: { type: "tablet started" } }]);
    window.addEventListener("pointerdown", sound.wake, true);
    keepScreenOn();
    // Looked at with the clock, every second: a voice may be lost at any time, and nothing else tells the page.
    const hasVoice = () => desk.now.value.mono >= 0 && sound.hasVoice();
    render(<Page desk={desk} practice={practice} log={log} hasVoice={hasVoice} hasTones={sound.hasTones} trial={sound.trial} />, root);
    desk.tick();
    setInterval(() => [desk, practice].forEach((one) => void one.tick()), 1000);
    // The walk before all that is larger.
    void painted()
      .then(() => walkPart.hold())
      .then(() => sound.fetchLater(() => desk.turns.earCame()));
    await watchForUpdates();
  } catch (error) {
    fault.show("no storage", error instanceof Error ? error.message : String(error));
  }
}

/** All that a walk may show, the fault page too: in a walk nothing is fetched. */
async function fetchWalk(): Promise<WalkPart> {
  const [{ walkPart }] = await Promise.all([import("./walk-part.ts"), import("#screens/first/stop-screens.tsx")]);
  return walkPart;
}

/** Until what was rendered stands on the glass. */
const painted = (): Promise<void> => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0)));
