// Words that mean different foods to different people. They are asked about, never guessed.
// Common practice of language, no source. A US biscuit is a bread and a UK biscuit a cookie; US chips are UK crisps.
import type { Locale } from "./foods.ts";

interface AskWord {
  words: readonly string[];
  /** Ids of the foods it may be. One alone is still asked: a muffin is seldom an English muffin. */
  choices: readonly string[];
  /** Only asked there; elsewhere the word is clear. */
  only?: Locale;
}

const CHIPS = ["potato-chips", "fries-fast-food", "chips-uk", "tortilla-chips", "plantain-chips"];

export const ASK_WORDS: readonly AskWord[] = [
  { words: ["biscuit"], choices: ["biscuit-us", "cookies-choc-chip", "digestive-biscuits", "wheat-biscuits"] },
  { words: ["chips", "bag of chips", "plate of chips"], choices: CHIPS },
  { words: ["potato chips"], choices: CHIPS.slice(0, 3), only: "UK" },
  { words: ["jelly"], choices: ["jelly-us", "gelatin"] },
  { words: ["squash"], choices: ["squash-winter", "squash-blackcurrant"] },
  { words: ["pudding"], choices: ["pudding-vanilla", "rice-pudding", "yorkshire-pudding", "apple-crumble", "flan"] },
  { words: ["chocolate pudding"], choices: ["pudding-vanilla", "cake-chocolate"], only: "UK" },
  { words: ["candy", "candies", "sweets", "bag of sweets"], choices: ["candy-hard", "jelly-beans", "chocolate-milk-bar"] },
  { words: ["lemonade", "plain lemonade"], choices: ["lemonade", "lemonade-fizzy-uk"] },
  { words: ["baked beans"], choices: ["beans-baked", "beans-tomato-uk"] },
  { words: ["porridge"], choices: ["oatmeal", "porridge-milk", "rice-congee", "grits"] },
  { words: ["curry"], choices: ["curry-chicken", "dal", "chana-masala"] },
  { words: ["muffin"], choices: ["english-muffin"] },
  { words: ["dumplings"], choices: ["dumplings-pork"] },
  { words: ["pancake"], choices: ["pancake"], only: "UK" },
];
