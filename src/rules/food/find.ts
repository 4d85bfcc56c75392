// From a word, said or typed, to the food it means: one, several to choose from, a word to ask about, or none.
import { ASK_WORDS } from "./ask-words.ts";
import { fold, stem } from "./fold.ts";
import { FOODS, type Food, foodById, type Locale, nameOf } from "./foods.ts";

export type Found =
  | { kind: "one"; food: Food }
  | { kind: "several"; foods: Food[] }
  | { kind: "ask"; word: string; choices: Food[] }
  | { kind: "none" };

const wordsOf = (text: string): string[] => fold(text).split(" ");
/** What two ways of writing the same food share: "Potatoes" and "potato". */
const keyOf = (text: string): string => wordsOf(text).map(stem).join(" ");

interface Form {
  food: Food;
  key: string;
  words: string[];
  stems: string[];
}

const FORMS: readonly Form[] = FOODS.flatMap((food) =>
  [...new Set([food.us, food.uk, ...food.aliases])].map((text) => ({
    food,
    key: keyOf(text),
    words: wordsOf(text),
    stems: wordsOf(text).map(stem),
  })),
);

const distinct = (foods: Food[]): Food[] => [...new Set(foods)];

const toAsk = (key: string, locale: Locale): Found | null => {
  for (const { words, choices, only } of ASK_WORDS) {
    const word = words.find((said) => keyOf(said) === key);
    if (word !== undefined && (only === undefined || only === locale))
      return { kind: "ask", word, choices: choices.flatMap((id) => foodById(id) ?? []) };
  }
  return null;
};

/** Foods with one spoken form that holds every word of the key, as whole words. */
const holding = (stems: string[]): Food[] =>
  distinct(FORMS.filter((form) => stems.every((word) => form.stems.includes(word))).map((form) => form.food));

/**
 * Foods with one spoken form in which every word is begun. Only beginnings of words count: "ice" does not find rice.
 * A name that begins as it was said comes first: "bana" is a banana before it is a green banana, boiled.
 */
const begunBy = (said: string, locale: Locale): Food[] => {
  const wanted = said.split(" ").map((word) => ({ word, stem: stem(word) }));
  const begins = (form: Form) =>
    wanted.every(({ word, stem }) => form.words.some((own) => own.startsWith(word)) || form.stems.includes(stem));
  const found = distinct(FORMS.filter(begins).map((form) => form.food));
  const first = found.filter((food) => fold(nameOf(food, locale)).startsWith(said));
  return distinct([...first, ...found]);
};

const answer = (foods: Food[]): Found => {
  const [first, ...others] = foods;
  if (first === undefined) return { kind: "none" };
  return others.length === 0 ? { kind: "one", food: first } : { kind: "several", foods };
};

/**
 * Accents, case, plurals and a leading "a", "some", "the" make no difference. The word's own food comes first:
 * 1. a word to ask about is asked about, even where it is also a name;
 * 2. the full name in this locale is that food;
 * 3. another name of a food is that food, unless other foods hold the same words ("milk", "cola"): then several, the likeliest first;
 * 4. otherwise every food with a name in which each word is begun.
 */
export const findFoods = (text: string, locale: Locale): Found => {
  const said = fold(text).replace(/^(a|an|some|the)( |$)/, "");
  if (said.length < 2) return { kind: "none" };
  const key = keyOf(said);
  const ask = toAsk(key, locale);
  if (ask !== null) return ask;
  const named = FOODS.find((food) => keyOf(nameOf(food, locale)) === key);
  if (named !== undefined) return { kind: "one", food: named };
  const called = FORMS.filter((form) => form.key === key).map((form) => form.food);
  if (called.length > 0) return answer(distinct([...called, ...holding(key.split(" "))]));
  return answer(begunBy(said, locale));
};
