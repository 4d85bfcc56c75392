// The same mistake with a paper card, a paper log and a kitchen timer: nothing asks, nothing reads back. Shares are our own choice, no source.
import { LOOKS_AT_PAGE, SEES_OWN_SLIP, SETS_TIMER, TRIED } from "./chances.ts";

/** The page shows an earlier dose, the card its date, the other meal's row. */
const ON_THE_PAGE = [7, 8, 9, 10, 25];
/** A timer that was set and heard. */
const BY_TIMER = [17, 18, 19, 20];
/** Nobody could know at the table. */
const UNSEEN = [22, 24, 26, 28];
/** There is nothing that could mishear, or be tapped twice. */
const NO_SUCH = [29, 30];

/** Was it found, before or after, in time to be mended? */
export function foundOnPaper(id: number, chance: () => number): boolean {
  if (NO_SUCH.includes(id)) return true;
  if (UNSEEN.includes(id)) return false;
  if (ON_THE_PAGE.includes(id)) return chance() < LOOKS_AT_PAGE;
  if (BY_TIMER.includes(id)) return chance() < SETS_TIMER * TRIED.hearsBell;
  return chance() < SEES_OWN_SLIP;
}
