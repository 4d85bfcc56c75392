// Promises 5, 6 and 10: when the needle may be offered.

import type { Spot } from "#events/spot.ts";
import type { Ledger } from "../ledger.ts";
import { type Account, age, dosesInside, isLow, logIsClear, type WalkAccount } from "../ledger.ts";
import { backgroundInside, backgroundLogIsClear } from "../ledger-background.ts";
import type { Turn } from "../world.ts";
import { firstBroken, type PromiseCheck, type Seen, stampOf, wanted } from "./shape.ts";

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

function telephonedFault(s: Seen, w: WalkAccount, units: number): string | null {
  const card = s.a.card?.card;
  if (!card) return "without a card";
  if (card.telephonedDose === "never") return "that the card forbids";
  if (card.telephonedDose === "with a helper only" && w.helper === null) return "to a person alone";
  if (card.largestDose === null || units > card.largestDose) return "above the largest dose";
  if (w.lowOpen || !w.reading?.glucose || isLow(w.reading.glucose, card)) return "in a low";
  if (w.telephoned > 0) return "a second time in one walk";
  const given = w.number?.slot === "telephoned number" ? w.number.given : [];
  const [one, two] = given.slice(-2);
  if (!one || !two || one.turn === two.turn || one.text !== two.text || Number(two.text) !== units || w.number?.askedAgain === null)
    return "not read back digit by digit";
  return given.every((g) => g.named) ? null : "of nobody named";
}

const fifth: PromiseCheck = {
  number: 5,
  says: "Injecting is never offered unless the dialled number equals the card's, or once a named caller's number, read back, never above the largest dose.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      if (!s.w) return null;
      if (s.event.type === "dose told" && s.event.told.by !== "card") {
        const fault = telephonedFault(s, s.w, s.event.told.units);
        return fault === null ? null : `a telephoned dose ${fault}`;
      }
      if (s.event.type !== "inject opened") return null;
      if (!s.w.told || !s.w.heard) return "inject opened without a dose told and heard";
      return s.w.dial === s.w.told.units ? null : `inject opened with ${s.w.dial} dialled for ${s.w.told.units}`;
    }),
};

const day = (wall: number, offset: number): string => new Date(wall + offset * MINUTE).toISOString().slice(0, 10);
const plusDays = (date: string, days: number): string => new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY).toISOString().slice(0, 10);

function penFault(l: Ledger, s: Seen, w: WalkAccount): string | null {
  const card = s.a.card?.card;
  const pen = Object.values(l.people)
    .flatMap((p) => p.pens)
    .find((p) => p.pen.id === w.pen?.id);
  const today = day(stampOf(s).wall, stampOf(s).offset);
  if (!w.pen || !pen || !card) return "no pen";
  if (s.a.person.helperOnly && w.helper === null) return "nobody at the elbow";
  if (pen.pen.person !== s.a.person.id) return "another person's pen";
  const byTheClock = (card.background ?? []).some((line) => line.insulin.id === pen.pen.insulinId);
  const forMeal = pen.pen.kind !== "long-acting" && pen.pen.insulinId === card.insulin.id;
  const forHour = pen.pen.kind === "long-acting" && pen.pen.insulinId === w.background?.insulinId && byTheClock;
  if (!(w.background ? forHour : forMeal)) return "the wrong insulin";
  if (w.background && !w.pen.named) return "a pen whose name was not read";
  if (pen.retired) return "a pen put aside";
  if (today > pen.pen.expiresOn) return "an expired pen";
  if (pen.openedOn !== null && today > plusDays(pen.openedOn, pen.pen.inUseDays)) return "a pen open too long";
  if (!w.pen.looked || !w.pen.primed || (pen.pen.cloudy && !w.pen.mixed)) return "a pen that was not looked at, mixed and primed";
  const ready = w.pen.fitted && age(w.pen.fitted, stampOf(s), l.trusted);
  if (ready === null || ready > 30 * MINUTE) return "a needle fitted long ago";
  const left = pen.pen.unitsWhenOpened === null ? Number.POSITIVE_INFINITY : pen.pen.unitsWhenOpened - pen.used;
  return left < (w.dial ?? 0) ? `a pen with ${left} units for ${w.dial}` : null;
}

/** Millimetres on the skin; the two sides of the belly are one plane. */
function apart(a: Spot, b: Spot): number {
  if (a.region !== b.region || (a.region !== "belly" && a.side !== b.side)) return Number.POSITIVE_INFINITY;
  const x = (s: Spot) => (s.region === "belly" && s.side === "right" ? -s.outMm : s.outMm);
  return Math.hypot(x(a) - x(b), a.downMm - b.downMm);
}

