import type { DoseCard } from "#events/card.ts";
import type { Silent, Situation, Told } from "./told.ts";

export function lookUp(_card: DoseCard, _situation: Situation): Told | Silent {
  return { told: false, why: "no reading" };
}
