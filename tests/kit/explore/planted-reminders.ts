// Faults planted for reminders: each must be met by their promise.
import type { Decision } from "#walk/decide.ts";
import type { HouseState } from "#walk/state.ts";
import { eachPerson, forgetting, losing, type Planted } from "./planted.ts";
import { type Engine, engine } from "./world.ts";

/** Decides time that passes as if the house were another. */
const timeIn = (other: (house: HouseState) => HouseState): Engine => ({
  ...engine,
  decide: (house, intent, now, walkId): Decision => engine.decide(intent.do === "pass time" ? other(house) : house, intent, now, walkId),
});
const planted = (fault: string, by: Engine): Planted => ({ promise: 15, fault, exploration: "reminders", engine: by });

export const PLANTED_REMINDERS: readonly Planted[] = [
  planted("a call is forgotten, and comes again", forgetting(eachPerson((p) => ({ ...p, day: { ...p.day, called: [] } })))),
  planted(
    "no hour is quiet",
    timeIn((house) =>
      house.household ? { ...house, household: { ...house.household, quietHours: { from: "03:00", until: "03:01" } } } : house,
    ),
  ),
  planted(
    "a walk in front keeps nothing waiting",
    timeIn((house) => eachPerson((p) => ({ ...p, walk: null, day: { ...p.day, meals: [] } }))({ ...house, front: null })),
  ),
  planted(
    "a doubtful clock calls",
    timeIn((house) => ({ ...house, doubt: null })),
  ),
  planted("meals in the book are forgotten", forgetting(eachPerson((p) => ({ ...p, day: { ...p.day, meals: [] } })))),
  planted(
    "the call gets lost",
    losing((type) => type === "reminder called"),
  ),
];
