// May practice begin?
import type { HouseState } from "./state.ts";

/** Practice would keep a bell, a low or an open walk from whoever needs it: then there is none. */
export const mayPractise = (house: HouseState): boolean =>
  Object.keys(house.people).length > 0 && Object.values(house.people).every((me) => me.walk === null && me.bell === null);
