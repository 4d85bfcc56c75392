// 24. A child tries the drawer for two hours, in order to change the card: real rules of the PIN, without its slow hashing.
import { afterWrong, NO_TRIES, pinWait, whyNotPin } from "#keeping/pin.ts";
import type { Seed } from "./seed.ts";
import { verdict } from "./verdict.ts";

const EVENING_MS = 2 * 3_600_000;
const TRY_MS = 4000;

const anyPin = (chance: () => number): string => {
  const pin = String(Math.floor(chance() * 10_000)).padStart(4, "0");
  return whyNotPin(pin, pin) === null ? pin : anyPin(chance);
};

export const guessedPin: Seed = async (chance) => {
  const pin = anyPin(chance);
  let tries = NO_TRIES;
  for (let wall = 0; wall < EVENING_MS; wall += TRY_MS + pinWait(tries, wall)) {
    if (anyPin(chance) === pin) return verdict({ harm: true, own: false });
    tries = afterWrong(tries, wall);
  }
  return verdict({ harm: false, own: true });
};
