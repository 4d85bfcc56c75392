// Plugs the scanning machine to the page: finds the buttons, lights them, listens to the switch.
import { useLayoutEffect, useRef } from "preact/hooks";
import { litOf, type ScanInput, type ScanSettings, type ScanState, safeFirst, startScan, turnScan } from "./switch-scan.ts";

export interface SwitchScanOptions {
  on: boolean;
  settings: ScanSettings;
  /** Changes when the buttons do, for example the key of the screen and its labels. */
  buttonsKey: string;
  /** Says the label of the button that is lit now. */
  say: (label: string) => void;
  /** Milliseconds of a clock that never runs backwards. */
  now?: () => number;
}

/** Switches come as a Space or an Enter key. */
const switchKeys = new Set([" ", "Enter"]);
const tickMs = 50;

export function useSwitchScan(options: SwitchScanOptions): void {
  const latest = useRef(options);
  latest.current = options;
  // Ends with its screen: a switch must never press a button that is gone.
  useLayoutEffect(() => {
    if (!options.on) return;
    const now = latest.current.now ?? (() => performance.now());
    const buttons = buttonsOnPage();
    let state: ScanState = startScan(buttons.length, now());
    light(buttons, state, null, latest.current.say);
    const send = (input: ScanInput) => {
      const before = litOf(state);
      const turn = turnScan(state, input, latest.current.settings);
      state = turn.state;
      light(buttons, state, before, latest.current.say);
      if (turn.taken !== null) buttons[turn.taken]?.click();
    };
    const down = (event: KeyboardEvent) => {
      if (take(event) && !event.repeat) send({ kind: "down", ms: now() });
    };
    const up = (event: KeyboardEvent) => {
      if (take(event)) send({ kind: "up", ms: now() });
    };
    window.addEventListener("keydown", down, true);
    window.addEventListener("keyup", up, true);
    const timer = setInterval(() => send({ kind: "time", ms: now() }), tickMs);
    return () => {
      clearInterval(timer);
      window.removeEventListener("keydown", down, true);
      window.removeEventListener("keyup", up, true);
      for (const button of buttons) delete button.dataset.lit;
    };
  }, [options.on, options.buttonsKey]);
}

/** The switch belongs to the scan: no button hears it too. */
function take(event: KeyboardEvent): boolean {
  if (!switchKeys.has(event.key)) return false;
  event.preventDefault();
  event.stopPropagation();
  return true;
}

function buttonsOnPage(): HTMLButtonElement[] {
  return safeFirst([...document.querySelectorAll<HTMLButtonElement>("button.button")], (button) => button.dataset.safe === "yes");
}

function light(buttons: readonly HTMLButtonElement[], state: ScanState, before: number | null, say: (label: string) => void): void {
  const lit = litOf(state);
  if (lit === before) return;
  buttons.forEach((button, place) => {
    if (place === lit) button.dataset.lit = "yes";
    else delete button.dataset.lit;
  });
  const button = lit === null ? undefined : buttons[lit];
  if (button) say((button.querySelector(".button-label") ?? button).textContent?.trim() ?? "");
}
