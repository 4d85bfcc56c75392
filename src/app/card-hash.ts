// A card is identified by the hash of its canonical form.
import { canonical } from "#events/canonical.ts";
import type { DoseCard } from "#events/card.ts";
import { sha256Hex } from "#log/chain.ts";

export const cardHash = (card: DoseCard): string => sha256Hex(canonical(card));
