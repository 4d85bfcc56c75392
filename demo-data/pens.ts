// Pens come out of the refrigerator, are used up or grow too old, and the next one takes their place.
import type { LocalDate } from "#events/quantity.ts";
import { lastDay } from "#rules/pen/check.ts";
import { addDays, compareDates } from "#rules/time/local.ts";
import type { Home } from "./home.ts";
import { demoPen, PENS, type PenName } from "./household.ts";

const NAMES = Object.keys(PENS) as PenName[];
/** Days from the pharmacy to the printed date. Invented. */
const KEEPS_DAYS = 400;
/** Less than the largest dose and a priming. */
export const ONE_DOSE_UNITS = 18;

export class PenDrawer {
  private readonly count = new Map<PenName, number>();

  constructor(private readonly home: Home) {}

  /** A mealtime pen is opened by its first walk, a long-acting one on this day. */
  add(name: PenName, today: LocalDate): void {
    const n = (this.count.get(name) ?? 0) + 1;
    this.count.set(name, n);
    const { person, kind } = PENS[name];
    this.home.note(person, { type: "pen added", pen: demoPen(name, n, kind === "mealtime" ? null : today, addDays(today, KEEPS_DAYS)) });
  }

  addAll(today: LocalDate): void {
    for (const name of NAMES) this.add(name, today);
  }

  /** Replaces what holds fewer units than these, or is past its last day tomorrow. */
  check(person: string, today: LocalDate, units: number): void {
    for (const { pen, openedOn, used } of this.home.person(person).pens.filter((p) => !p.retired)) {
      const left = (pen.unitsWhenOpened ?? 0) - used;
      const old = openedOn !== null && compareDates(addDays(today, 1), lastDay(openedOn, pen.inUseDays)) > 0;
      const name = NAMES.find((n) => pen.id.startsWith(n));
      if (!name || !(left < units || old)) continue;
      this.home.note(person, { type: "pen retired", pen: pen.id, why: old ? "too old" : left < ONE_DOSE_UNITS ? "empty" : "other" });
      this.add(name, today);
    }
  }
}
