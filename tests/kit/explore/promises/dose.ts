// Promises 1 to 4: what may be told.
import type { DoseCard, MealRule } from "#events/card.ts";
import { type Account, afterLow, age, dosesInside, isLow, passed, type WalkAccount } from "../ledger.ts";
import { lineOf } from "../ledger-background.ts";
import { firstBroken, type PromiseCheck, type Seen, stampOf } from "./shape.ts";

const MINUTE = 60_000;
/** Default of the blank care field (design section 5, promise 1). */
const READING_AGE_MINUTES = 15;
/** A meal that was eaten first is dosed for by the reading from before it, for its food alone. */
const EATEN_FIRST_MINUTES = 90;

function readingFault(s: Seen, w: WalkAccount): string | null {
  const card = s.a.card?.card ?? null;
  // Background insulin is never blocked by a missing reading; that there was none is recorded.
  if (w.background && w.readingLeftOut && !w.reading?.glucose) {
    const left = age(w.readingLeftOut, stampOf(s), s.entry.was.trusted);
    if (left === null || left > 60 * MINUTE) return "on a reading left out long ago";
    return w.reading?.word === "LO" ? "on the word LO" : null;
  }
  if (!w.reading) return "without a reading";
  if (!w.reading.glucose) return `on the word ${w.reading.word}`;
  if (isLow(w.reading.glucose, card)) return `on a low of ${w.reading.glucose.value}`;
  const ms = age(w.reading.at, stampOf(s), s.entry.was.trusted);
  if (ms === null) return "on a reading of unknown age";
  const most = w.eatenFirst ? EATEN_FIRST_MINUTES : (card?.care.readingAgeMinutes ?? READING_AGE_MINUTES);
  return ms > most * MINUTE ? `on a reading ${Math.round(ms / MINUTE)} minutes old` : null;
}

const first: PromiseCheck = {
  number: 1,
  says: "No mealtime or correction dose is told while the latest reading is low, missing, a word, or older than 15 minutes.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      if (s.event.type === "card silent" && s.w?.background && s.event.why.includes("reading") && !s.w.lowOpen)
        return "background insulin blocked by a reading that is not there";
      if (s.event.type !== "dose told" && s.event.type !== "dose heard" && s.event.type !== "inject opened") return null;
      if (s.w?.kind === "reading") return `${s.event.type} in a reading walk`;
      if (!s.w || s.w.lowOpen) return `${s.event.type} in a low`;
      const fault = readingFault(s, s.w);
      return fault === null ? null : `${s.event.type} ${fault}`;
    }),
};

const localDay = (wall: number, offset: number): string => new Date(wall + offset * MINUTE).toISOString().slice(0, 10);

function cardFault(s: Seen): string | null {
  const inForce = s.a.card;
  if (!inForce) return "without a card";
  if (!inForce.signature.typedTwice || !inForce.signature.readBack || inForce.signature.keeper === "") return "without a signed card";
  const at = stampOf(s);
  if (!s.entry.was.trusted) return "on a day that nobody knows";
  const today = localDay(at.wall, at.offset);
  if (s.a.next && today >= s.a.next.card.validFrom) return "by a card whose place another has taken";
  if (today < inForce.card.validFrom) return "by a card that is not valid yet";
  return inForce.card.validUntil !== null && today > inForce.card.validUntil ? "by a card that is no longer valid" : null;
}

const second: PromiseCheck = {
  number: 2,
  says: "No dose is told without a card in force that was typed twice, read back and signed. Review by is said each time; valid until is hard.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      if (s.event.type === "inject opened")
        return s.w?.told && s.w.told.cardHash !== s.a.card?.hash ? "inject opened by a card that is not in force any more" : null;
      if (s.event.type !== "dose told") return null;
      const { told } = s.event;
      const fault = cardFault(s);
      if (fault !== null) return `dose told ${fault}`;
      if (told.cardHash !== s.a.card?.hash) return "dose told names another card";
      const review = s.a.card?.card.reviewBy ?? null;
      const passedReview = review !== null && localDay(stampOf(s).wall, stampOf(s).offset) > review;
      return passedReview && told.by === "card" && !told.cautions.some((c) => c.caution === "review date has passed")
        ? "review date not said"
        : null;
    }),
};

/** Rows of a band table as printed that take in the value. */
function rowsOf(card: DoseCard, w: WalkAccount) {
  const rule = w.meal ? card.meals[w.meal] : null;
  const value = w.reading?.glucose?.value ?? Number.NaN;
  if (rule?.kind !== "bands") return null;
  return { rule, rows: rule.bands.filter((b) => value >= (b.from ?? -Infinity) && value <= (b.to ?? Infinity)) };
}

/** The one cell of a grid as printed, with its food-only cell; null where rows or columns do not give exactly one. */
function cellOf(rule: Extract<MealRule, { kind: "grid" }>, w: WalkAccount): { units: number; foodOnly: number | null } | null {
  const one = <S extends { from: number | null; to: number | null }>(spans: readonly S[], edges: string, n: number): number | null => {
    const begins = spans.map((b) => b.from ?? -Infinity);
    const inside = spans.flatMap((b, i) => {
      const next = Math.min(...begins.filter((from) => from > (b.from ?? -Infinity)));
      const ends = edges === "up to the next" && Number.isFinite(next) ? n < next : n <= (b.to ?? Infinity);
      return n >= (b.from ?? -Infinity) && ends ? [i] : [];
    });
    return inside.length === 1 ? (inside[0] ?? null) : null;
  };
  const row = one(rule.rows, rule.edges, w.reading?.glucose?.value ?? Number.NaN);
  const column = one(rule.columns, rule.columnEdges, w.grams ?? Number.NaN);
  const units = row === null || column === null ? undefined : rule.rows[row]?.units[column];
  return units === undefined || column === null ? null : { units, foodOnly: rule.foodOnly?.[column] ?? null };
}

