// What the plate says and shows: finding a food, counting portions, the running total.
import type { PlateLine } from "#events/plate.ts";
import type { Counting, Food, FoodGroup, FoodNote, Locale } from "#rules/food/foods.ts";
import { inWords } from "#words/numbers.ts";

const GROUP: Record<FoodGroup, string> = {
  bread: "Bread and rolls",
  potato: "Potatoes and roots",
  grain: "Rice and grains",
  pasta: "Pasta and noodles",
  vegetable: "Vegetables",
  legume: "Beans and lentils",
  protein: "Meat, fish, eggs, cheese",
  dish: "Cooked dishes",
  soup: "Soups and stews",
  "hand food": "Pizza, burgers, pastries",
  cereal: "Breakfast cereal",
  "flat bread": "Flat bread and pancakes",
  fruit: "Fruit",
  milk: "Milk and yogurt",
  cake: "Cakes, cookies, pies",
  sweet: "Desserts, jam, candy",
  snack: "Chips, nuts, snacks",
  drink: "Drinks",
  "fast sugar": "Sugar for a low",
};

const GROUP_UK: Partial<Record<FoodGroup, string>> = {
  milk: "Milk and yoghurt",
  cake: "Cakes, biscuits, pies",
  sweet: "Puddings, jam, sweets",
  snack: "Crisps, nuts, snacks",
};

export const groupName = (group: FoodGroup, locale: Locale): string => (locale === "UK" ? GROUP_UK[group] : undefined) ?? GROUP[group];

/** What a note of the table asks people to mind. */
export const noteSentence: Record<FoodNote, string> = {
  "read the label": "Check it against the label.",
  "sauce adds more": "Extra sauce adds more.",
  "no coating counted": "Breading, batter and sauce are not counted.",
  "does not treat a low": "It does not treat a low.",
  "sugar-free kinds do not work": "Sugar-free kinds do not treat a low.",
  "slower than glucose or juice": "It works slower than glucose or juice.",
  "other curries count more": "Potato, lentil and vegetable curries count more.",
  "fibre is an estimate": "Its fibre is an estimate.",
};

/** "22.5 grams of carbs"; "1 gram of carbs". */
export const carbs = (grams: number): string => `${grams} ${grams === 1 ? "gram" : "grams"} of carbs`;

/** 0.5 -> "half a portion", 1 -> "one portion", 2.5 -> "two and a half portions". */
export const portionCount = (portions: number): string => {
  if (portions === 0.5) return "half a portion";
  const whole = inWords(String(Math.floor(portions)), "en-US");
  const half = Number.isInteger(portions) ? "" : " and a half";
  return `${whole}${half} ${portions === 1 ? "portion" : "portions"}`;
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const portionLabel = (portions: number): string => capital(portionCount(portions));

/** "Two portions of white bread, 28.4 grams". */
export const lineLabel = (line: PlateLine): string =>
  `${portionLabel(line.portions)} of ${line.name}, ${line.grams} ${line.grams === 1 ? "gram" : "grams"}`;

/** What is said before portions are chosen, most needed first. onePortion: its carbohydrate in the card's way of counting. */
export const portionSentences = (food: Food, onePortion: number, counting: Counting, locale: Locale): string[] => {
  const said = [`One portion is ${food.portion}.`, `It weighs ${food.weight} grams and holds ${carbs(onePortion)}.`];
  if (food.group === "fast sugar") said.push("If it treated a low, leave it off.");
  if (locale === "UK" && /\bcups?\b/.test(food.portion)) said.push("A cup here holds 240 millilitres.");
  if (food.weightFromMemory) said.push("The weight is an estimate. Use the label where you can.");
  if (food.otherTotal !== null && counting === "total") said.push(`Counted another way it holds ${carbs(food.otherTotal)}.`);
  const kept: FoodNote[] = ["read the label", "sauce adds more", "no coating counted", "other curries count more"];
  if (counting === "available") kept.push("fibre is an estimate");
  return [...said, ...food.notes.filter((note) => kept.includes(note)).map((note) => noteSentence[note])];
};

export const plateWords = {
  heading: "Your plate",
  empty: "Nothing is on the plate yet.",
  /** Said and shown after each food: what the plate holds by now. */
  soFar: (grams: number): string[] => [`${carbs(grams)} so far.`, "What else will you eat?"],
  /** The list shows the newest foods only. */
  others: (count: number) => (count === 1 ? "One more food is on the plate." : `${count} more foods are on the plate.`),
  add: "Add food",
  takeOff: "Take food off",
  done: "That is all",
  toPlate: "To the plate",
  otherFood: "Another food",

  howHeading: "How do you want to count?",
  byKind: "By kind of food",
  byLetter: "By first letter",
  typeGrams: "Grams of the whole meal",
  countServings: "Servings of 15 grams",
  usual: (name: string, grams: number) => `${capital(name)}, ${grams} ${grams === 1 ? "gram" : "grams"}`,

  kindHeading: "What kind of food?",
  letterHeading: "What is its first letter?",
  range: (letters: readonly string[]) => [letters[0], letters.at(-1)].map((letter) => (letter ?? "").toUpperCase()).join(" to "),
  foodHeading: "Which food?",
  whichHeading: "Which one is it?",
  ambiguous: (word: string) => `People use “${word}” for different foods.`,
  noneOfThese: "None of these",
  portionsHeading: (name: string) => `${capital(name)}: how much?`,
  takeOffHeading: "What comes off the plate?",

  notFoundHeading: "Food not in the table",
  heard: (text: string) => `You said “${text}”.`,
  notFoundWrong: "The table has no such food.",
  notFoundTodo: "Choose another name, or read the grams from the label.",
  fibreHeading: "Fibre not known",
  fibre: (name: string) => `You chose ${name}.`,
  fibreWrong: "Your card leaves fibre out. Nobody measured it here.",
  // A US label counts the fibre, a UK label does not.
  fibreTodo: (locale: Locale) => (locale === "UK" ? "Read the grams from the label." : "Take the fibre off the label's carbs."),
} as const;
