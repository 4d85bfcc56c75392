// What a mishap says about insulin in the body. Nothing else keeps a walk from going on to a second dose once the advice was heard.
import type { Happened } from "#events/happened.ts";
import type { MishapKind } from "#events/happened-walk.ts";
import type { Ctx } from "#walk/context.ts";
import { backgroundInsulins } from "#walk/insulin.ts";
import { type PersonState, stepOf, type Walk } from "#walk/state.ts";
import { uncertainDose } from "./inject.ts";

/** Mishaps that leave nobody knowing how much went in. */
const UNCERTAIN: readonly MishapKind[] = [
  "nothing came out",
  "button too stiff",
  "pen ran out",
  "not sure",
  "wrong insulin",
  "too much",
  "too little",
];

/** While the pen is tested these are the pen's trouble, and nobody injected yet. */
const PEN_TROUBLE: readonly MishapKind[] = ["nothing came out", "button too stiff", "pen ran out"];

export const isPenTrouble = (walk: Walk, mishap: MishapKind): boolean =>
  PEN_TROUBLE.includes(mishap) && stepOf({ ...walk, mishap: null }) === "pen";

const NOT_KNOWN = { type: "dose told later", units: null, minutesAgo: null } as const;

const mealtime: Happened = NOT_KNOWN;
const backgroundOf = (me: PersonState | undefined): Happened[] =>
  backgroundInsulins(me?.card?.card ?? null).map((insulin) => ({ ...NOT_KNOWN, insulin }));

/** The insulin of the walk, of unknown size; in a walk for none, whichever there is. */
function own(c: Ctx): Happened[] {
  const { kind, background } = c.walk;
  if (background) return [{ ...NOT_KNOWN, insulin: { id: background.insulinId, name: background.insulinName } }];
  return kind === "reading" ? [mealtime, ...backgroundOf(c.me)] : [mealtime];
}

/** The wrong insulin: any that the walk was not for. */
function others(c: Ctx): Happened[] {
  const { kind, background } = c.walk;
  if (kind === "reading") return [];
  if (!background) return backgroundOf(c.me);
  return [
    mealtime,
    ...backgroundOf(c.me).filter((event) => event.type === "dose told later" && event.insulin?.id !== background.insulinId),
  ];
}

export function dosesOfMishap(c: Ctx, mishap: MishapKind): Happened[] {
  const { injectOpened, injected } = c.walk;
  const another = mishap === "wrong insulin" ? others(c) : [];
  if (injectOpened && !injected) return UNCERTAIN.includes(mishap) ? [uncertainDose(c), ...another] : [];
  // Whatever the book says, more insulin may be in the body, or another one.
  if (injected) return mishap === "too much" || mishap === "wrong insulin" ? [...own(c), ...another] : [];
  // Reported before the needle step: insulin went in without the tablet, or may have. It counts, and "taken already?" is asked again.
  return UNCERTAIN.includes(mishap) && !isPenTrouble(c.walk, mishap) ? [...own(c), ...another] : [];
}

/** Told in the kitchen, with no walk open: nobody has said yet which insulin it was, so each of them counts from then on. */
export const dosesToldInKitchen = (mishap: MishapKind, me: PersonState | undefined): Happened[] =>
  UNCERTAIN.includes(mishap) ? [mealtime, ...backgroundOf(me)] : [];
