import * as needle from "./at-the-needle.ts";
import * as dose from "./before-the-dose.ts";
import { guessedPin } from "./guessed-pin.ts";
import type { Seed } from "./seed.ts";

/** By the number of the mistake (kinds.ts). */
export const SEEDS: Readonly<Record<number, Seed>> = {
  1: dose.misheard,
  2: dose.mistyped,
  3: dose.wrongUnit,
  4: dose.stale,
  5: dose.dosingLow,
  6: dose.tenTimes,
  7: dose.otherMeal,
  8: dose.expiredCard,
  9: dose.stacked,
  10: dose.secondDose,
  11: needle.dialled,
  12: needle.wrongPen,
  13: needle.spoiltPen,
  14: needle.notPrimed,
  15: needle.notMixed,
  16: needle.sameSpot,
  17: needle.wetSkin,
  18: needle.outEarly,
  19: needle.lateMeal,
  20: needle.notRechecked,
  21: dose.otherPerson,
  22: dose.clockJump,
  23: needle.powerLost,
  24: guessedPin,
  25: dose.stillHigh,
  26: dose.takenAway,
  27: needle.penEmpty,
  28: dose.exercise,
  29: dose.otherVoice,
  30: needle.doubleTap,
  31: needle.nothingIn,
  32: dose.sugarDosed,
};
