// The published state key of the walk: which states the exploration holds apart, and which it takes as one.
//
// Kept apart
//   house    whose walk is in front; doubtful clock or not; app started again since the last agreement
//   log      (per person) recording for the whole window or not, or not known, or nothing written for a day; a row nobody can read: inside the window, inside a day, or older
//   time     day or night by the card's bedtime, only where the card has a correction; card in force, before review or not; a card that waits, its day come or not
//   doses    (per person, this walk's own apart) newest inside the window, inside the spacing, or neither
//   bell     none, or its level and whether silence was written down; the meal question, once the walk has come to it: none, later, due
//   low      within two hours or not, only where the card has a correction
//   pens     per pen of the house: the reason against it, or none; with the last few units, how many are left
//   background  for each line of the card: a dose inside its window or not, recording for its window or not, a row nobody can read
//   walk     the step with what lies over it (mishap, ill day with each answer of it, needle question, left, just now or longer ago); every answer that a later decision can use: taken (clear or said), washed,
//            the wait with its end, the number on its way (slot, text, voice, second time; a reading's age), the reading until the plate is done, then only whether it is
//            old and what the card would say now; low (rounds up to 3, what is due, call, swallowing, help done, no meter, a meal that never came); the dose told (none, zero, some; card or caller;
//            timing), heard, eaten first, helper, each check of the pen with how long ago the needle was fitted and how often no stream came, the dial, the spot, the skin; from the needle on: pressed, injected, put away, eaten
// Taken as one
//   ids, hashes, exact times and ages inside one class, exact units and grams once they were agreed, which spot (but that there is one), which spots were
//   used or declined, which mishap (but whether the dose is in, and those that lead elsewhere), which food and how many beyond one, how hands were washed, how the skin was cleaned once it is dry, names of helpers,
//   slips and clean walks counted, all but the newest dose of a class
import type { Stamp } from "#events/stamp.ts";
import { lookUp } from "#rules/card/lookup.ts";
import { whyNotPen } from "#rules/pen/check.ts";
import { elapsed, oldestAge } from "#rules/time/elapsed.ts";
import { isBetween, localParts } from "#rules/time/local.ts";
import { bellNow } from "#walk/bell.ts";
import { waitOver } from "#walk/context.ts";
import { insulinWatched } from "#walk/insulin-watch.ts";
import { mealQuestionDue } from "#walk/offers.ts";
import { type HouseState, type PersonState, stepOf, type Walk } from "#walk/state.ts";
import { reminderKey } from "./reminder-key.ts";

const MINUTE = 60_000;

function gap(house: HouseState, me: PersonState, now: Stamp): string {
  const window = (me.card?.card.windowMinutes ?? 0) * MINUTE;
  const away = house.last !== null && now.wall - house.last.wall > 24 * 60 * MINUTE ? "away" : "";
  const since = house.clearSince === null ? "?" : now.wall - house.clearSince < window ? "short" : "long";
  const rows = house.unreadable.map((wall) =>
    wall === null || now.wall - wall < window ? "w" : now.wall - wall < 24 * 60 * MINUTE ? "d" : "",
  );
  return `${away}${since}${rows.includes("w") ? "w" : rows.includes("d") ? "d" : ""}`;
}

/** Hours are told roughly: an hour less than what was said. */
const atLeastAgo = (d: Pick<PersonState["doses"][number], "agoMinutes" | "walk">): number =>
  Math.max(0, (d.agoMinutes ?? 0) - (d.walk === null ? 60 : 0));

function doses(house: HouseState, me: PersonState, now: Stamp, walk: string | null): string {
  const card = me.card?.card;
  let nearest = "";
  for (const dose of me.doses) {
    if (walk !== null && dose.walk === walk) continue;
    const ms = elapsed(dose.at, now, house.doubt === null);
    const minutes = ms === null ? 0 : ms / MINUTE + atLeastAgo(dose);
    if (minutes < (card?.windowMinutes ?? 12 * 60)) return "window";
    if (minutes < (card?.spacingMinutes ?? 0) && hasCorrection(me)) nearest = "spacing";
  }
  return nearest;
}

