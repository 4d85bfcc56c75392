// How long ago something was, when either clock of the tablet may be wrong.
import type { Stamp } from "#events/stamp.ts";

/**
 * Milliseconds from one stamp to another, or null: not known, and then nothing counts as passed (promise 14).
 * Within one start of the app the monotonic clock decides. It may stand still while the tablet sleeps, so this is never too long:
 * right for whatever must have passed (spacing, window, waits). Over a restart only the wall clock is left, and only while it is sure.
 */
export function elapsed(from: Stamp, now: Stamp, timeSure: boolean): number | null {
  if (from.boot === now.boot) return now.mono >= from.mono ? now.mono - from.mono : null;
  if (!timeSure) return null;
  return now.wall >= from.wall ? now.wall - from.wall : null;
}

/**
 * Milliseconds that something may be old at most, or null: of any age. The larger of the two clocks, because the monotonic one stands still
 * while the tablet sleeps: right for whatever must be fresh (the reading, the needle opened earlier).
 */
export function oldestAge(from: Stamp, now: Stamp, timeSure: boolean): number | null {
  const passed = elapsed(from, now, timeSure);
  return passed === null ? null : Math.max(passed, now.wall - from.wall);
}
