// Facts of the watch over insulin that was too much, or the wrong one. It belongs to the person, not to a walk: no walk that ends may end it.
import * as z from "zod/mini";

const because = z.enum(["too much", "wrong insulin"]);
export type InsulinWatchBecause = z.infer<typeof because>;

/** hours: from this moment, a reading each hour. */
const insulinWatchBegan = z.object({ type: z.literal("insulin watch began"), because, hours: z.number() });
/** Said by the person or a helper: whoever treats them watches now. */
const insulinWatchGivenOver = z.object({ type: z.literal("insulin watch given over") });

export const insulinWatchEvents = [insulinWatchBegan, insulinWatchGivenOver] as const;
