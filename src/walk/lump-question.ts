// "Is there a lump?", every four weeks: a calm question of the kitchen screen, when nobody walks and nobody waits for a meal.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { DAY, HOUR } from "#events/quantity.ts";
import { MARK_RADIUS_MM } from "#rules/body/marks.ts";
import type { Offer } from "./context.ts";
import type { HouseState, PersonState } from "./state.ts";

/** Four weeks: once in each rest of 28 days that spots have. Our choice, no source; an answer of "not now" waits a week. */
const LUMPS_DAYS = 28;
const LUMPS_LATER_DAYS = 7;

type LumpIntent = Extract<Intent, { do: "feel for lumps" | "mark lump" | "lump is gone" }>;

/** The question how much was eaten comes first, but not for ever: not everybody answers it. Our choice. */
const AFTER_MEAL_MS = 3 * HOUR;

/** Never while anything of a meal is open for anybody: a dose told, a bell, the question how much was eaten. Doubtful clocks ask nothing. */
export function lumpQuestionDue(house: HouseState, me: PersonState, now: { wall: number }): boolean {
  if (house.doubt !== null) return false;
  const eating = ({ mealQuestion }: PersonState) => mealQuestion !== null && now.wall - mealQuestion.from.wall < AFTER_MEAL_MS;
  if (Object.values(house.people).some((p) => p.walk || p.bell || eating(p))) return false;
  const days = me.lumpsAsked.found === "not now" ? LUMPS_LATER_DAYS : LUMPS_DAYS;
  return now.wall - me.lumpsAsked.at >= days * DAY;
}

export const lumpsOf = (me: PersonState) => me.noGo.filter((mark) => mark.kind === "lump");

export function lumpOffers(house: HouseState, me: PersonState, now: { wall: number }): Offer[] {
  if (!lumpQuestionDue(house, me, now)) return [];
  const person = me.person.id;
  const wants: LumpIntent[] = [
    { do: "feel for lumps", person, found: "none" },
    { do: "feel for lumps", person, found: "not now" },
    { do: "mark lump", person, spot: null },
    ...lumpsOf(me).map(({ id }): LumpIntent => ({ do: "lump is gone", person, id })),
  ];
  return wants.map((intent) => ({ offer: "press", role: "choice", intent }));
}

/** freshId names a new mark. A lump whose place nobody can tell is written down as found. */
export function lumpEvents(intent: LumpIntent, freshId: string): Happened[] {
  switch (intent.do) {
    case "feel for lumps":
      return [{ type: "felt for lumps", found: intent.found }];
    case "lump is gone":
      return [{ type: "no-go place cleared", id: intent.id }];
    case "mark lump": {
      const { spot } = intent;
      const noGo = spot && ({ id: `${freshId}:lump`, spot, radiusMm: MARK_RADIUS_MM, kind: "lump" } as const);
      return [...(noGo ? [{ type: "no-go place marked" as const, noGo }] : []), { type: "felt for lumps", found: "found" }];
    }
  }
}