/** For each line of the card: may a dose of its insulin lie inside its window; has there been recording for so long, and every row read? */
function backgroundKey(house: HouseState, me: PersonState, now: Stamp): string {
  const own = me.walk?.injected ? null : (me.walk?.id ?? null);
  return (me.card?.card.background ?? [])
    .map((line) => {
      const inside = me.backgroundDoses.some((d) => {
        if (d.insulinId !== line.insulin.id || (own !== null && d.walk === own)) return false;
        const ms = elapsed(d.at, now, house.doubt === null);
        return ms === null || ms / MINUTE + atLeastAgo(d) < (line.windowMinutes ?? 24 * 60);
      });
      const window = (line.windowMinutes ?? 0) * MINUTE;
      const since = house.clearSince === null ? "?" : now.wall - house.clearSince < window ? "short" : "long";
      const row = house.unreadable.some((wall) => wall === null || now.wall - wall < window);
      return `${inside ? "in" : "out"}${since}${row ? "w" : ""}`;
    })
    .join(",");
}

function recentLow(house: HouseState, me: PersonState, now: Stamp): boolean {
  const ms = me.lastLow && elapsed(me.lastLow, now, house.doubt === null);
  return me.lastLow !== null && (ms === null || ms < 120 * MINUTE);
}

const hasCorrection = (me: PersonState): boolean =>
  Object.values(me.card?.card.meals ?? {}).some(
    (rule) => rule && (rule.kind === "bands" || rule.kind === "grid" || Boolean(rule.correction) || rule.table !== undefined),
  );

/** Few units left are told apart one by one, so that a pen that runs dry is reached by the same states each time. */
function pens(house: HouseState, me: PersonState, now: Stamp): string {
  const card = me.card?.card;
  if (!card) return "";
  const today = localParts(now.wall, now.offset).date;
  const all = Object.values(house.people).flatMap((p) => p.pens);
  return all
    .map((p) => {
      const q = { pen: p.pen, openedOn: p.openedOn, used: p.used, retired: p.retired, person: me.person.id, card, today, needed: null };
      const left = p.pen.unitsWhenOpened === null ? "" : Math.max(-1, Math.min(p.pen.unitsWhenOpened - p.used, 24));
      const night = card.background?.[0] && whyNotPen({ ...q, background: { insulinId: card.background[0].insulin.id, units: null } });
      return `${whyNotPen(q)?.why.slice(0, 9) ?? "ok"}${night?.why.slice(0, 9) ?? ""}${left}`;
    })
    .join(",");
}

/** What the card would say now, with this walk's answers: told or the reason for silence. */
function outcome(house: HouseState, me: PersonState, w: Walk, now: Stamp): string {
  const card = me.card?.card;
  if (!card || !w.reading || w.meal === null || !w.plate) return "";
  const parts = localParts(now.wall, now.offset);
  const recent = me.doses
    .filter((d) => d.walk !== w.id)
    .map((d) => ({
      minutesAgo: Math.floor((elapsed(d.at, now, house.doubt === null) ?? 0) / MINUTE) + atLeastAgo(d),
      units: d.units,
    }));
  const said = lookUp(card, {
    meal: w.meal,
    reading: w.reading.glucose,
    readingWord: w.reading.word,
    grams: w.plate.grams,
    minuteOfDay: parts.minuteOfDay,
    today: parts.date,
    recent,
    afterLow: w.afterLow || recentLow(house, me, now),
    hardExercise: w.exercise ?? false,
    eatenFirst: w.eatenFirst,
  });
  return said.told ? (said.units === 0 ? "zero" : "some") : said.why;
}

function draftKey(me: PersonState, w: Walk, now: Stamp, sure: boolean): string {
  if (!w.draft) return "";
  const ms = w.draft.slot === "reading" ? oldestAge(w.draft.at, now, sure) : 0;
  const old = ms === null || ms > (me.card?.card.care.readingAgeMinutes ?? 15) * MINUTE ? "old" : "";
  const { slot, text, first, via } = w.draft;
  const as = (t: string | null) => {
    if (t === null || t === "") return t;
    if (slot === "dial") return Number(t) === w.told?.units ? "told" : "other";
    return slot === "grams" && w.lines.length > 0 ? "sum" : t;
  };
  return `${slot}:${as(text)}:${as(first)}:${via === "voice" ? "v" : ""}${w.unitAgreed ?? ""}${old}`;
}

/** A meal that did not come: watched until the insulin's main action is over (4 hours of a rapid one), or for as long as nobody knows. */
function noMealKey(me: PersonState, w: Walk, now: Stamp, sure: boolean): string {
  if (w.low?.because === "half eaten") return "half";
  if (w.low?.because !== "cannot eat" || w.eat === "eating") return "";
  return `${insulinWorks(me, w, now, sure) ? "watch" : "watched"}`;
}

