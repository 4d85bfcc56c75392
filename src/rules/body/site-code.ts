// HL7 v2 table 0163 (body site, CC0): the code of a spot for reports.
import type { Spot } from "#events/spot.ts";

export type SiteCode = "LLAQ" | "RLAQ" | "LUAQ" | "RUAQ" | "LT" | "RT" | "LUA" | "RUA" | "LG" | "RG";

/** Level with the navel counts as the lower quarter. LG and RG are the gluteus medius, the upper outer buttock. */
export const siteCode = (spot: Spot): SiteCode => {
  const left = spot.side === "left";
  switch (spot.region) {
    case "belly":
      if (spot.downMm < 0) return left ? "LUAQ" : "RUAQ";
      return left ? "LLAQ" : "RLAQ";
    case "thigh":
      return left ? "LT" : "RT";
    case "arm":
      return left ? "LUA" : "RUA";
    case "buttock":
      return left ? "LG" : "RG";
  }
};
