// What the card says for a background dose: the printed units, with a reading or without one.
import type { BackgroundDose, DoseCard } from "#events/card.ts";
import type { Happened } from "#events/happened.ts";
import { compareDates, minuteOf, minutesApart } from "#rules/time/local.ts";
import type { Ctx } from "#walk/context.ts";
import { backgroundNow } from "#walk/insulin.ts";

/** Our choice, no source: so far from the printed hour it is said. Whether a dose may be late is the card's word or the clinic's. */
const FAR_MINUTES = 120;

function farFromHour(c: Ctx, dose: BackgroundDose): boolean {
  if (c.minuteOfDay === null) return true;
  return minutesApart(c.minuteOfDay, minuteOf(dose.at)) > FAR_MINUTES;
}

export function askBackground(c: Ctx, card: DoseCard, cardHash: string): Happened {
  const dose = backgroundNow(c);
  if (!dose) return { type: "card silent", why: "no dose at this hour", detail: null };
  const { today, walk } = c;
  const answer = c.guards.lookUpBackground(card, dose, {
    today,
    reading: walk.reading?.glucose ?? null,
    readingWord: walk.reading?.word ?? null,
  });
  if (!answer.told) {
    const detail = answer.why === "blank field" ? JSON.stringify({ field: "background.windowMinutes" }) : null;
    return { type: "card silent", why: answer.why, detail };
  }
  const passed = card.reviewBy !== null && today !== null && compareDates(today, card.reviewBy) > 0;
  return {
    type: "dose told",
    told: {
      units: answer.units,
      food: 0,
      correction: 0,
      cardHash,
      rows: [`background ${dose.at} ${dose.insulin.id}`],
      why: [
        { reason: "background", at: dose.at, insulin: dose.insulin.name },
        ...(answer.withoutReading ? [{ reason: "no reading" }] : []),
      ],
      cautions: [
        ...(passed ? [{ caution: "review date has passed", reviewBy: card.reviewBy }] : []),
        ...(farFromHour(c, dose) ? [{ caution: "not at its hour", at: dose.at }] : []),
      ],
      timing: "by the clock",
      by: "card",
    },
  };
}
