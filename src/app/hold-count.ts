// The hold is counted aloud, one number a second.
import type { Stamp } from "#events/stamp.ts";
import { frontPerson } from "#walk/offers.ts";
import type { HouseState } from "#walk/state.ts";

/** The number to say now, or null. No number comes twice; those that a slow tablet missed are left out. */
export function holdCount(): (house: HouseState, now: Stamp) => string | null {
  let counted = 0;
  return (house, now) => {
    const wait = frontPerson(house)?.walk?.wait;
    if (wait?.for !== "hold") {
      counted = 0;
      return null;
    }
    const second = Math.floor((now.mono - wait.began.mono) / 1000);
    if (second <= counted || second > wait.ms / 1000) return null;
    counted = second;
    return `${second}`;
  };
}
