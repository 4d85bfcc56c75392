// Faults planted for the watch over too much insulin, or the wrong one: each must be met by its promise.
import { eachPerson, forgetting, instead, losing, type Planted } from "./planted.ts";
import type { Engine } from "./world.ts";

const planted = (fault: string, by: Engine): Planted => ({ promise: 16, fault, exploration: "told in the kitchen", engine: by });

export const PLANTED_WATCH: readonly Planted[] = [
  planted(
    "the watch is not stored",
    losing((type) => type === "insulin watch began"),
  ),
  planted("the end of a walk ends it", forgetting(eachPerson((p) => (p.walk === null ? { ...p, insulinWatch: null } : p)))),
  planted("a good reading ends it", forgetting(eachPerson((p) => (p.insulinWatch?.readAt ? { ...p, insulinWatch: null } : p)))),
  planted("it lasts two hours", forgetting(eachPerson((p) => ({ ...p, insulinWatch: p.insulinWatch && { ...p.insulinWatch, hours: 2 } })))),
  planted(
    "silence gives it over",
    instead("reading grew old", () => ({ type: "insulin watch given over" })),
  ),
];
