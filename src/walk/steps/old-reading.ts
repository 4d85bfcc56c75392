// The reading a dose is told from must be fresh for as long as the dose is only a number (promise 1).
import type { Happened } from "#events/happened.ts";
import type { Ctx } from "#walk/context.ts";

/** The reading may have grown old while the dose stood on the screen, or while the pen was made ready. */
export function oldReading(c: Ctx): Happened[] {
  const { reading } = c.walk;
  const old = reading && c.card && c.guards.readingIsOld(reading, c.card, c.now, c.sure, c.walk.eatenFirst);
  return old ? [{ type: "reading grew old" }] : [];
}
