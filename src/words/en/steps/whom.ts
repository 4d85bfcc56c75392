// Whom to call: the care team of the card, and the emergency number of the household.
import type { Ctx } from "#walk/context.ts";

export const clinicOf = (c: Ctx): string => (c.card ? `${c.card.clinic.name}: ${c.card.clinic.phone}` : "your clinic");
export const emergencyOf = (c: Ctx): string => c.house.household?.emergencyNumber ?? "the emergency number";
