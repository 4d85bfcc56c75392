// What the ear is told to expect at a question: the offers' phrases, the foods by name, and how large the number can be.
import type { NumberSlot } from "#events/told.ts";
import { FOODS } from "#rules/food/foods.ts";
import { BLOOD_KETONES } from "#rules/glucose/ketones.ts";
import { PLAUSIBLE } from "#rules/glucose/reading.ts";
import type { Hearing } from "#speech/ports.ts";
import type { NumberRange } from "#speech/range.ts";
import type { SpokenOffer } from "#speech/understand.ts";
import { frontPerson } from "#walk/offers.ts";
import type { HouseState } from "#walk/state.ts";

/**
 * Wide on purpose: what is out of the ordinary is asked about by the walk, not unheard by the ear. Grams: as the walk's own check allows. Units: as most
 * pens for home use dial; what only a few of them dial is pressed.
 */
const RANGES: Readonly<Record<"grams" | "units", NumberRange>> = {
  grams: { low: 0, high: 400, step: 1 },
  units: { low: 0, high: 80, step: 0.5 },
};

/** A reading of a meter: either unit's numbers, in whole ones. */
export const READINGS: NumberRange = { low: PLAUSIBLE["mmol/L"].least, high: PLAUSIBLE["mg/dL"].most, step: 1 };

/** Both units' numbers are readings: which unit was meant is the walk's question. */
export function rangeOf(slot: NumberSlot, house: HouseState): NumberRange {
  switch (slot) {
    case "reading":
    case "recheck":
    case "recheck after low":
    case "reading when ill": {
      const unit = frontPerson(house)?.person.glucoseUnit ?? "mg/dL";
      // In milligrams nobody reads tenths: "fourteen point two" is not to be asked about as forty point two.
      return unit === "mmol/L" ? { ...READINGS, step: 0.1, fractionsTo: PLAUSIBLE["mmol/L"].most } : READINGS;
    }
    case "ketones":
      return { low: BLOOD_KETONES.least, high: BLOOD_KETONES.most, step: 0.1 };
    case "grams":
      return RANGES.grams;
    default:
      return RANGES.units;
  }
}

const foodNames: readonly string[] = [...new Set(FOODS.flatMap((food) => [food.us, food.uk, ...food.aliases]))];

/** `range`: of the number offer, if there is one. */
export const hearingOf = (offers: readonly SpokenOffer[], range: NumberRange | undefined, foods: boolean): Hearing => ({
  offers,
  ...(range === undefined ? {} : { range }),
  ...(foods ? { foods: foodNames } : {}),
});
