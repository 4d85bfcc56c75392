// Which taps count. Shaky hands tap twice, a palm rests on the glass, a bounce hits the next screen.
// Sources: EN 301 549 clause 5.8 (a repeat of the same key can be ignored for at least 0.5 s); the 700 ms and
// 600 ms starting values are our own choice, to be tuned with people. 250 ms for digits: a hand that trembles 4 to 12 times
// a second (common range of tremor, from memory) touches again within a quarter of a second; a digit meant twice comes later.

/** sameMs: the same control is deaf this long after it acted (300 to 2000 is sensible). screenMs: everything is, after a change of screen. */
export interface GuardTimes {
  sameMs: number;
  screenMs: number;
  /** In place of sameMs for a key of the pad: the same digit twice is often meant, is seen at once and is read back. */
  digitMs: number;
}

export const usualTimes: GuardTimes = { sameMs: 700, screenMs: 600, digitMs: 250 };

/** What is pressed: one thing to do, or a digit among others. */
export type PressKind = "act" | "digit";

export interface Guard {
  /** May this control act now? A yes is remembered, a no is not: waiting always helps. */
  allow(control: string, kind?: PressKind): boolean;
  /** A new screen is up: nothing counts for screenMs. */
  screenChanged(): void;
  /** A finger touched, or left, the glass anywhere. */
  fingerDown(pointerId: number): void;
  fingerUp(pointerId: number): void;
  /** The page was hidden or lost the touches: forget every finger. */
  fingersGone(): void;
  /** False for any finger that came while another was already down. */
  leads(pointerId: number): boolean;
}

/** now: milliseconds of a clock that never runs backwards. */
export function makeGuard(now: () => number, times: Partial<GuardTimes> = {}): Guard {
  const { sameMs, screenMs, digitMs } = { ...usualTimes, ...times };
  const lastActed = new Map<string, number>();
  let fingers: readonly number[] = [];
  let screenSince = Number.NEGATIVE_INFINITY;
  return {
    allow(control, kind = "act") {
      const at = now();
      if (at - screenSince < screenMs) return false;
      if (at - (lastActed.get(control) ?? Number.NEGATIVE_INFINITY) < (kind === "digit" ? digitMs : sameMs)) return false;
      lastActed.set(control, at);
      return true;
    },
    screenChanged() {
      screenSince = now();
      for (const [control, at] of lastActed) if (screenSince - at >= sameMs) lastActed.delete(control);
    },
    fingerDown(pointerId) {
      if (!fingers.includes(pointerId)) fingers = [...fingers, pointerId];
    },
    fingerUp(pointerId) {
      fingers = fingers.filter((finger) => finger !== pointerId);
    },
    fingersGone() {
      fingers = [];
    },
    leads(pointerId) {
      const first = fingers[0];
      return first === undefined || first === pointerId;
    },
  };
}
