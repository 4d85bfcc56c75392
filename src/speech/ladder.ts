// What happens when a spoken question gets no answer, or one that fits nothing: two reprompts, never a third; then the screen waits by touch
// without limit. Two screens of one walk that ended so, and listening is given up for the rest of it. Pure.
// Conversation guidance allows two or three tries before changing the method; the waits are starting values of our own.

export interface Rung {
  /** Quiet time, with the ear open, before this rung. */
  afterMs: number;
  say: "short" | "names";
  /** Whether the ear opens again afterwards. */
  earAfter: boolean;
}

const RUNGS: readonly Rung[] = [
  { afterMs: 8000, say: "short", earAfter: true },
  { afterMs: 12_000, say: "names", earAfter: false },
];

const FAILED_SCREENS_ALLOWED = 2;

/** How often this screen was reprompted, and how many screens of this walk went unanswered to the last rung. */
export interface Patience {
  reprompts: number;
  failedScreens: number;
}

export const freshPatience: Patience = { reprompts: 0, failedScreens: 0 };

export const onNextScreen = (p: Patience): Patience => ({ ...p, reprompts: 0 });

export const earGivenUp = (p: Patience): boolean => p.failedScreens >= FAILED_SCREENS_ALLOWED;

/** The rung that comes next on this screen; null once there is nothing left but to wait by touch, ear shut. */
export function nextRung(p: Patience): Rung | null {
  return earGivenUp(p) ? null : (RUNGS[p.reprompts] ?? null);
}

/** After the next rung was taken. */
export function climbed(p: Patience): Patience {
  const rung = nextRung(p);
  if (rung === null) return p;
  return { reprompts: p.reprompts + 1, failedScreens: p.failedScreens + (rung.earAfter ? 0 : 1) };
}
