// When something happened, by both clocks, so that a jump of one can be seen.
import * as z from "zod/mini";

export const stamp = z.object({
  /** Wall clock, ms since 1970 UTC. May jump. */
  wall: z.number(),
  /** Monotonic clock, ms since this start of the app. May stop while the tablet sleeps. */
  mono: z.number(),
  /** Names one start of the app: monotonic times compare only within one. */
  boot: z.string(),
  /** IANA zone and its offset in minutes east of UTC at that moment. */
  zone: z.string(),
  offset: z.number(),
});
export type Stamp = z.infer<typeof stamp>;
