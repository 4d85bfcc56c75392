// Who may change things, and by which secrets they are known.
import type { Of } from "#events/happened.ts";
import type { HouseState } from "./state.ts";

type Keepers = HouseState["keepers"];

/** A printed code that was used opens nothing again. */
export function keepersAfter(keepers: Keepers, event: Of<"keeper added" | "keeper PIN changed" | "recovery code made">): Keepers {
  switch (event.type) {
    case "keeper added":
      return [...keepers, { ...event.keeper, recovery: null }];
    case "keeper PIN changed":
      return keepers.map((k) =>
        k.id === event.keeper ? { ...k, pin: event.pin, recovery: event.by === "printed code" ? null : k.recovery } : k,
      );
    case "recovery code made":
      return keepers.map((k) => (k.id === event.keeper ? { ...k, recovery: event.code } : k));
  }
}
