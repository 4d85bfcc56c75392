// The names of the answers in a low and on an ill day.
import type { Intent } from "#events/intent.ts";
import { nameOf } from "#rules/food/foods.ts";
import { pouredMillilitres } from "#rules/food/millilitres.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import type { PersonState } from "#walk/state.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { type Label, label } from "#words/say.ts";
import { gramsOf } from "./amounts.ts";
import { ketonesWords } from "./ketones.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const localeOf = (me: PersonState | null): "US" | "UK" => (me?.person.language === "en-GB" ? "UK" : "US");

/** Short enough for a button: "Glucose tablets: four of 4 grams", "Orange juice: half a cup". In Britain a cup is no measure and an ounce another one. */
function sugarShown(name: string, amount: string, locale: "US" | "UK"): string {
  const [what = name, size] = name.split(", ");
  const measures = amount.split(", ");
  const last = measures.at(-1) ?? amount;
  const poured = locale === "UK" ? pouredMillilitres(last) : null;
  const much = poured !== null ? `${poured} millilitres` : ((locale === "UK" ? last : measures[0]) ?? amount);
  // Never "four tablets" alone: those of the medicine box are tablets too.
  if (size && what.endsWith("tablets")) return `${what}: ${much.replace(/ tablets?$/, "")} of ${size.replace(/ each$/, "")}`;
  return `${what}: ${much}`;
}

/** Whose pieces are counted by their own name: "four tablets" are "four glucose tablets". */
const COUNTED: readonly string[] = ["glucose-tablets", "glucose-tablets-small", "sugar-packets"];

/** In a sentence, in the measures of a kitchen: "four glucose tablets, 4 grams each", "half a cup of orange juice". */
function sugarSaid({ id, food, amount }: ReturnType<typeof sugarFoods>[number], locale: "US" | "UK"): string {
  const [name = "", size] = nameOf(food, locale).split(", ");
  const measures = amount.split(", ");
  const poured = locale === "UK" ? pouredMillilitres(measures.at(-1) ?? amount) : null;
  const much = poured !== null ? `${poured} millilitres` : ((locale === "UK" ? measures.at(-1) : measures[0]) ?? amount);
  if (COUNTED.includes(id)) return `${much.split(" ").slice(0, -1).join(" ")} ${name}${size ? `, ${size}` : ""}`;
  return much.endsWith(" small") ? `${much} ${name}` : `${much} of ${name}`;
}

/** Two of those that the low offers, something to chew and something to drink where both may be had. */
export function sugarsToGive(me: PersonState): string[] {
  const [first, ...others] = sugarsOffered(me.person.leftOutSugars, careNumber(me.card?.card ?? null, "treatGrams"));
  const second = others.find(({ id }) => !id.startsWith("glucose")) ?? others[0];
  const locale = localeOf(me);
  return [first, second].flatMap((sugar) => (sugar ? [sugarSaid(sugar, locale)] : []));
}

/** The amount belongs to the grams that were offered. */
export function sugarLabel(intent: Extract<Intent, { do: "took sugar" }>, me: PersonState | null): Label {
  const sugar = sugarFoods(careNumber(me?.card?.card ?? null, "treatGrams")).find((s) => s.id === intent.food);
  const locale = localeOf(me);
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
