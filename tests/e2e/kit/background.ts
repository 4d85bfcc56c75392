// A whole background walk and a whole reading walk, from the kitchen screen to the last sentence, answered by any hand.
// What they share with a meal walk is answered as there (meal.ts).
import { martaCard } from "#demo-data/household.ts";
import type { BackgroundDose, DoseCard } from "#events/card.ts";
import { units } from "#events/quantity.ts";
import { FIXED } from "#words/en/fixed.ts";
import type { Label } from "#words/say.ts";
import type { Hand } from "./hands.ts";
import { answer, give, LUNCH, walkMeal } from "./meal.ts";
import type { Past } from "./more-log.ts";
import type { Tablet } from "./tablet.ts";

export const GLARGINE = { id: "glargine-100", name: "insulin glargine", unitsPerMl: 100, kind: "long-acting" } as const;
export const AT_ONE: BackgroundDose = { insulin: GLARGINE, units: units(14), at: "13:00", windowMinutes: 600 };

/** Marta's card, with these doses by the clock, and what else is different. */
export const signed = (background: readonly BackgroundDose[], over: Partial<DoseCard> = {}): Past => ({
  person: "marta",
  walk: null,
  hoursAgo: 15,
  event: {
    type: "card signed",
    card: {
      ...martaCard({ validFrom: "2026-01-01", reviewBy: "2026-06-01", validUntil: "2026-12-31" }),
      background: [...background],
      ...over,
    },
    cardHash: "with a background dose",
    signature: { keeper: "ines", keeperName: "Ines", signedOn: "2026-01-01", typedTwice: true, readBack: true },
  },
});

/** Kitchen screen to the first question; `then` is pressed or said on the way: which of two doses. */
export async function openBackground(t: Tablet, hand: Hand, ...then: readonly Label[]): Promise<void> {
  for (const label of [{ shown: FIXED.background, said: ["long acting insulin"] }, ...then]) await hand.press(label);
  await t.stored("the opening");
}

/** From the first question of an open background walk to its end. null: "No reading now". */
export async function walkBackground(t: Tablet, hand: Hand, reading: string | null): Promise<void> {
  await toThePen(t, hand, reading);
  await takeThePen(t, hand);
  await walkMeal(t, hand, LUNCH, "eat", "look");
  await answer(t, hand, { do: "finish" });
}

export async function toThePen(t: Tablet, hand: Hand, reading: string | null): Promise<void> {
  await walkMeal(t, hand, LUNCH, "reading", "clock");
  if (reading === null) await answer(t, hand, { do: "leave out reading" });
  else {
    await give(t, hand, "reading", reading);
    await answer(t, hand, { do: "agree number" });
  }
  await answer(t, hand, { do: "heard dose" });
}

/** The long-acting pen, by its mark and then by the name on it. */
export async function takeThePen(t: Tablet, hand: Hand): Promise<void> {
  const pen = t.state.people.marta?.pens.find((p) => p.pen.kind === "long-acting")?.pen;
  if (!pen) throw new Error("Marta has no long-acting pen");
  await answer(t, hand, { do: "pick pen", pen: pen.id, how: "mark" });
  await answer(t, hand, { do: "pen says", name: "the insulin" });
}

/** Wash, measure, done. */
export async function walkReading(t: Tablet, hand: Hand): Promise<void> {
  await hand.press({ shown: FIXED.reading, said: [FIXED.reading.toLowerCase()] });
  await t.stored("the opening");
  await walkMeal(t, hand, LUNCH, "exercise", "clock");
  await answer(t, hand, { do: "finish" });
}
