// Pens: set up by a keeper, told apart by the fingers, and put aside when their days are over.
import type { Happened, Of } from "#events/happened.ts";
import type { Pen } from "#events/pen.ts";
import type { LocalDate } from "#events/quantity.ts";
import { lastDay } from "#rules/pen/check.ts";
import { compareDates } from "#rules/time/local.ts";
import { insulinId } from "./insulin.ts";
import type { Draft, NotFor, Problem } from "./problem.ts";
import { Reader } from "./reader.ts";

export type PenSet = { ok: true; events: Happened[] } | { ok: false; notFor: NotFor } | { ok: false; problems: readonly Problem[] };

export interface PenQuestion {
  id: string;
  person: string;
  today: LocalDate;
  /** Every pen of the house that is not put aside: a mark must be felt for one pen only. */
  others: readonly Pen[];
  /** The insulin of the card in force; null while there is none. */
  cardInsulin: { id: string; name: string } | null;
  /** Its background insulins, each once. */
  cardBackground: readonly { id: string; name: string }[];
}

/** Leaflets go from 10 to 56 days (facts of the trade, leaflets differ); typed in, never inferred. */
const IN_USE = { least: 1, most: 84, decimals: 0 };

/** "The card's" of a long-acting pen is its background insulin; where it names none or two, the name is typed. */
function insulinOf(r: Reader, q: PenQuestion, kind: Pen["kind"]): { insulinId: string; insulinName: string } {
  if (q.cardInsulin && r.choice("pen.insulin", ["card", "other"]) === "card") {
    const [only, another] = kind === "long-acting" ? q.cardBackground : [q.cardInsulin];
    if (only && !another) return { insulinId: only.id, insulinName: only.name };
    r.note("pen.insulin", { why: "not chosen" });
    return { insulinId: "", insulinName: "" };
  }
  const insulinName = r.text("pen.insulinName", 60);
  return { insulinId: insulinId(insulinName, r.number("pen.unitsPerMl", { least: 40, most: 500, decimals: 0 })), insulinName };
}

function markOf(r: Reader, others: readonly Pen[]): string {
  const mark = r.text("pen.mark", 40);
  const same = others.find((pen) => pen.mark.toLowerCase() === mark.toLowerCase());
  if (same) r.note("pen.mark", { why: "taken", by: same.insulinName });
  return mark;
}

function datesOf(r: Reader, today: LocalDate): Pick<Pen, "openedOn" | "inUseDays" | "expiresOn"> {
  const before = r.problems.length;
  const openedOn = r.blankOrDate("pen.openedOn");
  const inUseDays = r.number("pen.inUseDays", IN_USE);
  const expiresOn = r.date("pen.expiresOn");
  if (r.problems.length > before) return { openedOn, inUseDays, expiresOn };
  if (compareDates(expiresOn, today) < 0) r.note("pen.expiresOn", { why: "date has passed" });
  if (openedOn !== null && compareDates(openedOn, today) > 0) r.note("pen.openedOn", { why: "date is to come" });
  else if (openedOn !== null && compareDates(lastDay(openedOn, inUseDays), today) < 0) r.note("pen.openedOn", { why: "open too long" });
  return { openedOn, inUseDays, expiresOn };
}

export function addPen(draft: Draft, q: PenQuestion): PenSet {
  const r = new Reader(draft);
  if (r.raw("pen.device") === "syringe") return { ok: false, notFor: "syringes" };
  if (r.raw("pen.device") === "pump") return { ok: false, notFor: "pumps" };
  r.choice("pen.device", ["pen"]);
  const kind = r.choice("pen.kind", ["mealtime", "long-acting", "premixed"]);
  const pen: Pen = {
    id: q.id,
    person: q.person,
    kind,
    ...insulinOf(r, q, kind),
    cloudy: r.choice("pen.cloudy", ["no", "yes"]) === "yes",
    mark: markOf(r, q.others),
    unitsPerClick: r.choice("pen.unitsPerClick", ["0.5", "1", "2", "5"]),
    unitsWhenOpened: r.blankOrNumber("pen.unitsWhenOpened", { least: 10, most: 2000, decimals: 0 }),
    ...datesOf(r, q.today),
  };
  return r.problems.length > 0 ? { ok: false, problems: r.problems } : { ok: true, events: [{ type: "pen added", pen }] };
}

export const retirePen = (pen: string, why: Of<"pen retired">["why"]): Happened[] => [{ type: "pen retired", pen, why }];
