// Which insulin a walk is for: the card's mealtime insulin, or one of its background doses.
import type { BackgroundDose, DoseCard, InsulinKind } from "#events/card.ts";
import { INSULIN } from "#rules/card/insulin-kind.ts";
import type { Ctx } from "./context.ts";
import type { PersonState, Walk } from "./state.ts";

interface WalksInsulin {
  id: string;
  name: string;
  /** Left out on cards that were signed before it was asked for. */
  kind?: InsulinKind | undefined;
}

/** An insulin that needs a meal has no walk by the clock: no bell would ring for the food. */
export const hasWalk = (dose: BackgroundDose): boolean => !INSULIN[dose.insulin.kind].needsFood;

/** In the order of the day. */
export const backgroundDosesOf = (card: DoseCard | null): BackgroundDose[] =>
  (card?.background ?? []).filter(hasWalk).sort((a, b) => a.at.localeCompare(b.at));

/** Background insulins of the card, each once. */
export function backgroundInsulins(card: DoseCard | null): { id: string; name: string }[] {
  const seen = new Map((card?.background ?? []).map(({ insulin }) => [insulin.id, { id: insulin.id, name: insulin.name }]));
  return [...seen.values()];
}

/** On the card, or in the book; each once. */
export function knownBackground(me: PersonState): { id: string; name: string }[] {
  const booked = me.backgroundDoses.map((d) => ({ id: d.insulinId, name: d.insulinName }));
  const all = [...backgroundInsulins(me.card?.card ?? null), ...booked];
  return all.filter((one, i) => all.findIndex(({ id }) => id === one.id) === i);
}

/** The dose of the card in force that this walk was opened for; null: that card has none like it. */
export const backgroundNow = (c: Pick<Ctx, "walk" | "card">): BackgroundDose | null => {
  const opened = c.walk.background;
  return opened ? (backgroundDosesOf(c.card).find((d) => d.at === opened.at && d.insulin.id === opened.insulinId) ?? null) : null;
};

export const isBackground = (walk: Walk): boolean => walk.background !== null;

export function insulinOf(c: Pick<Ctx, "walk" | "card">): WalksInsulin {
  const opened = c.walk.background;
  if (!opened) return c.card?.insulin ?? { id: "", name: "mealtime insulin" };
  return backgroundNow(c)?.insulin ?? { id: opened.insulinId, name: opened.insulinName, kind: "long-acting" };
}
