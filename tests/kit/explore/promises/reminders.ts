// Reminders: at most one a window, never in the quiet hours, in doubt or over something that comes first; and that one does come.
import type { Person } from "#events/person.ts";
import type { Stamp } from "#events/stamp.ts";
import type { Account } from "../ledger.ts";
import { callOf, clockOf, minuteIn } from "../ledger-reminders.ts";
import type { Turn } from "../world.ts";
import { firstBroken, type PromiseCheck, type Seen, stampOf } from "./shape.ts";

/** 22:00 to 06:00 where no keeper typed others. */
function quiet(turn: Turn, at: Stamp): boolean {
  const { from, until } = turn.before.house.household?.quietHours ?? { from: "22:00", until: "06:00" };
  const [a, b, now] = [minuteIn(from), minuteIn(until), clockOf(at).minute];
  return a < b ? now >= a && now < b : now >= a || now < b;
}

/** Somebody is at the tablet, a bell counts, or a low is open. */
const busy = (turn: Turn): boolean =>
  turn.before.house.front !== null ||
  Object.values(turn.before.ledger.people).some((a) => a.bell !== null || a.walk?.lowOpen === true || a.walk?.opened != null);

const hoursOf = (person: Person, meal: string) => person.mealHours?.find((h) => h.meal === meal);

function calledWrongly(turn: Turn, s: Seen): string | null {
  if (s.event.type !== "reminder called") return null;
  const at = stampOf(s);
  const { reminder } = s.event;
  if (turn.move.kind !== "pass" && turn.move.kind !== "set clock") return "a reminder without time passing";
  if (!s.entry.was.trusted) return "a reminder while the clock is doubtful";
  if (quiet(turn, at)) return "a reminder in the quiet hours";
  if (busy(turn)) return "a reminder while a walk, a bell or a low is open";
  if (s.a.reminded.includes(callOf(s.event))) return "a second reminder for the same hours";
  if (reminder.of !== "meal") return null;
  const hours = hoursOf(s.a.person, reminder.meal);
  if (!hours || clockOf(at).minute < minuteIn(hours.until)) return "a reminder before the meal's hours are over";
  const { day } = clockOf(at);
  const inBook = s.a.mealsOpened.some(
    (m) => m.day === day && (m.meal === reminder.meal || (m.minute >= minuteIn(hours.from) && m.minute < minuteIn(hours.until))),
  );
  return inBook ? "a reminder for a meal that is in the book" : null;
}

/** Only of one who is alone with the tablet at rest: what else may wait for it is the other checks' matter. */
function notCalled(turn: Turn): string | null {
  const { after } = turn;
  if (turn.move.kind !== "pass" || !after.ledger.trusted || quiet(turn, after.now) || busy(turn)) return null;
  const { minute, day } = clockOf(after.now);
  const missing = (a: Account): boolean =>
    a.walk === null &&
    (a.person.mealHours ?? []).some(({ meal, until }) => {
      const since = minute - minuteIn(until);
      const today = a.reminded.some((r) => r === `${dayOf(after.now)} ${meal}`);
      return since >= 0 && since < 120 && !a.mealsOpened.some((m) => m.day === day) && !today;
    });
  return Object.values(after.ledger.people).some(missing) ? "nothing is in the book and nobody is reminded" : null;
}

const dayOf = (at: Stamp): string => new Date(at.wall + at.offset * 60_000).toISOString().slice(0, 10);

export const reminderPromise: PromiseCheck = {
  number: 15,
  says: "A reminder calls once where a meal's hours have passed with nothing in the book: never in the quiet hours, in doubt or while a walk, a bell or a low is open.",
  broken: (turn) => firstBroken(turn, (s) => calledWrongly(turn, s)) ?? notCalled(turn),
};
