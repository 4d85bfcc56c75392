// What is out of the ordinary, how often, and on which meals: each twist so many times in the ninety days, spread evenly and never two on one meal.
import { Chance } from "./chance.ts";
import { TODAY } from "./days.ts";
import { type DailyMeal, MEALS } from "./habits.ts";

export type Twist =
  | "low first"
  | "low first, two rounds"
  | "feels low later"
  | "feels low later, two rounds"
  | "meal late"
  | "dials another number"
  | "picks the night pen"
  | "picks the other's pen"
  | "types the other unit"
  | "asks for a second dose"
  | "eats half"
  | "hardly eats"
  | "needle out early"
  | "drying cut short"
  | "spot is sore"
  | "spot has a lump"
  | "hard exercise"
  | "number left in the window"
  | "app stops at the needle"
  | "snack by telephone"
  | "snack not eaten after all";

/** Times in ninety days. Lows: 13 for Marta (2 a fortnight), 6 for Henk (1 a fortnight). */
export const TIMES: Readonly<Record<string, Readonly<Partial<Record<Twist, number>>>>> = {
  marta: {
    "low first": 7,
    "low first, two rounds": 1,
    "feels low later": 4,
    "feels low later, two rounds": 1,
    "meal late": 9,
    "dials another number": 4,
    "picks the night pen": 1,
    "types the other unit": 1,
    "asks for a second dose": 2,
    "eats half": 4,
    "hardly eats": 1,
    "needle out early": 2,
    "drying cut short": 3,
    "spot is sore": 3,
    "app stops at the needle": 1,
    "snack by telephone": 1,
  },
  henk: {
    "low first": 3,
    "low first, two rounds": 1,
    "feels low later": 2,
    "meal late": 6,
    "dials another number": 2,
    "picks the other's pen": 1,
    "types the other unit": 2,
    "asks for a second dose": 1,
    "eats half": 2,
    "drying cut short": 2,
    "spot is sore": 2,
    "spot has a lump": 1,
    "hard exercise": 12,
    "number left in the window": 1,
    "snack not eaten after all": 1,
  },
};

/** Day numbers of what happens to the house. */
export const NEW_CARD_DAY = 30;
export const AWAY_DAYS = [40, 41] as const;
export const EMPTY_DAY = 58;
export const OFF_EVENING = 72;
/** Twists keep away from the last days, so that the log ends in calm. */
const LAST_TWIST_DAY = TODAY - 4;

/** Is this meal taken away from the tablet? */
export function awayFrom(person: string, day: number, meal: DailyMeal): boolean {
  if (day === EMPTY_DAY) return true;
  if (day === OFF_EVENING && meal === "dinner") return true;
  return person === "henk" && AWAY_DAYS.some((d) => d === day);
}

/** Twists that come hours after the meal, in a walk of their own. */
export const LATER: readonly Twist[] = [
  "asks for a second dose",
  "feels low later",
  "feels low later, two rounds",
  "snack by telephone",
  "snack not eaten after all",
];
const NEEDS_LUNCH: readonly Twist[] = ["snack by telephone", "snack not eaten after all"];

export type Story = ReadonlyMap<string, Twist>;
export const slotName = (day: number, meal: DailyMeal): string => `${day} ${meal}`;

/** The same seed gives the same story whatever the day is called. */
export function storyOf(person: string, seed: string): Story {
  const chance = new Chance(`${seed} story ${person}`);
  const slots: { day: number; meal: DailyMeal }[] = [];
  for (let day = 1; day <= LAST_TWIST_DAY; day++) for (const meal of MEALS) if (!awayFrom(person, day, meal)) slots.push({ day, meal });
  const story = new Map<string, Twist>();
  for (const [twist, times] of Object.entries(TIMES[person] ?? {}) as [Twist, number][]) {
    for (let i = 0; i < times; i++) {
      // One in each of so many equal stretches; a slot that is taken moves to the next free one.
      let at = Math.floor(((i + chance.next()) / times) * slots.length);
      for (;;) {
        const slot = slots[at % slots.length];
        if (slot && !story.has(slotName(slot.day, slot.meal)) && (slot.meal === "lunch" || !NEEDS_LUNCH.includes(twist))) {
          story.set(slotName(slot.day, slot.meal), twist);
          break;
        }
        at += 1;
      }
    }
  }
  return story;
}
