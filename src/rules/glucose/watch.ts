// How long glucose is watched when insulin is in and something went wrong, by the kind of insulin. Nothing here sets a dose.
import type { InsulinKind } from "#events/card.ts";

interface Watch {
  /** A meal did not come: hours in which most of the insulin works. */
  readonly mainHours: number;
  /** Too much, or the wrong insulin: hours until it has worked itself out. */
  readonly longestHours: number;
}

/** Printed actions differ: Osteopath Med Prim Care 2007, AAFP 2005, AAFP 2009, a clinical reference of the 2020s. The longest of each is watched. */
const WATCH: Readonly<Record<InsulinKind, Watch>> = {
  /** 2 to 4 h, 4 to 5 h, 4 to 6 h. */
  "rapid analogue": { mainHours: 4, longestHours: 6 },
  /** 3 to 6 h, 8 to 10 h, 8 to 12 h. */
  regular: { mainHours: 8, longestHours: 12 },
  /** Holds a part that works as intermediate insulin does. */
  premixed: { mainHours: 12, longestHours: 24 },
  /** 10 to 16 h, 10 to 20 h, 12 h, 24 h; the peak is over by 12. */
  intermediate: { mainHours: 12, longestHours: 24 },
  /** A day and more; so long an interval is given by whoever is called. */
  "long-acting": { mainHours: 24, longestHours: 24 },
};

/** A card that does not say the kind is taken for the slower of the two that are injected alone before a meal. */
export const watchOf = (kind: InsulinKind | undefined): Watch => WATCH[kind ?? "regular"];
