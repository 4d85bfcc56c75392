// The reading a dose is told from must be fresh for as long as the dose is only a number (promise 1).
import type { Happened } from "#events/happened.ts";
import { HOUR } from "#events/quantity.ts";
import { oldestAge } from "#rules/time/elapsed.ts";
import type { Ctx } from "#walk/context.ts";

/** Our choice, no source: so long "no reading" stands, and the dose told with it. Then the reading is asked for again, and the card. */
const LEFT_OUT_MS = HOUR;

function leftOutIsOld(c: Ctx): boolean {
  if (!c.walk.readingLeftOut) return false;
  const ms = oldestAge(c.walk.readingLeftOut, c.now, c.sure);
  return ms === null || ms > LEFT_OUT_MS;
}

/** The reading may have grown old while the dose stood on the screen, or while the pen was made ready. */
export function oldReading(c: Ctx): Happened[] {
  const { reading } = c.walk;
  const old = reading && c.card && c.guards.readingIsOld(reading, c.card, c.now, c.sure, c.walk.eatenFirst);
  return old || leftOutIsOld(c) ? [{ type: "reading grew old" }] : [];
}