/** May mealtime insulin of this walk or of the newest dose still work: 4 hours of a rapid one, 8 of another? */
function insulinWorks(me: PersonState, w: Walk | null, now: Stamp, sure: boolean): boolean {
  const [newest] = me.doses;
  const own = w && !w.background ? w.injectOpened : null;
  const from = own ?? newest?.at ?? null;
  if (from === null) return false;
  const ms = elapsed(from, now, sure);
  const hours = me.card?.card.insulin.kind === "rapid analogue" ? 4 : 8;
  return ms === null || ms / MINUTE + (own ? 0 : (newest?.agoMinutes ?? 0)) < hours * 60;
}

/** What an ill day has asked, measured and said. */
function illKey(me: PersonState, w: Walk): string {
  const { ill } = w;
  if (!ill) return "";
  const glucose = ill.reading?.glucose?.value ?? null;
  const high = glucose !== null && glucose >= (me.card?.card.high?.value ?? Number.POSITIVE_INFINITY);
  const due = glucose !== null && glucose >= (me.card?.card.ketones?.from ?? Number.POSITIVE_INFINITY);
  const reading = ill.reading === null ? "-" : (ill.reading.word ?? `${high ? "h" : ""}${due ? "k" : ""}`);
  const said = [
    ill.feelsIll,
    ill.danger,
    ill.noMeter,
    ill.ketones,
    ill.noStrips,
    ill.highHeard,
    ill.ketonesHeard,
    ill.rulesHeard,
    ill.callRaised,
  ];
  return `${ill.because === "high reading" ? "by itself" : ""}${reading}${Math.min(w.his, 2)}${said.join("")}`;
}

function lowKey(me: PersonState, w: Walk, now: Stamp, sure: boolean): string {
  if (!w.low) return w.afterLow ? "after" : "";
  const { low } = w;
  const last = low.readings.at(-1)?.word === "HI" ? "HI" : "";
  const help = low.cannotSwallow ? `x${low.helpSteps}` : "";
  const said = `${low.callRaised ? "!" : ""}${help}${low.noMeter ? "m" : ""}`;
  return `${Math.min(low.rounds.length, 3)}${low.due}${said}${last}${noMealKey(me, w, now, sure)}`;
}

/** Mishaps that lead elsewhere than back to the step, once their advice was heard. */
const ASKS_INSULIN: readonly string[] = ["half eaten", "hardly eaten", "vomiting"];
const LEADS_ON: readonly string[] = ["cannot eat", "half eaten", "hardly eaten", "vomiting", "eaten, not injected"];
const mishapKey = (w: Walk): string => (w.mishap === null ? "" : LEADS_ON.includes(w.mishap) ? w.mishap : "some");

/** Just fitted, a while ago (another quarter of an hour makes it old), or too long ago to be gone by. */
function needleAge(fitted: Stamp | null, now: Stamp, sure: boolean): string {
  const ms = fitted && oldestAge(fitted, now, sure);
  return ms === null || ms > 30 * MINUTE ? "old" : ms > 14 * MINUTE ? "while" : "new";
}

/** "No reading" stands for an hour. */
function leftOutAge(at: Stamp, now: Stamp, sure: boolean): string {
  const ms = oldestAge(at, now, sure);
  return ms === null || ms > 60 * MINUTE ? "old" : "none";
}