/** Defaults of the facts: 2 inches from the last one and from the navel, four weeks of rest. */
function spotFault(s: Seen, a: Account, w: WalkAccount): string | null {
  const spot = w.place;
  const card = s.a.card?.card;
  if (!spot || !card) return "no spot";
  const care = card.care;
  const kept = w.meal ? card.regions?.[w.meal] : null;
  if (kept && spot.region !== kept) return "a spot outside the region kept for the meal";
  if (a.person.leftOutRegions.includes(spot.region)) return "a region left out";
  if (spot.region === "belly" && Math.hypot(spot.outMm, spot.downMm) < (care.navelMm ?? 51) - 0.001) return "too near the navel";
  const healed = (n: Account["noGo"][number]) => n.kind === "sore" && stampOf(s).wall - n.since >= 14 * DAY;
  if (a.noGo.some((n) => !healed(n) && apart(n.spot, spot) < n.radiusMm)) return "on a marked place";
  const uses = a.uses.filter((u) => u.walk !== w.id);
  const last = uses[0];
  if (last && apart(last.spot, spot) < (care.lastSpotMm ?? 51) - 0.001) return "too near the last one";
  const rest = w.offered && !w.offered.fullRest ? w.offered.restDays : (care.restDays ?? 28);
  const tooSoon = uses.some((u) => apart(u.spot, spot) < 10 && Math.floor((stampOf(s).wall - u.wall) / DAY) < rest);
  return tooSoon ? "skin that still rests" : null;
}

const sixth: PromiseCheck = {
  number: 6,
  says: "Injecting is never offered with the wrong insulin, another person's pen, an expired pen, or a spot that breaks the card's site rules.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      if (s.event.type !== "inject opened" || !s.w) return null;
      const fault = penFault(s.entry.was, s, s.w) ?? spotFault(s, s.a, s.w);
      return fault === null ? null : `inject opened with ${fault}`;
    }),
};

function takenFault(s: Seen, w: WalkAccount): string | null {
  if (!w.taken) return "without an answer to taken already";
  const window = s.a.card?.card.windowMinutes ?? null;
  if (w.taken.how === "the first was not taken") return null;
  if (w.background) {
    const { was } = s.entry;
    if (w.taken.how === "log is clear" && !(w.taken.clear && backgroundLogIsClear(was, s.a, w, stampOf(s))))
      return "on a log that is not clear";
    return backgroundInside(s.a, w, stampOf(s), was.trusted).length > 0 ? "with a background dose inside its window" : null;
  }
  if (w.taken.how === "log is clear" && !(w.taken.clear && logIsClear(s.entry.was, s.a, stampOf(s), w.id)))
    return "on a log that is not clear";
  // Left blank: any that may still act.
  return dosesInside(s.a, window ?? 12 * 60, stampOf(s), s.entry.was.trusted, w.id).length > 0 ? "with a dose inside the window" : null;
}

const answers: Readonly<Record<string, string>> = {
  "said not taken": '"answer":"no"',
  "the first was not taken": '"the first was not taken"',
};

function answerFault(turn: Turn, s: Seen, how: string): string | null {
  if (how === "log is clear") return s.then.walk?.taken?.clear ? null : "a log that is not clear was taken for not taken";
  const said = JSON.stringify(wanted(turn)) ?? "";
  return said.includes(answers[how] ?? "nothing") ? null : `"${how}" stored on ${said}`;
}

/** Asked about a first dose, though none of this insulin is inside its window: one of the other insulin was counted. */
function otherInsulin({ after }: Turn): string | null {
  const a = after.house.front === null ? undefined : after.ledger.people[after.house.front];
  const w = a?.walk;
  const asked = after.offers.some((o) => o.offer === "press" && o.intent.do === "the first was not taken");
  if (!a || !w || !asked) return null;
  const { now, ledger } = after;
  const inside = w.background
    ? backgroundInside(a, w, now, ledger.trusted)
    : dosesInside(a, a.card?.card.windowMinutes ?? 12 * 60, now, ledger.trusted, w.id);
  return inside.length > 0 ? null : "asked about a dose of another insulin";
}

const tenth: PromiseCheck = {
  number: 10,
  says: "A second mealtime dose inside the window needs a recorded “the first was not taken”; not known never leads to a dose; an unclear log is never taken for not taken.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      if (s.event.type === "taken answered") return answerFault(turn, s, s.event.how);
      if ((s.event.type !== "dose told" && s.event.type !== "inject opened") || !s.w) return null;
      const fault = takenFault(s, s.w);
      if (fault !== null) return `${s.event.type} ${fault}`;
      return s.event.type === "inject opened" && [...s.a.doses, ...s.a.background].some((d) => d.walk === s.w?.id)
        ? "inject opened twice in one walk"
        : null;
    }) ?? otherInsulin(turn),
};

export const needlePromises = [fifth, sixth, tenth];
