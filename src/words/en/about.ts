// What the app is, its version, and whose figures it uses.
import { FOOD_CREDITS } from "#rules/food/sources.ts";
import { CAUTIONS } from "./fixed.ts";

const [NOT_A_DEVICE = "", CHECKS = "", CARE_TEAM = ""] = CAUTIONS;

/** Said and shown. */
export const aboutSaid = (version: string): string[] => [NOT_A_DEVICE, `This is version ${version}.`];

/** Shown under it, for whoever wants to know; the credits in the words that their licences ask for. */
export const ABOUT_SHOWN: readonly string[] = [CHECKS, CARE_TEAM, "What foods hold comes from these tables:", ...FOOD_CREDITS];