function beforeNeedle(house: HouseState, me: PersonState, w: Walk, now: Stamp, sure: boolean): unknown[] {
  const ms = w.reading ? oldestAge(w.reading.at, now, sure) : null;
  const old = w.reading && (ms === null || ms > (w.eatenFirst ? 90 : (me.card?.card.care.readingAgeMinutes ?? 15)) * MINUTE);
  // In a low the next reading takes the place of the last one.
  const reading = !w.reading
    ? "-"
    : w.plate?.ready || w.low || (w.background && w.told)
      ? "r"
      : (w.reading.word ?? w.reading.glucose?.value);
  const check = w.penCheck;
  return [
    w.taken === null ? "-" : w.taken.how === "log is clear" ? "clear" : "said",
    w.wash !== null,
    reading,
    w.low ? 0 : Math.min(w.his, 2),
    w.readingLeftOut && leftOutAge(w.readingLeftOut, now, sure),
    w.low ? null : old,
    w.highHeard,
    lowKey(me, w, now, sure),
    w.exercise,
    Math.min(w.lines.length, 1),
    w.plate && (w.plate.ready ? "ready" : w.plate.grams === null ? "fixed" : "counted"),
    w.low ? "" : outcome(house, me, w, now),
    w.told && `${w.told.units === 0 ? "zero" : "some"} ${w.told.by === "card" ? "card" : "phone"} ${w.told.timing}`,
    w.silent?.why,
    w.telephoned,
    w.ownNumber !== null,
    w.doseHeard,
    w.eatenFirst,
    w.helper !== null,
    check.pen,
    check.named,
    check.looked,
    check.mixed,
    check.needle && needleAge(check.fitted, now, sure),
    check.primed ? 0 : check.dry,
    check.primed,
    w.dial !== null,
    w.offered && (w.offered.fullRest ? "full" : "short"),
    w.noSpot !== null,
    w.place !== null,
    w.skinDry ? "dry" : w.cleaned?.how,
  ];
}

function walkKey(house: HouseState, me: PersonState, now: Stamp): unknown[] {
  const w = me.walk;
  if (!w) return ["-"];
  const sure = house.doubt === null;
  const wait = w.wait ? `${w.wait.for} ${waitOver(w, now, sure) ? "over" : "runs"}` : "";
  const justLeft = w.left && w.plate?.ready === true && w.touchedAt.boot === now.boot && now.wall - w.touchedAt.wall < 10 * MINUTE;
  // In a low that watches without a meal, whoever said that the clock is wrong is not asked again.
  const clock = w.low?.because === "cannot eat" && house.doubt === "the person said no" ? "said wrong" : "";
  const ill = illKey(me, w);
  const over = [
    clock,
    ill,
    stepOf(w),
    w.left ? (justLeft ? "just left" : "left") : "",
    mishapKey(w),
    w.needleAsked,
    wait,
    draftKey(me, w, now, sure),
  ];
  if (!w.injectOpened) return [w.kind, w.background?.at, ...over, ...beforeNeedle(house, me, w, now, sure)];
  // What came before the needle comes back only when the needle did not go in.
  return [
    w.background?.at,
    ...over,
    w.pressed,
    w.windowUnseen,
    w.injected !== null,
    w.putAway,
    w.eat,
    w.low && lowKey(me, w, now, sure),
    w.injected ? "" : beforeNeedle(house, me, w, now, sure),
  ];
}

function personKey(house: HouseState, me: PersonState, now: Stamp): unknown[] {
  const sure = house.doubt === null;
  const card = me.card?.card;
  const parts = localParts(now.wall, now.offset);
  const bedtime = card?.bedtime ?? { from: "21:00", until: "05:00", correction: false };
  return [
    walkKey(house, me, now),
    gap(house, me, now),
    doses(house, me, now, me.walk?.injected ? null : (me.walk?.id ?? null)),
    hasCorrection(me) && !bedtime.correction && isBetween(parts.minuteOfDay, bedtime.from, bedtime.until) ? "night" : "",
    card
      ? [
          me.card?.hash,
          parts.date >= card.validFrom && (card.validUntil === null || parts.date <= card.validUntil),
          card.reviewBy !== null && parts.date > card.reviewBy,
          me.nextCard === null ? "" : parts.date >= me.nextCard.card.validFrom ? "due" : "next",
        ]
      : "",
    me.bell ? [bellNow(me.bell, now, sure).level, me.bell.unansweredMinutes >= 0] : "",
    me.mealQuestion && (!me.walk || me.walk.eat === "eating") ? mealQuestionDue(me, now, sure) : "",
    pens(house, me, now),
    // Asked by what follows a meal that was not eaten whole, or that came up.
    (me.walk ? ASKS_INSULIN.includes(me.walk.mishap ?? "") : me.mealQuestion !== null) && insulinWorks(me, null, now, sure) ? "works" : "",
    backgroundKey(house, me, now),
    reminderKey(house, me, now),
    insulinWatched(me, now, sure) ? "watched" : "",
    hasCorrection(me) && !me.walk?.low && recentLow(house, me, now) ? "after a low" : "",
  ];
}

export function stateKey(house: HouseState, now: Stamp): string {
  return JSON.stringify([house.front, house.doubt !== null, ...Object.values(house.people).map((me) => personKey(house, me, now))]);
}
