// The answer to the calm question after a meal. Less than all of it is no sentence that is read and forgotten: what went wrong is opened,
// so that the watch, the sugar and the number to call stand as facts.
import type { Happened, Of } from "#events/happened.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import type { NewFact } from "./decide.ts";
import { type HouseState, stepOf } from "./state.ts";

const WENT_WRONG: Readonly<Record<Of<"meal answered">["ate"], MishapKind | null>> = {
  all: null,
  half: "half eaten",
  "hardly any": "hardly eaten",
  "not kept down": "vomiting",
};

export function mealAnswered(house: HouseState, person: string, ate: Of<"meal answered">["ate"], walkId: string): NewFact[] {
  const me = house.people[person];
  const of = me?.mealQuestion?.walk ?? null;
  const walk = me?.walk ?? null;
  const own = (id: string | null, event: Happened): NewFact => ({ person, walk: id, event });
  const answered = own(of, { type: "meal answered", ate });
  // Whoever says how much was eaten is done, Done pressed or not.
  const over = walk !== null && walk.id === of && stepOf(walk) === "done";
  const kind = WENT_WRONG[ate];
  if (kind === null) return over ? [answered, own(of, { type: "walk ended", how: "whole walk" })] : [answered];
  const opened: Happened = { type: "mishap opened", kind };
  // A walk past the needle is kept, its insulin and its bell are its own; and nothing sets a low or an ill day aside.
  if (walk && (walk.injectOpened || walk.low || walk.ill)) {
    const turn = house.front === person ? [] : [own(walk.id, { type: "walk turned to" })];
    return [answered, ...turn, own(walk.id, opened)];
  }
  const aside = walk ? [own(walk.id, { type: "walk ended", how: "stopped" })] : [];
  return [answered, ...aside, own(walkId, { type: "walk opened", kind: "mishap", meal: null }), own(walkId, opened)];
}