const third: PromiseCheck = {
  number: 3,
  says: "No told dose is above the card's largest dose, negative, off the pen's step, or from a hole between bands.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      if (s.event.type !== "dose told" || !s.w || !s.a.card) return null;
      const { card } = s.a.card;
      const { told } = s.event;
      if (s.w.background) {
        // The largest dose and the step of the card are those of its mealtime insulin.
        const line = lineOf(s.a, s.w);
        return line && line.windowMinutes !== null && line.units === told.units && told.by === "card"
          ? null
          : `${told.units} units by ${told.by} for a line of ${line?.units}`;
      }
      if (card.largestDose === null || told.units > card.largestDose) return `${told.units} units, largest ${card.largestDose}`;
      if (told.units < 0) return `${told.units} units`;
      const steps = told.units / Number(card.rounding.step);
      if (!Number.isInteger(steps)) return `${told.units} units, off the step of ${card.rounding.step}`;
      if (told.by !== "card") return null;
      const rule = s.w.meal ? card.meals[s.w.meal] : null;
      if (rule?.kind === "grid") {
        const cell = cellOf(rule, s.w);
        return cell && [cell.units, cell.foodOnly].includes(told.units) ? null : `${told.units} units, the cell says ${cell?.units}`;
      }
      const bands = rowsOf(card, s.w);
      if (bands && bands.rows.length !== 1) return `${told.units} units from ${bands.rows.length} rows for ${s.w.reading?.glucose?.value}`;
      const [row] = bands?.rows ?? [];
      return bands && row && told.units !== row.units && told.units !== bands.rule.foodOnly
        ? `${told.units} units, the row says ${row.units}`
        : null;
    }),
};

/** Units still acting by a straight line over so many hours; Infinity when a dose of unknown size may still act. */
function onBoard(a: Account, hours: number, s: Seen): number {
  return a.doses.reduce((sum, d) => {
    const ms = passed(d.from, stampOf(s), s.entry.was.trusted);
    const minutes = ms === null ? 0 : ms / MINUTE + Math.max(0, (d.ago ?? 0) - (d.walk === null ? 60 : 0));
    const left = Math.max(0, 1 - minutes / (hours * 60));
    return left === 0 ? sum : sum + (d.units === null ? Number.POSITIVE_INFINITY : d.units * left);
  }, 0);
}

function correctionAllowed(s: Seen, w: WalkAccount, card: DoseCard): { most: number; because: string } {
  const low = w.afterLow || afterLow(s.a, stampOf(s), s.entry.was.trusted);
  if (low && card.afterLow === "food part only") return { most: 0, because: "after a low" };
  const afterEating = card.timing.when === "after eating" || (low && card.afterLow === "inject after eating");
  if (w.eatenFirst || afterEating) return { most: 0, because: "the meal is eaten first" };
  const spacing = card.spacingMinutes;
  const lost = s.entry.was.unreadable.some((wall) => wall === null || spacing === null || stampOf(s).wall - wall < spacing * MINUTE);
  const inside = dosesInside(s.a, spacing ?? 12 * 60, stampOf(s), s.entry.was.trusted, w.id).length > 0;
  if (inside || lost) return { most: 0, because: spacing === null ? "spacing left blank" : "inside the spacing" };
  const kind = card.insulin.kind ?? "rapid analogue";
  if (kind !== "rapid analogue" && kind !== "regular") return { most: 0, because: `${kind} insulin never corrects` };
  const rule = w.meal ? card.meals[w.meal] : null;
  const value = w.reading?.glucose?.value ?? 0;
  if (rule?.kind !== "ratio" || !rule.correction) return { most: Number.POSITIVE_INFINITY, because: "" };
  const raw = Math.max(0, (value - rule.correction.target.high) / rule.correction.perUnit);
  const board = card.onBoard?.model === "linear" ? onBoard(s.a, card.onBoard.hours, s) : 0;
  return { most: Math.max(0, raw - board), because: "insulin on board" };
}

const fourth: PromiseCheck = {
  number: 4,
  says: "Inside the card's spacing no correction is told, nor beyond insulin on board; bands without a food-only row ask; food is never blocked.",
  broken: (turn) =>
    firstBroken(turn, (s) => {
      const card = s.a.card?.card;
      if (!card || !s.w) return null;
      if (s.event.type === "card silent") return s.event.why.includes("spacing") ? `food blocked: ${s.event.why}` : null;
      if (s.event.type !== "dose told" || s.event.told.by !== "card" || s.w.background) return null;
      const { told } = s.event;
      const { most, because } = correctionAllowed(s, s.w, card);
      const bands = rowsOf(card, s.w);
      if (bands) {
        const full = most === 0 && (bands.rule.foodOnly === null || told.units > bands.rule.foodOnly);
        const row = bands.rows[0]?.units ?? 0;
        return full && (bands.rule.foodOnly === null || row > bands.rule.foodOnly)
          ? `the full band of ${told.units} units, ${because}`
          : null;
      }
      return told.correction > most + 0.01 ? `a correction of ${told.correction}, at most ${most}: ${because}` : null;
    }),
};

export const dosePromises = [first, second, third, fourth];
