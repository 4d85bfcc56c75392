// "Which answers fit here?": read from the one list of offers.
import type { Offer } from "#walk/context.ts";
import type { HouseState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";

/** One sentence for Help, or none where nothing is asked. */
export function youCanSay(list: readonly Offer[], house: HouseState): string[] {
  const names = list.flatMap((o) =>
    o.offer === "press" && (o.role === "main" || o.role === "choice" || o.role === "no")
      ? [labelOf(o.intent, house).shown]
      : o.offer === "number"
        ? [FIXED.aNumber]
        : [],
  );
  return names.length > 0 ? [`${FIXED.youCanSay} ${[...new Set(names)].slice(0, 4).join(`, ${FIXED.or} `)}.`] : [];
}
