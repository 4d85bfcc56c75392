// What every screen of the kitchen is given.
import type { ComponentChildren } from "preact";
import type { Stamp } from "#events/stamp.ts";
import type { Chrome } from "#screens/shared/bar.tsx";
import type { HouseState } from "#walk/state.ts";

export interface OnKitchen {
  house: HouseState;
  now: Stamp;
  /** Place of the sentence being spoken, or -1. */
  speaking: number;
  focusHeading: boolean;
  chrome: Chrome;
  banner: ComponentChildren;
}
