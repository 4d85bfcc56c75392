// Cautions in words: at the end of a walk, and on the kitchen screen. They name no dose.
import type { Stamp } from "#events/stamp.ts";
import { eveningCautions, nightReading } from "#walk/cautions.ts";
import type { Ctx } from "#walk/context.ts";
import type { HouseState } from "#walk/state.ts";
import { number } from "./amounts.ts";

const EXERCISE = "Hard exercise can bring a low until tomorrow.";
const NIGHT = (value: number): string => `${number(value)} is near low for the night.`;

/** At the end of a meal or a reading. */
export function sayCautions(c: Ctx): string[] {
  const night = nightReading(c.me, c.now)?.glucose;
  return [
    ...(c.walk.exercise === true ? [EXERCISE, "Measure before you sleep."] : []),
    ...(night ? [NIGHT(night.value), "Ask your clinic about a snack."] : []),
    ...(c.walk.exercise === true || night ? ["Keep quick sugar by the bed."] : []),
  ];
}

/** In a house of two each line names its person. */
export function sayEvening(house: HouseState, now: Stamp): string[] {
  const many = Object.keys(house.people).length > 1;
  return Object.values(house.people).flatMap((me) => {
    const { exercise, reading } = eveningCautions(me, now, house.doubt === null);
    const name = many ? `${me.person.name}: ` : "";
    return [
      ...(exercise ? [`${name}${EXERCISE}`] : []),
      ...(reading?.glucose ? [`${name}${NIGHT(reading.glucose.value)}`] : []),
      ...(exercise || reading ? ["Keep quick sugar by the bed."] : []),
    ];
  });
}
