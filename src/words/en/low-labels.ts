// The names of the answers in a low and on an ill day.
import type { Intent } from "#events/intent.ts";
import { nameOf } from "#rules/food/foods.ts";
import { pouredMillilitres } from "#rules/food/millilitres.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import type { PersonState } from "#walk/state.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { type Label, label } from "#words/say.ts";
import { gramsOf } from "./amounts.ts";
import { ketonesWords } from "./ketones.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Short enough for a button: "Four tablets, 4 grams each", "Orange juice: half a cup". In Britain a cup is no measure and an ounce another one. */
function sugarShown(name: string, amount: string, locale: "US" | "UK"): string {
  const [what = name, size] = name.split(", ");
  const measures = amount.split(", ");
  const last = measures.at(-1) ?? amount;
  const poured = locale === "UK" ? pouredMillilitres(last) : null;
  const much = poured !== null ? `${poured} millilitres` : ((locale === "UK" ? last : measures[0]) ?? amount);
  return size && what.endsWith("tablets") ? `${much}, ${size}` : `${what}: ${much}`;
}

/** The amount belongs to the grams that were offered. */
export function sugarLabel(intent: Extract<Intent, { do: "took sugar" }>, me: PersonState | null): Label {
  const sugar = sugarFoods(careNumber(me?.card?.card ?? null, "treatGrams")).find((s) => s.id === intent.food);
  const locale = me?.person.language === "en-GB" ? "UK" : "US";
  const name = sugar ? nameOf(sugar.food, locale) : "sugar";
  const shown = capital(sugarShown(name, sugar?.amount ?? gramsOf(intent.grams), locale));
  return { shown, said: [shown.toLowerCase(), name.toLowerCase(), `i took ${name.toLowerCase()}`] };
}

type IllIntent = Extract<Intent, { do: "danger signs" | "read strip" | "no ketone strips" | "heard ill advice" | "finish ill" }>;

export function illLabel(intent: IllIntent, me: PersonState | null): Label {
  switch (intent.do) {
    case "danger signs":
      if (!intent.any) return label("None of these", "none");
      return me?.walk?.ill?.danger === null ? label("One of these", "danger") : label("It gets worse", "i feel worse");
    case "read strip":
      return label(ketonesWords(me?.card?.card.ketones?.test ?? "urine words", intent.level));
    case "no ketone strips":
      return label("No ketone strips", "no strips");
    case "heard ill advice":
      return label("Go on", "i understand", "next");
    case "finish ill":
      return me?.walk?.ill?.callRaised ? label("Help was called") : label("Done", "finish", "all done");
  }
}

/** "Yes, 180"; of a strip its own word. */
export function draftSaid(me: PersonState | null): string {
  const draft = me?.walk?.draft;
  const test = me?.card?.card.ketones?.test ?? "blood";
  return draft?.slot === "ketones" && test !== "blood" ? ketonesWords(test, Number(draft.text)) : (draft?.text ?? "");
}
