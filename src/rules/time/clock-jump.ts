// Has the clock done what time never does? Then elapsed times are doubtful until day and time were said and agreed (promise 14).
import type { Stamp } from "#events/stamp.ts";

export type ClockJump = "behind the last entry" | "forward jump" | "restart" | "another time zone";

/** A second of wobble between two readings of the clocks is no jump. */
const WOBBLE_MS = 1000;
/** Network time corrects by seconds; half a minute is somebody's hand, or sleep that the monotonic clock did not count. Our choice, no source. */
const DRIFT_MS = 30_000;

/**
 * last: the stamp of the last stored entry. null: both clocks agree.
 * "another time zone": the hour of the day moved with the zone, by a journey or by somebody's hand. Summer time moves it within one zone, and is none.
 * "behind the last entry" also when the wall clock fell behind what the monotonic clock counted since the last entry:
 * set back by an hour two hours later, it is still ahead of that entry and wrong all the same.
 */
export function clockJump(last: Stamp, now: Stamp): null | ClockJump {
  if (last.boot !== now.boot) return "restart";
  const byWall = now.wall - last.wall;
  const ahead = byWall - (now.mono - last.mono);
  if (byWall < -WOBBLE_MS || ahead < -DRIFT_MS) return "behind the last entry";
  if (ahead > DRIFT_MS) return "forward jump";
  return last.zone !== now.zone && last.offset !== now.offset ? "another time zone" : null;
}
