import type { Perception } from "./chances.ts";
import type { Outcome } from "./kinds.ts";

/** One household day with one mistake in it, played to its end. */
export type Seed = (chance: () => number, who: Perception) => Promise<Outcome>;

/** The last two digits change places. */
export const digitsSwapped = (text: string): string => `${text.slice(0, -2)}${text.at(-1) ?? ""}${text.at(-2) ?? ""}`;
