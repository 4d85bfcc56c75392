// A dose told by a card that is no longer in force: the card is asked again before anything is dialled or injected (promise 2).
import type { Happened } from "#events/happened.ts";
import type { Ctx } from "#walk/context.ts";
import { voidedBy } from "#walk/voiding.ts";

/** A keeper may sign while the needle step stands open; the answer may be that the needle did not go in. */
export function oldCard(c: Ctx, from: "dial" | "inject"): Happened[] {
  const { told, injectOpened } = c.walk;
  if (!told || injectOpened || told.cardHash === c.cardHash) return [];
  return [{ type: "went back", from, to: "card", voided: voidedBy("card") }];
}
