// Keeps the screen lit. The browser takes the wake lock away whenever the page is hidden, so it is asked for again when the
// page comes back. A refusal (low battery, a browser without it) is a state to show, never an error.

export type ScreenState = "on" | "off" | "not supported";

interface Sentinel {
  release(): Promise<void>;
  addEventListener(type: "release", listener: () => void): void;
}
interface WakeLocks {
  request(type: "screen"): Promise<Sentinel>;
}
export interface ScreenParts {
  wakeLock: WakeLocks | undefined;
  page: Pick<Document, "visibilityState" | "addEventListener" | "removeEventListener">;
}

export interface ScreenOn {
  state(): ScreenState;
  /** Asks once more, for instance after a touch: some browsers grant it only then. */
  ask(): Promise<ScreenState>;
  stop(): void;
}

const ofThisBrowser = (): ScreenParts => ({ wakeLock: globalThis.navigator?.wakeLock, page: document });

/** Starts at once; never throws. onChange hears every change, for the page that shows how the tablet is. */
export function keepScreenOn(onChange: (state: ScreenState) => void = () => undefined, parts = ofThisBrowser()): ScreenOn {
  const { wakeLock, page } = parts;
  let state: ScreenState = wakeLock === undefined ? "not supported" : "off";
  let sentinel: Sentinel | null = null;
  let asking: Promise<ScreenState> | null = null;
  let stopped = false;

  const become = (next: ScreenState) => {
    if (next === state) return;
    state = next;
    onChange(state);
  };
  const request = async (locks: WakeLocks): Promise<ScreenState> => {
    try {
      const granted = await locks.request("screen");
      if (stopped) {
        release(granted);
        return state;
      }
      sentinel = granted;
      granted.addEventListener("release", () => {
        if (sentinel !== granted) return;
        sentinel = null;
        become("off");
      });
      become("on");
    } catch {
      become("off");
    }
    return state;
  };
  const ask = (): Promise<ScreenState> => {
    if (wakeLock === undefined || stopped || sentinel !== null || page.visibilityState !== "visible") return Promise.resolve(state);
    asking ??= request(wakeLock).finally(() => {
      asking = null;
    });
    return asking;
  };
  const comeBack = () => void ask();
  page.addEventListener("visibilitychange", comeBack);
  comeBack();

  return {
    state: () => state,
    ask,
    stop() {
      stopped = true;
      page.removeEventListener("visibilitychange", comeBack);
      const last = sentinel;
      sentinel = null;
      if (last === null) return;
      release(last);
      become("off");
    },
  };
}

function release(sentinel: Sentinel): void {
  sentinel.release().catch(() => undefined);
}
